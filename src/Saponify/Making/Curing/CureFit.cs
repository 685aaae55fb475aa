using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// The exponential approach of a bar to its final mass, m(t) = end + excess exp(-t/T), fitted to the maker's own weighings; or the reason why they
/// don't tell. No rate is assumed: nothing published gives one for a soap bar. Immutable, thread-safe.
/// </summary>
/// <remarks>
/// T by a search in one dimension, the rest by linear least squares inside it. Intervals by the profile of the sum of squares with Student's t for the weighings
/// left over; the scatter is at least that of the scale, step/sqrt(12) (JCGM 100, rectangular). They hold for errors that are independent and a room that stays as it is.
/// </remarks>
public sealed class CureFit
{
    /// <summary>Weighings that a fit needs: three numbers are fitted, and two are left to judge the scatter.</summary>
    private const int Fewest = 5, FewestDays = 4;

    /// <summary>A loss stands out when chance gives it once in a hundred series.</summary>
    private const double Chance = 0.01;

    private const double LongestDays = 3653;

    private readonly CureModel? _model;
    private readonly double _variance;

    private CureFit(CureSeries series, CureFitFailure failure) => (Series, Failure) = (series, failure);

    private CureFit(CureSeries series, CureModel model, double variance)
        : this(series, CureFitFailure.None) => (_model, _variance) = (model, variance);

    /// <summary>The series.</summary>
    public CureSeries Series { get; }

    /// <summary>Why there is no fit; <see cref="CureFitFailure.None"/> when there is one.</summary>
    public CureFitFailure Failure { get; }

    /// <summary>True when there is a fit, and so a forecast.</summary>
    public bool Succeeded => _model is not null;

    /// <summary>One sentence on what the weighings tell, or what to do when they don't; invariant.</summary>
    public string Verdict => Failure switch
    {
        CureFitFailure.None => "The weighings follow an exponential approach to a final mass.",
        CureFitFailure.Faults => "Mend the faults of the series first.",
        CureFitFailure.TooFew => $"Too few weighings for a forecast: at least {Text.Number(Fewest)} on {Text.Number(FewestDays)} days are needed.",
        CureFitFailure.NoLoss => "The loss does not stand out from the scatter of the weighings: the bar may be done, or the scale too coarse.",
        _ => "No end of the loss is in sight yet, a straight line fits as well: weigh on.",
    };

    /// <summary>The final mass with its interval of 95 %; null without a fit. An end is null when the weighings leave it open.</summary>
    public Figure<Mass>? FinalMass => _model is { } model ? Interval(model.Final, g => model.SquaresWithFinal(g), 0) : null;

    /// <summary>The time in which the loss yet to come falls to 37 %; null without a fit.</summary>
    public Duration? TimeConstant => _model is { } model ? Duration.FromDays(model.TimeConstant) : null;

    /// <summary>Scatter of one weighing about the curve (standard deviation), never less than the scale has; null without a fit.</summary>
    public Mass? Scatter => _model is null ? null : Mass.FromGrams(Math.Sqrt(_variance));

    /// <summary>The mass on a day with its interval of 95 %, for the curve, not for one more weighing; null without a fit. A day before the first weighing is extrapolated.</summary>
    /// <param name="date">The day.</param>
    public Figure<Mass>? MassOn(DateOnly date)
    {
        if (_model is not { } model)
            return null;
        double day = date.DayNumber - Series.Weighings[0].Date.DayNumber;
        return Interval(model.At(day), g => model.SquaresWithMass(day, g), 0);
    }

