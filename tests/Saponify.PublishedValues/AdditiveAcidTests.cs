namespace Saponify.PublishedValues;

/// <summary>
/// Acids that take up lye: molar masses by molecular formula with the abridged atomic weights of CIAAW 2021, and the NaOH that a gram of
/// the additive takes, by stoichiometry (39.997 g for each proton).
/// </summary>
public class AdditiveAcidTests
{
    [Theory]
    [InlineData("acetic-acid-glacial", 2, 4, 2, 60.052, 1)]
    [InlineData("lactic-acid-80", 3, 6, 3, 90.078, 1)]
    [InlineData("citric-acid-anhydrous", 6, 8, 7, 192.123, 3)]
    [InlineData("citric-acid-monohydrate", 6, 8, 7, 192.123, 3)]
    [InlineData("malic-acid", 4, 6, 5, 134.087, 2)]
    [InlineData("tartaric-acid", 4, 6, 6, 150.086, 2)]
    [InlineData("salicylic-acid", 7, 6, 3, 138.122, 1)]
    [InlineData("gluconic-acid-50", 6, 12, 7, 196.155, 1)]
    [InlineData("glucono-delta-lactone", 6, 10, 6, 178.140, 1)]
    [InlineData("ascorbic-acid", 6, 8, 6, 176.124, 1)]
    public void Acid_HasTheMolarMassOfItsFormulaAndItsCarboxylProtons(string additive, int carbon, int hydrogen, int oxygen, double printed, double protons)
    {
        Acid acid = Pantry.Reference.Additive(additive).Contents.AcidKind!;
        Given.Near((12.011 * carbon) + (1.0080 * hydrogen) + (15.999 * oxygen), acid.MolarMass.GramsPerMole, 0.0005);
        Given.Near(printed, acid.MolarMass.GramsPerMole, 0.0005);
        Assert.Equal(protons, acid.Protons);
    }

    /// <summary>Worked out by hand, three decimals: 3 x 39.997/192.123; 3 x 39.997/210.138; 0.80 x 39.997/90.078; 2 x 39.997/134.087; 2 x 39.997/150.086; 39.997/60.052.</summary>
    [Theory]
    [InlineData("citric-acid-anhydrous", 0.625)]
    [InlineData("citric-acid-monohydrate", 0.571)]
    [InlineData("lactic-acid-80", 0.355)]
    [InlineData("malic-acid", 0.597)]
    [InlineData("tartaric-acid", 0.533)]
    [InlineData("acetic-acid-glacial", 0.666)]
    public void SodiumHydroxide_ForAHundredGramsOfAcid_IsThatOfItsProtons(string additive, double perGram)
    {
        BatchPlan plan = PlanWith(additive);
        LyeUptake line = Assert.Single(plan.LyeUptake, l => l.Taker == LyeTaker.Acid);
        Given.Near(100 * perGram, line.AsAlkali.Grams, 0.05);
        // the acid is paid for with alkali on top of that for the fats
        double without = Given.Recipe(Given.PureFor(superfatPercent: 5), Given.FatOf(200).Weighing(Mass.FromGrams(1000))).Balance().AlkaliAsWeighed.Grams;
        Given.Near(100 * perGram, plan.Balance.AlkaliAsWeighed.Grams - without, 0.05);
    }

    /// <summary>
    /// Baking soda: 39.997/84.006 = 0.476 g of NaOH per g if it all turns to carbonate. That is in doubt, so it is not counted; it is listed.
    /// </summary>
    [Fact]
    public void SodiumHydroxide_ForBakingSoda_IsListedAndNotCounted()
    {
        BatchPlan plan = PlanWith("sodium-bicarbonate");
        Assert.DoesNotContain(plan.LyeUptake, l => l.Taker == LyeTaker.Acid);
        Given.Near(47.6, Assert.Single(plan.PossibleUptake).AtMost!.Value.Grams, 0.05);
    }

    private static BatchPlan PlanWith(string additive) => (Given.Recipe(Given.PureFor(superfatPercent: 5), Given.FatOf(200).Weighing(Mass.FromGrams(1000))) with
    {
        Additives = [Pantry.Reference.Additive(additive).Weighing(Mass.FromGrams(100))],
    }).Plan();
}
