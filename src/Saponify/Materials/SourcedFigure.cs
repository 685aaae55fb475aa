using Saponify.Internals;

namespace Saponify;

/// <summary>
/// One row of a table of figures: a figure of a material as it was published, with its range, its unit, its sources, the place in them and
/// how well they support it. Immutable; equality by content.
/// </summary>
public sealed record SourcedFigure
{
    internal SourcedFigure(string name, double? low, double? high, string unit, string basis, ValueList<string> sources, string place, Evidence evidence, string? note)
    {
        Name = name;
        Low = low;
        High = high;
        Unit = unit;
        Basis = basis;
        Sources = sources;
        Place = place;
        Evidence = evidence;
        Note = note;
    }

    /// <summary>Which figure: <c>SV</c>, <c>IV</c>, <c>unsaponifiable</c>, the shorthand of a fatty acid, <c>water</c>, <c>fat</c>, <c>dose</c> ...</summary>
    public string Name { get; }

    /// <summary>Low end in <see cref="Unit"/>; null for a bare upper limit.</summary>
    public double? Low { get; }

    /// <summary>High end in <see cref="Unit"/>; null for a bare lower limit.</summary>
    public double? High { get; }

    /// <summary>The unit: <c>mg/g</c> is mg KOH per g, <c>g/100g</c> is g iodine per 100 g, <c>relative</c> a density against water.</summary>
    public string Unit { get; }

    /// <summary>What the figure relates to: of the fatty acids, by mass, a temperature; empty when the unit says it all.</summary>
    public string Basis { get; }

    /// <summary>Keys of the sources; at least one. For an own figure the text its owner gave.</summary>
    public ValueList<string> Sources { get; }

    /// <summary>Table, page or number in the source; empty where there is none.</summary>
    public string Place { get; }

    /// <summary>How well the figure is supported.</summary>
    public Evidence Evidence { get; }

    /// <summary>What to know about it, or null.</summary>
    public string? Note { get; }

    /// <summary>True when the figure is the user's own, not from the reference tables.</summary>
    public bool IsOwn { get; init; }

    /// <summary>The range with its unit: <c>184 to 196 mg/g</c>, <c>at most 1.5 %</c>; invariant.</summary>
    public string Range => (Low, High) switch
    {
        (null, { } high) => $"at most {Text.Exact(high)} {Unit}",
        ({ } low, null) => $"at least {Text.Exact(low)} {Unit}",
        _ => Low == High ? $"{Text.Exact(Low!.Value)} {Unit}" : $"{Text.Exact(Low!.Value)} to {Text.Exact(High!.Value)} {Unit}",
    };

    /// <summary>Name, range, evidence and sources in one line; invariant.</summary>
    public override string ToString() => $"{Name} {Range} ({EvidenceText.Of(Evidence)}: {string.Join("; ", Sources)})";

    /// <summary>Middle of the range; half of a bare upper limit where that is how the figure is used; the bare lower limit itself.</summary>
    internal double Middle(bool halfOfUpperLimit = false) =>
        Low is { } low ? High is { } high ? (low + high) / 2 : low : halfOfUpperLimit ? High!.Value / 2 : High!.Value;
}
