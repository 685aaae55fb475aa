namespace Saponify.PublishedValues;

/// <summary>Water of the lye, with and without milk, and the least that dissolves the alkali.</summary>
public class WaterBalanceTests
{
    private static readonly Liquid s_milk = new("milk", "Milk of the exercise", new Contents { Water = Ratio.FromPercent(87.5) });

    /// <summary>Exercise: 128.7 g of NaOH as a 33 % lye take 261.3 g of water; worked out apart from the library, one decimal.</summary>
    [Fact]
    public void LyeLiquid_WithoutMilk_IsAllTheWater()
    {
        BatchPlan plan = PlanFor(LiquidPlan.LyeConcentration(Ratio.FromPercent(33)));
        Given.Near(261.3, plan.LyeLiquid!.Mass.Grams, 0.05);
    }

    /// <summary>The same exercise: 100 g of it is milk of 87.5 % water, so 173.8 g of plain water keep the 33 %.</summary>
    [Fact]
    public void LyeLiquid_WithMilkHeldBack_MakesRoomForItsWaterOnly()
    {
        BatchPlan plan = PlanFor(LiquidPlan.LyeConcentration(Ratio.FromPercent(33)).HoldingBack(s_milk.Weighing(Mass.FromGrams(100))));
        Given.Near(173.8, plan.LyeLiquid!.Mass.Grams, 0.05);
        Given.Near(261.3, plan.Balance.AllWater.Grams, 0.05);
        Given.Near(33, plan.Balance.LyeConcentrationOfAllWater!.Value.Percent, 1e-9);
    }

    /// <summary>The same lye with the alkali dissolved in the milk itself: 261.3/0.875 = 298.6 g of milk bring the water.</summary>
    [Fact]
    public void LyeLiquid_OfMilkAlone_BringsTheSameWater()
    {
        BatchPlan plan = PlanFor(LiquidPlan.LyeConcentration(Ratio.FromPercent(33)).DissolvingIn(s_milk));
        Given.Near(298.6, plan.LyeLiquid!.Mass.Grams, 0.1);
        Given.Near(261.3, plan.Balance.AllWater.Grams, 0.05);
    }

    /// <summary>
    /// Source: The Great Soviet Encyclopedia, 3rd ed., articles on sodium and potassium hydroxide: at 20 degrees Celsius a saturated solution
    /// holds 52.2 % NaOH, and 112 g of KOH dissolve in 100 g of water. The library asks for that water, rounded up by less than 1 %.
    /// </summary>
    [Theory]
    [InlineData(false, 47.8 / 52.2)]
    [InlineData(true, 100.0 / 112)]
    public void LeastToDissolve_OfPureAlkali_IsThePublishedSolubilityRoundedUp(bool potassium, double waterPerGram)
    {
        Alkali alkali = potassium ? Given.PurePotassiumHydroxide : Given.PureSodiumHydroxide;
        BatchPlan plan = Given.Recipe(AlkaliPlan.Weighed(alkali.Weighing(Mass.FromGrams(100))), Given.FatOf(200).Weighing(Mass.FromGrams(1000))).Plan();
        Assert.InRange(plan.LiquidWindow.LeastToDissolve!.Value.Grams, 100 * waterPerGram, 101 * waterPerGram);
    }

    private static BatchPlan PlanFor(LiquidPlan liquids) =>
        (Given.Recipe(AlkaliPlan.Weighed(Given.PureSodiumHydroxide.Weighing(Mass.FromGrams(128.7))), Given.FatOf(190).Weighing(Mass.FromGrams(1000))) with { Liquids = liquids }).Plan();
}
