using Saponify.Analysis;

namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    private static readonly Formula s_milky = s_plain with { Liquids = Strength(30).HoldingBack(Held("milk-cow-whole", 70).At(Temperature.FromDegreesCelsius(5))) };

    private static readonly BatchSetup s_bar = new() { Form = ProductForm.Bar };

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static BatchSetup Heat(double water, double? lye = null, double? fats = null, Vessel? vessel = null) => new()
    {
        Process = new() { Room = C(20), Water = C(water), Lye = lye is { } l ? C(l) : null, Fats = fats is { } f ? C(f) : null, MilkLimit = C(35), Vessel = vessel },
    };

    private static BatchSetup Jug(string material, double milliliters) =>
        Heat(10, vessel: new(VesselMaterial.Of(material), Volume.FromMilliliters(milliliters), Length.FromCentimeters(10), Mass.FromGrams(100)));

    private static BatchSetup Loaf(double length, int moulds = 1) => new() { Mould = Mould.Box(Length.FromCentimeters(length), Length.FromCentimeters(8), Length.FromCentimeters(6)), Moulds = moulds };

    [Fact]
    public void SFY3101_ColdWater_KeepsStrongLyeFromBoiling()
    {
        Formula strong = s_plain with { Liquids = Strength(40) };
        Assert.Empty(Find("SFY3101", strong, Heat(40)));
        Assert.NotEmpty(Find("SFY3101", strong, Heat(60)));
        Assert.InRange(Fixed("SFY3101", strong, Heat(60)).Liquids.LyeLiquid.Temperature!.Value.DegreesCelsius, 30, 45);
        Assert.Empty(Find("SFY3101", strong));
    }

    [Fact]
    public void SFY3102_LyeOfAboutThirtyNinePercent_IsClearAboveSeventeenDegreesOnly()
    {
        Formula hump = s_plain with { Liquids = Strength(38.8) };
        Assert.Empty(Find("SFY3102", hump, Heat(20, lye: 18)));
        Assert.Equal("Cooled", Assert.Single(Find("SFY3102", hump, Heat(20, lye: 15))).Template.Name);
        Assert.Equal("Standing", Assert.Single(Find("SFY3102", hump, new() { Process = new() { Room = C(12), Water = C(20) } })).Template.Name);
    }

    [Fact]
    public void SFY3103_CoolLye_OrFrozenMilk_StaysBelowTheLimit()
    {
        Assert.Empty(Find("SFY3103", s_milky, Heat(15, lye: 30)));
        Assert.Contains("cool the lye to 31 °C", Assert.Single(Find("SFY3103", s_milky, Heat(15, lye: 40))).ToMessage(), StringComparison.Ordinal);
        Assert.True(Fixed("SFY3103", s_milky, Heat(15, lye: 40)).Liquids.HeldBack[0].IsFrozen);
        // more water helps only where the lye is not itself above the limit: strong lye, whose dilution heats most
        Formula strong = s_milky with { Liquids = Strength(30).HoldingBack(Held("milk-cow-whole", 120).At(C(5))) };
        Diagnostic warm = Assert.Single(Find("SFY3103", strong, Heat(15, lye: 33)));
        Assert.Contains("g more water into the lye", warm.ToMessage(), StringComparison.Ordinal);
        Assert.Equal(["KeepMilkFromScorching.Freeze", "KeepMilkFromScorching.Weaken"], warm.Fixes.Select(f => f.Key));
        Assert.DoesNotContain("more water", Assert.Single(Find("SFY3103", s_milky, Heat(15, lye: 40))).ToMessage(), StringComparison.Ordinal);
        Formula frozen = s_plain with { Liquids = s_plain.Liquids.DissolvingInFrozen(s_pantry.Liquid("milk-cow-whole"), C(-18)) };
        Assert.Equal("InTheJug", Assert.Single(Find("SFY3103", frozen, new() { Process = new() { Room = C(20), MilkLimit = C(10) } })).Template.Name);
    }

    [Theory]
    [InlineData("aluminium", true)]
    [InlineData("zinc", true)]
    [InlineData("stainless-steel", false)]
    [InlineData("soda-lime-glass", false)]
    public void SFY3104_SomeMaterials_MustNeverHoldLye(string material, bool speaks) => Assert.Equal(speaks, Find("SFY3104", s_plain, Jug(material, 1000)).Count == 1);

    [Fact]
    public void SFY3105_TheVessel_MustHoldTheLyeAndItsHeat()
    {
        Assert.Empty(Find("SFY3105", s_plain, Jug("polypropylene", 1000)));
        Assert.Equal("TooSmall", Assert.Single(Find("SFY3105", s_plain, Jug("polypropylene", 200))).Template.Name);
        Assert.Contains(Find("SFY3105", s_plain, Jug("soda-lime-glass", 1000)), d => d.Template.Name == "ThermalShock");
        // some 320 g of lye of 30 % (1.33 g/mL at 20 °C, from memory) are about 240 mL: half of it fits into 125 mL
        Assert.InRange(Fixed("SFY3105", s_plain, Jug("polypropylene", 125)).ListedFats.Grams, 320, 380);
        Assert.Empty(Find("SFY3105", s_plain, Jug("aluminium", 200)));
    }

    [Fact]
    public void SFY3106_CocoaButter_SetsInACoolPot()
    {
        Formula hard = s_plain with { Fats = [Fat("olive-oil", 450), Fat("coconut-oil", 150), Fat("cocoa-butter", 100)] };
        Assert.Contains("Cocoa butter", Assert.Single(Find("SFY3106", hard, Heat(20, lye: 22, fats: 26))).ToMessage(), StringComparison.Ordinal);
        Assert.Empty(Find("SFY3106", hard, Heat(20, lye: 40, fats: 45)));
        Assert.Empty(Find("SFY3106", hard with { Fats = [.. hard.Fats.Select(f => f.Fat.Id == "cocoa-butter" ? f.AtTrace() : f)] }, Heat(20, lye: 24, fats: 28)));
    }

    [Fact]
    public void SFY4104_MoreThanAFewPercentOfUnknownAcids_GiveNoScores()
    {
        Formula With(double grams) => s_plain with { Fats = [Fat("olive-oil", 430), Fat("coconut-oil", 200), Fat("hydrogenated-castor-oil", grams)] };
        Assert.Empty(Find("SFY4104", With(25), s_bar));
        Assert.NotEmpty(Find("SFY4104", With(60), s_bar));
        Assert.Empty(Find("SFY4104", With(60)));
        Assert.Empty(Find("SFY4104", With(150), s_bar));
        Assert.True(Speaks("SFY8002", With(150)));
    }

    [Fact]
    public void SFY4105_OxidationRisk_IsSaidInTheHighestBandOnly()
    {
        Formula With(double canola) => s_plain with { Fats = [Fat("canola-oil", canola), Fat("coconut-oil", 700 - canola)] };
        Assert.Contains("Canola oil brings", Assert.Single(Find("SFY4105", With(550), s_bar)).ToMessage(), StringComparison.Ordinal);
        Assert.Empty(Find("SFY4105", With(350), s_bar));
        Assert.Empty(Find("SFY4105", Superfat(s_plain with { Fats = [Fat("sunflower-oil", 550), Fat("coconut-oil", 150)] }, 10), s_bar));
    }

    [Fact]
    public void SFY4106_SoftBars_AreDescribed_UnlessHardFatsAreLacking()
    {
        Formula With(string oil) => s_plain with { Fats = [Fat(oil, 550), Fat("coconut-oil", 150)] };
        Assert.Contains("goes quickly, needs a draining dish", Assert.Single(Find("SFY4106", With("canola-oil"), s_bar)).ToMessage(), StringComparison.Ordinal);
        Assert.Empty(Find("SFY4106", With("tallow"), s_bar));
        Formula olive = s_plain with { Fats = [Fat("olive-oil", 700)] };
        Assert.Empty(Find("SFY4106", olive, s_bar));
        Assert.NotEmpty(Find("SFY4101", olive, s_bar));
    }

    [Fact]
    public void SFY4107_EdgesOfBands_AreSaidOnRequest()
    {
        Formula olive = s_plain with { Fats = [Fat("olive-oil", 700)] };
        Assert.Empty(Find("SFY4107", olive, s_bar));
        FormulaAnalyzer asked = FormulaAnalyzer.Default.With(AnalyzerConfig.Default.WithSeverity("SFY4107", Severity.Info));
        Assert.Contains("wear resistance 20 of 100, between", asked.Analyze(olive, s_bar).Diagnostics.Single(d => d.Id == "SFY4107").ToMessage(), StringComparison.Ordinal);
        Assert.DoesNotContain(asked.Analyze(s_plain, s_bar).Diagnostics, d => d.Id == "SFY4107");
    }

    [Fact]
    public void SFY6101_BatterThatSurelyOverflows_IsScaledToTheMould()
    {
        Assert.Empty(Find("SFY6101", s_plain, Loaf(21)));
        Assert.NotEmpty(Find("SFY6101", s_plain, Loaf(20)));
        Assert.Empty(Find("SFY6101", s_plain, Loaf(20, moulds: 2)));
        Assert.InRange(Fixed("SFY6101", s_plain, Loaf(20)).ListedFats.Grams, 630, 690);
    }

    [Fact]
    public void SFY6102_AMouldFarFromFull_IsFilled()
    {
        Assert.Empty(Find("SFY6102", s_plain, Loaf(25)));
        Assert.NotEmpty(Find("SFY6102", s_plain, Loaf(26)));
        Assert.Empty(Find("SFY6102", s_plain, Loaf(26), ("least", 80)));
        Assert.InRange(Fixed("SFY6102", s_plain, Loaf(26)).ListedFats.Grams, 800, 900);
    }

    [Fact]
    public void SFY6103_SweetBatter_InAWrappedBlock_PouredWarm()
    {
        BatchSetup Wrapped(double pour) => Loaf(22) with { Pour = C(pour), IsInsulated = true };
        Assert.Empty(Find("SFY6103", s_milky, Wrapped(25)));
        Assert.NotEmpty(Find("SFY6103", s_milky, Wrapped(30)));
        Assert.Empty(Find("SFY6103", s_plain, Wrapped(50)));
    }

    [Fact]
    public void SFY6104_ACutThatGivesNoBar()
    {
        BatchSetup Cut(double thickness, double? across = null) => Loaf(22) with { Cut = new() { Thickness = Length.FromCentimeters(thickness), Across = across is { } a ? Length.FromCentimeters(a) : null } };
        Assert.Empty(Find("SFY6104", s_plain, Cut(22)));
        Assert.Equal("NoBar", Assert.Single(Find("SFY6104", s_plain, Cut(22.1))).Template.Name);
        Assert.Equal("TooNarrow", Assert.Single(Find("SFY6104", s_plain, Cut(2.5, 8.1))).Template.Name);
        BatchSetup slab = Cut(5) with { Mould = Mould.Slab(Length.FromCentimeters(20), Length.FromCentimeters(20), Length.FromCentimeters(3)) };
        Assert.Equal("CannotCut", Assert.Single(Find("SFY6104", s_plain, slab)).Template.Name);
    }

    [Fact]
    public void SFY6105_MouldsThatGiveTooFewBars()
    {
        BatchSetup Wanted(int bars, int samples = 0, int moulds = 1) => Loaf(22, moulds) with { Cut = new() { Thickness = Length.FromCentimeters(2.5), Samples = samples }, WantedBars = bars };
        Assert.Empty(Find("SFY6105", s_plain, Wanted(8)));
        Assert.Equal("1 of this mould, full, gives 8 bars for sale, and 9 are wanted: that takes 2", Assert.Single(Find("SFY6105", s_plain, Wanted(9))).ToMessage());
        Assert.NotEmpty(Find("SFY6105", s_plain, Wanted(8, samples: 1)));
        Assert.Empty(Find("SFY6105", s_plain, Wanted(9, moulds: 2)));
    }
}
