using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Something that can be done with a batch, and what comes of it. A pure change: <see cref="Apply"/> gives a new batch. Immutable; equality by content.</summary>
public sealed record BatchChoice
{
    private readonly WeighedBatch _result;

    internal BatchChoice(BatchChoiceKind kind, string text, WeighedBatch result, double? amount = null, Fat? fat = null)
    {
        Kind = kind;
        Text = text;
        _result = result;
        Amount = amount is { } grams ? Mass.FromGrams(grams) : null;
        Fat = fat;
    }

    /// <summary>What kind of choice it is.</summary>
    public BatchChoiceKind Kind { get; }

    /// <summary>What to do; one sentence in English, invariant.</summary>
    public string Text { get; }

    /// <summary>How much to add or to weigh: of the fat, of all alkali as weighed, of the lye solution; null for the others.</summary>
    public Mass? Amount { get; }

    /// <summary>The fat to add, or null.</summary>
    public Fat? Fat { get; }

    /// <summary>The superfat of all fat afterwards; null without fat.</summary>
    public Ratio? Superfat => _result.Superfat;

    /// <summary>The batch afterwards; what is added stands in at plan until it is weighed.</summary>
    public WeighedBatch Apply() => _result;

    /// <summary>The text with the superfat that comes of it.</summary>
    public override string ToString() => Kind == BatchChoiceKind.Discard || Superfat is not { } superfat ? Text : $"{Text} Superfat then: {PlanText.Cut(superfat.DecimalFractions)}.";
}
