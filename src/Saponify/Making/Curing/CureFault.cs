namespace Saponify;

/// <summary>What is wrong with one weighing of a series. Immutable; equality by content.</summary>
public sealed record CureFault
{
    internal CureFault(int index, CureFaultKind kind, string text) => (Index, Kind, Reason) = (index, kind, text);

    /// <summary>The weighing in the series, from 0.</summary>
    public int Index { get; }

    /// <summary>What it is.</summary>
    public CureFaultKind Kind { get; }

    /// <summary>What was found and what would be right; one sentence in English, invariant.</summary>
    public string Reason { get; }

    /// <summary>True when the series can't be fitted before it is mended. A gain widens the interval instead: damp air makes bars heavier for a time.</summary>
    public bool PreventsFit => Kind != CureFaultKind.Gain;

    /// <summary>For example <c>weighing 3: ...</c>; invariant.</summary>
    public override string ToString() => FormattableString.Invariant($"weighing {Index + 1}: {Reason}");
}
