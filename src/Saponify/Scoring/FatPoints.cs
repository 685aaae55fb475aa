using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>What one fat brings to a score. The points of all fats add up to the score. Immutable; equality by content.</summary>
public sealed record FatPoints
{
    internal FatPoints(FormulaPath? path, string what, double share, double points)
    {
        Path = path;
        What = what;
        Share = Stored.ToRatio(share);
        Points = points;
    }

    /// <summary>Where in the formula it lies; null for a blend.</summary>
    public FormulaPath? Path { get; }

    /// <summary>The fat.</summary>
    public string What { get; }

    /// <summary>Its share by mass of the scored acids.</summary>
    public Ratio Share { get; }

    /// <summary>Points it brings, from 0 to 100.</summary>
    public double Points { get; }
}
