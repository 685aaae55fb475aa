using UnitsNet;

namespace Saponify;

/// <summary>
/// How much lye liquid the maker may choose. Each is the mass of the liquid that the alkali is dissolved in, everything else as in the
/// formula; null when no amount gives it. Immutable; equality by content.
/// </summary>
public sealed record LiquidWindow
{
    internal LiquidWindow(double? least, double? at40, double? at25)
    {
        LeastToDissolve = ToMass(least);
        At40Percent = ToMass(at40);
        At25Percent = ToMass(at25);
    }

    /// <summary>
    /// The least in which the alkali dissolves at 20 degrees Celsius: 0.92 g of water per g of pure NaOH, 0.90 g per g of pure KOH.
    /// Sources: gse-naoh, gse-koh. It is a floor: more dissolves faster and stays cooler.
    /// </summary>
    public Mass? LeastToDissolve { get; }

    /// <summary>For a lye of 40 % over all water: little water, sets fast. Usual end of the range (common practice, no source).</summary>
    public Mass? At40Percent { get; }

    /// <summary>For a lye of 25 % over all water: much water, sets slowly, dries longer. Usual end of the range (common practice, no source).</summary>
    public Mass? At25Percent { get; }

    private static Mass? ToMass(double? grams) => grams is { } value ? Mass.FromGrams(value) : null;
}
