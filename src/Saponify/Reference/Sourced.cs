namespace Saponify;

/// <summary>One row of a table of figures: a figure of a material with its range, unit, source, place in it and evidence.</summary>
internal sealed record Sourced(string Figure, double? Low, double? High, string Unit, string Basis, ValueList<string> Sources, string Place, Evidence Evidence, string? Note)
{
    /// <summary>Middle of the range; half of a bare upper limit where that is how the figure is used; the bare lower limit itself.</summary>
    internal double Middle(bool halfOfUpperLimit = false) =>
        Low is { } low ? High is { } high ? (low + high) / 2 : low : halfOfUpperLimit ? High!.Value / 2 : High!.Value;
}
