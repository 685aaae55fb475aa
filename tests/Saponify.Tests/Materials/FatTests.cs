using Saponify.Tests.Support;

namespace Saponify.Tests.Materials;

/// <summary>The rule for the saponification value used: doubt always means less lye.</summary>
public class FatTests
{
    private static readonly FattyAcidProfile s_olein = FattyAcidProfile.Of((FattyAcid.FromShorthand("C18:1"), Ratio.FromPercent(100)));

    private static SaponificationValue Sv(double koh) => SaponificationValue.FromMilligramsKohPerGram(koh);

    private static Figure<SaponificationValue> Published(double low, double high, Evidence evidence = Evidence.Standard) =>
        new(Sv((low + high) / 2), evidence, ["a-standard"]) { Low = Sv(low), High = Sv(high) };

    private static Fat Make(FatFigures figures, FatClass fatClass = FatClass.Triglyceride) => new("test", "Test", fatClass, figures with { ProfileSources = ["an analysis"] });

    [Fact]
    public void Used_MiddleBelowProfile_IsTheMiddle()
    {
        Fat fat = Make(new() { Saponification = Published(180, 196), Profile = s_olein });
        Assert.Equal(188, fat.Saponification!.Value.MilligramsKohPerGram);
        Assert.Equal(Evidence.Standard, fat.Saponification.Evidence);
    }

    [Fact]
    public void Used_ProfileBelowMiddle_IsTheProfile()
    {
        Fat fat = Make(new() { Saponification = Published(190, 200), Profile = s_olein });
        Assert.Equal(190.09, fat.Saponification!.Value.MilligramsKohPerGram, 2);
        Assert.Equal(Evidence.Computed, fat.Saponification.Evidence);
    }

    [Fact]
    public void Used_ProfileBelowThePublishedRange_IsNotLifted()
    {
        Fat fat = Make(new() { Saponification = Published(195, 200), Profile = s_olein });
        Assert.Equal(190.09, fat.Saponification!.Value.MilligramsKohPerGram, 2);
        Assert.Equal(fat.Saponification.Value, fat.Saponification.Low);
    }

    [Fact]
    public void Used_Unsaponifiable_LowersTheProfileValue()
    {
        Figure<Ratio> tenth = new(Ratio.FromPercent(10), Evidence.Standard, ["a-standard"]);
        Assert.Equal(190.09 * 0.9, Make(new() { Profile = s_olein, Unsaponifiable = tenth }).Saponification!.Value.MilligramsKohPerGram, 2);
    }

    [Fact]
    public void Used_WithoutPublishedRange_SpansWhatTheProfileCanHave()
    {
        FattyAcidProfile mixed = FattyAcidProfile.FromRanges(
            (FattyAcid.FromShorthand("C12:0"), Ratio.FromPercent(20), Ratio.FromPercent(40)), (FattyAcid.FromShorthand("C18:1"), Ratio.FromPercent(60), Ratio.FromPercent(80)));
        Figure<Ratio> limit = new(Ratio.FromPercent(1), Evidence.Standard, ["a-standard"]) { High = Ratio.FromPercent(2) };
        Figure<SaponificationValue> used = Make(new() { Profile = mixed, Unsaponifiable = limit }).Saponification!;
        double Neutral(double lauric) => 3000 * 56.105 / ((3 / ((lauric / 200.322) + ((1 - lauric) / 282.468))) + 38.049);
        Assert.Equal(Neutral(0.3) * 0.99, used.Value.MilligramsKohPerGram, 6);
        Assert.Equal(Neutral(0.2) * 0.98, used.Low!.Value.MilligramsKohPerGram, 6);
        Assert.Equal(Neutral(0.4), used.High!.Value.MilligramsKohPerGram, 6);
    }

