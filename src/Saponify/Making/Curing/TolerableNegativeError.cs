using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// By how much a single pack may fall short of its declared quantity before it counts as defective. Source: eu-76-211, Annex I, point 2.4: table;
/// percentages give grams rounded up to a tenth. A help, not a judgement: local rules decide.
/// </summary>
public static class TolerableNegativeError
{
    /// <summary>Up to this many g, a share of the declared mass, or so many g.</summary>
    private static readonly (double UpTo, double Share, double Grams)[] s_table =
        [(50, 0.09, 0), (100, 0, 4.5), (200, 0.045, 0), (300, 0, 9), (500, 0.03, 0), (1000, 0, 15), (10_000, 0.015, 0)];

    /// <summary>The tolerable negative error; null outside 5 g to 10 kg, where the Directive has none.</summary>
    /// <param name="declared">The declared mass.</param>
    public static Mass? Of(Mass declared) => Grams(Stored.ToGrams(declared)) is { } grams ? Mass.FromGrams(grams) : null;

    internal static double? Grams(double declared)
    {
        if (!(declared >= 5 && declared <= 10_000))
            return null;
        foreach ((double upTo, double share, double grams) in s_table)
        {
            if (declared <= upTo)
                return share > 0 ? Math.Ceiling((declared * share * 10) - 1e-9) / 10 : grams;
        }
        return null;
    }
}
