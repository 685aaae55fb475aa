using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// How much of a scent the finished soap may hold, as its supplier's certificate states it for the kind of product. A circumstance of the batch, since
/// it comes with the bottle, not with the formula. Immutable; equality by content.
/// </summary>
public sealed record FragranceLimit
{
    internal static readonly Limits ShareLimits = new(0, 1);

    /// <summary>States a limit.</summary>
    /// <param name="additive">Id of the additive, for example <c>fragrance-oil</c>; not blank.</param>
    /// <param name="ofProduct">Highest share of the finished product by mass, from 0 to 100 %.</param>
    /// <param name="source">Where it comes from, for example <c>certificate of lot 7</c>; not blank.</param>
    /// <exception cref="ArgumentException">A blank text.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside 0 to 100 %, or not a number.</exception>
    public FragranceLimit(string additive, Ratio ofProduct, string source)
    {
        Additive = Guard.Text(additive, "The additive of a limit");
        Fraction = Stored.Fraction(ofProduct, ShareLimits, "The limit of a fragrance");
        Source = Guard.Text(source, "The source of a limit");
    }

    internal double Fraction { get; }

    /// <summary>Id of the additive.</summary>
    public string Additive { get; }

    /// <summary>Highest share of the finished product by mass.</summary>
    public Ratio OfProduct => Stored.ToRatio(Fraction);

    /// <summary>Where it comes from.</summary>
    public string Source { get; }
}
