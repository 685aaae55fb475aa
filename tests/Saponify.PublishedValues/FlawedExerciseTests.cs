namespace Saponify.PublishedValues;

/// <summary>
/// Printed exercises whose answer no fat can have. The library takes a saponification value up to 1000 mg/g; what lies above is
/// refused, and what lies below that but above every glyceride is told apart by the values of the simple triglycerides.
/// </summary>
public class FlawedExerciseTests
{
    /// <summary>
    /// Source: Romanian pupils' question page: 20 g of fat, 33.6 g of KOH, 0.3 mol left; printed saponification value 840. Tributyrin, the
    /// highest of the food fats, has 556.7 and even pure butyric acid only 636.8.
    /// </summary>
    [Fact]
    public void SaponificationValue_Of840_IsAboveEveryGlycerideAndAcid()
    {
        SaponificationValue printed = SaponificationValue.FromMilligramsKohPerGram(840);
        Assert.All(FattyAcid.All, acid => Assert.True(printed > acid.SaponificationOfTriglyceride && printed > acid.SaponificationOfAcid));
    }

    /// <summary>True state of today: the plan takes the impossible 840 without an obstacle. The check belongs to the analyzer; when the plan says something, change this test.</summary>
    [Fact]
    public void Plan_OfAFatOf840_RaisesNoObstacleYet()
    {
        BatchPlan plan = Given.Recipe(Given.PureFor(superfatPercent: 0), Given.FatOf(840).Weighing(Mass.FromGrams(20))).Plan();
        Assert.Empty(plan.Obstacles);
        // the titration itself: 0.3 mol for 20 g, with KOH 56
        Given.Near(0.3, plan.Balance.FatDemand.Moles * Given.Koh / 56, 1e-9);
    }

    /// <summary>Source: Vietnamese drill with published solution: 89 g of fat react with exactly 42 g of NaOH. That is 661 mg KOH per g, more than butyric acid takes up.</summary>
    [Fact]
    public void Superfat_Of89GramsOfTheLightestFatWith42GramsOfSodiumHydroxide_IsLyeHeavy()
    {
        LyeBalance balance = Given.Recipe(
            AlkaliPlan.Weighed(Given.PureSodiumHydroxide.Weighing(Mass.FromGrams(42))), Given.Tri("C4:0").Weighing(Mass.FromGrams(89))).Balance();
        // 42/39.997 mol against 3 x 89/302.367 mol
        Given.Near(-18.9, balance.SuperfatOfAllFat!.Value.Percent, 0.05);
        Given.Near(661, balance.HydroxideSupplied.Moles * 56_000 / 89, 1);
    }

    /// <summary>
    /// Source: Vietnamese drill with published solution: 13.44 kg of fat with acid value 7 and 120.064 kg of 15 % NaOH, 0.45024 kmol
    /// (NaOH 40; 0.0075 % above ours); printed 13.75584 kg of glycerol, more than there is fat. The alkali is right, the fat is not (134.4 kg fits).
    /// </summary>
    [Fact]
    public void Alkali_OfADrillWithMoreGlycerolThanFat_NeedsAValueThatIsRefused()
    {
        AlkaliPlan lye = AlkaliPlan.Weighed(Alkali.SodiumHydroxideSolution(Ratio.FromPercent(15)).Weighing(Mass.FromKilograms(120.064)));
        LyeBalance balance = Given.Recipe(lye, Given.FatOf(188).Weighing(Mass.FromKilograms(134.4))).Balance();
        Given.Near(450.24, balance.HydroxideSupplied.Moles, 450.24 * 7.6e-5);
        Given.Near(0, balance.SuperfatOfAllFat!.Value.Percent, 0.1);

        double needed = balance.HydroxideSupplied.Moles * 56_105 / 13_440;
        Assert.Throws<ArgumentOutOfRangeException>(() => SaponificationValue.FromMilligramsKohPerGram(needed));
    }

    /// <summary>Source: Romanian pupils' question page: printed saponification value 143.18, below that of every simple triglyceride up to C24.</summary>
    [Fact]
    public void SaponificationValue_Of143_IsBelowEveryTriglyceride() =>
        Assert.All(FattyAcid.All, acid => Assert.True(SaponificationValue.FromMilligramsKohPerGram(143.18) < acid.SaponificationOfTriglyceride));
}
