using Saponify.Tests.Formulas;

namespace Saponify.Tests.Making;

/// <summary>Single facts of moulds, cuts and batter, reckoned by hand.</summary>
public class MouldEdgeTests
{
    private static readonly SaponificationValue s_value = SaponificationValue.FromMilligramsKohPerGram(190);

    private static Mould Loaf => Mould.Box(Cm(25), Cm(9), Cm(7));

    private static Mould Tube => Mould.Cylinder(Cm(7), Cm(10));

    private static BatchPlan Plain => FormulaTests.Plain(Pantry.Reference.Fat("olive-oil").Weighing(Mass.FromGrams(500))).Plan();

    private static Length Cm(double value) => Length.FromCentimeters(value);

    [Fact]
    public void Moulds_AreInWords()
    {
        Assert.Equal("box 25 x 9 x 7 cm", Loaf.ToString());
        Assert.Equal("box 25 x 9 x 7 cm, lining 0.1 cm, filled to 6 cm", Loaf.WithLining(Cm(0.1)).FilledTo(Cm(6)).ToString());
        Assert.Equal("slab 40 x 30 x 4 cm", Mould.Slab(Cm(40), Cm(30), Cm(4)).ToString());
        Assert.Equal("cylinder 7 cm wide, 10 cm high", Tube.ToString());
        Assert.Equal("6 cavities of 95 mL", Mould.Cavities(6, Volume.FromMilliliters(95)).ToString());
        Assert.Equal("mould of 500 mL", Mould.OfVolume(Volume.FromMilliliters(500)).ToString());
    }

    [Fact]
    public void Sizes_AreGivenBack_OrNullWhereThereAreNone()
    {
        Mould lined = Loaf.WithLining(Cm(0.5));
        Assert.Equal((25, 9, 7, 0.5, 6.5), (lined.Length!.Value.Centimeters, lined.Width!.Value.Centimeters, lined.Height!.Value.Centimeters, lined.Lining.Centimeters, lined.FillHeight!.Value.Centimeters));
        Assert.Equal((null, 7, 10, 10), (Tube.Length, Tube.Width!.Value.Centimeters, Tube.Height!.Value.Centimeters, Tube.FillHeight!.Value.Centimeters));
        Mould cavities = Mould.Cavities(6, Volume.FromMilliliters(95));
        Assert.Equal((null, null, null, null), (cavities.Length, cavities.Width, cavities.Height, cavities.FillHeight));
        Assert.Equal((6, 1, 1), (cavities.Pieces, Loaf.Pieces, Mould.OfVolume(Volume.FromMilliliters(500)).Pieces));
        // the thickest lining: 4.4 of 4.5 cm leaves 0.2 cm between the walls
        Assert.Equal(16.2 * 0.2 * 2.6, Loaf.WithLining(Cm(4.4)).Volume.Milliliters, 1e-9);
        Assert.Equal(1575, Loaf.FilledTo(Cm(7)).Volume.Milliliters, 1e-9);
    }

    [Fact]
    public void Cylinder_IsCutIntoDiscs_AndABlockComesOutWhole()
    {
        BarLayout discs = Tube.Cut(new() { Thickness = Cm(2.5), Samples = 50 });
        Assert.Equal((4, 4, 0), (discs.Bars, discs.Samples, discs.Saleable));
        Assert.Equal(Math.PI / 4 * 49 * 2.5, discs.BarVolume.Milliliters, 1e-9);
        Assert.Equal((0, 25), (discs.Waste.Percent, discs.BarShare.Percent));
        Assert.Equal(2.5, Tube.ThicknessFor(discs.BarVolume, null).Centimeters, 1e-9);
        BarLayout whole = Loaf.Unmould(0);
        Assert.Equal((1, 0, 1575, 0, 0), (whole.Bars, whole.Samples, Math.Round(whole.BarVolume.Milliliters, 9), whole.EndsVolume.Milliliters, Math.Round(whole.KerfAndRest.Milliliters, 9)));
        // 10 slices of 2.4 cm from 25 cm leave 1 cm: a twenty-fifth
        BarLayout slices = Loaf.Cut(new() { Thickness = Cm(2.4) });
        Assert.Equal(4, slices.Waste.Percent, 1e-9);
        Assert.Equal(63, slices.KerfAndRest.Milliliters, 1e-9);
        // ends of 0.5 cm: 63 mL as well, and 9 slices are left
        BarLayout trimmed = Loaf.Cut(new() { Thickness = Cm(2.5), Ends = Cm(0.5) });
        Assert.Equal((9, 63), (trimmed.Bars, Math.Round(trimmed.EndsVolume.Milliliters, 9)));
    }

