using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>From a plan to moulds and bars.</summary>
public static class MouldExtensions
{
    /// <summary>
    /// Density of the batter from its parts. Null for a plan that can't be weighed, or whose lye over all water is stronger than the 50 % that figures reach.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="pour">Temperature at the pour, from 0 to 100 degrees Celsius; null lets the range span 20 to 60 degrees.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature outside its range, or not a number.</exception>
    public static BatterDensity? Batter(this BatchPlan plan, Temperature? pour)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return BatterDensity.Of(plan, pour);
    }

    /// <summary>How the batch fits a mould. Null where the density is null.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="mould">The mould.</param>
    /// <param name="pour">Temperature at the pour, as in <see cref="Batter"/>.</param>
    /// <param name="leftInPot">Share of the batch that stays in pot and bowls, from 0 to 50 %.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure outside its range, or not a number.</exception>
    public static MouldFill? Fill(this BatchPlan plan, Mould mould, Temperature? pour, Ratio leftInPot)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(mould);
        double left = Stored.Fraction(leftInPot, BarOrder.LeftInPotLimits, "What stays in the pot");
        return BatterDensity.Of(plan, pour) is { } batter ? new(plan, mould, batter, left) : null;
    }

    /// <summary>The formula scaled to a batch of so much, everything together.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="batch">Above 0, up to 1e9 g: <see cref="BarOrder.Batch"/>, for example.</param>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or more than a millionfold change.</exception>
    /// <exception cref="InvalidOperationException">The formula can't be weighed, so its batch has no mass.</exception>
    public static Formula ScaledToBatch(this Formula formula, Mass batch)
    {
        ArgumentNullException.ThrowIfNull(formula);
        LyeBalance balance = formula.Balance();
        return balance.CanBeWeighed && balance.BatchGrams > 0 ? formula.ScaledBy(Formula.FactorTo(batch, balance.BatchGrams, "The mass of a batch", nameof(batch)))
            : throw new InvalidOperationException("A formula that can't be weighed has no batch to scale by; the obstacles of its plan say why.");
    }

    /// <summary>What of the batter can evaporate.</summary>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    public static Moisture Moisture(this BatchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(plan);
    }

    /// <summary>How warm the batter can get in the mould: a bound. Null for a plan that can't be weighed, or whose lye over all water is stronger than 50 %.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="mould">The mould, for how long heat stays; null when it is not known.</param>
    /// <param name="pour">Temperature at the pour, from 0 to 100 degrees Celsius.</param>
    /// <param name="isInsulated">True when the mould is wrapped or stands warm.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature outside its range, or not a number.</exception>
    public static MouldHeat? HeatInMould(this BatchPlan plan, Mould? mould, Temperature pour, bool isInsulated)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return MouldHeat.Of(plan, mould, pour, isInsulated);
    }
}
