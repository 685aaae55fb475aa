using static Saponify.PublishedValues.Making.LyeTables;

namespace Saponify.PublishedValues.Making;

/// <summary>Heat of solution and of dilution. The library stands on NBS 1982; older textbooks stand on NBS Circular 500.</summary>
public class HeatOfSolutionTests
{
    /// <summary>What Circular 500 has less for solid NaOH, kJ/mol: infinite dilution -42.89 there, -44.505 in NBS 1982 (-470.114 + 425.609).</summary>
    private const double OlderBasis = 44.505 - 42.89;

    /// <summary>
    /// Sources: NBS 1982 (NaOH -425.609 and -470.114, KOH -424.764 and -482.37 kJ/mol of formation), CRC Handbook after Parker 1965 (-44.51, -57.61).
    /// </summary>
    [Fact]
    public void InfiniteDilution_IsThatOfNbs1982()
    {
        Given.Near(470.114 - 425.609, Naoh(0).HeatReleased(), 0.01);
        Given.Near(482.37 - 424.764, Koh(0).HeatReleased(), 0.01);
    }

    /// <summary>
    /// Source: Felder and Rousseau, Elementary Principles of Chemical Processes, solution of problem 8.83: with 4 mol of water 34.43 kJ/mol, on the basis of
    /// Circular 500. NBS 1982 is 1.615 more: the two bases differ by five times the error, and the library must be on the later one.
    /// </summary>
    [Fact]
    public void FourMolesOfWater_OnBothBases()
    {
        double released = Naoh(PercentNaoh(4)).HeatReleased();
        Given.Near(34.43, released - OlderBasis, 0.005 * 34.43);
        Assert.True(Math.Abs(released - 34.43) > 5 * 0.3);
    }

    /// <summary>The same problem: 20 mol of NaOH and 80 of water, in and out at 25 degrees Celsius, give off 688.6 kJ on the older basis. Within 0.5 %.</summary>
    [Fact]
    public void MakingA20MolPercentSolution_GivesOffItsHeat()
    {
        LyeJug jug = new()
        {
            Alkalis = [Given.PureSodiumHydroxide.Weighing(Mass.FromGrams(20 * 39.997))],
            AlkaliTemperature = Temperature.FromDegreesCelsius(25),
            Liquids = [Liquid.Water.Weighing(Mass.FromGrams(80 * 18.015)).At(Temperature.FromDegreesCelsius(25))],
        };
        Given.Near(688.6, jug.Dissolve().HeatOfDissolving!.Value.Kilojoules - (20 * OlderBasis), 0.005 * 688.6);
    }

    /// <summary>
    /// Source: Smith, Van Ness and Abbott, Introduction to Chemical Engineering Thermodynamics, example 12.9: NaOH and water at 70 degrees Fahrenheit to 45 %,
    /// charts give -333.25 kJ per kg of solution, 29.6 kJ/mol. Within 5 %: the chart has its own basis for the solid.
    /// </summary>
    [Fact]
    public void FortyFivePercent_FromAChart() => Given.Near(333.25, Naoh(45).HeatReleased() * 450 / 39.997, 0.05 * 333.25);

    /// <summary>
    /// Source: Bhatt and Vora, Stoichiometry, example 6.5, on NBS 1982: lye of 23.6 % has -468.257 kJ/mol of formation, the spent liquor -469.837. The solid has
    /// -425.609. Within 0.1; the heat of dilution 1.580 is less than what is left in the lye at all.
    /// </summary>
    [Fact]
    public void TwentyThreePercent_OfAScrubber()
    {
        double released = Naoh(23.6).HeatReleased();
        Given.Near(468.257 - 425.609, released, 0.1);
        Assert.InRange(469.837 - 468.257, 0, Naoh(0).HeatReleased() - released);
        // the spent liquor is one of about 12 mol of water
        Given.Near(469.837 - 468.257, Naoh(PercentNaoh(12)).HeatReleased() - released, 0.3);
    }

    /// <summary>
    /// Source: Olsson 1997, heats of solution from the enthalpy equation, anchored at 20 mol of water; worked out apart from the library.
    /// </summary>
    [Theory]
    [InlineData(2.5, 26.45)]
    [InlineData(3.5, 33.60)]
    [InlineData(6, 41.34)]
    [InlineData(9, 43.65)]
    [InlineData(15, 44.41)]
    public void SodiumHydroxide_ByMolesOfWater(double moles, double expected) => Given.Near(expected, Naoh(PercentNaoh(moles)).HeatReleased(), 0.01);

    /// <summary>
    /// A plain exponential through the table, worked out apart from the library: 44.234 - 65.574 exp(-0.52061 n) kJ/mol for n from 2.5 mol of water; within 0.06
    /// up to 8. It checks what the curve does between the rows.
    /// </summary>
    [Theory]
    [InlineData(2.6)]
    [InlineData(2.9)]
    [InlineData(3.2)]
    [InlineData(3.75)]
    [InlineData(4.5)]
    [InlineData(5.5)]
    [InlineData(6.5)]
    [InlineData(7.6)]
    public void SodiumHydroxide_BetweenTheRows(double moles) => Given.Near(44.234 - (65.574 * Math.Exp(-0.52061 * moles)), Naoh(PercentNaoh(moles)).HeatReleased(), 0.07);

