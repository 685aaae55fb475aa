using Saponify.Internals;

namespace Saponify;

/// <summary>
/// m(t) = e + a exp(-t/T) by least squares: the time constant T by a search in one dimension over its logarithm, e and a by linear least squares
/// inside it. A quantity of the curve gets its interval by the profile: it is held at a value, the rest is fitted again, and all values count that
/// raise the sum of squares by no more than t^2 s^2.
/// </summary>
internal sealed class CureModel
{
    private const int Grid = 120;

    private readonly double[] _days, _grams;
    private readonly double _least, _most;

    internal CureModel(double[] days, double[] grams)
    {
        (_days, _grams) = (days, grams);
        double span = days[^1] - days[0], gap = span;
        for (int i = 1; i < days.Length; i++)
            gap = days[i] > days[i - 1] ? Math.Min(gap, days[i] - days[i - 1]) : gap;
        // faster than a third of the smallest gap leaves no trace, and slower than a hundred spans is a straight line
        (_least, _most) = (Math.Log(gap / 3), Math.Log(100 * span));
        (LogTime, Squares) = Search(t => Free(t).Squares);
        (_, Final, Excess) = Free(LogTime);
    }

    internal double LogTime { get; }

    internal double TimeConstant => Math.Exp(LogTime);

    internal double Squares { get; }

    internal double Final { get; }

    internal double Excess { get; }

    /// <summary>Sum of squares about the straight line, the limit of slow curves.</summary>
    internal double StraightSquares => Linear(d => d).Squares;

    /// <summary>Sum of squares about the mean.</summary>
    internal double ConstantSquares
    {
        get
        {
            double mean = _grams.Average();
            return _grams.Sum(m => (m - mean) * (m - mean));
        }
    }

    internal double At(double day) => Final + (Excess * Math.Exp(-day / TimeConstant));

    /// <summary>Least squares with the mass at a day held.</summary>
    internal double SquaresWithMass(double day, double grams) => Search(log =>
    {
        // m = grams + a (q(t) - q(day))
        double time = Math.Exp(log), held = Math.Exp(-day / time);
        return OneFactor(d => Math.Exp(-d / time) - held, grams);
    }).Squares;

    /// <summary>Least squares with the final mass held.</summary>
    internal double SquaresWithFinal(double grams) => Search(log => OneFactor(d => Math.Exp(-d / Math.Exp(log)), grams)).Squares;

    /// <summary>Least squares with the ready day held: then a = e r exp(day/T), and only e is free.</summary>
    internal double SquaresWithReady(double day, ReadyWhen when) => Search(log =>
    {
        double time = Math.Exp(log), ratio = when.ExcessAtReady(time);
        return double.IsFinite(ratio) ? OneFactor(d => 1 + (ratio * Math.Exp((day - d) / time)), 0) : double.MaxValue;
    }).Squares;

    /// <summary>The ready day of the fitted curve; null when it was always ready.</summary>
    internal double? ReadyDay(ReadyWhen when)
    {
        double ratio = when.ExcessAtReady(TimeConstant);
        return double.IsFinite(ratio) && Excess > 0 && Final > 0 ? TimeConstant * Math.Log(Excess / (Final * ratio)) : null;
    }

    private (double Squares, double Final, double Excess) Free(double log)
    {
        double time = Math.Exp(log);
        return Linear(d => Math.Exp(-d / time));
    }

    private (double Squares, double Final, double Excess) Linear(Func<double, double> basis)
    {
        int n = _days.Length;
        double x = 0, y = 0, xx = 0, xy = 0;
        double[] at = [.. _days.Select(basis)];
        for (int i = 0; i < n; i++)
        {
            x += at[i] / n;
            y += _grams[i] / n;
        }
        for (int i = 0; i < n; i++)
        {
            xx += (at[i] - x) * (at[i] - x);
            xy += (at[i] - x) * (_grams[i] - y);
        }
        double slope = xx > 0 ? xy / xx : 0, start = y - (slope * x), squares = 0;
        for (int i = 0; i < n; i++)
        {
            double off = _grams[i] - start - (slope * at[i]);
            squares += off * off;
        }
        return (squares, start, slope);
    }

    private double OneFactor(Func<double, double> basis, double offset)
    {
        double xx = 0, xy = 0;
        double[] at = [.. _days.Select(basis)];
        for (int i = 0; i < at.Length; i++)
        {
            if (!double.IsFinite(at[i]))
                return double.MaxValue;
            xx += at[i] * at[i];
            xy += at[i] * (_grams[i] - offset);
        }
        double factor = xx > 0 ? xy / xx : 0, squares = 0;
        for (int i = 0; i < at.Length; i++)
        {
            double off = _grams[i] - offset - (factor * at[i]);
            squares += off * off;
        }
        return double.IsFinite(squares) ? squares : double.MaxValue;
    }

    /// <summary>The least of a function of the logarithm of the time constant: a grid, then a golden section about its least point.</summary>
    private (double LogTime, double Squares) Search(Func<double, double> squares)
    {
        double step = (_most - _least) / Grid, best = _least, least = double.MaxValue;
        for (int i = 0; i <= Grid; i++)
        {
            double log = _least + (i * step), value = squares(log);
            if (value < least)
                (best, least) = (log, value);
        }
        double section = (Math.Sqrt(5) - 1) / 2, low = Math.Max(_least, best - step), high = Math.Min(_most, best + step);
        double one = high - (section * (high - low)), two = low + (section * (high - low)), atOne = squares(one), atTwo = squares(two);
        for (int i = 0; i < 40; i++)
        {
            if (atOne < atTwo)
            {
                (high, two, atTwo) = (two, one, atOne);
                one = high - (section * (high - low));
                atOne = squares(one);
            }
            else
            {
                (low, one, atOne) = (one, two, atTwo);
                two = low + (section * (high - low));
                atTwo = squares(two);
            }
        }
        double middle = (low + high) / 2, found = squares(middle);
        return found < least ? (middle, found) : (best, least);
    }
}