    [Fact]
    public void Order_IsReckonedFromTheCuredBarBack()
    {
        BarOrder order = new() { Saleable = 8, Samples = 2, CuredMass = Mass.FromGrams(90), Loss = Ratio.FromPercent(10), Waste = Ratio.FromPercent(20), LeftInPot = Ratio.FromPercent(50) };
        Assert.Equal(100, order.PouredMass.Grams, 1e-9);
        // ten bars of 100 g over 0.8 and 0.5
        Assert.Equal(2500, order.Batch.Grams, 1e-9);
        Assert.Equal((10, 20, 50, 90), (order.Loss.Percent, order.Waste.Percent, order.LeftInPot.Percent, order.CuredMass.Grams));
    }

    [Theory]
    [InlineData(FatClass.Triglyceride, 0.90)]
    [InlineData(FatClass.FreeAcid, 0.85)]
    public void FatWithoutDensity_HasASpan_ThatShrinksAsItWarms(FatClass fatClass, double least)
    {
        Fat own = new("own", "Own fat", fatClass, new() { Saponification = new(s_value, Evidence.Measured, ["own"]) });
        BatterPart part = FormulaTests.Plain(own.Weighing(Mass.FromGrams(500))).Plan().Batter(Temperature.FromDegreesCelsius(38))!.Parts[0];
        // 18 degrees above the 20 of the span: an oil grows by 0.06 to 0.08 % a degree (memory)
        Assert.Equal(least * (1 - (0.0008 * 18)), part.Density.Low!.Value.GramsPerMilliliter, 1e-9);
        Assert.Equal(0.93 * (1 - (0.0006 * 18)), part.Density.High!.Value.GramsPerMilliliter, 1e-9);
        Assert.Equal(("Own fat", 500, Evidence.Memory, "estimate: no figure on file"), (part.Name, part.Mass.Grams, part.Density.Evidence, part.Density.Note));
        // cooler than 20 it is denser at the most by as much
        BatterPart cold = FormulaTests.Plain(own.Weighing(Mass.FromGrams(500))).Plan().Batter(Temperature.FromDegreesCelsius(10))!.Parts[0];
        Assert.Equal(least * (1 + (0.0006 * 10)), cold.Density.Low!.Value.GramsPerMilliliter, 1e-9);
        Assert.Equal(0.93 * (1 + (0.0008 * 10)), cold.Density.High!.Value.GramsPerMilliliter, 1e-9);
    }

    [Fact]
    public void Fill_FollowsTheDensity()
    {
        MouldFill fill = Plain.Fill(Loaf, null, Ratio.FromPercent(2))!;
        double poured = fill.Plan.BatchMass.Grams * 0.98;
        Figure<Density> density = fill.Batter.Density;
        Assert.Equal(poured, fill.Poured.Grams, 1e-9);
        Assert.Equal(poured / density.Low!.Value.GramsPerMilliliter, fill.Volume.High!.Value.Milliliters, 1e-6);
        Assert.Equal(poured / density.High!.Value.GramsPerMilliliter / 1575, fill.ShareOfMould.Low!.Value.DecimalFractions, 1e-9);
        Assert.Equal(1575 * density.Low.Value.GramsPerMilliliter, fill.MassOfMould.Low!.Value.Grams, 1e-6);
        Assert.Equal(1575 * density.High.Value.GramsPerMilliliter, fill.MassOfMould.High!.Value.Grams, 1e-6);
        Assert.Equal(1 / fill.ShareOfMould.Value.DecimalFractions, fill.FactorToFill(1), 1e-9);
        Assert.Equal("estimate from the parts; whipped-in air makes it lighter", density.Note);
    }