    /// <summary>
    /// The same for KOH: 56.635 - 35.056 exp(-0.37519 n), within 0.33 of the table; the table itself is within 1.5 of the truth, and nobody published a row of it.
    /// </summary>
    [Theory]
    [InlineData(3.2)]
    [InlineData(4.5)]
    [InlineData(6.5)]
    [InlineData(8.5)]
    [InlineData(11)]
    public void PotassiumHydroxide_BetweenTheRows(double moles)
    {
        Figure<MolarEnergy> released = Koh(PercentKoh(moles)).HeatOfSolution!;
        Given.Near(56.635 - (35.056 * Math.Exp(-0.37519 * moles)), released.Value.KilojoulesPerMole, 0.4);
        Assert.True(released.High!.Value.KilojoulesPerMole - released.Value.KilojoulesPerMole >= 1);
        Assert.Equal(Evidence.Memory, released.Evidence);
    }

    /// <summary>Source: CRC Handbook after Parker 1965: KOH.H2O dissolves with 14.64 kJ/mol where KOH gives 57.61; so a mole of bound water costs 42.97 kJ.</summary>
    [Fact]
    public void Monohydrate_DissolvesWithLittleHeat()
    {
        // 75.7 % KOH is the monohydrate
        Alkali flakes = Alkali.PotassiumHydroxide(Ratio.FromDecimalFractions(56.105 / (56.105 + 18.015)));
        LyeSolution lye = new LyeJug
        {
            Alkalis = [flakes.Weighing(Mass.FromGrams(56.105 + 18.015))],
            AlkaliTemperature = Temperature.FromDegreesCelsius(25),
            Liquids = [Liquid.Water.Weighing(Mass.FromKilograms(1000)).At(Temperature.FromDegreesCelsius(25))],
        }.Dissolve();
        Given.Near(57.61 - 14.64, lye.HeatOfHydrate.Kilojoules, 0.01);
        Given.Near(14.64, lye.HeatOfDissolving!.Value.Kilojoules - lye.HeatOfHydrate.Kilojoules, 0.1);
    }

    /// <summary>
    /// Heat contents of NaOH lye, kJ/kg, counted from water at 0 degrees Celsius and endlessly dilute NaOH at 20. Sources: McCabe, Smith and Harriott, Unit Operations,
    /// example 16.1 (20 % at 100 and 50 % at 197 degrees Fahrenheit); Narayanan and Lakshmikutty, example 11.27 (10 % at 305 K, 50 % at 380 K);
    /// Himmelblau and Riggs, Basic Principles, example 28.3 (10 % at 200 degrees Fahrenheit, 152 Btu/lb). Within 4 kJ/kg for reading the chart
    /// and the errors that the library states.
    /// </summary>
    [Theory]
    [InlineData(20, 37.78, 127.9)]
    [InlineData(50, 91.67, 514.0)]
    [InlineData(10, 31.85, 116.3)]
    [InlineData(50, 106.85, 560.57)]
    [InlineData(10, 93.33, 353.6)]
    public void HeatContent_OfAChart(double percent, double celsius, double expected)
    {
        Figure<MolarEnergy> released = Naoh(percent).HeatOfSolution!;
        double error = (released.High!.Value.KilojoulesPerMole - released.Value.KilojoulesPerMole) * percent * 10 / 39.997;
        Given.Near(expected, HeatContent(percent, celsius), 4 + error + 0.2);
    }

    /// <summary>
    /// Source: Himmelblau and Riggs, example 28.3: 600 lb of 10 % NaOH (152 Btu/lb) and 400 lb of 50 % (290 Btu/lb) make 26 %, which boils: 232 degrees Fahrenheit,
    /// 111 Celsius, and 32.8 lb of water flash off. The boiling point within 2 degrees, which is 4 lb of steam.
    /// </summary>
    [Fact]
    public void TwoLyesMixed_Boil()
    {
        const double BtuPerPound = 2.326;
        double brought = ((600 * 152) + (400 * 290)) / 1000.0 * BtuPerPound, boiling = Naoh(26).Boiling(), liquid = HeatContent(26, boiling), steam = 1158 * BtuPerPound;
        Given.Near(111, boiling, 2);
        Assert.True(brought > liquid);
        Given.Near(32.8, 1000 * (brought - liquid) / (steam - liquid), 4);
    }

    private static double HeatContent(double percent, double celsius)
    {
        // endlessly dilute NaOH takes up -0.0618 kJ/(mol K), the slope of the heat capacity at 0 % (Laliberte 2009)
        double molesPerKilogram = percent * 10 / 39.997, left = Naoh(0).HeatReleased() - Naoh(percent).HeatReleased() - (0.0618 * 5);
        return ((1 - (percent / 100)) * 104.8) + (molesPerKilogram * left) + (Naoh(percent).HeatCapacity(Math.Min(60, (25 + celsius) / 2)) * (celsius - 25));
    }
}
