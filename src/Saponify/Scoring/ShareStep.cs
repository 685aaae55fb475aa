using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>One point of a curve over the share of a fat: the formula at that share, and its scores. Immutable.</summary>
public sealed class ShareStep
{
    internal ShareStep(double share, Formula formula)
    {
        Share = Stored.ToRatio(share);
        Formula = formula;
        Scores = formula.Scores();
    }

    /// <summary>Share of the fat by mass of the listed fats.</summary>
    public Ratio Share { get; }

    /// <summary>The formula at that share; ask it for its plan or its composition.</summary>
    public Formula Formula { get; }

    /// <summary>Its scores.</summary>
    public BarScores Scores { get; }
}
