using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Alkali for a superfat. Made by <see cref="AlkaliPlan.ForSuperfat(Ratio, Alkali)"/>. Immutable; equality by content.</summary>
public sealed record SuperfatTarget : AlkaliPlan
{
    /// <summary>How far the shares of several alkalis may miss 100 % in sum, from rounding in the text: 1e-9.</summary>
    internal const double SumTolerance = 1e-9;

    internal SuperfatTarget(Ratio superfat, ValueList<AlkaliShare> alkalis)
    {
        Superfat = superfat;
        Alkalis = LineId.MakeUnique(alkalis, "The alkalis");
        if (SharesFault(Alkalis) is string fault)
            throw new ArgumentException(fault, nameof(alkalis));
        var parts = new (Alkali, double)[Alkalis.Count];
        for (int i = 0; i < parts.Length; i++)
            parts[i] = (Alkalis[i].Alkali, Alkalis[i].Fraction * (Alkalis[i].Basis == AlkaliShareBasis.Hydroxide ? 1 : Alkalis[i].Alkali.HydroxidePerGram));
        Mix = AlkaliMix.Of(parts);
    }

    internal double SuperfatFraction { get; private init; }

    /// <summary>The alkalis with their shares.</summary>
    public ValueList<AlkaliShare> Alkalis { get; }

    /// <summary>The superfat wanted, as a share of the lye demand of <see cref="Basis"/>, from -100 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Ratio Superfat { get => Stored.ToRatio(SuperfatFraction); init => SuperfatFraction = Stored.Fraction(value, -1, 1, "A superfat"); }

    /// <summary>Which fat the superfat is counted against; all fat unless <see cref="OfListedFats"/> was called.</summary>
    public SuperfatBasis Basis { get; private init; }

    /// <summary>The same target, counted against the listed fats only: fat in liquids then comes on top.</summary>
    public SuperfatTarget OfListedFats() => this with { Basis = SuperfatBasis.ListedFats };

    /// <summary>The same target, counted against all fat.</summary>
    public SuperfatTarget OfAllFat() => this with { Basis = SuperfatBasis.AllFat };

    /// <summary>What is wrong with the shares, or null.</summary>
    internal static string? SharesFault(ValueList<AlkaliShare> alkalis)
    {
        if (alkalis.Count == 0)
            return "A plan needs at least one alkali.";
        double sum = 0;
        foreach (AlkaliShare share in alkalis)
        {
            if (share.Basis != alkalis[0].Basis)
                return "The shares of the alkalis must all be of the hydroxide, or all of the mass as weighed.";
            sum += share.Fraction;
        }
        return Math.Abs(sum - 1) <= SumTolerance ? null : $"The shares of the alkalis add up to {Text.Number(sum * 100)} %; they must add up to 100 %.";
    }

    internal override AlkaliPlan Times(double factor) => this;
}
