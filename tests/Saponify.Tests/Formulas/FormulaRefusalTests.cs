using Saponify.Tests.Support;

namespace Saponify.Tests.Formulas;

/// <summary>What no formula can hold, and what its author is told instead.</summary>
public class FormulaRefusalTests
{
    private static readonly Fat s_olive = Pantry.Reference.Fat("olive-oil"), s_own = Fat.Own("own", "Own oil", SaponificationValue.FromMilligramsKohPerGram(190), "made up for this test");
    private static readonly Alkali s_soda = Alkali.SodiumHydroxide(Ratio.FromPercent(98)), s_potash = Alkali.PotassiumHydroxide(Ratio.FromPercent(90));
    private static readonly Additive s_clay = Pantry.Reference.Additive("kaolin-clay");
    private static readonly Liquid s_tea = new("tea", "Tea", new() { Water = Ratio.FromPercent(99) });
    private static readonly Formula s_formula = FormulaTests.Plain(s_olive.Weighing(Mass.FromGrams(500)));

    private static Mass Grams(double grams) => Mass.FromGrams(grams);

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    private static Temperature Celsius(double degrees) => Temperature.FromDegreesCelsius(degrees);

    [Fact]
    public void WhatNoFormulaCanHold_IsRefusedWithAReason() => new Refusals()
        .Of(() => s_olive.Weighing(Grams(-1)))
        .Of(() => s_olive.Weighing(Grams(1e10)))
        .Of(() => s_olive.Weighing(Grams(500)) with { Line = " " })
        .Of(() => s_olive.Weighing(Grams(500)) with { Line = " olive" })
        .Of(() => s_olive.Weighing(Grams(500)) with { Line = "olive/virgin" })
        .Of(() => s_olive.Weighing(Grams(500)) with { Line = new string('o', 81) })
        .Of(() => s_olive.Pouring(Volume.FromMilliliters(-1)))
        .Of(() => s_own.Pouring(Volume.FromMilliliters(100)))
        .Of(() => default(Fat)!.Weighing(Grams(500)))
        .Of(() => default(Fat)!.Pouring(Volume.FromMilliliters(100)))
        .Of(() => FatBlend.Of((s_olive, Percent(101))))
        .Of(() => FatBlend.Of((s_olive, Percent(60)), (s_own, Percent(50))))
        .Of(() => FatBlend.Of(null!))
        .Of(() => FatBlend.Of((s_olive, Percent(100))).Weighing(Grams(-1)))
        .Of(() => Liquid.Water.Weighing(Grams(-1)))
        .Of(() => Liquid.Water.Weighing(Grams(100)) with { Line = "" })
        .Of(() => Liquid.Water.Weighing(Grams(100)).At(Celsius(101)))
        .Of(() => Liquid.Water.Weighing(Grams(100)).FrozenAt(Celsius(1)))
        .Of(() => s_tea.Pouring(Volume.FromMilliliters(100)))
        .Of(() => default(Liquid)!.Weighing(Grams(100)))
        .Of(() => default(Liquid)!.Pouring(Volume.FromMilliliters(100)))
        .Of(() => s_clay.Weighing(Grams(-1)))
        .Of(() => s_clay.ShareOfFats(Percent(1001)))
        .Of(() => s_clay.Weighing(Grams(5)).At((Stage)99))
        .Of(() => s_clay.Weighing(Grams(5)) with { Line = "clay\n" })
        .Of(() => default(Additive)!.AmountUnknown())
        .Of(() => s_soda.Weighing(Grams(-1)))
        .Of(() => s_soda.Weighing(Grams(70)) with { Line = "[soda]" })
        .Of(() => s_soda.ShareOfHydroxide(Percent(101)))
        .Of(() => s_soda.ShareOfMass(Percent(-1)))
        .Of(() => s_soda.ShareOfMass(Percent(40)) with { Line = "\t" })
        .Of(() => default(Alkali)!.Weighing(Grams(70)))
        .Of(() => AlkaliPlan.ForSuperfat(Percent(101), s_soda))
        .Of(() => AlkaliPlan.ForSuperfat(Percent(5), default(Alkali)!))
        .Of(() => AlkaliPlan.ForSuperfat(Percent(5)))
        .Of(() => AlkaliPlan.ForSuperfat(Percent(5), default(AlkaliShare[])!))
        .Of(() => AlkaliPlan.ForSuperfat(Percent(5), s_soda.ShareOfHydroxide(Percent(60)), s_potash.ShareOfMass(Percent(40))))
        .Of(() => AlkaliPlan.ForSuperfat(Percent(5), s_soda.ShareOfHydroxide(Percent(60)), s_potash.ShareOfHydroxide(Percent(50))))
        .Of(() => AlkaliPlan.ForSuperfat(Percent(5), s_soda.ShareOfHydroxide(Percent(60)), null!))
        .Of(() => AlkaliPlan.Weighed())
        .Of(() => AlkaliPlan.Weighed(null!))
        .Of(() => AlkaliPlan.Weighed(s_soda.Weighing(Grams(70)), null!))
        .Of(() => LiquidPlan.LyeConcentration(Percent(0.5)))
        .Of(() => LiquidPlan.WaterToAlkali(Percent(1)))
        .Of(() => LiquidPlan.WaterToFats(Percent(-1)))
        .Of(() => LiquidPlan.TotalWater(Grams(-1)))
        .Of(() => LiquidPlan.WeighedLyeLiquid(null!))
        .Of(() => LiquidPlan.TotalWater(Grams(100)).DissolvingIn(null!))
        .Of(() => LiquidPlan.TotalWater(Grams(100)).DissolvingIn(Liquid.Water, Celsius(-11)))
        .Of(() => LiquidPlan.TotalWater(Grams(100)).DissolvingInFrozen(Liquid.Water, Celsius(-81)))
        .Of(() => LiquidPlan.TotalWater(Grams(100)).HoldingBack(null!))
        .Of(() => LiquidPlan.TotalWater(Grams(100)).HoldingBack(Liquid.Water.Weighing(Grams(20)), null!))
        .Of(() => s_formula with { Name = " " })
        .Of(() => s_formula with { Name = "\ud800" })
        .Of(() => s_formula with { Name = null! })
        .Of(() => s_formula with { Fats = [null!] })
        .Of(() => s_formula with { Additives = [s_clay.Weighing(Grams(5)), null!] })
        .Of(() => s_formula with { Alkali = null! })
        .Of(() => s_formula with { Liquids = null! })
        .Of(() => s_formula.ScaledBy(0))
        .Of(() => s_formula.ScaledTo(Grams(-1)))
        .Of(() => s_formula.ScaledTo(Mass.Zero))
        .Of(() => FormulaTests.Plain().ScaledTo(Grams(500)))
        .Of(() => FormulaTests.Plain(s_olive.Weighing(Grams(1e6))).ScaledBy(1e4))
        .Of(() => FormulaTests.Plain(s_own.Weighing(Grams(1))) with { Liquids = LiquidPlan.TotalWater(Grams(1e4)) } is { } watery ? watery.ScaledBy(1e6) : null)
        .Of(() => FormulaTests.Plain(s_own.Weighing(Grams(1))) with { Liquids = LiquidPlan.TotalWater(Grams(1)).HoldingBack(Liquid.Water.Weighing(Grams(1e4))) } is { } diluted ? diluted.ScaledBy(1e6) : null)
        .Of(() => FormulaTests.Plain(s_own.Weighing(Grams(1))) with { Additives = [s_clay.Weighing(Grams(1e4))] } is { } clayey ? clayey.ScaledBy(1e6) : null)
        .Of(() => FormulaTests.Plain(s_own.Weighing(Grams(1))) with { Alkali = AlkaliPlan.Weighed(s_soda.Weighing(Grams(1e4))) } is { } caustic ? caustic.ScaledBy(1e6) : null)
        .Of(() => new Suppression(" ", "", "known"))
        .Of(() => new Suppression("SFY3004", null!, "known"))
        .Of(() => new Suppression("SFY3004", "", null!))
        .Of(() => new Suppression("SFY3004", "", "known").Covers(null!))
        .Of(() => FormulaPath.Root.Member(""))
        .Of(() => FormulaPath.Root.Item(-1, "olive-oil"))
        .Of(() => FormulaPath.Root.Item(0, ""))
        .Match("formulas");
}
