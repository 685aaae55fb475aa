using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Formulas;
using Saponify.Tests.Support;

namespace Saponify.Tests.Scoring;

/// <summary>Swapping fats and moving shares.</summary>
public class WhatIfTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    private static Formula Bar => FormulaTests.Plain(
        s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(520)), s_pantry.Fat("coconut-oil").Weighing(Mass.FromOunces(6)), s_pantry.Fat("cocoa-butter").Weighing(Mass.FromGrams(60)).AtTrace());

    [Fact]
    public void EqualMass_KeepsTheMassAndTheStage()
    {
        Formula swapped = Bar.SwappingAtEqualMass("cocoa-butter", s_pantry.Fat("hazelnut-oil"));
        Assert.Equal(["olive-oil", "coconut-oil", "hazelnut-oil"], swapped.Fats.Select(f => f.Line));
        Assert.Equal(60, swapped.Fats[2].Mass.Grams);
        Assert.Equal(Stage.Trace, swapped.Fats[2].Stage);
        Assert.Equal(Stage.Fats, Bar.SwappingAtEqualMass("olive-oil", s_pantry.Fat("hazelnut-oil")).Fats[0].Stage);
        Assert.NotEqual(Bar.Balance().AlkaliAsWeighed.Grams, swapped.Balance().AlkaliAsWeighed.Grams);
    }

    [Law]
    public Property EqualDemand_KeepsTheLye() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.UsableFat.Arbitrary(), (formula, other) =>
    {
        // doses that go by the fats would change with their mass
        Formula plain = formula with { Additives = [], Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(30)) };
        Formula swapped = plain.SwappingAtEqualDemand(plain.Fats[0].Line, other);
        return Near.Is(plain.Balance().AlkaliAsWeighed.Grams, swapped.Balance().AlkaliAsWeighed.Grams) && Near.Is(plain.Balance().SuperfatOfAllFat, swapped.Balance().SuperfatOfAllFat);
    });

    [Fact]
    public void EqualDemand_WithAFatThatTakesNone_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => Bar.SwappingAtEqualDemand("olive-oil", s_pantry.Fat("shea-butter")));
        Assert.Throws<ArgumentException>(() => Bar.SwappingAtEqualDemand("olive-oil", s_pantry.Fat("jojoba-oil")));
    }

    [Fact]
    public void UnknownLine_NamesThoseThereAre()
    {
        ArgumentException fault = Assert.Throws<ArgumentException>(() => Bar.SwappingAtEqualMass("lard", s_pantry.Fat("tallow")));
        Assert.Contains("It has: olive-oil, coconut-oil, cocoa-butter.", fault.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => Bar.SwappingAtEqualMass("olive-oil", null!));
    }

    [Fact]
    public void Share_MovesOneFat_AndKeepsTheProportionsOfTheOthers()
    {
        Formula changed = Bar.WithShare("coconut-oil", Ratio.FromPercent(40));
        Assert.Equal(Bar.ListedFats.Grams, changed.ListedFats.Grams, 9);
        Assert.Equal(0.4, changed.Fats[1].Mass.Grams / changed.ListedFats.Grams, 12);
        Assert.Equal(520.0 / 60, changed.Fats[0].Mass.Grams / changed.Fats[2].Mass.Grams, 9);
        Assert.Equal(UnitsNet.Units.MassUnit.Ounce, changed.Fats[1].Mass.Unit);
        Assert.Equal(Stage.Trace, changed.Fats[2].Stage);
    }

    [Fact]
    public void Curve_RunsFromNoneToAll()
    {
        IReadOnlyList<ShareStep> curve = Bar.VaryingShare("coconut-oil", 21);
        Assert.Equal(21, curve.Count);
        Assert.Equal(Enumerable.Range(0, 21).Select(i => 5.0 * i), curve.Select(s => Math.Round(s.Share.Percent, 9)));
        double[] cleansing = [.. curve.Select(s => s.Scores.Cleansing!.Value)];
        Assert.Equal(cleansing.Order(), cleansing);
        // lather peaks inside, at a blend
        int best = Enumerable.Range(0, 21).MaxBy(i => curve[i].Scores.LatherVolume!.Value);
        Assert.InRange(best, 3, 17);
        Assert.Equal(100, curve[^1].Formula.Scores().Hardness!.ByFat[1].Share.Percent, 9);
        Assert.Throws<ArgumentOutOfRangeException>(() => Bar.VaryingShare("coconut-oil", 1));
    }

    [Fact]
    public void Blend_MovesTheSameWay()
    {
        FatBlend blend = FatBlend.Of((s_pantry.Fat("olive-oil"), Ratio.FromPercent(60)), (s_pantry.Fat("lard"), Ratio.FromPercent(30)), (s_pantry.Fat("castor-oil"), Ratio.FromPercent(10)));
        Assert.Equal([80, 15, 5], blend.WithShare("olive-oil", Ratio.FromPercent(80)).Shares.Select(s => Math.Round(s.Share.Percent, 9)));
        Assert.Throws<ArgumentException>(() => blend.WithShare("tallow", Ratio.FromPercent(5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => blend.WithShare("lard", Ratio.FromPercent(101)));
    }

    [Fact]
    public void OneFatAlone_HasNothingToMakeRoom()
    {
        Formula one = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        Assert.Throws<ArgumentException>(() => one.WithShare("olive-oil", Ratio.FromPercent(50)));
        Assert.Throws<ArgumentException>(() => FatBlend.Of((s_pantry.Fat("olive-oil"), Ratio.FromPercent(100))).WithShare("olive-oil", Ratio.FromPercent(50)));
    }
}
