using Saponify.Tests.Formulas;

namespace Saponify.Tests.Planning;

/// <summary>What stands in the way of a batch: named with its place, and then nothing is offered to weigh.</summary>
public class ObstacleTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    private static Formula Olive(double grams = 500) => FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(grams)));

    private static void Stops(Formula formula, string path, string says)
    {
        BatchPlan plan = formula.Plan();
        Obstacle obstacle = Assert.Single(plan.Obstacles);
        Assert.Equal(path, obstacle.Path.ToString());
        Assert.Contains(says, obstacle.Reason, StringComparison.Ordinal);
        Assert.Empty(plan.Alkalis);
        Assert.Null(plan.LyeLiquid);
        Assert.False(formula.Balance().CanBeWeighed);
        Assert.Contains("can't be weighed", plan.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void NoFat() => Stops(FormulaTests.Plain() with { Liquids = LiquidPlan.WeighedLyeLiquid(Liquid.Water.Weighing(Mass.FromGrams(100))) }, "fats", "No fat");

    [Fact]
    public void FatWithoutUsableValue() =>
        Stops(FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)), s_pantry.Fat("shea-butter").Weighing(Mass.FromGrams(50))), "fats[shea-butter]", "lot's own value");

    [Fact]
    public void MoreAcidThanAlkali() => Stops(Olive() with
    {
        Alkali = AlkaliPlan.Weighed(Alkali.SodiumHydroxide(Ratio.FromPercent(98)).Weighing(Mass.FromGrams(10))),
        Additives = [s_pantry.Additive("citric-acid-monohydrate").Weighing(Mass.FromGrams(50))],
    }, "alkali", "acids take up");

    [Fact]
    public void HeldBackLiquidsThatLeaveNoLyeWater() =>
        Stops(Olive() with { Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(35)).HoldingBack(s_pantry.Liquid("milk-goat").Weighing(Mass.FromGrams(400))) }, "liquids", "more water than the water rule asks for");

    [Fact]
    public void NoWaterAtAll() => Stops(Olive() with { Liquids = LiquidPlan.TotalWater(Mass.Zero) }, "liquids", "no water to dissolve");

    [Fact]
    public void LiquidWhoseFatEatsUpItsWater() =>
        Stops(Olive() with { Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(5)).DissolvingIn(s_pantry.Liquid("heavy-cream")) }, "liquids.lyeLiquid", "can't meet the water rule");

    [Fact]
    public void MoreThanAThousandTonnes() => Stops(Olive(9.9e8), "", "thousand tonnes");

    [Fact]
    public void SeveralAtOnce_AreAllNamed()
    {
        Formula formula = FormulaTests.Plain(s_pantry.Fat("shea-butter").Weighing(Mass.FromGrams(50)), s_pantry.Fat("neem-oil").Weighing(Mass.FromGrams(50)));
        Assert.Equal(["fats[shea-butter]", "fats[neem-oil]", "fats"], formula.Plan().Obstacles.Select(o => o.Path.ToString()).Take(3));
    }
}
