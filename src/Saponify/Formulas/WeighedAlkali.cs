using Saponify.Internals;

namespace Saponify;

/// <summary>Alkali that is weighed already. Made by <see cref="AlkaliPlan.Weighed"/>. Immutable; equality by content.</summary>
public sealed record WeighedAlkali : AlkaliPlan
{
    internal WeighedAlkali(ValueList<AlkaliPortion> alkalis)
    {
        if (alkalis.Count == 0)
            throw new ArgumentException("A plan needs at least one alkali.", nameof(alkalis));
        Alkalis = LineId.MakeUnique(alkalis, "The alkalis");
        var parts = new (Alkali, double)[Alkalis.Count];
        for (int i = 0; i < parts.Length; i++)
        {
            parts[i] = (Alkalis[i].Alkali, Alkalis[i].Grams * Alkalis[i].Alkali.HydroxidePerGram);
            Hydroxide += parts[i].Item2;
        }
        Mix = AlkaliMix.Of(parts);
    }

    /// <summary>mol of hydroxide, at the top of each stated purity.</summary>
    internal double Hydroxide { get; }

    /// <summary>The portions weighed.</summary>
    public ValueList<AlkaliPortion> Alkalis { get; }

    internal override AlkaliPlan Times(double factor)
    {
        var scaled = new AlkaliPortion[Alkalis.Count];
        for (int i = 0; i < scaled.Length; i++)
            scaled[i] = Alkalis[i].Times(factor);
        return new WeighedAlkali(new ValueList<AlkaliPortion>(scaled));
    }
}