    [Fact]
    public void Used_PartialProfileAlone_IsNone()
    {
        FattyAcidProfile partial = FattyAcidProfile.Of((FattyAcid.FromShorthand("C18:1"), Ratio.FromPercent(90)));
        Assert.True(partial.IsPartial);
        Assert.Null(Make(new() { Profile = partial }).Saponification);
        Assert.Equal(190, Make(new() { Profile = partial, Saponification = Published(185, 195) }).Saponification!.Value.MilligramsKohPerGram);
    }

    [Fact]
    public void Used_FreeAcid_IsTheAcidValue()
    {
        FattyAcidProfile stearic = FattyAcidProfile.Of((FattyAcid.FromShorthand("C18:0"), Ratio.FromPercent(100)));
        Assert.Equal(197.22, Make(new() { Profile = stearic }, FatClass.FreeAcid).Saponification!.Value.MilligramsKohPerGram, 2);
    }

    [Fact]
    public void Used_Wax_IsTheLowEndOfItsAcidValue_OrNothing()
    {
        FatFigures wax = new() { Saponification = Published(87, 104), AcidValue = Published(17, 24) };
        Assert.Equal(17, Make(wax, FatClass.Wax).Saponification!.Value.MilligramsKohPerGram);
        Assert.Equal(0, Make(wax with { AcidValue = null }, FatClass.Wax).Saponification!.Value.MilligramsKohPerGram);
    }

    [Fact]
    public void Used_OfALot_BeatsEverything()
    {
        Fat shea = Pantry.Reference.Fat("shea-butter");
        Assert.Null(shea.Saponification);
        Fat lot = shea.WithLot(new() { Name = "L-17", Source = "certificate", Saponification = Sv(178) });
        Assert.Equal(178, lot.Saponification!.Value.MilligramsKohPerGram);
        Assert.True(lot.Saponification.IsOwn);
        Assert.Equal((lot.Saponification.Low, lot.Saponification.High), (Sv(178), Sv(178)));
        Assert.Null(shea.WithLot(new() { Name = "L-18", Source = "certificate" }).Saponification);
    }

    [Fact]
    public void Lot_WithoutASource_CannotBeMade() => Assert.Throws<ArgumentException>(() => new Lot { Name = "L-1", Source = " " });

    [Fact]
    public void Figure_WithoutASource_CannotBeMade() => Assert.Throws<ArgumentException>(() => new Figure<SaponificationValue>(Sv(190), Evidence.Standard, []));

    [Fact]
    public void Profile_WithoutASource_IsRefused() => Assert.Throws<ArgumentException>(() => new Fat("test", "Test", FatClass.Triglyceride, new() { Profile = s_olein }));

    [Fact]
    public void Fats_EqualWhenTheirFiguresAre()
    {
        EqualityContract.Test(
            Make(new() { Saponification = Published(180, 196) }), Make(new() { Saponification = Published(180, 196) }),
            Make(new() { Saponification = Published(180, 197) }), Make(new()));
    }

    [Fact]
    public void EveryFat_UsesNoMoreThanTheMiddleNorTheProfileGives()
    {
        int checkedFats = 0;
        foreach (Fat fat in Pantry.Reference.Fats.Where(f => f.Class != FatClass.Wax && f.Saponification is not null))
        {
            double used = fat.Saponification!.Value.MilligramsKohPerGram;
            if (fat.Figures.Saponification is { } published)
                Assert.True(used <= published.Value.MilligramsKohPerGram, fat.Id);
            if (fat.Profile is { IsPartial: false } profile && fat.Class == FatClass.Triglyceride)
                Assert.True(used <= profile.SaponificationAsTriglyceride(Ratio.Zero).MilligramsKohPerGram + 1e-9, fat.Id);
            Assert.True(fat.Saponification.Low <= fat.Saponification.Value && fat.Saponification.Value <= fat.Saponification.High, fat.Id);
            checkedFats++;
        }
        Assert.InRange(checkedFats, 90, 200);
    }

    private static Figure<Ratio> Share(double percent, Evidence evidence) => new(Ratio.FromPercent(percent), evidence, ["c-analysis"]);

