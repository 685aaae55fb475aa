using UnitsNet;

namespace Saponify;

/// <summary>When a temperature will be reached, counted from the first reading. Immutable; equality by content.</summary>
public sealed record CoolingForecast
{
    internal CoolingForecast(Temperature wanted, double? at, double? earliest, double? latest, double? uncertainty)
    {
        Wanted = wanted;
        At = ToDuration(at);
        Earliest = ToDuration(earliest);
        Latest = ToDuration(latest);
        StandardUncertainty = ToDuration(uncertainty);
    }

    /// <summary>The temperature asked for.</summary>
    public Temperature Wanted { get; }

    /// <summary>The time, negative when it lies before the first reading; null when it is never reached, because the surroundings are no colder.</summary>
    public Duration? At { get; }

    /// <summary>The early end of the span; null when the readings can't tell.</summary>
    public Duration? Earliest { get; }

    /// <summary>The late end of the span; null when the readings can't tell: they may differ by no more than their error.</summary>
    public Duration? Latest { get; }

    /// <summary>Standard uncertainty from the reading errors to first order (JCGM 100); null when it is never reached.</summary>
    public Duration? StandardUncertainty { get; }

    private static Duration? ToDuration(double? seconds) => seconds is { } value ? Duration.FromSeconds(value) : null;
}