    [Fact]
    public void HalfOfTheWaterGone_LeavesTheOtherHalf()
    {
        Moisture moisture = Plain.Moisture();
        double water = moisture.Water.DecimalFractions;
        Assert.Equal(water, moisture.LargestLoss.DecimalFractions, 1e-12);
        Assert.Equal(0, moisture.AlcoholAndScent.DecimalFractions);
        Assert.Equal(water, moisture.LossTo(Ratio.Zero)!.Value.DecimalFractions, 1e-12);
        Assert.Equal(0, moisture.LossTo(moisture.Water)!.Value.DecimalFractions, 1e-9);
        Figure<Ratio> left = moisture.WaterLeft(Mass.FromGrams(100), Mass.FromGrams(100 * (1 - (water / 2))))!;
        Assert.Equal(water / 2 / (1 - (water / 2)), left.Value.DecimalFractions, 1e-9);
        Assert.Equal("mass balance", left.Note);
    }

    [Fact]
    public void HighEndOfTheHeat_IsTheRuleOfThumb_OverEsterAndLye()
    {
        // 75 against 54.3 kJ per mol of alkali
        MouldHeat heat = Plain.HeatInMould(Loaf, Temperature.FromDegreesCelsius(40), false)!;
        Assert.Equal(75 / 54.3, heat.Rise.High!.Value.Kelvins / heat.Rise.Low!.Value.Kelvins, 1e-9);
        Assert.Equal((40, "bound: no heat lost"), (heat.Pour.DegreesCelsius, heat.Rise.Note));
        Assert.Equal(0, heat.RiseBySugar.Kelvins);
    }

    /// <summary>Carslaw and Jaeger, Conduction of Heat in Solids, slowest modes of a box and of a finite cylinder (from memory); 2.405 is the first zero of J0.</summary>
    [Fact]
    public void MiddleOfABlock_CoolsByItsSlowestMode()
    {
        double box = Math.PI * Math.PI * ((1 / (0.25 * 0.25)) + (1 / (0.09 * 0.09)) + (1 / (0.07 * 0.07))), tube = Math.Pow(2.405 / 0.035, 2) + Math.Pow(Math.PI / 0.1, 2);
        Temperature pour = Temperature.FromDegreesCelsius(40);
        Figure<Duration> loaf = Plain.HeatInMould(Loaf, pour, false)!.CoreCooling!, round = Plain.HeatInMould(Tube, pour, false)!.CoreCooling!;
        Assert.Equal(1 / (1.9e-7 * box), loaf.Low!.Value.Seconds, 1e-6);
        Assert.Equal(1 / (0.7e-7 * box), loaf.High!.Value.Seconds, 1e-6);
        Assert.Equal((loaf.Low.Value.Seconds + loaf.High.Value.Seconds) / 2, loaf.Value.Seconds, 1e-6);
        Assert.Equal(1 / (1.9e-7 * tube), round.Low!.Value.Seconds, 1e-6);
        Assert.Equal(1 / (0.7e-7 * tube), round.High!.Value.Seconds, 1e-6);
        Assert.Null(Plain.HeatInMould(null, pour, false)!.CoreCooling);
        Assert.Null(Plain.HeatInMould(Mould.Cavities(6, Volume.FromMilliliters(95)), pour, false)!.CoreCooling);
        // the loaf needs 0.8 hours, so it keeps its heat when wrapped only
        Assert.False(Plain.HeatInMould(Loaf, pour, false)!.KeepsItsHeat);
        Assert.True(Plain.HeatInMould(Loaf, pour, true)!.KeepsItsHeat);
    }
}