    [Fact]
    public void Evidence_IsTheWeakestOfWhatWasUsed()
    {
        FatFigures figures = new() { Saponification = Published(180, 196), Profile = s_olein, ProfileEvidence = Evidence.Handbook };
        Assert.Equal(Evidence.Handbook, Make(figures).Evidence);
        Assert.Equal(Evidence.Memory, Make(figures with { Unsaponifiable = Share(1, Evidence.Memory) }).Evidence);
        // what is only a trace does not weaken it
        Assert.Equal(Evidence.Handbook, Make(figures with { Unsaponifiable = Share(0.9, Evidence.Memory) }).Evidence);
        Assert.Equal(Evidence.Handbook, Make(figures with { Unsaponifiable = Share(1, Evidence.Standard) }).Evidence);
        Assert.Equal(Evidence.Memory, Make(figures with { Saponification = Published(180, 196, Evidence.Memory) }).Evidence);
        Assert.Equal(Evidence.Computed, Make(figures with { Saponification = null }).Evidence);
        Assert.Equal(Evidence.Standard, Make(new() { Saponification = Published(180, 196), Unsaponifiable = Share(5, Evidence.Memory) }).Evidence);
    }

    [Fact]
    public void Used_NamesEachSourceOnce_AndSaysHowItCameAbout()
    {
        FatFigures figures = new() { Saponification = Published(180, 196), Profile = s_olein, Unsaponifiable = Share(1, Evidence.Standard) };
        Assert.Equal(["a-standard", "an analysis", "c-analysis"], Make(figures).Saponification!.Sources);
        Assert.Equal(["a-standard", "an analysis"], Make(figures with { Unsaponifiable = new(Ratio.FromPercent(1), Evidence.Standard, ["a-standard"]) }).Saponification!.Sources);
        Assert.Equal(["a-standard"], Make(figures with { Profile = null }).Saponification!.Sources);
        Assert.Equal(("middle of the published range", false), (Make(figures).Saponification!.Note, Make(figures).IsOwn));
        Assert.Equal(("from the fatty acids", false), (Make(figures with { Saponification = null }).Saponification!.Note, Make(figures with { Saponification = null }).IsOwn));
        FatFigures own = figures with { Saponification = Published(180, 196) with { IsOwn = true } };
        Assert.Equal(("own figure, middle of the range given", true), (Make(own).Saponification!.Note, Make(own).Saponification!.IsOwn));
        FatFigures ownProfile = figures with { Saponification = null, IsProfileOwn = true };
        Assert.Equal(("own figure, from the fatty acids", true), (Make(ownProfile).Saponification!.Note, Make(ownProfile).Saponification!.IsOwn));
        // the profile of one's own was not used when it is partial
        FattyAcidProfile partial = FattyAcidProfile.Of((FattyAcid.FromShorthand("C18:1"), Ratio.FromPercent(90)));
        Assert.False(Make(figures with { Profile = partial, IsProfileOwn = true }).Saponification!.IsOwn);
    }

    [Fact]
    public void Used_KeepsThePublishedRange_OrNoWidthWithoutOne()
    {
        Figure<SaponificationValue> used = Make(new() { Saponification = Published(180, 196), Profile = s_olein }).Saponification!;
        Assert.Equal((Sv(180), Sv(196)), (used.Low, used.High));
        Figure<SaponificationValue> single = Make(new() { Saponification = new(Sv(188), Evidence.Standard, ["a-standard"]) }).Saponification!;
        Assert.Equal((Sv(188), Sv(188)), (single.Low, single.High));
    }

    [Fact]
    public void Used_OfAWax_SaysSo()
    {
        FatFigures wax = new() { Saponification = Published(87, 104), AcidValue = Published(17, 24, Evidence.Measured) with { IsOwn = true } };
        Figure<SaponificationValue> used = Make(wax, FatClass.Wax).Saponification!, none = Make(wax with { AcidValue = null }, FatClass.Wax).Saponification!;
        Assert.Equal((Sv(17), Sv(24), Evidence.Measured, true, "a wax counts by the low end of its acid value"), (used.Low, used.High, used.Evidence, used.IsOwn, used.Note));
        Assert.Equal((Sv(0), Sv(0), Evidence.Computed, false, "no acid value on file: counted as 0"), (none.Low, none.High, none.Evidence, none.IsOwn, none.Note));
    }

