using Saponify.Tests.Support;

namespace Saponify.Tests.Formulas;

/// <summary>Formulas: line ids, change by <c>with</c>, scaling, plans that can't be incomplete.</summary>
public class FormulaTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    internal static Formula Plain(params ReadOnlySpan<FatPortion> fats) => new("Plain")
    {
        Fats = ValueList.Create(fats),
        Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.SodiumHydroxide(Ratio.FromPercent(98))),
        Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(30)),
    };

    private static FatPortion Olive(double grams) => s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(grams));

    [Fact]
    public void Lines_OfTheSameFat_GetNumbers()
    {
        Formula formula = Plain(Olive(1), Olive(2), Olive(3) with { Line = "olive-oil-2" }, Olive(4));
        Assert.Equal(["olive-oil", "olive-oil-3", "olive-oil-2", "olive-oil-4"], formula.Fats.Select(f => f.Line));
        Assert.Equal(formula, formula with { Fats = formula.Fats });
    }

    [Theory]
    [InlineData("")]
    [InlineData(" x")]
    [InlineData("a[b]")]
    [InlineData("a/b")]
    [InlineData("a~b")]
    [InlineData("a\nb")]
    public void Line_ThatCannotStandInAPath_IsRefused(string line) => Assert.Throws<ArgumentException>(() => Olive(1) with { Line = line });

    [Fact]
    public void Line_LongerThanEightyCharacters_IsRefused() => Assert.Throws<ArgumentException>(() => Olive(1) with { Line = new string('a', 81) });

    [Fact]
    public void Shares_AndATotal_MakeTheLines()
    {
        FatBlend blend = FatBlend.Of((s_pantry.Fat("olive-oil"), Ratio.FromPercent(62.5)), (s_pantry.Fat("coconut-oil"), Ratio.FromPercent(37.5)));
        Formula formula = Plain() with { Fats = blend.Weighing(Mass.FromOunces(24)) };
        Assert.Equal([15.0, 9.0], formula.Fats.Select(f => f.Mass.Ounces));
        Assert.Equal(24 * 28.349523125, formula.ListedFats.Grams, 9);
        ArgumentException fault = Assert.Throws<ArgumentException>(() => FatBlend.Of((s_pantry.Fat("olive-oil"), Ratio.FromPercent(62.5))));
        Assert.Contains("62.5 %", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ScaledTo_ScalesEveryMassAndLeavesShares()
    {
        Formula formula = Plain(Olive(400), s_pantry.Fat("coconut-oil").Weighing(Mass.FromGrams(100)).AtTrace()) with
        {
            Alkali = AlkaliPlan.Weighed(Alkali.SodiumHydroxide(Ratio.FromPercent(98)).Weighing(Mass.FromGrams(70))),
            Liquids = LiquidPlan.WeighedLyeLiquid(Liquid.Water.Weighing(Mass.FromGrams(150))).HoldingBack(s_pantry.Liquid("heavy-cream").Pouring(Volume.FromMilliliters(40))),
            Additives = [s_pantry.Additive("kaolin").Weighing(Mass.FromGrams(5)), s_pantry.Additive("honey").ShareOfFats(Ratio.FromPercent(1))],
        };
        Formula twice = formula.ScaledTo(Mass.FromKilograms(1));
        Assert.Equal((800, 200), (twice.Fats[0].Mass.Grams, twice.Fats[1].Mass.Grams));
        Assert.Equal(140, ((WeighedAlkali)twice.Alkali).Alkalis[0].Mass.Grams);
        Assert.Equal((300, 80), (twice.Liquids.Weighed!.Mass.Grams, twice.Liquids.HeldBack[0].Poured!.Value.Milliliters));
        Assert.Equal((10, 1), (twice.Additives[0].Mass!.Value.Grams, twice.Additives[1].OfFats!.Value.Percent));
        Assert.Throws<InvalidOperationException>(() => Plain().ScaledTo(Mass.FromGrams(500)));
        Assert.Throws<ArgumentOutOfRangeException>(() => formula.ScaledBy(double.NaN));
    }

    [Fact]
    public void Pouring_WithoutADensity_SaysToWeigh()
    {
        Liquid thick = new("thick", "Thick", Contents.PureWater);
        Assert.Contains("weigh it", Assert.Throws<InvalidOperationException>(() => thick.Pouring(Volume.FromMilliliters(1))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Liquid.Water.Pouring(Volume.FromMilliliters(-1)));
    }

    [Fact]
    public void Alkalis_WhoseSharesDoNotAddUp_AreRefused()
    {
        Alkali soda = Alkali.SodiumHydroxide(Ratio.FromPercent(98)), potash = Alkali.PotassiumHydroxide(Ratio.FromPercent(90));
        Assert.Contains("90 %", Assert.Throws<ArgumentException>(() => AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), soda.ShareOfHydroxide(Ratio.FromPercent(60)), potash.ShareOfHydroxide(Ratio.FromPercent(30)))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), soda.ShareOfHydroxide(Ratio.FromPercent(60)), potash.ShareOfMass(Ratio.FromPercent(40))));
        Assert.Throws<ArgumentException>(() => AlkaliPlan.ForSuperfat(Ratio.FromPercent(5)));
        Assert.Throws<ArgumentException>(() => AlkaliPlan.Weighed());
        Assert.Throws<ArgumentOutOfRangeException>(() => AlkaliPlan.ForSuperfat(Ratio.FromPercent(101), soda));
    }

    [Fact]
    public void Null_IsRefusedWithItsName()
    {
        Assert.Throws<ArgumentNullException>(() => Plain() with { Alkali = null! });
        Assert.Throws<ArgumentNullException>(() => Plain() with { Liquids = null! });
        Assert.Throws<ArgumentException>(() => Plain() with { Fats = [null!] });
        Assert.Throws<ArgumentException>(() => new Formula(" ") { Fats = [], Alkali = Plain().Alkali, Liquids = Plain().Liquids });
    }

    [Fact]
    public void Formulas_EqualByContent()
    {
        EqualityContract.Test(Plain(Olive(400)), Plain(Olive(400)), Plain(Olive(401)), Plain(Olive(400).AtTrace()), Plain(Olive(400)) with { Name = "Other" });
    }

    [Fact]
    public void Path_HasTwoSpellings()
    {
        FormulaPath path = FormulaPath.Root.Member("fats").Item(1, "castor").Member("mass");
        Assert.Equal(("fats[castor].mass", "/fats/1/mass"), (path.ToString(), path.ToJsonPointer()));
        Assert.Equal(("", ""), (FormulaPath.Root.ToString(), FormulaPath.Root.ToJsonPointer()));
        Assert.Equal("/a~1b~0c", FormulaPath.Root.Member("a/b~c").ToJsonPointer());
        EqualityContract.Test(path, FormulaPath.Root.Member("fats").Item(1, "castor").Member("mass"), FormulaPath.Root.Member("fats").Item(2, "castor").Member("mass"), FormulaPath.Root);
        FormulaPath[] order = [FormulaPath.Root, FormulaPath.Root.Member("additives"), FormulaPath.Root.Member("fats").Item(2, "a"), FormulaPath.Root.Member("fats").Item(10, "a")];
        Assert.Equal(order, Enumerable.Reverse(order).Order());
        Assert.Throws<ArgumentOutOfRangeException>(() => FormulaPath.Root.Item(-1, "a"));
    }
}
