using UnitsNet;

namespace Saponify;

/// <summary>How a vessel cools when the heat transfer is only known between two ends: an estimate. Immutable; equality by content.</summary>
public sealed record CoolingSpan
{
    internal CoolingSpan(NewtonCooling fastest, NewtonCooling slowest, Evidence evidence) => (Fastest, Slowest, Evidence) = (fastest, slowest, evidence);

    /// <summary>With the most heat transfer.</summary>
    public NewtonCooling Fastest { get; }

    /// <summary>With the least.</summary>
    public NewtonCooling Slowest { get; }

    /// <summary>How well the heat transfer is supported.</summary>
    public Evidence Evidence { get; }

    /// <summary>The time to a temperature: the middle of both ends, with the ends as range. Null when it is never reached, because the surroundings are no colder.</summary>
    /// <param name="start">How warm it is.</param>
    /// <param name="wanted">The temperature wanted.</param>
    public Figure<Duration>? TimeTo(Temperature start, Temperature wanted)
    {
        if (Fastest.TimeTo(start, wanted) is not { } low || Slowest.TimeTo(start, wanted) is not { } high)
            return null;
        return new(Duration.FromSeconds((low.Seconds + high.Seconds) / 2), Evidence, [Evidence == Evidence.Memory ? "memory" : "own"]) { Low = low, High = high, IsOwn = Evidence != Evidence.Memory };
    }

    /// <summary>The temperature after a time, in the middle between both ends.</summary>
    internal double CelsiusAfter(double start, double seconds)
    {
        double middle = (Fastest.Seconds + Slowest.Seconds) / 2;
        return Fastest.Celsius + ((start - Fastest.Celsius) * Math.Exp(-seconds / middle));
    }
}
