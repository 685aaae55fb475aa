using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Making;

/// <summary>Laws of moulds, bars and the water in them.</summary>
public class MouldLaws
{
    private static readonly Gen<(double Long, double Wide, double High)> s_sizes =
        from length in Any.Between(5, 60)
        from width in Any.Between(5, 40)
        from height in Any.Between(3, 20)
        select (length, width, height);

    private static readonly Gen<CuttingPlan> s_cuts =
        from thickness in Any.Between(0.5, 6)
        from across in Any.Between(1, 10)
        from kerf in Any.Between(0, 0.5)
        from ends in Any.Between(0, 2)
        from samples in Gen.Choose(0, 3)
        select new CuttingPlan { Thickness = Cm(thickness), Across = Cm(across), Kerf = Cm(kerf), Ends = Cm(ends), Samples = samples };

    private static Length Cm(double value) => Length.FromCentimeters(value);

    private static Temperature Pour => Temperature.FromDegreesCelsius(38);

    [Law]
    public Property BarsEndsKerfAndRest_AreTheWholeBlock() => Prop.ForAll(s_sizes.Arbitrary(), s_cuts.Arbitrary(), (size, plan) =>
    {
        BarLayout[] layouts =
        [
            Mould.Slab(Cm(size.Long), Cm(size.Wide), Cm(size.High)).Cut(plan),
            Mould.Box(Cm(size.Long), Cm(size.Wide), Cm(size.High)).Cut(plan with { Across = null }),
            Mould.Cylinder(Cm(size.Wide), Cm(size.Long)).Cut(plan with { Across = null }),
        ];
        return layouts.All(l =>
        {
            double block = l.Mould.Volume.Milliliters, bars = l.Bars * l.BarVolume.Milliliters;
            return bars <= block * (1 + 1e-9)
                && (l.Bars == 0 || Near.Is(block, bars + l.EndsVolume.Milliliters + l.KerfAndRest.Milliliters, 1e-9))
                && Near.Is(1 - (bars / block), l.Waste.DecimalFractions, 1e-9, 1e-9)
                && l.Saleable + l.Samples == l.Bars;
        });
    });

    [Law]
    public Property WhatIsLeftOfABox_IsLessThanOneMoreSlice() => Prop.ForAll(s_sizes.Arbitrary(), s_cuts.Arbitrary(), (size, plan) =>
    {
        BarLayout cut = Mould.Box(Cm(size.Long), Cm(size.Wide), Cm(size.High)).Cut(plan with { Across = null });
        double slice = plan.Thickness.Centimeters, kerf = plan.Kerf.Centimeters, left = cut.KerfAndRest.Milliliters / (size.Wide * size.High);
        // a cut between the slices, and one at each trimmed end
        return cut.Bars == 0 || left < slice + (kerf * (cut.Bars + 2)) + 1e-6;
    });

    [Law]
    public Property AllLengthsTwice_EightTimesTheVolume_AndTheSameBars() => Prop.ForAll(s_sizes.Arbitrary(), s_cuts.Arbitrary(), (size, plan) =>
    {
        BarLayout one = Mould.Slab(Cm(size.Long), Cm(size.Wide), Cm(size.High)).Cut(plan);
        BarLayout two = Mould.Slab(Cm(2 * size.Long), Cm(2 * size.Wide), Cm(2 * size.High)).Cut(plan with { Thickness = 2 * plan.Thickness, Across = 2 * plan.Across, Kerf = 2 * plan.Kerf, Ends = 2 * plan.Ends });
        return one.Bars == two.Bars && Near.Is(8 * one.Mould.Volume.Milliliters, two.Mould.Volume.Milliliters, 1e-9) && Near.Is(8 * one.BarVolume.Milliliters, two.BarVolume.Milliliters, 1e-9);
    });

    [Law]
    public Property ThickerLining_LowerFill_WiderKerf_NeverGiveMore() => Prop.ForAll(s_sizes.Arbitrary(), Any.Between(0, 1).Arbitrary(), s_cuts.Arbitrary(), (size, part, plan) =>
    {
        Mould mould = Mould.Box(Cm(size.Long), Cm(size.Wide), Cm(size.High));
        Mould lined = mould.WithLining(Cm(part)), more = mould.WithLining(Cm(part + 0.1)), low = mould.FilledTo(Cm(size.High * (0.1 + (0.9 * part))));
        CuttingPlan slices = plan with { Across = null };
        return more.Volume < lined.Volume && lined.Volume <= mould.Volume && low.Volume <= mould.Volume
            && mould.Cut(slices with { Kerf = slices.Kerf + Cm(0.1) }).Bars <= mould.Cut(slices).Bars
            && more.Cut(slices).Bars <= lined.Cut(slices).Bars;
    });

