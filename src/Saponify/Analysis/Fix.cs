using Saponify.Analysis;

namespace Saponify;

/// <summary>A fix bound to the formula of its report: it can't be applied to another one. Immutable.</summary>
public sealed class Fix
{
    private readonly Formula _formula;
    private readonly FixOffer _offer;
    private Formula? _result;

    internal Fix(Formula formula, FixOffer offer) => (_formula, _offer) = (formula, offer);

    internal Formula Before => _formula;

    /// <summary>Groups equal fixes.</summary>
    public string Key => _offer.Key;

    /// <summary>What it does, with the new value; invariant.</summary>
    public string Title => _offer.Title;

    /// <summary>Whether the soap stays what it was.</summary>
    public FixEffect Effect => _offer.Effect;

    /// <summary>The corrected formula; the one of the report stays as it is.</summary>
    public Formula Apply() => _result ??= _offer.Apply(_formula) ?? throw new InvalidOperationException($"The fix {Key} gave no formula: its function must return one, not null.");

    /// <summary>What it changes: the difference of the two formulas.</summary>
    public ValueList<Change> Changes => FormulaDifference.Of(_formula, Apply());
}
