using UnitsNet;

namespace Saponify;

/// <summary>When a bar will be ready, with the interval that the scatter of the weighings leaves. Immutable; equality by content.</summary>
public sealed record CureForecast
{
    internal CureForecast(ReadyWhen when, Ratio coverage, DateOnly? date, DateOnly? earliest, DateOnly? latest)
    {
        When = when;
        Coverage = coverage;
        Date = date;
        Earliest = earliest;
        Latest = latest;
    }

    /// <summary>What was asked for.</summary>
    public ReadyWhen When { get; }

    /// <summary>Probability that the interval covers, for independent normal errors about an exponential curve.</summary>
    public Ratio Coverage { get; }

    /// <summary>The first day on which it is ready, by the fitted curve; null when that lies beyond ten years.</summary>
    public DateOnly? Date { get; }

    /// <summary>The early end; the day of the first weighing when it may have been ready then. Null when that end lies beyond ten years.</summary>
    public DateOnly? Earliest { get; }

    /// <summary>The late end; null when the weighings leave it open.</summary>
    public DateOnly? Latest { get; }
}
