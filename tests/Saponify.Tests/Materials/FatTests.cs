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
}
