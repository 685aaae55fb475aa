using Saponify.Analysis;

namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    private static Formula Holding(Formula formula, Liquid liquid, double grams) => formula with { Liquids = formula.Liquids.HoldingBack(liquid.Weighing(Mass.FromGrams(grams))) };

    /// <summary>Olive oil alone has 184 to 196 mg KOH/g (trade-sheet-olive), one value in it as likely as another: lye-heavy below 190 (1 - s), which 5 % are at 184.6, s = 2.842 %.</summary>
    [Fact]
    public void SFY2002_OneFat_ByHand() => Limit("SFY2002", s => Superfat(s_plain with { Fats = [Fat("olive-oil", 700)] }, s), 2.86, 2.82, "highest", 6);

    /// <summary>At the worst of 184 mg KOH/g nothing is left of a superfat of 1 - 184/190 = 3.158 %.</summary>
    [Fact]
    public void SFY2003_OneFat_ByHand()
    {
        Formula olive = s_plain with { Fats = [Fat("olive-oil", 700)] };
        Assert.True(Speaks("SFY2003", Superfat(olive, 3.15)));
        Assert.False(Speaks("SFY2003", Superfat(olive, 3.17)));
        Assert.False(Speaks("SFY2003", Superfat(olive, 2.82)));
        // the option of SFY2002 decides which of the two speaks
        Assert.Equal(["SFY2002"], SpeaksWith("SFY2002", "highest", 0.01, Superfat(olive, 3), "SFY2003"));
        Assert.Equal(["SFY2003"], SpeaksWith("SFY2002", "highest", 5, Superfat(olive, 3), "SFY2003"));
    }

    /// <summary>190 (1 - s) lies above 184 by 0.015 of 12 mg KOH/g at 3.15 %, which is 0.125 %, and by 0.00075 at 3.1575 %, 0.006 %.</summary>
    [Theory]
    [InlineData(3.15, "0.125 %")]
    [InlineData(3.1575, "less than 0.01 %")]
    public void SFY2003_SaysHowProbable(double superfat, string probability) =>
        Assert.EndsWith($"; the probability of a lye-heavy soap is {probability}", Assert.Single(Find("SFY2003", Superfat(s_plain with { Fats = [Fat("olive-oil", 700)] }, superfat))).ToMessage(), StringComparison.Ordinal);

    /// <summary>Fats whose figures scatter too much, and a lot that has a name but no value; a wax without an acid value counts nothing, which is a value.</summary>
    [Theory]
    [InlineData("shea-butter", true)]
    [InlineData("karanja-oil", true)]
    [InlineData("avocado-oil", true)]
    [InlineData("rosin", true)]
    [InlineData("shea-butter-refined", false)]
    [InlineData("jojoba-oil", false)]
    [InlineData("beeswax", false)]
    public void SFY2004_FatsThatNeedTheirLotsValue(string fat, bool speaks)
    {
        Formula With(Fat material) => s_plain with { Fats = [Fat("coconut-oil", 500), material.Weighing(Mass.FromGrams(20))] };
        Assert.Equal(speaks, Speaks("SFY2004", With(s_pantry.Fat(fat))));
        Assert.Equal(speaks, Speaks("SFY2004", With(s_pantry.Fat(fat).WithLot(new() { Name = "L-7", Source = "certificate" }))));
        Assert.False(Speaks("SFY2004", s_plain with { Fats = [Fat("coconut-oil", 500), Lot(fat, 20, 178)] }));
    }

    /// <summary>
    /// With f mol in the cream and a superfat s of all fat, the listed 2 mol are exceeded where (1 - s)(2 + f) is above 2: f above 2 s/(1 - s), 0.08333 mol at 4 %.
    /// Cream of 35 % fat of 200 mg KOH/g holds that in 0.08333 x 56105/(0.35 x 200) = 66.79 g.
    /// </summary>
    [Fact]
    public void SFY2005_FatThatNobodyWeighed_BringsTheSuperfatAboveZero()
    {
        Liquid cream = new("own", "Own cream", new() { Water = Ratio.FromPercent(60), Fat = Ratio.FromPercent(35), FatKind = Taking(1).Fat });
        Formula With(double grams, double superfat = 4) => Holding(Superfat(s_plain with { Fats = [Taking(2)] }, superfat), cream, grams);
        Assert.False(Speaks("SFY2005", With(66.7)));
        Assert.True(Speaks("SFY2005", With(66.9)));
        Assert.Equal(SuperfatBasis.ListedFats, ((SuperfatTarget)Fixed("SFY2005", With(66.9)).Alkali).Basis);
        // at 0 % all of the cream's fat is missing; below 0 nothing is saved
        Assert.True(Speaks("SFY2005", With(1, 0)));
        Assert.False(Speaks("SFY2005", With(1, -0.01)));
        Assert.True(Speaks("SFY2001", With(1, -0.01)));
    }

    [Fact]
    public void SFY2005_WeighedAlkali_IsSaidAtTheAlkali_WithoutAFix()
    {
        Liquid cream = new("own", "Own cream", new() { Water = Ratio.FromPercent(60), Fat = Ratio.FromPercent(35), FatKind = Taking(1).Fat });
        Assert.Empty(Find("SFY2005", Holding(TwoMoles(1.9999), cream, 80)));
        Diagnostic found = Assert.Single(Find("SFY2005", Holding(TwoMoles(2.0001), cream, 80)));
        Assert.Equal(("alkali", 0), (found.Path.ToString(), found.Fixes.Count));
        Assert.Empty(Find("SFY2005", TwoMoles(2.0001)));
    }

    /// <summary>What is meant to be 6 % with 100 % of purity is 1 - 0.94 p with less.</summary>
    [Theory]
    [InlineData("SFY2007", AlkaliKind.PotassiumHydroxide, 85)]
    [InlineData("SFY2008", AlkaliKind.SodiumHydroxide, 97)]
    public void SFY2007_And_SFY2008_BareMinimum_ARange_ACertificate(string id, AlkaliKind kind, double least)
    {
        Formula Of(Purity purity) => s_plain with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), kind == AlkaliKind.SodiumHydroxide ? Alkali.SodiumHydroxide(purity) : Alkali.PotassiumHydroxide(purity)) };
        Ratio low = Ratio.FromPercent(least), all = Ratio.FromPercent(100);
        Diagnostic found = Assert.Single(Find(id, Of(Purity.AtLeast(low))));
        Assert.Equal(100 - (0.94 * least), found.Args.Single(a => a.Name == "superfat").Number, 9);
        Assert.Empty(found.Fixes);
        Assert.True(Speaks(id, Of(Purity.AtLeast(Ratio.FromPercent(99.9)))));
        Assert.False(Speaks(id, Of(Purity.AtLeast(all))), "at least 100 % leaves nothing open");
        Assert.False(Speaks(id, Of(Purity.Between(low, all))));
        Assert.False(Speaks(id, Of(Purity.Certified(low))));
        Assert.False(Speaks(id == "SFY2007" ? "SFY2008" : "SFY2007", Of(Purity.AtLeast(low))));
    }

    [Fact]
    public void SFY2007_EachAlkaliByItself()
    {
        Alkali soda = Alkali.SodiumHydroxide(Ratio.FromPercent(98)), potash = Alkali.PotassiumHydroxide(Purity.AtLeast(Ratio.FromPercent(85)));
        Formula Both(double potashGrams) => s_plain with { Fats = [Taking(2)], Alkali = AlkaliPlan.Weighed(soda.Weighing(Mass.FromGrams(70)), potash.Weighing(Mass.FromGrams(potashGrams))) };
        Assert.Equal("alkali.alkalis[potassium-hydroxide].purity", Assert.Single(Find("SFY2007", Both(5))).Path.ToString());
        Assert.False(Speaks("SFY2008", Both(5)));
        Assert.False(Speaks("SFY2007", Both(0)));
    }

    /// <summary>Reckoned as pure, a superfat x; by its purity p it is 1 - p (1 - x). Whole per cents are met within 0.02 points, and both must be more than 0.4 points apart.</summary>
    [Theory]
    [InlineData(98, 5, true)]
    [InlineData(98, 5.019, true)]
    [InlineData(98, 5.021, false)]
    [InlineData(98, 4.979, false)]
    [InlineData(97.5, 0, true)]
    [InlineData(97.5, -1, false)]
    [InlineData(98, 0, false)]          // 2 % by its purity: as round
    [InlineData(98, 20, true)]
    [InlineData(98, 21, false)]
    [InlineData(99.57, 5, true)]        // (1 - 0.9957) x 95 = 0.41
    [InlineData(99.59, 5, false)]       // 0.39
    public void SFY2010_RoundAsIfPure(double purity, double asPure, bool speaks) =>
        Assert.Equal(speaks, Speaks("SFY2010", TwoMoles(2 * (1 - (asPure / 100)) * purity / 100, purity)));

    /// <summary>A mass is written in steps of 0.01 g: 79.994 g of pure sodium hydroxide for 0 %, 63.995 g for 20 %.</summary>
    [Theory]
    [InlineData(80.00, 97.5, 0)]
    [InlineData(63.99, 98, 20)]
    public void SFY2010_RoundedMasses_AtBothEnds(double grams, double purity, double meant)
    {
        Diagnostic found = Assert.Single(Find("SFY2010", TwoMoles(grams / Soda * purity / 100, purity)));
        Assert.Equal(meant, found.Args.Single(a => a.Name == "pure").Number);
        Assert.Contains(FormattableString.Invariant($"it would be {meant} %"), found.ToMessage(), StringComparison.Ordinal);
    }

    [Fact]
    public void SFY2010_ComputedAlkali_IsDividedAlready() => Assert.False(Speaks("SFY2010", Superfat(s_plain with { Fats = [Taking(2)] }, 6.9)));

    /// <summary>Late fats within a tenth of the superfat: 4.5 to 5.5 % beside 5 %. A superfat of 1 to 20 %.</summary>
    [Theory]
    [InlineData(5, 4.49, false)]
    [InlineData(5, 4.51, true)]
    [InlineData(5, 5.49, true)]
    [InlineData(5, 5.51, false)]
    [InlineData(1, 1, true)]
    [InlineData(0.99, 0.99, false)]
    [InlineData(20, 20, true)]
    [InlineData(20.1, 20.1, false)]
    public void SFY2011_LateFatAsMuchAsTheSuperfat(double superfat, double late, bool speaks)
    {
        Formula formula = Superfat(s_plain with { Fats = [Fat("olive-oil", 1000 - (10 * late)), Fat("castor-oil", 10 * late).AtTrace()] }, superfat);
        Assert.Equal(speaks, Speaks("SFY2011", formula));
        Assert.False(Speaks("SFY2011", formula with { Alkali = AlkaliPlan.Weighed([.. formula.Plan().Alkalis]) }));
    }

    [Fact]
    public void SFY2014_AlkaliOfLessThanAStep()
    {
        Formula With(double potash) => TwoMoles(1.9) with { Alkali = AlkaliPlan.Weighed(Alkali.SodiumHydroxide(Ratio.FromPercent(98)).Weighing(Mass.FromGrams(70)), Alkali.PotassiumHydroxide(Ratio.FromPercent(90)).Weighing(Mass.FromGrams(potash))) };
        Scale kitchen = new(Mass.FromGrams(1)), fine = new(Mass.FromGrams(0.1));
        Assert.Equal("alkali.alkalis[potassium-hydroxide]", Assert.Single(Find("SFY2014", With(0.99), new() { Scale = kitchen })).Path.ToString());
        Assert.Empty(Find("SFY2014", With(1), new() { Scale = kitchen }));
        Assert.Empty(Find("SFY2014", With(0.99), new() { Scale = kitchen, AlkaliScale = fine }));
        Assert.Single(Find("SFY2014", With(0.09), new() { AlkaliScale = fine }));
        Assert.Empty(Find("SFY2014", With(0.99)));
    }

    /// <summary>For 5 % of 2 mol 1.9 mol are needed; a share x of it as potassium hydroxide of 90 % is 1.9 x 56.105/0.9 = 118.44 x g: 1 g at 0.8443 %.</summary>
    [Fact]
    public void SFY2014_ComputedAlkali_IsCutToTheStep()
    {
        BatchSetup kitchen = new() { Scale = new(Mass.FromGrams(1)) };
        Assert.Single(Find("SFY2014", Superfat(Potash(0.843) with { Fats = [Taking(2)] }, 5), kitchen));
        Assert.Empty(Find("SFY2014", Superfat(Potash(0.845) with { Fats = [Taking(2)] }, 5), kitchen));
    }

    [Fact]
    public void SFY2014_BelowTheMinimumLoad()
    {
        BatchSetup scale = new() { Scale = new(Mass.FromGrams(0.1)) { MinimumLoad = Mass.FromGrams(5) } };
        Formula With(double grams) => Adding(s_pantry.Additive("kaolin").Weighing(Mass.FromGrams(grams)));
        Assert.Equal("additives[kaolin]", Assert.Single(Find("SFY2014", With(4.9), scale)).Path.ToString());
        Assert.Empty(Find("SFY2014", With(5), scale));
        Assert.Empty(Find("SFY2014", With(0), scale));
    }

    /// <summary>Before y mol go in late, 0.95 (2 + y) mol of alkali stand against 2 mol: too much from y = 2 x 0.05/0.95 = 0.10526 on.</summary>
    [Fact]
    public void SFY2016_LateFatsAboveTheSuperfat()
    {
        Formula With(double late, double superfat = 5) => Superfat(s_plain with { Fats = [Taking(2), Taking(late).AtTrace()] }, superfat);
        Assert.False(Speaks("SFY2016", With(0.1052)));
        Diagnostic found = Assert.Single(Find("SFY2016", With(0.1054)));
        Assert.Equal(100 * (1 - (0.95 * 2.1054 / 2)), found.Args.Single(a => a.Name == "before").Number, 9);
        Assert.Equal(["fats[hand-2]"], found.Related.Select(p => p.ToString()));
        Assert.False(Speaks("SFY2016", With(0.1054, 5.1)));
        Assert.True(Speaks("SFY2016", With(0.001, 0)));
        Assert.False(Speaks("SFY2016", With(0.1054, -0.01)));
        Assert.True(Speaks("SFY2001", With(0.1054, -0.01)));
    }

    [Fact]
    public void SFY2016_AllFatsLate_LeaveNothingButLyeInThePot()
    {
        Formula late = Superfat(s_plain with { Fats = [Taking(2).AtTrace()] }, 5);
        Assert.Equal("Alone", Assert.Single(Find("SFY2016", late)).Template.Name);
        Assert.False(Speaks("SFY2016", Superfat(late, 100)));
    }

    [Theory]
    [InlineData("citric-acid-monohydrate", true)]
    [InlineData("milk-powder-whole", true)]         // 27 % of fat
    [InlineData("sodium-bicarbonate", false)]       // its proton is in doubt and never counted
    [InlineData("sodium-lactate-60", false)]
    public void SFY2019_WhatTakesUpLye_NeedsAnAmount(string additive, bool speaks)
    {
        Formula unknown = Adding(s_pantry.Additive(additive).AmountUnknown());
        Assert.Equal((speaks, !speaks), (Speaks("SFY2019", unknown), Speaks("SFY5014", unknown)));
        Assert.False(Speaks("SFY2019", Adding(Dose(additive, 0.001))));
    }

    /// <summary>The share of acid x equivalents/molar mass decides, 0 or more than 0.</summary>
    [Fact]
    public void SFY2019_TheLeastAcidCounts()
    {
        Formula With(double acid) => Adding(new Additive("own", "Own", AdditiveKind.Other, Stage.Trace, new() { Acid = Ratio.FromPercent(acid), AcidKind = s_pantry.Liquid("vinegar-distilled").Contents.AcidKind }).AmountUnknown());
        Assert.False(Speaks("SFY2019", With(0)));
        Assert.True(Speaks("SFY2019", With(0.01)));
    }

    /// <summary>Malic acid (134.087 g/mol, two protons) and 39.997 g of pure sodium hydroxide, 1 mol, are even at 67.04 g.</summary>
    [Fact]
    public void SFY2020_AcidsTakeAllAlkali()
    {
        Formula With(double malic) => TwoMoles(1) with { Additives = [s_pantry.Additive("malic-acid").Weighing(Mass.FromGrams(malic))] };
        Assert.False(Speaks("SFY2020", With(67.0)));
        Assert.True(Speaks("SFY2020", With(67.1)));
        Assert.False(Speaks("SFY2022", With(67.0)));
        Assert.True(Speaks("SFY2022", With(134.087 / 2)));
        Assert.False(Speaks("SFY2020", With(134.087 / 2)));
    }

    [Fact]
    public void SFY2021_AnyFatThatTakesUpLye()
    {
        Assert.True(Speaks("SFY2021", s_plain with { Fats = [Fat("olive-oil", 0)] }));
        Assert.False(Speaks("SFY2021", s_plain with { Fats = [Fat("olive-oil", 0.001)] }));
        // a wax without an acid value takes up nothing; beeswax does, by its acids
        Assert.True(Speaks("SFY2021", s_plain with { Fats = [Fat("jojoba-oil", 500)] }));
        Assert.False(Speaks("SFY2021", s_plain with { Fats = [Fat("beeswax", 500)] }));
        Assert.False(Speaks("SFY2021", Holding(s_plain with { Fats = [] }, s_pantry.Liquid("heavy-cream"), 100)));
        Assert.False(Speaks("SFY2021", s_plain with { Fats = [Fat("shea-butter", 500)] }));
    }

    [Fact]
    public void SFY2022_AlmostNoAlkali_IsAlkali()
    {
        Assert.True(Speaks("SFY2022", TwoMoles(0)));
        Assert.False(Speaks("SFY2022", TwoMoles(0.001)));
        Assert.False(Speaks("SFY2022", Superfat(s_plain, 99.9)));
        Assert.Equal(5, ((SuperfatTarget)Fixed("SFY2022", Superfat(s_plain, 100)).Alkali).Superfat.Percent, 9);
    }

    /// <summary>84.006 g of bicarbonate take up 39.997 g of sodium hydroxide: 14 g take 6.666 g, 6.802 g of 98 %.</summary>
    [Fact]
    public void SFY2023_BicarbonateFromTheFirstGrain()
    {
        Formula With(string additive, double grams) => Adding(s_pantry.Additive(additive).Weighing(Mass.FromGrams(grams)));
        Assert.Equal(14 / 84.006 * Soda / 0.98, Assert.Single(Find("SFY2023", With("sodium-bicarbonate", 14))).Args.Single(a => a.Name == "lye").Number, 6);
        Assert.True(Speaks("SFY2023", With("sodium-bicarbonate", 0.01)));
        Assert.False(Speaks("SFY2023", With("sodium-bicarbonate", 0)));
        // carbonate has no proton to give; the last one of citric acid is in doubt as well, but makes no carbonate
        Assert.False(Speaks("SFY2023", With("sodium-carbonate", 14)));
        Assert.False(Speaks("SFY2023", With("edta-disodium-dihydrate", 14)));
    }

    /// <summary>A thousand tonnes are 1e9 g: 6e8 g of fat, 1e8 g of alkali and 3e8 g of water.</summary>
    [Fact]
    public void SFY2024_AThousandTonnes()
    {
        Formula With(double water) => Weighed(1e8) with { Fats = [Fat("olive-oil", 6e8)], Liquids = LiquidPlan.WeighedLyeLiquid(Liquid.Water.Weighing(Mass.FromGrams(water))) };
        Assert.False(Speaks("SFY2024", With(3e8)));
        Assert.True(Speaks("SFY2024", With(3e8 + 1)));
    }
}
