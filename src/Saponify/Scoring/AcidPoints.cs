using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>What one fatty acid brings to a score. The points of all acids add up to the score. Immutable; equality by content.</summary>
public sealed record AcidPoints
{
    internal AcidPoints(FattyAcid acid, double share, double points, ValueList<ScoreWeight> weights)
    {
        Acid = acid;
        Share = Stored.ToRatio(share);
        Points = points;
        Weights = weights;
    }

    /// <summary>The acid.</summary>
    public FattyAcid Acid { get; }

    /// <summary>Its share by mass of the scored acids.</summary>
    public Ratio Share { get; }

    /// <summary>Points it brings, from 0 to 100.</summary>
    public double Points { get; }

    /// <summary>The weights behind it, each with its sources.</summary>
    public ValueList<ScoreWeight> Weights { get; }
}
