using Saponify.Tests.Support;

namespace Saponify.Tests.Making;

/// <summary>Moulds, batter, bars, heat.</summary>
public class MouldTests
{
    private static Length Cm(double value) => Length.FromCentimeters(value);

    private static Mould Loaf => Mould.Box(Cm(25), Cm(9), Cm(7));

    public static TheoryData<string> Examples => ["all-coconut", "goat-milk-frozen", "market-day-bar", "oat-and-cream", "shaving-soap"];

    internal static BatchPlan Example(string name) => FormulaFile.Read(File.ReadAllBytes(Repository.Path("data", "examples", name + ".json")), Pantry.Reference).Formula!.Plan();

    [Fact]
    public void LiningAndFillHeight_TakeTheirPart()
    {
        Mould lined = Loaf.WithLining(Cm(0.5)).FilledTo(Cm(6));
        Assert.Equal(24 * 8 * 6, lined.Volume.Milliliters, 1e-9);
        Assert.Equal(24 * 8 * 6.5, Loaf.WithLining(Cm(0.5)).Volume.Milliliters, 1e-9);
        Assert.Equal(Math.PI * 9 * 9.5, Mould.Cylinder(Cm(7), Cm(10)).WithLining(Cm(0.5)).Volume.Milliliters, 1e-9);
        Assert.Equal(lined, Loaf.FilledTo(Cm(6)).WithLining(Cm(0.5)));
    }

    [Fact]
    public void Cavities_AddUp()
    {
        Mould mould = Mould.Cavities(6, Volume.FromMilliliters(95));
        Assert.Equal(570, mould.Volume.Milliliters, 1e-9);
        Assert.Equal((6, 4), (mould.Unmould(2).Bars, mould.Unmould(2).Saleable));
        Assert.Equal(95, mould.Unmould(0).BarVolume.Milliliters, 1e-9);
    }

