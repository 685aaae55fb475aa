using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// How the alkali is decided: for a superfat (<see cref="SuperfatTarget"/>), or weighed already, so that the superfat is the result
/// (<see cref="WeighedAlkali"/>). There is no default: alkali, purity and superfat are asked for. Immutable; equality by content.
/// </summary>
public abstract record AlkaliPlan
{
    private protected AlkaliPlan()
    {
    }

    internal AlkaliMix Mix { get; private protected init; } = null!;

    /// <summary>As much alkali as leaves this share of all fat unsaponified.</summary>
    /// <param name="ofAllFat">
    /// Superfat as a share of the lye demand of all fat: recipe fats, late fats and the fat in liquids and additives.
    /// From -100 to 100 %; below 0 the soap is lye-heavy, which no plan should be.
    /// </param>
    /// <param name="alkali">The alkali.</param>
    /// <exception cref="ArgumentOutOfRangeException">A superfat outside that range, or not a number.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="alkali"/> is null.</exception>
    public static SuperfatTarget ForSuperfat(Ratio ofAllFat, Alkali alkali) => ForSuperfat(ofAllFat, new AlkaliShare(alkali, 1, AlkaliShareBasis.Hydroxide));

    /// <summary>As much of several alkalis as leaves this share of all fat unsaponified.</summary>
    /// <param name="ofAllFat">Superfat as a share of the lye demand of all fat, from -100 to 100 %.</param>
    /// <param name="alkalis">The alkalis with their shares, all on one basis, adding up to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A superfat outside that range, or not a number.</exception>
    /// <exception cref="ArgumentException">No alkali, shares on different bases, or shares that don't add up to 100 %.</exception>
    public static SuperfatTarget ForSuperfat(Ratio ofAllFat, params AlkaliShare[] alkalis) => new(ofAllFat, ValueList.Create<AlkaliShare>(alkalis ?? throw new ArgumentNullException(nameof(alkalis))));

    /// <summary>The alkali is weighed already; the superfat is the result.</summary>
    /// <param name="alkalis">The portions; at least one.</param>
    /// <exception cref="ArgumentException">No portion.</exception>
    public static WeighedAlkali Weighed(params AlkaliPortion[] alkalis) => new(ValueList.Create<AlkaliPortion>(alkalis ?? throw new ArgumentNullException(nameof(alkalis))));

    internal abstract AlkaliPlan Times(double factor);
}
