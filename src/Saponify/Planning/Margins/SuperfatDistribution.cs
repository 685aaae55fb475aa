namespace Saponify;

/// <summary>
/// The distribution of s = 1 - M/F, with F the demand of fat and M the alkali less what acids take up. F and M hold different doubts, so they
/// are independent, and P(s below x) is the probability that M exceeds (1 - x) F: one integral over the two distributions. Dividing by a mean F
/// instead would miss the ends by up to a point where a fat has a wide range.
/// </summary>
internal sealed class SuperfatDistribution
{
    private const double Tolerance = 1e-7;

    private readonly RectangularSum _fat;
    private readonly RectangularSum _net;
    private readonly (double Middle, double Probability)[] _slices;
    private readonly double _fatMiddle;
    private readonly double _netMiddle;

    internal SuperfatDistribution(IReadOnlyList<Cause> causes, double fat, double net)
    {
        _fat = new([.. causes.Where(c => c.Of == CauseOf.Fat).Select(c => c.HalfWidth)]);
        _net = new([.. causes.Where(c => c.Of != CauseOf.Fat).Select(c => c.HalfWidth)]);
        _slices = _fat.Slices();
        (_fatMiddle, _netMiddle) = (fat, net);
    }

    /// <summary>The probability that the superfat is below a value.</summary>
    internal double Below(double superfat)
    {
        double part = 1 - superfat, sum = 0;
        if (!_net.HasWidth)
            return part > 0 ? _fat.Below((_netMiddle / part) - _fatMiddle) : _netMiddle > part * _fatMiddle ? 1 : 0;
        foreach ((double deviation, double probability) in _slices)
            sum += probability * (1 - _net.Below((part * (_fatMiddle + deviation)) - _netMiddle));
        return Math.Clamp(sum, 0, 1);
    }

    /// <summary>The superfat that it is below with this probability, looked for between the corners: false position, with halving where that is slow.</summary>
    internal double Quantile(double probability, double worst, double best)
    {
        (double low, double high) = (worst, best);
        double below = -probability, above = 1 - probability;
        for (int i = 0; i < 60 && high - low > Tolerance; i++)
        {
            double middle = i % 3 == 2 || above - below <= 0 ? (low + high) / 2 : low + ((high - low) * (-below / (above - below)));
            double at = Below(middle) - probability;
            if (at < 0)
                (low, below) = (middle, at);
            else
                (high, above) = (middle, at);
        }
        return (low + high) / 2;
    }
}
