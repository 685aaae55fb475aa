namespace Saponify;

/// <summary>One difference between two formulas. Immutable; equality by content.</summary>
public sealed record Change
{
    internal Change(FormulaPath path, string? before, string? after) => (Path, Before, After) = (path, before, after);

    /// <summary>Where.</summary>
    public FormulaPath Path { get; }

    /// <summary>What stood there; null when nothing did.</summary>
    public string? Before { get; }

    /// <summary>What stands there now; null when nothing does.</summary>
    public string? After { get; }

    /// <summary>For example <c>alkali.superfat: 3 % -> 5 %</c>.</summary>
    public override string ToString() => $"{Path}: {Before ?? "nothing"} -> {After ?? "nothing"}";
}
