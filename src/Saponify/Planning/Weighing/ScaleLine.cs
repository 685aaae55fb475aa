using UnitsNet;

namespace Saponify;

/// <summary>One thing to weigh on a scale. Immutable; equality by content.</summary>
public sealed record ScaleLine
{
    internal ScaleLine(FormulaPath path, string what, Mass mass, double planned, int loads)
    {
        Path = path;
        What = what;
        Mass = mass;
        Planned = Mass.FromGrams(planned);
        Loads = loads;
    }

    /// <summary>Where in the formula it lies.</summary>
    public FormulaPath Path { get; }

    /// <summary>The material.</summary>
    public string What { get; }

    /// <summary>What to weigh, in whole steps of the scale and in its unit.</summary>
    public Mass Mass { get; }

    /// <summary>What the plan asks for before rounding.</summary>
    public Mass Planned { get; }

    /// <summary>In how many loads, since the scale has a capacity; 1 as a rule.</summary>
    public int Loads { get; }
}
