using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>How much one doubt contributes to the uncertainty of a superfat. Immutable; equality by content.</summary>
public sealed record MarginCause
{
    internal MarginCause(FormulaPath path, MarginCauseKind kind, string what, double halfWidth, double shareOfVariance)
    {
        Path = path;
        Kind = kind;
        What = what;
        HalfWidth = Stored.ToRatio(halfWidth);
        ShareOfVariance = Stored.ToRatio(shareOfVariance);
    }

    /// <summary>Where in the formula it lies.</summary>
    public FormulaPath Path { get; }

    /// <summary>What kind of doubt it is.</summary>
    public MarginCauseKind Kind { get; }

    /// <summary>What is in doubt, for people: <c>saponification value of Olive oil</c>.</summary>
    public string What { get; }

    /// <summary>By how much it alone can move the superfat up or down from the best estimate, to first order.</summary>
    public Ratio HalfWidth { get; }

    /// <summary>Its share of the variance of the superfat; the shares of a margin add up to 100 %.</summary>
    public Ratio ShareOfVariance { get; }
}
