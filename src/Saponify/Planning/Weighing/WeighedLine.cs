using UnitsNet;

namespace Saponify;

/// <summary>One line of a batch: what was planned, what the scale showed. Immutable; equality by content.</summary>
public sealed record WeighedLine
{
    internal WeighedLine(FormulaPath path, string what, double planned, Weight? weight)
    {
        Path = path;
        What = what;
        Planned = Mass.FromGrams(planned);
        Weighed = weight?.Mass;
        PlannedGrams = planned;
        WeighedGrams = weight?.Grams;
    }

    internal double PlannedGrams { get; }

    internal double? WeighedGrams { get; }

    /// <summary>Where in the formula it lies; its text names the line: <c>fats[olive-oil]</c>.</summary>
    public FormulaPath Path { get; }

    /// <summary>The material.</summary>
    public string What { get; }

    /// <summary>What the plan asked for when weighing began.</summary>
    public Mass Planned { get; }

    /// <summary>What the scale showed; null while it is not weighed.</summary>
    public Mass? Weighed { get; }

    /// <summary>How far it is off, as a share of what was planned; null while it is not weighed or when nothing was planned.</summary>
    public Ratio? Off => WeighedGrams is { } grams && PlannedGrams > 0 ? Ratio.FromDecimalFractions((grams / PlannedGrams) - 1) : null;
}
