namespace Saponify.PublishedValues;

/// <summary>
/// How far a milk moves the superfat: 14 g of NaOH for 100 g of fats that would take 14.74 g (5.0 % superfat by the fats alone), and
/// 33 g of the liquid held back. Compositions: USDA SR28.
/// </summary>
/// <remarks>
/// With D the demand of the fats, d that of the fat in the liquid, A the alkali less what acids take: the superfat of all fat less that of
/// the listed fats is A/D - A/(D + d) = A/D x d/(D + d). As a share of the lye d/A is 1.2, 9 and 14 %; as points of superfat it is less.
/// </remarks>
public class MilkSuperfatTests
{
    private const double Saponification = 206.75;
    private const double Demand = 100 * Saponification / 1000 * Given.NaohPerKoh;

    /// <summary>Brackets: the published range of the fat's saponification value, and acids of the liquid that take from nothing to 0.15 g of NaOH. What the library gives stands beside each row.</summary>
    [Theory]
    [InlineData("milk-cow-whole", 3.27, 220, 233)] // 1.11
    [InlineData("milk-goat", 4.14, 222, 240)] // 1.43
    [InlineData("yogurt-whole", 3.25, 220, 233)] // 1.10
    [InlineData("coconut-milk-canned", (18.4 + 21.33) / 2, 248, 265)] // 7.04; the middle of USDA SR28 and Ciqual 2020, food 18041
    [InlineData("heavy-cream", 36.08, 220, 233)] // 10.95
    public void Superfat_WithAndWithoutTheFatOfTheLiquid_DiffersAsItsDemandSays(string id, double fatPercent, double low, double high)
    {
        double shift = ShiftInPoints(id);
        Assert.InRange(shift, 100 * Shift(14 - 0.15, fatPercent, low), 100 * Shift(14, fatPercent, high));
    }

    /// <summary>The order of size a maker should know: milk about one point, canned coconut milk seven to eight, heavy cream about eleven.</summary>
    [Theory]
    [InlineData("milk-cow-whole", 1.0, 1.5)]
    [InlineData("milk-goat", 1.0, 1.5)]
    [InlineData("coconut-milk-canned", 7, 8)]
    [InlineData("heavy-cream", 10.5, 11.5)]
    public void Superfat_IgnoringTheLiquidsFat_IsOffByPoints(string id, double least, double most) =>
        Assert.InRange(ShiftInPoints(id), least, most);

    [Fact]
    public void Superfat_OfTheFatsAlone_IsTheFivePercentOfTheBatch()
    {
        LyeBalance water = BalanceWith(Liquid.Water);
        Given.Near(5.0, water.SuperfatOfListedFats!.Value.Percent, 0.05);
        Assert.Equal(water.SuperfatOfListedFats, water.SuperfatOfAllFat);
    }

    private static double Shift(double alkali, double fatPercent, double saponification)
    {
        double inLiquid = 33 * fatPercent / 100 * saponification / 1000 * Given.NaohPerKoh;
        return alkali / Demand * inLiquid / (Demand + inLiquid);
    }

    private static double ShiftInPoints(string id)
    {
        LyeBalance balance = BalanceWith(Pantry.Reference.Liquid(id));
        return balance.SuperfatOfAllFat!.Value.Percent - balance.SuperfatOfListedFats!.Value.Percent;
    }

    private static LyeBalance BalanceWith(Liquid liquid)
    {
        Formula formula = Given.Recipe(AlkaliPlan.Weighed(Given.PureSodiumHydroxide.Weighing(Mass.FromGrams(14))), Given.FatOf(Saponification).Weighing(Mass.FromGrams(100)));
        return (formula with { Liquids = LiquidPlan.TotalWater(Mass.FromGrams(45)).HoldingBack(liquid.Weighing(Mass.FromGrams(33))) }).Balance();
    }
}