    [Fact]
    public void ImpossibleMoulds_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Mould.Box(Cm(25), Cm(0), Cm(7)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Mould.Box(Cm(25), Cm(1001), Cm(7)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Mould.Cavities(0, Volume.FromMilliliters(90)));
        Assert.Contains("leaves no space", Assert.Throws<ArgumentOutOfRangeException>(() => Loaf.WithLining(Cm(4.5))).Message, StringComparison.Ordinal);
        Assert.Contains("The fill height", Assert.Throws<ArgumentOutOfRangeException>(() => Loaf.FilledTo(Cm(6.8)).WithLining(Cm(0.5))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Loaf.FilledTo(Cm(0)));
        Assert.Throws<InvalidOperationException>(() => Mould.Cavities(6, Volume.FromMilliliters(95)).WithLining(Cm(0.1)));
        Assert.Throws<InvalidOperationException>(() => Mould.Slab(Cm(40), Cm(30), Cm(4)).Cut(new() { Thickness = Cm(8) }));
    }

    [Theory]
    [InlineData(24, 2.4, 0, 0, 10)]        // exact division is not lost to rounding
    [InlineData(25, 2.4, 0, 0, 10)]
    [InlineData(24, 2.4, 0.1, 0, 9)]       // ten bars need nine cuts of a millimetre more
    [InlineData(24.9, 2.4, 0.1, 0, 10)]
    [InlineData(26.1, 2.4, 0.1, 0.5, 10)]  // trimmed ends cost two more cuts
    [InlineData(26.0, 2.4, 0.1, 0.5, 9)]
    [InlineData(2, 2.4, 0, 0, 0)]
    public void Slices_AreCountedWithTheirCuts(double length, double thickness, double kerf, double ends, int bars) =>
        Assert.Equal(bars, Mould.Box(Cm(length), Cm(9), Cm(7)).Cut(new() { Thickness = Cm(thickness), Kerf = Cm(kerf), Ends = Cm(ends) }).Bars);

    [Fact]
    public void Slab_IsCutBothWays_AndItsPartsAddUp()
    {
        BarLayout bars = Mould.Slab(Cm(40), Cm(30), Cm(4)).FilledTo(Cm(3)).Cut(new() { Thickness = Cm(8), Across = Cm(5.5), Kerf = Cm(0.1), Ends = Cm(0.4), Samples = 2 });
        Assert.Equal((20, 18), (bars.Bars, bars.Saleable));
        Assert.Equal(8 * 5.5 * 3, bars.BarVolume.Milliliters, 1e-9);
        Assert.Equal(bars.Mould.Volume.Milliliters, (bars.Bars * bars.BarVolume.Milliliters) + bars.EndsVolume.Milliliters + bars.KerfAndRest.Milliliters, 1e-6);
        Assert.Equal(5.5, bars.Mould.ThicknessFor(Volume.FromMilliliters(8 * 5.5 * 3), Cm(8)).Centimeters, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Density_LiesWithinItsParts_WhichAddUpToTheBatch(string name)
    {
        BatchPlan plan = Example(name);
        BatterDensity batter = plan.Batter(Temperature.FromDegreesCelsius(38))!;
        Assert.Equal(plan.BatchMass.Grams, batter.Parts.Sum(p => p.Mass.Grams), 1e-6);
        double middle = batter.Density.Value.GramsPerMilliliter;
        Assert.InRange(middle, batter.Parts.Min(p => p.Density.Low!.Value.GramsPerMilliliter), batter.Parts.Max(p => p.Density.High!.Value.GramsPerMilliliter));
        Assert.InRange(middle, batter.Density.Low!.Value.GramsPerMilliliter, batter.Density.High!.Value.GramsPerMilliliter);
        Assert.All(batter.Parts, p => Assert.True(p.Density.Low!.Value.GramsPerMilliliter <= p.Density.High!.Value.GramsPerMilliliter && p.Density.Sources.Count > 0));
        // without the temperature the range holds the one with it
        Figure<Density> wide = plan.Batter(null)!.Density;
        Assert.True(wide.Low <= batter.Density.Low && wide.High >= batter.Density.High);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void ScalingToFill_ComesBack(string name)
    {
        MouldFill fill = Example(name).Fill(Loaf, Temperature.FromDegreesCelsius(38), Ratio.FromPercent(2))!;
        BatchPlan scaled = fill.ScaledToFill(3).Plan();
        Figure<Ratio> share = scaled.Fill(Loaf, Temperature.FromDegreesCelsius(38), Ratio.FromPercent(2))!.ShareOfMould;
        Assert.Equal(3, share.Value.DecimalFractions, 1e-9);
        Assert.True(share.Low!.Value.DecimalFractions < 3 && share.High!.Value.DecimalFractions > 3);
        Assert.Equal(fill.Plan.BatchMass.Grams, scaled.Formula.ScaledToBatch(fill.Plan.BatchMass).Plan().BatchMass.Grams, 1e-6);
        Assert.Equal(fill.Plan.Balance.OfAllFat!.Value, scaled.Balance.OfAllFat!.Value, 1e-9);
    }

    [Fact]
    public void Overflow_IsSeen_AndMouldsAreCounted()
    {
        BatchPlan plan = Example("oat-and-cream");
        MouldFill small = plan.Fill(Mould.OfVolume(Volume.FromMilliliters(500)), null, Ratio.Zero)!;
        Assert.True(small.SurelyOverflows);
        Assert.Equal(3, small.MouldsNeeded);
        Assert.InRange(small.ShareOfLastMould.Value.Percent, 30, 60);
        MouldFill large = plan.Fill(Mould.OfVolume(Volume.FromLiters(2)), null, Ratio.Zero)!;
        Assert.Equal((false, false, 1), (large.SurelyOverflows, large.MayOverflow, large.MouldsNeeded));
    }

    [Fact]
    public void Order_GivesItsBarsBack()
    {
        BarLayout bars = Loaf.Cut(new() { Thickness = Cm(2.5), Kerf = Cm(0.1), Ends = Cm(0.5), Samples = 1 });
        BarOrder order = new() { Saleable = 40, CuredMass = Mass.FromGrams(110), Loss = Ratio.FromPercent(9), Samples = 5, Waste = bars.Waste, LeftInPot = Ratio.FromPercent(1) };
        double inMoulds = order.Batch.Grams * 0.99 * (1 - bars.Waste.DecimalFractions);
        Assert.Equal(45 * 110, inMoulds * 0.91, 1e-6);
        // bars of a mould that holds so much weigh their share of it
        Assert.Equal(1500 * (1 - bars.Waste.DecimalFractions), bars.Bars * bars.MassWhenCut(Mass.FromGrams(1500)).Grams, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Drying_BalancesFromPourToCure(string name)
    {
        Moisture moisture = Example(name).Moisture();
        Mass poured = Mass.FromGrams(120);
        foreach (double percent in (double[])[2, 5, 10])
        {
            Ratio loss = moisture.LossTo(Ratio.FromPercent(percent))!.Value;
            Figure<Ratio> left = moisture.WaterLeft(poured, Mass.FromGrams(120 * (1 - loss.DecimalFractions)))!;
            Assert.Equal(percent, left.Value.Percent, 1e-9);
            Assert.True(left.High >= left.Low);
        }
        Assert.Equal(moisture.Water.Percent, moisture.WaterLeft(poured, poured)!.Value.Percent, 1e-9);
        Assert.Null(moisture.WaterLeft(poured, Mass.FromGrams(120 * (1 - moisture.LargestLoss.DecimalFractions) * 0.99)));
        Assert.Null(moisture.LossTo(Ratio.FromPercent(90)));
    }

    [Fact]
    public void WaterOfTheBatter_IsAllWaterAndWhatForms()
    {
        BatchPlan plain = Example("all-coconut");
        Assert.Equal(plain.Balance.AllWater.Grams / plain.BatchMass.Grams, plain.Moisture().Water.DecimalFractions, 1e-6);
        BatchPlan shaving = Example("shaving-soap");
        Assert.True(shaving.Moisture().Water.DecimalFractions > shaving.Balance.AllWater.Grams / shaving.BatchMass.Grams);
    }

    [Fact]
    public void HeatOfAWholeReaction_IsABoundWithARange()
    {
        MouldHeat heat = Example("all-coconut").HeatInMould(Loaf, Temperature.FromDegreesCelsius(35), false)!;
        Assert.True(heat.Rise.Low < heat.Rise.Value && heat.Rise.Value < heat.Rise.High);
        Assert.Equal(35 + heat.Rise.High!.Value.Kelvins, heat.Peak.High!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(Evidence.Memory, heat.Rise.Evidence);
        Assert.Equal((0, false), (heat.SugarInBatch.Grams, heat.MayScorch));
    }

    [Fact]
    public void LargeOrInsulatedMilkSoap_MayScorch_SmallBareOnesDoNot()
    {
        BatchPlan milk = Example("goat-milk-frozen");
        Temperature pour = Temperature.FromDegreesCelsius(45);
        Mould block = Mould.Box(Cm(40), Cm(30), Cm(30));
        Assert.True(milk.HeatInMould(block, pour, false)!.MayScorch);
        Assert.True(milk.HeatInMould(Loaf, pour, true)!.MayScorch);
        Assert.False(milk.HeatInMould(Loaf, pour, false)!.MayScorch);
        Assert.True(milk.HeatInMould(null, pour, false)!.RiseBySugar.Kelvins > 0);
        Assert.True(milk.HeatInMould(block, pour, false)!.CoreCooling!.Low > milk.HeatInMould(Loaf, pour, false)!.CoreCooling!.High);
    }

    [Fact]
    public void WhatCantBeWeighed_HasNoDensity()
    {
        Formula none = new("None") { Fats = [], Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.SodiumHydroxide(Ratio.FromPercent(99))), Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(30)) };
        Assert.Null(none.Plan().Batter(null));
        Assert.Null(none.Plan().Fill(Loaf, null, Ratio.Zero));
        Assert.Null(none.Plan().HeatInMould(Loaf, Temperature.FromDegreesCelsius(35), true));
        Assert.Throws<InvalidOperationException>(() => none.ScaledToBatch(Mass.FromGrams(1000)));
    }
}
