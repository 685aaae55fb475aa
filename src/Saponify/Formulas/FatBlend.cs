using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Fats by shares of their mass, before any total is decided. Immutable; equality by content.</summary>
public sealed record FatBlend
{
    private FatBlend(ValueList<FatShare> shares) => Shares = shares;

    /// <summary>The fats with their shares by mass.</summary>
    public ValueList<FatShare> Shares { get; }

    /// <summary>A blend.</summary>
    /// <param name="parts">Fats with their shares by mass, each from 0 to 100 %, adding up to 100 %.</param>
    /// <exception cref="ArgumentException">No fat, or shares that don't add up to 100 %.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside 0 to 100 %.</exception>
    public static FatBlend Of(params (Fat Fat, Ratio Share)[] parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var shares = new FatShare[parts.Length];
        double sum = 0;
        for (int i = 0; i < shares.Length; i++)
        {
            shares[i] = new(parts[i].Fat, Stored.Fraction(parts[i].Share, 0, 1, "The share of a fat"));
            sum += shares[i].Fraction;
        }
        return Math.Abs(sum - 1) <= SuperfatTarget.SumTolerance
            ? new(new ValueList<FatShare>(shares))
            : throw new ArgumentException($"The shares of the fats add up to {Text.Number(sum * 100)} %; they must add up to 100 %.", nameof(parts));
    }

    /// <summary>The lines of a formula with so much of this blend.</summary>
    /// <param name="total">Mass of all fats, from 0 to 1e9 g; the lines keep its unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public ValueList<FatPortion> Weighing(Mass total)
    {
        _ = Stored.Grams(total, "The total of a blend");
        return [.. Shares.Select(s => new FatPortion(s.Fat, Mass.From(total.Value * s.Fraction, total.Unit)))];
    }
}
