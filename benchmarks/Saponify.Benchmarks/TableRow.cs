using System.Globalization;

namespace Saponify.Benchmarks;

/// <summary>One line of the table of results: what was measured, against what, and what was hoped for. Methods are written <c>Class.Method</c>.</summary>
internal sealed record TableRow(string What, string Method, string Against, string? Baseline)
{
    /// <summary>The goal in words; empty where the figure is only reported.</summary>
    internal string Goal { get; init; } = "";

    /// <summary>True when the goal is met, by ratio of times and bytes of both.</summary>
    internal Func<double, Measured, Measured, bool>? IsMet { get; init; }

    /// <summary>Measured in fresh processes, each once.</summary>
    internal bool IsCold { get; init; }

    internal string Text(IReadOnlyDictionary<(string Method, bool IsCold), Measured> results)
    {
        Measured own = results[(Method, IsCold)];
        Measured? baseline = Baseline is null ? null : results[(Baseline, IsCold)];
        double ratio = baseline is null ? double.NaN : own.Nanoseconds / baseline.Nanoseconds;
        string met = IsMet is null || baseline is null ? "" : IsMet(ratio, own, baseline) ? "met" : "missed";
        string shown = baseline is null ? "" : ratio >= 0.1 ? Invariant($"{ratio:F2}") : Invariant($"1/{1 / ratio:F0}");
        return $"| {What} | {Against} | {Time(own.Nanoseconds)} | {(baseline is null ? "" : Time(baseline.Nanoseconds))} | {shown} | {Bytes(own)} | {(baseline is null ? "" : Bytes(baseline))} | {Goal} | {met} |";
    }

    private static string Time(double nanoseconds) => nanoseconds switch
    {
        < 1e3 => Invariant($"{nanoseconds:F1} ns"),
        < 1e6 => Invariant($"{nanoseconds / 1e3:F2} µs"),
        _ => Invariant($"{nanoseconds / 1e6:F2} ms"),
    };

    private static string Bytes(Measured measured) => Invariant($"{measured.Bytes:N0}");

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
