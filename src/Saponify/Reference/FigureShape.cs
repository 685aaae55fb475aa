namespace Saponify;

/// <summary>A figure that a table may hold: its unit and the range that is plausible at all.</summary>
internal sealed class FigureShape(string name, string unit, double least, double most)
{
    internal string Name => name;

    internal string Unit => unit;

    internal double Least => least;

    internal double Most => most;
}
