using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// What of a batter can evaporate, and so how much lighter a bar can get: the mass balance of drying, without any rate. Soap, glycerol and
/// salts stay. Immutable; equality by content.
/// </summary>
public sealed record Moisture
{
    internal Moisture(BatchPlan plan)
    {
        LyeBalance balance = plan.Balance;
        double batch = balance.BatchGrams, formed = balance.AcidHydroxide, alcohol = 0, scent = 0;
        foreach (FatPortion portion in plan.Formula.Fats)
            formed += portion.Fat.Class == FatClass.Triglyceride ? 0 : portion.Hydroxide;
        foreach (Containing part in Containing.All(plan))
            alcohol += part.Grams * part.Contents.AlcoholFraction;
        foreach (AdditivePortion portion in plan.Additives)
            scent += portion.Additive.Kind == AdditiveKind.Fragrance ? portion.GramsFor(plan.Formula.ListedGrams) : 0;
        double Share(double grams) => batch > 0 ? Math.Clamp(grams / batch, 0, 1) : 0;
        // no more water forms than there is hydroxide for
        WaterFraction = Share(balance.AllWaterGrams + (Math.Min(formed, balance.Hydroxide) * Molar.Water));
        OtherFraction = Share(alcohol + scent);
    }

    private double WaterFraction { get; }

    private double OtherFraction { get; }

    /// <summary>Water as a share of the batter: all water, and what acids and free fatty acids form when they react.</summary>
    public Ratio Water => Stored.ToRatio(WaterFraction);

    /// <summary>Alcohol and scent as a share of the batter: they may evaporate as well, scent in part.</summary>
    public Ratio AlcoholAndScent => Stored.ToRatio(OtherFraction);

    /// <summary>The most that a bar can lose of its poured mass: an upper bound by mass balance.</summary>
    public Ratio LargestLoss => Stored.ToRatio(LargestFraction);

    internal double LargestFraction => Math.Min(1, WaterFraction + OtherFraction);

    /// <summary>
    /// The loss that dries a bar to so much water, if nothing but water leaves: 1 - (1 - water)/(1 - moisture). Null when the batter has less water.
    /// </summary>
    /// <param name="moisture">Water in the bar, from 0 to 99 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Ratio? LossTo(Ratio moisture)
    {
        double loss = 1 - ((1 - WaterFraction) / (1 - Stored.Fraction(moisture, 0, 0.99, "The water in a bar")));
        return loss >= -1e-12 ? Stored.ToRatio(Math.Max(0, loss)) : null;
    }

    /// <summary>
    /// Water left in a bar as a share of what it weighs now. Value and low end: all that was lost was water; high end: alcohol and scent went
    /// first. Null when more was lost than can evaporate: then a mass is wrong.
    /// </summary>
    /// <param name="poured">Mass of the bar as poured, above 0.</param>
    /// <param name="now">What it weighs now, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass of 0, negative, above 1e6 g, or not a number.</exception>
    public Figure<Ratio>? WaterLeft(Mass poured, Mass now)
    {
        double before = Stored.BarGrams(poured, "The poured mass of a bar"), after = Stored.BarGrams(now, "The mass of a bar");
        double lost = before - after;
        if (lost > before * LargestFraction * (1 + 1e-9))
            return null;
        double least = Math.Max(0, (before * WaterFraction) - lost), most = (before * WaterFraction) - Math.Max(0, lost - (before * OtherFraction));
        return new(Stored.ToRatio(least / after), Evidence.Computed, ["computed"]) { Low = Stored.ToRatio(least / after), High = Stored.ToRatio(Math.Clamp(most / after, 0, 1)), Note = "mass balance" };
    }
}