    [Fact]
    public void Lot_KeepsEverythingElseOfTheFat()
    {
        SourcedFigure row = new("iodine", 80, 90, "g/100 g", "", ["a-standard"], "", Evidence.Handbook, null);
        Fat fat = Make(new()) with { Aliases = ["another"], Allergen = "nuts", Origin = "plant", Inci = "Test Oil", InciSodiumSoap = "Sodium Testate", InciPotassiumSoap = "Potassium Testate", Provenance = [row, row with { IsOwn = true }], Note = "a note" };
        Lot lot = new() { Name = "L-1", Source = "certificate", Saponification = Sv(190) };
        Fat with = fat.WithLot(lot);
        Assert.Equal((fat.Id, fat.Name, fat.Class, fat.Figures, fat.Aliases, fat.Allergen, fat.Origin), (with.Id, with.Name, with.Class, with.Figures, with.Aliases, with.Allergen, with.Origin));
        Assert.Equal((fat.Inci, fat.InciSodiumSoap, fat.InciPotassiumSoap, fat.Provenance, fat.Note, lot), (with.Inci, with.InciSodiumSoap, with.InciPotassiumSoap, with.Provenance, with.Note, with.Lot));
        Assert.Equal((true, "lot L-1", Evidence.Measured), (with.IsVegan, with.Saponification!.Note, with.Evidence));
        Assert.Equal(["certificate"], with.Saponification.Sources);
        Assert.Throws<ArgumentNullException>(() => fat.WithLot(null!));
    }

    [Fact]
    public void Fat_IsOwn_ByItsLotItsValueOrAnyRow()
    {
        SourcedFigure row = new("iodine", 80, 90, "g/100 g", "", ["a-standard"], "", Evidence.Handbook, null);
        Fat plain = Make(new()) with { Provenance = [row] };
        Assert.False(plain.IsOwn);
        Assert.True((plain with { Provenance = [row, row with { IsOwn = true }] }).IsOwn);
        Assert.True(plain.WithLot(new() { Name = "L-1", Source = "certificate" }).IsOwn);
        // without a value for lye its evidence is the weakest row's
        Assert.Equal((Evidence.Memory, (Evidence?)null), ((plain with { Provenance = [row with { }, new("melting", 20, 24, "degC", "", ["memory"], "", Evidence.Memory, null)] }).Evidence, Make(new()).Evidence));
        Fat own = Fat.Own("mine", "My oil", Sv(190), "certificate");
        Assert.Equal((true, Sv(190), Sv(190), Sv(190), FatClass.Triglyceride), (own.IsOwn, own.Saponification!.Value, own.Saponification.Low, own.Saponification.High, own.Class));
        Assert.Throws<ArgumentException>(() => Fat.Own("mine", "My oil", Sv(190), " "));
        Assert.Equal(190 / 56105.0, own.HydroxidePerGram, 12);
    }

    [Fact]
    public void Fat_Impossible_CannotBeMade()
    {
        Assert.Contains("A profile needs its sources", Assert.Throws<ArgumentException>(() => new Fat("test", "Test", FatClass.Triglyceride, new() { Profile = s_olein })).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => new Fat("test", "Test", FatClass.Triglyceride, null!));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Fat("test", "Test", (FatClass)9, new()));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FatFigures { ProfileEvidence = (Evidence)99 });
        Assert.Throws<ArgumentException>(() => new Figure<SaponificationValue>(Sv(190), Evidence.Standard, ["a-standard", " "]));
        Assert.Throws<ArgumentException>(() => new Lot { Name = " ", Source = "certificate" });
    }
}