    [Law]
    public Property ASliceOfTheThicknessForAVolume_HasThatVolume() => Prop.ForAll(s_sizes.Arbitrary(), Any.Between(0.02, 0.4).Arbitrary(), (size, share) =>
    {
        Mould mould = Mould.Box(Cm(size.Long), Cm(size.Wide), Cm(size.High));
        Volume wanted = mould.Volume * share;
        BarLayout cut = mould.Cut(new() { Thickness = mould.ThicknessFor(wanted, null) });
        return Near.Is(wanted.Milliliters, cut.BarVolume.Milliliters, 1e-9) && cut.Bars == (int)Math.Floor((1 / share) + 1e-9);
    });

    [Law]
    public Property ScaledToFill_TheMouldsAreFull_WhateverStaysInThePot() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0, 0.3).Arbitrary(), Gen.Choose(1, 5).Arbitrary(), (formula, left, moulds) =>
    {
        Mould mould = Mould.Box(Cm(25), Cm(9), Cm(7));
        Ratio stays = Ratio.FromDecimalFractions(left);
        if (formula.Plan().Fill(mould, Pour, stays) is not { } fill)
            return formula.Plan().Batter(Pour) is null;
        MouldFill full = fill.ScaledToFill(moulds).Plan().Fill(mould, Pour, stays)!;
        return Near.Is(moulds, full.FactorToFill(1) is var again ? 1 / again : 0, 1e-6)
            && full.ShareOfMould.Low!.Value.DecimalFractions <= moulds * (1 + 1e-6) && full.ShareOfMould.High!.Value.DecimalFractions >= moulds * (1 - 1e-6)
            && Near.Is(fill.Plan.Balance.BatchMass.Grams * (1 - left), fill.Poured.Grams, 1e-9);
    });

    [Law]
    public Property AnOrderOfBars_IsMadeOfItsBatch_WithoutLossOfMass() => Prop.ForAll(Gen.Choose(1, 500).Arbitrary(), Any.Between(0, 0.5).Arbitrary(), Any.Between(0, 0.4).Arbitrary(), (bars, loss, waste) =>
    {
        BarOrder order = new() { Saleable = bars, Samples = bars % 4, CuredMass = Mass.FromGrams(110), Loss = Ratio.FromDecimalFractions(loss), Waste = Ratio.FromDecimalFractions(waste), LeftInPot = Ratio.FromPercent(2) };
        double batch = order.Batch.Grams, poured = batch * 0.98, inBars = poured * (1 - waste);
        return Near.Is(inBars * (1 - loss), (bars + (bars % 4)) * 110, 1e-9) && Near.Is(inBars / (bars + (bars % 4)), order.PouredMass.Grams, 1e-9);
    });

    [Law]
    public Property NoBarLosesMoreThanItHasToGive_AndWhatIsLeftIsLessOfIt() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0, 1).Arbitrary(), (formula, part) =>
    {
        Moisture moisture = formula.Plan().Moisture();
        double most = moisture.LargestLoss.DecimalFractions, lost = part * most;
        Mass poured = Mass.FromGrams(130);
        Figure<Ratio> start = moisture.WaterLeft(poured, poured)!, then = moisture.WaterLeft(poured, poured * (1 - lost))!;
        return Near.Is(moisture.Water.DecimalFractions, start.Value.DecimalFractions, 1e-9, 1e-12)
            && then.Low!.Value <= then.High!.Value && then.Value <= start.Value
            && moisture.WaterLeft(poured, poured * (1 - most - 0.001)) is null
            // dried by water alone to a share, a bar has that share
            && (moisture.LossTo(then.Value) is not { } loss || Near.Is(then.Value.DecimalFractions, moisture.WaterLeft(poured, poured * (1 - loss.DecimalFractions))!.Value.DecimalFractions, 1e-6, 1e-9));
    });

    [Law]
    public Property TheMouldIsWarmest_WithoutLosses_AndWarmerByAWarmerPour() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(20, 60).Arbitrary(), Any.Between(0.5, 20).Arbitrary(), (formula, celsius, more) =>
    {
        BatchPlan plan = formula.Plan();
        if (plan.HeatInMould(null, Temperature.FromDegreesCelsius(celsius), true) is not { } heat)
            return plan.Batter(Pour) is null;
        MouldHeat warmer = plan.HeatInMould(null, Temperature.FromDegreesCelsius(celsius + more), true)!;
        return heat.Peak.Low!.Value.DegreesCelsius >= celsius && heat.Peak.High!.Value >= heat.Peak.Low.Value && warmer.Peak.Low!.Value > heat.Peak.Low.Value;
    });
}
