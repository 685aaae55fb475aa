using Saponify.Analysis;

namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    /// <summary>79.994 g of pure sodium hydroxide in a lye of 40 % ask for 119.99 g of water; what is held back is taken off the jug.</summary>
    [Fact]
    public void SFY3001_HeldBackWater_LeavesSomeForTheJug()
    {
        Formula With(double held) => TwoMoles(2) with { Liquids = Strength(40).HoldingBack(Liquid.Water.Weighing(Mass.FromGrams(held))) };
        Assert.False(Speaks("SFY3001", With(119.9)));
        Assert.True(Speaks("SFY2006", With(119.9)));
        Diagnostic found = Assert.Single(Find("SFY3001", With(120.5)));
        Assert.Equal("Over", found.Template.Name);
        Assert.Equal(120.5 - (2 * Soda * 1.5), found.Args[0].Number, 6);
    }

    [Fact]
    public void SFY3001_NoWaterAtAll_UnlessTheAlkaliIsBoughtDissolved()
    {
        Formula With(double grams) => TwoMoles(2) with { Liquids = LiquidPlan.WeighedLyeLiquid(Liquid.Water.Weighing(Mass.FromGrams(grams))) };
        Assert.Equal("None", Assert.Single(Find("SFY3001", With(0))).Template.Name);
        Assert.False(Speaks("SFY3001", With(0.01)));
        Assert.Equal("None", Assert.Single(Find("SFY3001", TwoMoles(2) with { Liquids = LiquidPlan.TotalWater(Mass.Zero) })).Template.Name);
        Formula dry = With(100) with { Liquids = LiquidPlan.WeighedLyeLiquid(new Liquid("own", "Own", new() { Alcohol = Ratio.FromPercent(100) }).Weighing(Mass.FromGrams(100))) };
        Assert.Equal("None", Assert.Single(Find("SFY3001", dry)).Template.Name);
        Assert.False(Speaks("SFY3001", With(0) with { Alkali = AlkaliPlan.Weighed(Alkali.SodiumHydroxideSolution(Ratio.FromPercent(50)).Weighing(Mass.FromGrams(150))) }));
        Assert.False(Speaks("SFY3001", TwoMoles(0) with { Liquids = LiquidPlan.TotalWater(Mass.Zero) }));
    }

    /// <summary>
    /// A gram of liquid with a share a of acetic acid (60.052 g/mol) asks for a/60.052 mol of hydroxide, and a lye of 40 % for 1.5 x 39.997 = 59.9955 g of water with each:
    /// its own 40 % of water suffice up to a = 0.40 x 60.052/59.9955 = 40.04 %.
    /// </summary>
    [Fact]
    public void SFY3001_ALiquidThatAsksForMoreAlkaliThanItsWaterHolds()
    {
        Formula With(double acid) => TwoMoles(2) with
        {
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), Alkali.SodiumHydroxide(Ratio.FromPercent(100))),
            Liquids = Strength(40).DissolvingIn(new Liquid("own", "Own", new() { Water = Ratio.FromPercent(40), Acid = Ratio.FromPercent(acid), AcidKind = s_pantry.Additive("acetic-acid-glacial").Contents.AcidKind })),
        };
        Assert.DoesNotContain(Find("SFY3001", With(39.9)), d => d.Template.Name == "Unsolvable");
        Assert.Equal("Unsolvable", Assert.Single(Find("SFY3001", With(40.1))).Template.Name);
    }

    [Fact]
    public void SFY3002_Milk_MayBeFrozenOrFridgeCold()
    {
        Liquid milk = s_pantry.Liquid("milk-cow-whole");
        Limit("SFY3002", t => s_plain with { Liquids = s_plain.Liquids.DissolvingIn(milk, Temperature.FromDegreesCelsius(t)) }, 5, 5.1, "warmest", 6);
        Assert.Equal("NotStated", Assert.Single(Find("SFY3002", s_plain with { Liquids = s_plain.Liquids.DissolvingIn(milk) })).Template.Name);
        Assert.False(Speaks("SFY3002", s_plain with { Liquids = s_plain.Liquids.DissolvingInFrozen(milk, Temperature.FromDegreesCelsius(-18)) }));
    }

    [Fact]
    public void SFY3002_SugarDecides_NotTheName()
    {
        Formula With(double sugar) => s_plain with { Liquids = s_plain.Liquids.DissolvingIn(new Liquid("own", "Own", new() { Water = Ratio.FromPercent(90), Sugar = Ratio.FromPercent(sugar) })) };
        Limit("SFY3002", With, 1.5, 1.6, "sugar", 2);
    }

    [Fact]
    public void SFY3002_Fixes_FreezeTheMilk_OrHoldItBack()
    {
        Formula warm = s_plain with { Liquids = s_plain.Liquids.DissolvingIn(s_pantry.Liquid("milk-cow-whole")) };
        Assert.True(Fixed("SFY3002", warm).Liquids.LyeLiquid.IsFrozen);
        Formula split = Fixed("SFY3002", warm, fix: 1);
        Assert.Equal(("water", "milk-cow-whole"), (split.Liquids.LyeLiquid.Liquid.Id, Assert.Single(split.Liquids.HeldBack).Liquid.Id));
        Assert.Equal(0.3, split.Balance().LyeConcentrationOfAllWater!.Value.DecimalFractions, 9);
        Assert.InRange(split.Balance().LyeConcentrationWhileDissolving!.Value.DecimalFractions, 0.40, 1 / 2.4 + 0.003);
        Formula weighed = s_plain with { Liquids = LiquidPlan.WeighedLyeLiquid(Held("milk-cow-whole", 260)) };
        LiquidPlan water = Fixed("SFY3002", weighed, fix: 1).Liquids;
        Assert.Equal(("water", Math.Ceiling(1.4 * weighed.Balance().PureAlkali.Grams), 1), (water.Weighed!.Liquid.Id, water.Weighed.Mass.Grams, water.HeldBack.Count));
    }

    [Fact]
    public void SFY3003_SugarOfEverything_AddsUp()
    {
        // 3 % of 700 g of fats is 21 g of sugar; 10 g of it are sugar itself, the rest is honey of 82.12 % sugar
        Formula With(double honey) => s_plain with { Additives = [s_pantry.Additive("sucrose").Weighing(Mass.FromGrams(10 / 0.998)), s_pantry.Additive("honey").Weighing(Mass.FromGrams(honey))] };
        Limit("SFY3003", With, 10.99 / 0.8212, 11.01 / 0.8212, "highest", 3.1);
        Assert.Equal(["additives[sucrose]", "additives[honey]"], Assert.Single(Find("SFY3003", With(20))).Related.Select(p => p.ToString()));
    }

    [Fact]
    public void SFY3004_Alcohol_InTheJugOrHeldBack()
    {
        Liquid Of(double alcohol) => new("own", "Own", new() { Water = Ratio.FromPercent(95), Alcohol = Ratio.FromPercent(alcohol) });
        Limit("SFY3004", a => s_plain with { Liquids = s_plain.Liquids.DissolvingIn(Of(a)) }, 1, 1.1, "highest", 2);
        Limit("SFY3004", a => s_plain with { Liquids = s_plain.Liquids.HoldingBack(Of(a).Weighing(Mass.FromGrams(20))) }, 1, 1.1, "highest", 2);
        Assert.Equal("AlcoholAndGas", Assert.Single(Find("SFY3004", s_plain with { Liquids = s_plain.Liquids.HoldingBack(Held("beer-regular", 20)) })).Template.Name);
    }

    [Fact]
    public void SFY3005_TapWater_WithAChelatorOrSoftened()
    {
        Formula tap = s_plain with { Liquids = s_plain.Liquids.DissolvingIn(s_pantry.Liquid("water-tap"), Temperature.FromDegreesCelsius(12)) };
        Assert.True(Speaks("SFY3005", tap));
        Assert.False(Speaks("SFY3005", tap with { Additives = [Dose("citric-acid-monohydrate", 1)] }));
        Assert.False(Speaks("SFY3005", tap with { Additives = [Dose("edta-tetrasodium-dihydrate", 0.2)] }));
        Formula soft = Fixed("SFY3005", tap);
        Assert.Equal(("water", 12), (soft.Liquids.LyeLiquid.Liquid.Id, soft.Liquids.LyeLiquid.Temperature!.Value.DegreesCelsius));
        Assert.True(Fixed("SFY3005", s_plain with { Liquids = s_plain.Liquids.DissolvingInFrozen(s_pantry.Liquid("water-tap"), Temperature.FromDegreesCelsius(-5)) }).Liquids.LyeLiquid.IsFrozen);
    }

    [Theory]
    [InlineData(WaterRule.LyeConcentration)]
    [InlineData(WaterRule.WaterToAlkali)]
    [InlineData(WaterRule.WaterToFats)]
    [InlineData(WaterRule.TotalWater)]
    [InlineData(WaterRule.WeighedLyeLiquid)]
    public void SFY2006_SFY3006_And_SFY3007_Fixes_SpeakTheFormulasOwnWaterRule(WaterRule rule)
    {
        double pure = s_plain.Balance().PureAlkali.Grams;
        LiquidPlan Plan(double strength)
        {
            double parts = (1 - strength) / strength, water = parts * pure;
            return rule switch
            {
                WaterRule.LyeConcentration => LiquidPlan.LyeConcentration(Ratio.FromDecimalFractions(strength)),
                WaterRule.WaterToAlkali => LiquidPlan.WaterToAlkali(Ratio.FromDecimalFractions(parts)),
                WaterRule.WaterToFats => LiquidPlan.WaterToFats(Ratio.FromDecimalFractions(water / 700)),
                WaterRule.TotalWater => LiquidPlan.TotalWater(Mass.FromGrams(water)),
                _ => LiquidPlan.WeighedLyeLiquid(Liquid.Water.Weighing(Mass.FromGrams(water))),
            };
        }
        Formula thick = Fixed("SFY2006", s_plain with { Liquids = Plan(0.6) }), strong = Fixed("SFY3006", s_plain with { Liquids = Plan(0.44) }), weak = Fixed("SFY3007", s_plain with { Liquids = Plan(0.22) });
        Assert.Equal((rule, rule, rule), (thick.Liquids.Rule, strong.Liquids.Rule, weak.Liquids.Rule));
        // as much water as SFY3008 asks for, a per cent more, and the step that the figure is written in
        Assert.InRange(thick.Balance().LyeConcentrationWhileDissolving!.Value.Percent, 49.2, 50);
        Assert.InRange(strong.Balance().LyeConcentrationOfAllWater!.Value.Percent, 39.5, 40);
        Assert.InRange(weak.Balance().LyeConcentrationOfAllWater!.Value.Percent, 25, 25.6);
    }

    [Fact]
    public void SFY3006_StrongLye_UnlessTheJugIsShortOfWater()
    {
        Limit("SFY3006", s => s_plain with { Liquids = Strength(s) }, 40, 40.1, "highest", 41);
        Assert.True(Speaks("SFY3006", s_plain with { Liquids = Strength(50) }));
        Assert.False(Speaks("SFY3006", s_plain with { Liquids = Strength(50.1) }));
        Assert.True(Speaks("SFY3008", s_plain with { Liquids = Strength(50.1) }));
        // told to be content with less, that rule leaves the strong lye to this one
        Assert.Equal(["SFY3006"], SpeaksWith("SFY3008", "least", 0.93, s_plain with { Liquids = Strength(51) }, "SFY3006"));
        Assert.Equal(["SFY3008"], SpeaksWith("SFY3008", "least", 1.5, s_plain with { Liquids = Strength(45) }, "SFY3006"));
    }

    [Fact]
    public void SFY3007_WeakLye_UnlessItIsToBeSoft()
    {
        Limit("SFY3007", s => s_plain with { Liquids = Strength(s) }, 25, 24.9, "lowest", 24);
        Formula weak = s_plain with { Liquids = Strength(20) };
        Assert.Empty(Find("SFY3007", weak, new BatchSetup { Form = ProductForm.Soft }));
        Assert.False(Speaks("SFY3007", weak with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(4), Alkali.PotassiumHydroxide(Ratio.FromPercent(90))) }));
    }

    [Fact]
    public void SFY3008_BetweenSolubleAndRoomy()
    {
        Formula With(double waterPerAlkali) => s_plain with { Liquids = LiquidPlan.WaterToAlkali(Ratio.FromDecimalFractions(waterPerAlkali)) };
        Assert.False(Speaks("SFY3008", With(0.91)));
        Assert.True(Speaks("SFY2006", With(0.91)));
        Assert.True(Speaks("SFY3008", With(0.921)));
        Limit("SFY3008", With, 1, 0.999, "least", 0.95);
        Assert.InRange(Fixed("SFY3008", With(0.93)).Liquids.Share!.Value.DecimalFractions, 1, 1.05);
    }

    [Fact]
    public void SFY3009_PowderInTheRatioOfMilk()
    {
        Formula With(double powder) => s_plain with { Liquids = s_plain.Liquids.HoldingBack(Held("milk-cow-whole", 100)), Additives = [s_pantry.Additive("milk-powder-whole").Weighing(Mass.FromGrams(powder))] };
        Limit("SFY3009", With, 6.9, 7, "lowest", 8);
        Limit("SFY3009", With, 16.1, 16, "highest", 15);
        Assert.False(Speaks("SFY3009", With(12) with { Liquids = s_plain.Liquids.HoldingBack(Held("oat-drink", 100)) }));
    }

    [Fact]
    public void SFY3010_SaltInLittleWater()
    {
        Formula With(double water) => s_plain with { Liquids = LiquidPlan.WaterToAlkali(Ratio.FromDecimalFractions(water)), Additives = [Dose("sea-salt", 2)] };
        Limit("SFY3010", With, 1.4, 1.39, "least", 1.3);
        Assert.False(Speaks("SFY3010", With(0.99)));
        Assert.False(Speaks("SFY3010", With(1.2) with { Additives = [Dose("sea-salt", 0)] }));
        Assert.Equal(Stage.Trace, Fixed("SFY3010", With(1.2)).Additives[0].Stage);
    }

    [Fact]
    public void SFY3011_WeighedLyeLiquidWithLittleWater()
    {
        Formula With(double water) => s_plain with { Liquids = LiquidPlan.WeighedLyeLiquid(new Liquid("own", "Own", new() { Water = Ratio.FromPercent(water) }).Weighing(Mass.FromGrams(250))) };
        Limit("SFY3011", With, 80, 79, "least", 75);
        Assert.False(Speaks("SFY3011", With(60) with { Liquids = s_plain.Liquids.DissolvingIn(With(60).Liquids.LyeLiquid.Liquid) }));
    }

    [Fact]
    public void SFY3012_AcidOfALiquid()
    {
        Formula With(double grams) => s_plain with { Liquids = s_plain.Liquids.HoldingBack(Held("vinegar-distilled", grams)) };
        double Share(double grams) => With(grams).Plan().LyeUptake.Single(u => u.Taker == LyeTaker.Acid).Hydroxide.Moles / With(grams).Balance().HydroxideSupplied.Moles;
        double limit = Enumerable.Range(0, 40).Aggregate((Low: 0.0, High: 200.0), (b, _) => Share((b.Low + b.High) / 2) < 0.03 ? ((b.Low + b.High) / 2, b.High) : (b.Low, (b.Low + b.High) / 2)).Low;
        Limit("SFY3012", With, limit - 0.1, limit + 0.1, "highest", 3.1);
        // a tenth less acid in hand than on the label: the same as planning with a tenth less vinegar and keeping the alkali
        double said = Find("SFY3012", With(150))[0].Args.Single(a => a.Name == "superfat").Number;
        Formula kept = With(150) with { Alkali = AlkaliPlan.Weighed([.. With(150).Plan().Alkalis]), Liquids = s_plain.Liquids.HoldingBack(Held("vinegar-distilled", 135)) };
        Assert.Equal(kept.Balance().SuperfatOfAllFat!.Value.Percent, said, 6);
    }

    [Fact]
    public void SFY3013_FatOfALiquid()
    {
        Formula With(double grams) => s_plain with { Liquids = s_plain.Liquids.HoldingBack(Held("coconut-milk-raw", grams)) };
        double Share(double grams) => With(grams).Plan().LyeUptake.Single(u => u.Taker == LyeTaker.FatInOther).Hydroxide.Moles / With(grams).Balance().FatDemand.Moles;
        Assert.InRange(Share(74), 0.0295, 0.03);
        Assert.InRange(Share(75), 0.03, 0.0305);
        Limit("SFY3013", With, 74, 75, "highest", 4);
        Liquid label = new("own", "Own", s_pantry.Liquid("coconut-milk-raw").Contents);
        Assert.False(Speaks("SFY3013", s_plain with { Liquids = s_plain.Liquids.HoldingBack(label.Weighing(Mass.FromGrams(200))) }));
    }
}
