namespace Saponify.PublishedValues;

/// <summary>Exercises that ask how much alkali a fat needs, or what is left when there is too little.</summary>
public class LyeMassTests
{
    /// <summary>Worked out apart from the library with NaOH/KOH = 0.71289, which is 8e-6 below ours: 1000 g of fat, saponification value 190, one decimal.</summary>
    [Theory]
    [InlineData(0, 135.4)]
    [InlineData(5, 128.7)]
    public void SodiumHydroxide_ForAKilogramOfFat_IsTheGivenMass(double superfatPercent, double expected)
    {
        BatchPlan plan = Given.Recipe(Given.PureFor(superfatPercent), Given.FatOf(190).Weighing(Mass.FromKilograms(1))).Plan();
        Given.Near(expected, Assert.Single(plan.Alkalis).Mass.Grams, 0.05 + (8e-6 * expected));
    }

    /// <summary>
    /// Worked out apart from the library, 885.45 and 39.997 g/mol: 1000 g of triolein meet 120.0 g of NaOH. NaOH is short (135.5 g would
    /// be needed), 11.4 % of the fat stays, 913.4 g of sodium oleate form. One decimal each.
    /// </summary>
    [Fact]
    public void Superfat_OfTrioleinWithTooLittleAlkali_IsWhatStaysUnsaponified()
    {
        FatPortion triolein = Given.Tri("C18:1").Weighing(Mass.FromKilograms(1));
        LyeBalance balance = Given.Recipe(AlkaliPlan.Weighed(Given.PureSodiumHydroxide.Weighing(Mass.FromGrams(120.0))), triolein).Balance();
        Assert.True(balance.CanBeWeighed);
        Given.Near(11.4, balance.SuperfatOfAllFat!.Value.Percent, 0.05);
        Given.Near(114.5, 1000 * balance.SuperfatOfAllFat.Value.DecimalFractions, 0.05);
        Given.Near(913.4, balance.HydroxideSupplied.Moles * FattyAcid.FromShorthand("C18:1").SoapMolarMass(AlkaliKind.SodiumHydroxide).GramsPerMole, 0.05);
        Given.Near(135.5, Given.Recipe(Given.PureFor(superfatPercent: 0), triolein).Balance().AlkaliAsWeighed.Grams, 0.05);
    }

    /// <summary>
    /// Source: Timberlake, Chemistry: An Introduction to General, Organic, and Biological Chemistry, 13th ed., ch. 15, problem 89c: mL of
    /// 0.500 M NaOH for 10.0 g of glyceryl tristearate. The page shows the method only; 67.3 mL was worked out with 891.5 g/mol.
    /// </summary>
    [Fact]
    public void SodiumHydroxide_ForTristearin_IsThreeMolesForEachMole()
    {
        double moles = Given.Recipe(Given.PureFor(superfatPercent: 0), Given.Tri("C18:0").Weighing(Mass.FromGrams(10.0))).Balance().HydroxideSupplied.Moles;
        Given.Near(67.3, 1000 * moles / 0.500, 0.05);
    }

    /// <summary>
    /// Source: question carried by a study site, textbook not named: olive oil of saponification value 190. Answers worked out with KOH 56.11
    /// (9e-5 above ours): 3.386e-3 mol KOH per gram, mean molar mass 886 g/mol.
    /// </summary>
    [Fact]
    public void Demand_OfOneGramOfOliveOil_GivesItsMeanMolarMass()
    {
        double moles = Given.DemandOf(Given.FatOf(190).Weighing(Mass.FromGrams(1)));
        Given.Near(3.386e-3, moles, 0.5e-6 + (9e-5 * 3.386e-3));
        Given.Near(886, 3 / moles, 0.5);
    }

    /// <summary>
    /// Source: Vietnamese drills with published solutions: a fat of 89 % tristearin with acid value 7 has ester value 168 and saponification
    /// value 175; M 890 and KOH 56 there, both 0.2 % below, which cancel; whole numbers. The free acid is put in as 3.549 g of stearic acid (197.22 mg/g).
    /// </summary>
    [Fact]
    public void Demand_OfTristearinWithFreeAcid_AddsEsterAndAcidValue()
    {
        FatPortion ester = Given.Tri("C18:0").Weighing(Mass.FromGrams(89));
        FatPortion acid = Given.FreeAcid("C18:0").Weighing(Mass.FromGrams(3.549));
        Given.Near(168, 10 * Given.DemandOf(ester) * Given.Koh, 0.5);
        Given.Near(7, 10 * Given.DemandOf(acid) * Given.Koh, 0.001);
        Given.Near(175, 10 * Given.DemandOf(ester, acid) * Given.Koh, 0.5);
    }

    /// <summary>
    /// Source: Simmons & Appleton, The Handbook of Soap Manufacture (1908), p. 47 with Appendix C, p. 149: cold-process coconut soap, lye of
    /// 38 degrees Be (32.63 % NaOH) at half the weight of the oil. That leaves about 10 to 12 % of an oil of 255 to 260 unsaponified; whole percents.
    /// </summary>
    [Theory]
    [InlineData(255, 10)]
    [InlineData(260, 12)]
    public void Superfat_OfTheColdProcessCoconutSoapOf1908_IsTenToTwelvePercent(double saponification, double expected)
    {
        Alkali lye = Alkali.SodiumHydroxideSolution(Ratio.FromPercent(32.63));
        LyeBalance balance = Given.Recipe(AlkaliPlan.Weighed(lye.Weighing(Mass.FromGrams(50))), Given.FatOf(saponification).Weighing(Mass.FromGrams(100))).Balance();
        Given.Near(16.3, balance.PureAlkali.Grams, 0.05);
        Given.Near(expected, balance.SuperfatOfAllFat!.Value.Percent, 0.5);
    }

    /// <summary>The same soap with the oil of the pantry: the value used (252.4) is lower, and so is the superfat, but it stays a superfatted soap.</summary>
    [Fact]
    public void Superfat_OfTheColdProcessCoconutSoapOf1908WithThePantrysOil_IsALittleLower()
    {
        AlkaliPlan half = AlkaliPlan.Weighed(Alkali.SodiumHydroxideSolution(Ratio.FromPercent(32.63)).Weighing(Mass.FromGrams(50)));
        double superfat = Given.Recipe(half, Pantry.Reference.Fat("coconut-oil").Weighing(Mass.FromGrams(100))).Balance().SuperfatOfAllFat!.Value.Percent;
        Assert.InRange(superfat, 8.5, 10.5);
    }
}