    /// <summary>When the bar is ready, with an interval; null without a fit.</summary>
    /// <param name="when">What counts as ready.</param>
    /// <param name="coverage">Probability that the interval covers, from 50 to 99.9 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public CureForecast? Forecast(ReadyWhen when, Ratio coverage)
    {
        double covered = Stored.Fraction(coverage, 0.5, 0.999, "A coverage");
        if (_model is not { } model)
            return null;
        double limit = model.Squares + Allowance(covered);
        double? day = when.Fraction > 0 ? model.ReadyDay(when) ?? 0 : null;
        double? early = null, late = null;
        if (day is { } at && at < LongestDays)
        {
            double Squares(double d) => model.SquaresWithReady(d, when);
            double from = Math.Max(at, 0);
            // on the first day or before: it was ready then
            early = from > 0 ? Edge(from, 0, Squares, limit) ?? 0 : 0;
            late = Edge(from, LongestDays, Squares, limit);
        }
        return new(when, coverage, Day(day), Day(early), Day(late));
    }

    internal static CureFit Of(CureSeries series)
    {
        if (series.Faults.Any(f => f.PreventsFit))
            return new(series, CureFitFailure.Faults);
        int n = series.Weighings.Count;
        if (n < Fewest || series.Weighings.Select(w => w.Date).Distinct().Count() < FewestDays)
            return new(series, CureFitFailure.TooFew);
        int first = series.Weighings[0].Date.DayNumber;
        CureModel model = new([.. series.Weighings.Select(w => (double)(w.Date.DayNumber - first))], [.. series.Weighings.Select(w => w.Grams)]);
        int freedom = n - 3;
        double step = series.Scale?.StepGrams ?? 0, variance = Math.Max(model.Squares / freedom, Math.Max(step * step / 12, 1e-18 * model.Final * model.Final));
        // upper quantile of F with 2 and f degrees of freedom: f/2 (p^(-2/f) - 1)
        double stands = 2 * variance * freedom / 2 * (Math.Pow(Chance, -2.0 / freedom) - 1);
        if (!(model.Excess > 0) || model.ConstantSquares - model.Squares <= stands)
            return new(series, CureFitFailure.NoLoss);
        CureFit fit = new(series, model, variance);
        return model.StraightSquares - model.Squares <= fit.Allowance(0.95) || !(model.Final > 0) ? new(series, CureFitFailure.NoPlateau) : fit;
    }

    /// <summary>By how much the sum of squares may rise inside an interval.</summary>
    private double Allowance(double coverage)
    {
        double t = StudentT.TwoSided(Series.Weighings.Count - 3, coverage);
        return t * t * _variance;
    }

    private Figure<Mass> Interval(double value, Func<double, double> squares, double floor)
    {
        double limit = _model!.Squares + Allowance(0.95), most = 10 * Series.Weighings.Max(w => w.Grams);
        double? low = Edge(value, floor, squares, limit), high = Edge(value, Math.Max(most, value), squares, limit);
        return new(Mass.FromGrams(value), Evidence.Measured, ["own"])
        {
            Low = low is { } l ? Mass.FromGrams(l) : null,
            High = high is { } h ? Mass.FromGrams(h) : null,
            IsOwn = true,
            Note = "95 %, fitted to the weighings",
        };
    }

    /// <summary>Where the profile passes the limit between the estimate and an end; null when it does not.</summary>
    private static double? Edge(double inside, double end, Func<double, double> squares, double limit)
    {
        // steps that double find the far side before the halving starts: the profile may have other troughs beyond
        double step = (end - inside) / 4096, outside = inside;
        for (int i = 0; i <= 12; i++)
        {
            outside = i == 12 ? end : inside + (step * Math.Pow(2, i));
            if (squares(outside) > limit)
                break;
            if (i == 12)
                return null;
        }
        double within = inside;
        for (int i = 0; i < 50 && Math.Abs(outside - within) > 1e-7 * Math.Max(1, Math.Abs(inside)); i++)
        {
            double middle = (within + outside) / 2;
            if (squares(middle) > limit)
                outside = middle;
            else
                within = middle;
        }
        return (within + outside) / 2;
    }

    private DateOnly? Day(double? days) => days is { } value && value < LongestDays
        ? DateOnly.FromDayNumber((int)Math.Min(DateOnly.MaxValue.DayNumber, Series.Weighings[0].Date.DayNumber + Math.Ceiling(Math.Max(0, value) - 1e-6)))
        : null;
}
