namespace Saponify.PublishedValues.Making;

/// <summary>
/// The peak as an upper bound, against a table worked out apart from the library: water and alkali at the start temperature, all heat stays. NaOH twice,
/// from the table of heats of solution and from the enthalpy equation of Olsson 1997 with the solid at 1092.3 kJ/kg, within 0.5 degrees of each other.
/// </summary>
public class PeakTests
{
    /// <summary>Within 1 degree: whole degrees in the table, and half a degree between its two ways.</summary>
    [Theory]
    [InlineData(10, 33, 49, 54)]
    [InlineData(20, 64, 79, 84)]
    [InlineData(25, 77, 92, 97)]
    [InlineData(28, 84, 99, 104)]
    [InlineData(30, 89, 103, 108)]
    [InlineData(33.3, 94, 108, 113)]
    [InlineData(35, 96, 110, 115)]
    [InlineData(38, 99, 113, 118)]
    [InlineData(40, 101, 114, 119)]
    [InlineData(45, 102, 115, 120)]
    [InlineData(50, 100, 113, 118)]
    public void SodiumHydroxide_FromFiveTwentyAndTwentyFive(double percent, double from5, double from20, double from25)
    {
        Given.Near(from5, Peak(Given.PureSodiumHydroxide, percent, 5), 1);
        Given.Near(from20, Peak(Given.PureSodiumHydroxide, percent, 20), 1);
        Given.Near(from25, Peak(Given.PureSodiumHydroxide, percent, 25), 1);
    }

    /// <summary>The same table: from 20 degrees no strength of NaOH reaches its boiling point, from 40 degrees all from about 25 to 42 % do.</summary>
    [Fact]
    public void SodiumHydroxide_BoilsFromWarmWater()
    {
        for (double percent = 10; percent <= 50; percent += 1)
            Assert.False(Make(Given.PureSodiumHydroxide, percent, 20).MayBoil);
        for (double percent = 26; percent <= 41; percent += 1)
            Assert.True(Make(Given.PureSodiumHydroxide, percent, 40).MayBoil);
        Assert.False(Make(Given.PureSodiumHydroxide, 22, 40).MayBoil);
        Assert.False(Make(Given.PureSodiumHydroxide, 46, 40).MayBoil);
    }

    /// <summary>Dry KOH from 20 degrees. Within 2 degrees: the heat of KOH is itself known to 3 %.</summary>
    [Theory]
    [InlineData(20, 80, false)]
    [InlineData(25, 98, false)]
    [InlineData(30, 116, true)]
    [InlineData(33, 126, true)]
    [InlineData(40, 150, true)]
    [InlineData(50, 177, true)]
    public void DryPotassiumHydroxide_From20(double percent, double expected, bool boils)
    {
        Given.Near(expected, Peak(Given.PurePotassiumHydroxide, percent, 20), 2);
        Assert.Equal(boils, Make(Given.PurePotassiumHydroxide, percent, 20).MayBoil);
    }

    /// <summary>
    /// Flakes whose water is bound as KOH.H2O, from 20 degrees, at the strength that comes out; the bound shows dry KOH all the same. Within 2 degrees.
    /// </summary>
    [Theory]
    [InlineData(90, 30, 90)]
    [InlineData(90, 33, 97)]
    [InlineData(90, 40, 112)]
    [InlineData(90, 50, 126)]
    [InlineData(85, 30, 75)]
    [InlineData(85, 33, 80)]
    [InlineData(85, 40, 90)]
    [InlineData(85, 50, 96)]
    public void Flakes_AreCoolerThanTheirBound(double purity, double percent, double expected)
    {
        LyeSolution lye = Make(Alkali.PotassiumHydroxide(Ratio.FromPercent(purity)), percent, 20);
        Given.Near(expected, lye.PeakOfHydrate!.Value.DegreesCelsius, 2);
        Given.Near(Peak(Given.PurePotassiumHydroxide, percent, 20), lye.Peak!.Value.DegreesCelsius, 1);
        Assert.InRange(lye.Peak.Value.DegreesCelsius - lye.PeakOfHydrate.Value.DegreesCelsius, 20, 85);
    }

    /// <summary>
    /// All water as ice of -18 degrees, lye of 33 % and of 30 %: the table ends near 18 and 11 degrees. It leaves the heat of solution at its value for 25 degrees, which
    /// makes about 3 degrees there; hence within 4.
    /// </summary>
    [Theory]
    [InlineData(33, 18)]
    [InlineData(30, 11)]
    public void Ice_KeepsTheLyeCool(double percent, double expected)
    {
        LyeJug jug = new()
        {
            Alkalis = [Given.PureSodiumHydroxide.Weighing(Mass.FromGrams(percent))],
            AlkaliTemperature = Temperature.FromDegreesCelsius(0),
            Liquids = [Liquid.Water.Weighing(Mass.FromGrams(100 - percent)).FrozenAt(Temperature.FromDegreesCelsius(-18))],
        };
        Given.Near(expected, jug.Dissolve().Peak!.Value.DegreesCelsius, 4);
    }

    private static double Peak(Alkali alkali, double percent, double celsius) => Make(alkali, percent, celsius).Peak!.Value.DegreesCelsius;

    private static LyeSolution Make(Alkali alkali, double percent, double celsius)
    {
        // so much that pure alkali is this share of pure alkali and water
        double weighed = percent / alkali.Purity.High.DecimalFractions, water = 100 - percent - (weighed * alkali.BoundWater.DecimalFractions);
        return new LyeJug
        {
            Alkalis = [alkali.Weighing(Mass.FromGrams(weighed))],
            AlkaliTemperature = Temperature.FromDegreesCelsius(celsius),
            Liquids = [Liquid.Water.Weighing(Mass.FromGrams(water)).At(Temperature.FromDegreesCelsius(celsius))],
        }.Dissolve();
    }
}
