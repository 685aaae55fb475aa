using UnitsNet;

namespace Saponify;

/// <summary>
/// Something that may take up lye, which the plan does not count because it is in doubt. If it does, the superfat is higher than the
/// plan says, never lower. Immutable; equality by content.
/// </summary>
public sealed record PossibleUptake
{
    internal PossibleUptake(FormulaPath path, string what, string why, double? alkaliGrams)
    {
        Path = path;
        What = what;
        Why = why;
        AtMost = alkaliGrams is { } grams ? Mass.FromGrams(grams) : null;
    }

    /// <summary>Where in the formula it lies.</summary>
    public FormulaPath Path { get; }

    /// <summary>The material.</summary>
    public string What { get; }

    /// <summary>Why it is in doubt.</summary>
    public string Why { get; }

    /// <summary>The most it can take up, in the plan's own alkali as weighed; null when that can't be told.</summary>
    public Mass? AtMost { get; }
}
