namespace Saponify.PublishedValues;

/// <summary>
/// Exercise: 500 g of fat, saponification value 200, superfat 3 %, 60 % NaOH and 40 % KOH of 90 %. The demand is 100 g of KOH, of which
/// 97.0 g are given. An exercise must say what the shares are shares of; both readings are worked out apart from the library.
/// </summary>
public class TwoAlkalisTests
{
    private static readonly Alkali s_potash = Alkali.PotassiumHydroxide(Ratio.FromPercent(90));

    /// <summary>Of the equivalents: 0.6 x 97.0 x 0.71289 = 41.5 g, 0.4 x 97.0/0.90 = 43.1 g; one decimal.</summary>
    [Fact]
    public void Plan_SharesOfHydroxide_WeighsByMole()
    {
        BatchPlan plan = PlanFor(Given.PureSodiumHydroxide.ShareOfHydroxide(Ratio.FromPercent(60)), s_potash.ShareOfHydroxide(Ratio.FromPercent(40)));
        Given.Near(41.5, plan.Alkalis[0].Mass.Grams, 0.05);
        Given.Near(43.1, plan.Alkalis[1].Mass.Grams, 0.05);
    }

    /// <summary>
    /// Of the mass as weighed: W (0.6/39.997 + 0.4 x 0.90/56.105) = 97.0/56.105 mol gives W = 80.7 g, of which 48.4 g are NaOH and 32.3 g
    /// are KOH flakes; one decimal.
    /// </summary>
    [Fact]
    public void Plan_SharesOfMass_WeighsByMassWithTheImpurity()
    {
        BatchPlan plan = PlanFor(Given.PureSodiumHydroxide.ShareOfMass(Ratio.FromPercent(60)), s_potash.ShareOfMass(Ratio.FromPercent(40)));
        Given.Near(48.4, plan.Alkalis[0].Mass.Grams, 0.05);
        Given.Near(32.3, plan.Alkalis[1].Mass.Grams, 0.05);
        Given.Near(80.7, plan.Balance.AlkaliAsWeighed.Grams, 0.05);
    }

    /// <summary>Whatever the reading, 97.0 g of KOH or its equivalent are supplied: 1.7289 mol.</summary>
    [Fact]
    public void Plan_EitherReading_SuppliesTheSameHydroxide()
    {
        BatchPlan byMole = PlanFor(Given.PureSodiumHydroxide.ShareOfHydroxide(Ratio.FromPercent(60)), s_potash.ShareOfHydroxide(Ratio.FromPercent(40)));
        BatchPlan byMass = PlanFor(Given.PureSodiumHydroxide.ShareOfMass(Ratio.FromPercent(60)), s_potash.ShareOfMass(Ratio.FromPercent(40)));
        Given.Near(1.7289, byMole.Balance.HydroxideSupplied.Moles, 0.00005);
        Given.Near(1.7289, byMass.Balance.HydroxideSupplied.Moles, 0.00005);
        // a reader who mixes the two up weighs 7 g too much or too little of the NaOH
        Assert.True(byMass.Alkalis[0].Mass.Grams - byMole.Alkalis[0].Mass.Grams > 6.5);
    }

    private static BatchPlan PlanFor(params AlkaliShare[] alkalis) =>
        Given.Recipe(AlkaliPlan.ForSuperfat(Ratio.FromPercent(3), alkalis), Given.FatOf(200).Weighing(Mass.FromGrams(500))).Plan();
}
