namespace Saponify.PublishedValues;

/// <summary>What makers know from practice. No source: orders of size and directions, not figures.</summary>
public class CommonPracticeTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    [InlineData(10)]
    public void SodiumHydroxide_ForLardCoconutAndOlive_IsThirteenToFifteenParts(double superfatPercent) =>
        Assert.InRange(Bar(superfatPercent, LiquidPlan.LyeConcentration(Ratio.FromPercent(30))).Balance().AlkaliAsWeighed.Grams, 13, 15);

    /// <summary>A lye of 25 to 33 % is usual: both ends must lie in the window that the plan offers, and dissolve.</summary>
    [Theory]
    [InlineData(25)]
    [InlineData(28)]
    [InlineData(33)]
    public void LiquidWindow_OfLardCoconutAndOlive_HoldsTheUsualLye(double concentrationPercent)
    {
        BatchPlan plan = Bar(5, LiquidPlan.LyeConcentration(Ratio.FromPercent(concentrationPercent))).Plan();
        double liquid = plan.LyeLiquid!.Mass.Grams;
        Assert.InRange(liquid, plan.LiquidWindow.At40Percent!.Value.Grams, plan.LiquidWindow.At25Percent!.Value.Grams + 1e-9);
        Assert.True(liquid > 2 * plan.LiquidWindow.LeastToDissolve!.Value.Grams);
        // two to three parts of water to one of alkali
        Assert.InRange(liquid / plan.Balance.PureAlkali.Grams, 2, 3 + 1e-9);
    }

    /// <summary>Cream with a third of fat, 16.5 and 33 g per 100 g of fats held back out of the same water: with the same lye the superfat rises by several points.</summary>
    [Theory]
    [InlineData("heavy-cream")]
    [InlineData("cream-light-whipping")]
    public void Superfat_WithCreamForPartOfTheWater_RisesBySeveralPoints(string id)
    {
        Liquid cream = Pantry.Reference.Liquid(id);
        Assert.InRange(cream.Contents.Fat.Percent, 30, 37);
        Formula bar = Bar(5, LiquidPlan.TotalWater(Mass.FromGrams(33)));
        Formula weighed = bar with { Alkali = AlkaliPlan.Weighed([.. bar.Plan().Alkalis]) };
        double water = Superfat(weighed);
        double half = Superfat(With(weighed, cream, grams: 16.5));
        double all = Superfat(With(weighed, cream, grams: 33));
        Given.Near(5, water, 1e-6);
        Assert.InRange(half - water, 3, 8);
        Assert.InRange(all - half, 3, 8);
    }

    /// <summary>If the cream is counted, 5 % of all fat means more lye than the weighed fats take up; the plan says that the bar is safe only by the cream's fat.</summary>
    [Fact]
    public void Plan_ForASuperfatOfAllFatWithMuchCream_SaysThatTheFatsAloneAreOverrun()
    {
        BatchPlan water = Bar(5, LiquidPlan.TotalWater(Mass.FromGrams(33))).Plan();
        BatchPlan cream = With(Bar(5, LiquidPlan.TotalWater(Mass.FromGrams(33))), Pantry.Reference.Liquid("heavy-cream"), grams: 33).Plan();
        Assert.True(cream.Balance.AlkaliAsWeighed.Grams > water.Balance.AlkaliAsWeighed.Grams + 1);
        Given.Near(5, cream.Balance.SuperfatOfAllFat!.Value.Percent, 1e-9);
        Assert.True(cream.Balance.SuperfatOfListedFats!.Value.Percent < 0);
        Assert.True(cream.IsSafeOnlyByUnlistedFat);
        Assert.False(water.IsSafeOnlyByUnlistedFat);
    }

    private static Formula Bar(double superfatPercent, LiquidPlan liquids) => new("Lard, coconut, olive")
    {
        Fats = Given.LardCoconutOlive(grams: 100),
        Alkali = Given.PureFor(superfatPercent),
        Liquids = liquids,
    };

    private static Formula With(Formula formula, Liquid liquid, double grams) =>
        formula with { Liquids = formula.Liquids.HoldingBack(liquid.Weighing(Mass.FromGrams(grams))) };

    private static double Superfat(Formula formula) => formula.Balance().SuperfatOfAllFat!.Value.Percent;
}
