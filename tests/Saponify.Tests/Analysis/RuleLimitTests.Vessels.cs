using Saponify.Analysis;

namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    /// <summary>A jug in a room of 20 degrees whose lye reaches this peak: the peak rises in a straight line with the temperature of the water, so two points give the line.</summary>
    private static BatchSetup Peaking(Formula formula, double celsius, string material)
    {
        double PeakAt(double water) => formula.Plan().Process(Heat(water).Process!).Lye!.Peak!.Value.DegreesCelsius;
        double cold = PeakAt(0), warm = PeakAt(50), water = (celsius - cold) / (warm - cold) * 50;
        Assert.Equal(celsius, PeakAt(water), 6);
        return Heat(water, vessel: new(VesselMaterial.Of(material), Volume.FromMilliliters(1000), Length.FromCentimeters(10), Mass.FromGrams(100)));
    }

    private static string[] Vessel(Formula formula, BatchSetup setup) => [.. Find("SFY3105", formula, setup).Select(d => d.Template.Name)];

    /// <summary>HDPE is tabled up to 60 degrees (iso-tr-7472), stainless steel corrodes near 100 (matperf-stainless), polypropylene softens at 120 (hmc-pp).</summary>
    [Theory]
    [InlineData("hdpe", 60, 18)]
    [InlineData("stainless-steel", 100, 32)]
    [InlineData("polypropylene", 120, 40)]
    public void SFY3105_TooHot(string material, double limit, double strength)
    {
        Formula formula = s_plain with { Liquids = Strength(strength) };
        Assert.Empty(Vessel(formula, Peaking(formula, limit - 0.1, material)));
        Assert.Equal(["TooHot"], Vessel(formula, Peaking(formula, limit + 0.1, material)));
    }

    /// <summary>Above 100 degrees polypropylene is fit for a short time: a peak is short, and the plan says it without a finding.</summary>
    [Fact]
    public void SFY3105_HotForAShortTime_IsNoFault()
    {
        Formula formula = s_plain with { Liquids = Strength(36) };
        BatchSetup setup = Peaking(formula, 110, "polypropylene");
        Assert.Contains(formula.Plan().Process(setup.Process!).VesselFindings, f => f.Kind == VesselFindingKind.HotForLong);
        Assert.Empty(Vessel(formula, setup));
    }

    /// <summary>Hot alkali takes the surface off glass strongly above 100 degrees (dwk-duran); borosilicate glass stands the step of 80 K from the room.</summary>
    [Fact]
    public void SFY3105_Attacked()
    {
        Formula formula = s_plain with { Liquids = Strength(32) };
        Assert.Empty(Vessel(formula, Peaking(formula, 99.9, "borosilicate-glass")));
        Assert.Equal(["Attacked"], Vessel(formula, Peaking(formula, 100.1, "borosilicate-glass")));
    }

    /// <summary>Soda-lime glass stands a step of 40 K (test-house-c149): from 20 to 60 degrees.</summary>
    [Fact]
    public void SFY3105_ThermalShock()
    {
        Formula formula = s_plain with { Liquids = Strength(18) };
        Assert.Empty(Vessel(formula, Peaking(formula, 59.9, "soda-lime-glass")));
        Assert.Equal(["ThermalShock"], Vessel(formula, Peaking(formula, 60.1, "soda-lime-glass")));
    }

    /// <summary>
    /// 79.994 g of sodium hydroxide in a lye of 30 % are 266.6 g. It has 1.328 g/mL at 20 degrees and about 1.28 g/mL near its peak (tables of handbooks, from memory),
    /// 1.27 to 1.30 at the outside: 205 to 210 mL. With 40 % of the jug free that asks for 342 to 350 mL.
    /// </summary>
    [Fact]
    public void SFY3105_TooSmall_And_LittleHeadspace()
    {
        Formula formula = TwoMoles(2) with { Liquids = Strength(30) };
        BatchSetup Of(double milliliters, double? free = null)
        {
            BatchSetup jug = Jug("polypropylene", milliliters);
            return jug with { Process = jug.Process! with { LeastHeadspace = free is { } share ? Ratio.FromPercent(share) : null } };
        }
        Assert.Equal(["TooSmall"], Vessel(formula, Of(204)));
        Assert.Empty(Vessel(formula, Of(211)));
        Assert.Equal(["TooSmall"], Vessel(formula, Of(204, 40)));
        Assert.Equal(["LittleHeadspace"], Vessel(formula, Of(341, 40)));
        Assert.Empty(Vessel(formula, Of(351, 40)));
        Assert.Empty(Vessel(formula, Of(341)));
    }

    /// <summary>Lye of 40 % boils near 128 degrees at sea level (tables of handbooks, from memory); the peak is good to 1 K, which counts.</summary>
    [Fact]
    public void SFY3101_ThePeakWithItsError_ReachesTheBoilingPoint()
    {
        Formula strong = s_plain with { Liquids = Strength(40) };
        LyeSolution lye = strong.Plan().Process(Heat(20).Process!).Lye!;
        double boiling = lye.Properties.BoilingPoint!.Value.DegreesCelsius, error = lye.PeakError!.Value.Kelvins;
        Assert.InRange(boiling, 125, 131);
        Assert.InRange(error, 0.5, 1.5);
        Assert.Empty(Find("SFY3101", strong, Peaking(strong, boiling - error - 0.05, "stainless-steel")));
        Assert.Single(Find("SFY3101", strong, Peaking(strong, boiling - error + 0.05, "stainless-steel")));
    }

    /// <summary>Crystals from 12.9 degrees at 36 % and from 15.7 at 38.8 %, read off a diagram to 2 K and 1 K (wang-2008): midway 14.3, and the larger doubt makes 16.3.</summary>
    [Fact]
    public void SFY3102_TheDoubtOfTheFigure_Counts()
    {
        Formula hump = s_plain with { Liquids = Strength(37.4) };
        Assert.Single(Find("SFY3102", hump, Heat(20, lye: 16.2)));
        Assert.Empty(Find("SFY3102", hump, Heat(20, lye: 16.4)));
    }

    [Fact]
    public void SFY3103_TheLimitGiven_IsKeptToTheTenth()
    {
        BatchSetup lye = Heat(15, lye: 30);
        double mixed = s_milky.Plan().Process(lye.Process!).WithHeldBack!.MixedTemperature!.Value.DegreesCelsius;
        BatchSetup Limit(double celsius) => lye with { Process = lye.Process! with { MilkLimit = C(celsius) } };
        Assert.Empty(Find("SFY3103", s_milky, Limit(mixed + 0.05)));
        Assert.Single(Find("SFY3103", s_milky, Limit(mixed - 0.05)));
        Assert.Empty(Find("SFY3103", s_plain, Limit(10)));
    }

    /// <summary>No lye of 0 degrees or more and no water keeps milk at 1 degree, and ten times the milk at 5 degrees does not keep the jug at 6.</summary>
    [Fact]
    public void SFY3103_WhereNeitherCoolingNorWaterHelps_AnotherWayIsNamed()
    {
        string Said(Formula formula, double limit) => Assert.Single(Find("SFY3103", formula, Heat(5, lye: 30) with { Process = Heat(5, lye: 30).Process! with { MilkLimit = C(limit) } })).ToMessage();
        Assert.EndsWith("above the limit of 1 °C: freeze them, or hold them back for the fats", Said(s_milky, 1), StringComparison.Ordinal);
        Formula inTheJug = s_plain with { Liquids = s_plain.Liquids.DissolvingIn(s_pantry.Liquid("milk-cow-whole"), C(5)) };
        Assert.EndsWith("above the limit of 6 °C: dissolve in water, or stir the alkali in slowly over a cold bath", Said(inTheJug, 6), StringComparison.Ordinal);
    }

    /// <summary>Cocoa butter melts at 31 to 34 degrees; lye and fats of one temperature come to just that. Within the range it may set, which is no fault.</summary>
    [Fact]
    public void SFY3106_TheLowEndOfTheMeltingRange()
    {
        Formula hard = s_plain with { Fats = [Fat("olive-oil", 450), Fat("coconut-oil", 150), Fat("cocoa-butter", 100)] };
        Assert.Single(Find("SFY3106", hard, Heat(20, lye: 30.9, fats: 30.9)));
        Assert.Empty(Find("SFY3106", hard, Heat(20, lye: 31.1, fats: 31.1)));
    }
}
