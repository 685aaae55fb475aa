using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Making;

/// <summary>Laws of curing bars and of what may be declared.</summary>
public class CureLaws
{
    private static readonly DateOnly s_first = new(2026, 3, 1);

    private static readonly int[] s_days = [0, 2, 5, 9, 14, 20, 27, 35, 44, 54];

    private static readonly ReadyWhen s_ready = ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(1));

    private static readonly Gen<(double Final, double Excess, double Time)> s_curves =
        from final in Any.Between(40, 400)
        from share in Any.Between(0.04, 0.25)
        from time in Any.Between(5, 25)
        select (final, final * share, time);

    private static readonly Gen<double[]> s_bars = Any.Between(60, 180).ArrayOf().Where(b => b.Length is > 0 and < 40);

    private static CureSeries Weighed((double Final, double Excess, double Time) curve, DateOnly first, double factor = 1) =>
        new("1", [.. s_days.Select(d => new BarWeighing(first.AddDays(d), Mass.FromGrams(factor * (curve.Final + (curve.Excess * Math.Exp(-d / curve.Time))))))]);

    [Law(100)]
    public Property WeighingsWithoutError_GiveTheirCurveBack() => Prop.ForAll(s_curves.Arbitrary(), curve =>
    {
        CureFit fit = Weighed(curve, s_first).Fit();
        return fit.Succeeded && Near.Is(curve.Final, fit.FinalMass!.Value.Grams, 1e-4) && Near.Is(curve.Time, fit.TimeConstant!.Value.Days, 1e-2)
            && s_days.All(d => Near.Is(curve.Final + (curve.Excess * Math.Exp(-d / curve.Time)), fit.MassOn(s_first.AddDays(d))!.Value.Grams, 1e-5));
    });

    [Law(100)]
    public Property LaterByDays_ReadyLaterByDays() => Prop.ForAll(s_curves.Arbitrary(), Gen.Choose(1, 400).Arbitrary(), (curve, days) =>
    {
        CureForecast one = Weighed(curve, s_first).Fit().Forecast(s_ready, Ratio.FromPercent(95))!, other = Weighed(curve, s_first.AddDays(days)).Fit().Forecast(s_ready, Ratio.FromPercent(95))!;
        return other.Date == one.Date?.AddDays(days) && other.Earliest == one.Earliest?.AddDays(days) && other.Latest == one.Latest?.AddDays(days);
    });

    [Law(100)]
    public Property HeavierBars_OfTheSameShape_AreReadyOnTheSameDay() => Prop.ForAll(s_curves.Arbitrary(), Any.Between(0.2, 5).Arbitrary(), (curve, factor) =>
    {
        CureFit one = Weighed(curve, s_first).Fit(), other = Weighed(curve, s_first, factor).Fit();
        int day = one.Forecast(s_ready, Ratio.FromPercent(95))!.Date!.Value.DayNumber, same = other.Forecast(s_ready, Ratio.FromPercent(95))!.Date!.Value.DayNumber;
        // a day is a whole number: on the edge of one, rounding may decide
        return Math.Abs(day - same) <= 1 && Near.Is(factor * one.FinalMass!.Value.Grams, other.FinalMass!.Value.Grams, 1e-5);
    });

    [Law(100)]
    public Property AStricterReady_NeverComesEarlier_AndItsIntervalHoldsIt() => Prop.ForAll(s_curves.Arbitrary(), Any.Between(0.3, 2).Arbitrary(), (curve, percent) =>
    {
        CureFit fit = Weighed(curve, s_first).Fit();
        CureForecast lax = fit.Forecast(ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(percent)), Ratio.FromPercent(95))!, strict = fit.Forecast(ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(percent / 2)), Ratio.FromPercent(95))!;
        return lax.Date <= strict.Date && lax.Earliest <= lax.Date && !(lax.Latest < lax.Date);
    });

    [Law]
    public Property WhatIsSuggested_IsNotAboveTheMean_NorMoreAfterALongerWait() => Prop.ForAll(s_bars.Arbitrary(), Any.Between(0, 0.3).Arbitrary(), Any.Between(0, 0.3).Arbitrary(), (bars, one, other) =>
    {
        NetQuantity sample = new([.. bars.Select(b => Mass.FromGrams(b))]);
        Mass step = Mass.FromGrams(1);
        (double little, double much) = (Math.Min(one, other), Math.Max(one, other));
        Mass? soon = sample.Suggest(Ratio.FromDecimalFractions(little), step), late = sample.Suggest(Ratio.FromDecimalFractions(much), step);
        return (late is null || (soon is not null && late.Value <= soon.Value))
            && (soon is not { } declared || (declared.Grams <= (sample.Mean.Grams * (1 - little)) + 1e-6 && Near.Is(declared.Grams, Math.Round(declared.Grams), 1e-12)
                && new NetQuantity([.. bars.Select(b => Mass.FromGrams(b * (1 - little)))]).ShareBelow(declared)?.DecimalFractions is not > 0));
    });

    [Law]
    public Property TheMoreIsDeclared_TheMoreBarsFallShort() => Prop.ForAll(s_bars.Arbitrary(), Any.Between(60, 180).Arbitrary(), Any.Between(0, 60).Arbitrary(), (bars, declared, more) =>
    {
        NetQuantity sample = new([.. bars.Select(b => Mass.FromGrams(b))]);
        double little = sample.ShareBelow(Mass.FromGrams(declared))!.Value.DecimalFractions, much = sample.ShareBelow(Mass.FromGrams(declared + more))!.Value.DecimalFractions;
        return little <= much && sample.ShareBelowTwice(Mass.FromGrams(declared))!.Value.DecimalFractions <= little;
    });
}
