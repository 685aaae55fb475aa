namespace Saponify.PublishedValues;

/// <summary>
/// What a milk brings. Source: USDA National Nutrient Database for Standard Reference, release 28 (2015), by NDB number, g per 100 g.
/// </summary>
public class UsdaMilkTests
{
    [Theory]
    [InlineData("milk-cow-whole", 88.13, 3.27)] // NDB 01211
    [InlineData("milk-goat", 87.03, 4.14)] // NDB 01106
    [InlineData("heavy-cream", 57.81, 36.08)] // NDB 01053
    [InlineData("yogurt-whole", 87.90, 3.25)] // NDB 01116
    [InlineData("coconut-milk-canned", 72.88, (18.4 + 21.33) / 2)] // NDB 12118; for the fat also Ciqual 2020, food 18041: the middle of the two
    public void Contents_WaterAndFat_AreThoseOfTheRelease(string id, double water, double fat)
    {
        Liquid liquid = Pantry.Reference.Liquid(id);
        Assert.Contains("usda-sr28", liquid.Sources);
        Given.Near(water, liquid.Contents.Water.Percent, 1e-9);
        Given.Near(fat, liquid.Contents.Fat.Percent, 1e-9);
    }

    /// <summary>
    /// Pinned: the sugar is never the one of the release. In milk and cream total sugars (5.05, 4.45, 2.92) were analysed apart and pass
    /// 100 % together with the rest, so sugar gives way: carbohydrate by difference (4.78, 4.45, 2.74) less the acid (0.15, 0.15, 0.10) is left.
    /// Yogurt: 4.66 is carbohydrate by difference and holds the acid, so the analysed 2.65 of Anses, Ciqual 2020, food 19593, is used.
    /// Canned coconut milk: the release has no sugar (carbohydrate 2.81); 2.1 is that of Ciqual 2020, food 18041.
    /// </summary>
    [Theory]
    [InlineData("milk-cow-whole", 5.05, 4.78 - 0.15)]
    [InlineData("milk-goat", 4.45, 4.45 - 0.15)]
    [InlineData("heavy-cream", 2.92, 2.74 - 0.10)]
    [InlineData("yogurt-whole", 4.66, 2.65)]
    [InlineData("coconut-milk-canned", 2.81, 2.1)]
    public void Contents_Sugar_IsBelowTheReleaseForTheReasonGiven(string id, double release, double used)
    {
        double sugar = Pantry.Reference.Liquid(id).Contents.Sugar.Percent;
        Given.Near(used, sugar, 1e-6);
        Assert.True(sugar < release);
    }

    /// <summary>
    /// NaOH for the fat of 100 g: fat of the release times the range of the saponification value. Butterfat 220 to 233 (Mahin & Carr, Quantitative
    /// Agricultural Analysis, 1923, Table XX, p. 226); coconut oil 248 to 265 (CXS 210-1999, Table 2); goat milk fat 222 to 240 (memory, no page seen).
    /// </summary>
    [Theory]
    [InlineData("milk-cow-whole", 3.27, 220, 233)]
    [InlineData("milk-goat", 4.14, 222, 240)]
    [InlineData("heavy-cream", 36.08, 220, 233)]
    [InlineData("yogurt-whole", 3.25, 220, 233)]
    [InlineData("coconut-milk-canned", (18.4 + 21.33) / 2, 248, 265)] // the middle of USDA SR28 and Ciqual 2020
    public void SodiumHydroxide_ForTheFatOfAHundredGrams_LiesInThePublishedRange(string id, double fat, double low, double high)
    {
        Liquid liquid = Pantry.Reference.Liquid(id);
        double taken = Uptake(liquid, LyeTaker.FatInOther);
        Assert.InRange(taken, fat * low * Given.NaohPerKoh / 1000, fat * high * Given.NaohPerKoh / 1000);
        // and is exactly that of the fat named for the liquid
        Given.Near(fat * liquid.Contents.FatKind!.Saponification!.Value.GramsNaohPerGram, taken, 1e-9);
    }

    /// <summary>
    /// Organic acid of plain yogurt 0.98 g per 100 g (Anses, Ciqual 2020, food 19593), as lactic acid 0.98 x 39.997/90.078 = 0.44 g of NaOH: nearly
    /// as much as its fat takes. Fresh milk, 0.15 % (E. R. Ling, Textbook of Dairy Chemistry, 1934, as quoted): 0.07 g.
    /// </summary>
    [Theory]
    [InlineData("yogurt-whole", 0.44)]
    [InlineData("milk-cow-whole", 0.07)]
    public void SodiumHydroxide_ForTheAcidOfAHundredGrams_IsThatOfLacticAcid(string id, double expected) =>
        Given.Near(expected, Uptake(Pantry.Reference.Liquid(id), LyeTaker.Acid), 0.005);

    private static double Uptake(Liquid liquid, LyeTaker taker)
    {
        Formula formula = Given.Recipe(Given.PureFor(superfatPercent: 5), Given.FatOf(200).Weighing(Mass.FromGrams(1000)));
        BatchPlan plan = (formula with { Liquids = formula.Liquids.HoldingBack(liquid.Weighing(Mass.FromGrams(100))) }).Plan();
        return Assert.Single(plan.LyeUptake, line => line.Taker == taker).AsAlkali.Grams;
    }
}
