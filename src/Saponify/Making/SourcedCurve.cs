using Saponify.Internals;

namespace Saponify;

/// <summary>
/// A curve through the rows of a table. Between rows it is straight, or monotone and smooth (cubic pieces whose slopes never overshoot);
/// outside them there is no value.
/// </summary>
internal sealed class SourcedCurve
{
    /// <summary>So far beyond an end a value still counts as the end: rounding in the caller's arithmetic.</summary>
    private const double Slack = 1e-9;

    private readonly CurvePoint[] _points;
    private readonly double[]? _slopes;

    internal SourcedCurve(IEnumerable<CurvePoint> points, bool smooth)
    {
        _points = [.. points.OrderBy(p => p.At)];
        _slopes = smooth ? Slopes(_points) : null;
    }

    internal double Least => _points[0].At;

    internal double Most => _points[^1].At;

    /// <summary>The value, or NaN outside the rows.</summary>
    internal double Value(double at)
    {
        if (!(at >= Least - Slack && at <= Most + Slack))
            return double.NaN;
        int i = Piece(at);
        CurvePoint from = _points[i], to = _points[i + 1];
        double width = to.At - from.At, t = Math.Clamp((at - from.At) / width, 0, 1);
        if (_slopes is null)
            return from.Value + (t * (to.Value - from.Value));
        double t2 = t * t, t3 = t2 * t;
        return (((2 * t3) - (3 * t2) + 1) * from.Value) + ((t3 - (2 * t2) + t) * width * _slopes[i])
            + (((3 * t2) - (2 * t3)) * to.Value) + ((t3 - t2) * width * _slopes[i + 1]);
    }

    /// <summary>The value with its error and support: those of the weaker neighbour. Null outside the rows.</summary>
    internal CurvePoint? At(double at)
    {
        double value = Value(at);
        if (double.IsNaN(value))
            return null;
        int i = Piece(at);
        CurvePoint from = _points[i], to = _points[i + 1];
        double error = Math.Max(from.Error, to.Error);
        return new(at, value - error, value + error, [.. from.Sources.Concat(to.Sources).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            from.Evidence > to.Evidence ? from.Evidence : to.Evidence, null);
    }

    private int Piece(double at)
    {
        int i = 0;
        while (i < _points.Length - 2 && at > _points[i + 1].At)
            i++;
        return i;
    }

    /// <summary>Slopes of Fritsch and Butland: the weighted harmonic mean of the neighbouring chords, 0 where they turn; so no piece overshoots its ends.</summary>
    private static double[] Slopes(CurvePoint[] points)
    {
        int n = points.Length;
        double[] slopes = new double[n];
        double Width(int i) => points[i + 1].At - points[i].At;
        double Chord(int i) => (points[i + 1].Value - points[i].Value) / Width(i);
        for (int i = 1; i < n - 1; i++)
        {
            double before = Chord(i - 1), after = Chord(i);
            if (before * after <= 0)
                continue;
            double w1 = (2 * Width(i)) + Width(i - 1), w2 = Width(i) + (2 * Width(i - 1));
            slopes[i] = (w1 + w2) / ((w1 / before) + (w2 / after));
        }
        (slopes[0], slopes[n - 1]) = (Chord(0), Chord(n - 2));
        return slopes;
    }
}
