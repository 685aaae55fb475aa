using UnitsNet;

namespace Saponify;

/// <summary>One line of "where the water comes from". The lines of a plan add up to all water. Immutable; equality by content.</summary>
public sealed record WaterShare
{
    internal WaterShare(FormulaPath path, string what, double grams, bool whileDissolving)
    {
        Path = path;
        What = what;
        Water = Mass.FromGrams(grams);
        IsWhileDissolving = whileDissolving;
    }

    /// <summary>Where in the formula it lies.</summary>
    public FormulaPath Path { get; }

    /// <summary>The material.</summary>
    public string What { get; }

    /// <summary>Water it brings.</summary>
    public Mass Water { get; }

    /// <summary>True when the water is in the jug while the alkali dissolves.</summary>
    public bool IsWhileDissolving { get; }
}
