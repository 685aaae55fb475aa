using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>How a batch fits a mould. The range of each figure is that of the density of the batter. Immutable.</summary>
public sealed class MouldFill
{
    internal MouldFill(BatchPlan plan, Mould mould, BatterDensity batter, double leftInPot)
    {
        Plan = plan;
        Mould = mould;
        Batter = batter;
        PouredGrams = plan.Balance.BatchGrams * (1 - leftInPot);
    }

    internal double PouredGrams { get; }

    private double MouldMilliliters => Mould.Milliliters;

    /// <summary>The plan of the batch.</summary>
    public BatchPlan Plan { get; }

    /// <summary>The mould.</summary>
    public Mould Mould { get; }

    /// <summary>The density of the batter, by part.</summary>
    public BatterDensity Batter { get; }

    /// <summary>What is poured: the batch less what stays in the pot.</summary>
    public Mass Poured => Mass.FromGrams(PouredGrams);

    /// <summary>Its volume.</summary>
    public Figure<Volume> Volume => Figure(v => UnitsNet.Volume.FromMilliliters(v), PouredGrams);

    /// <summary>Its volume as a share of one mould: above 100 % it does not fit into one.</summary>
    public Figure<Ratio> ShareOfMould => Figure(Stored.ToRatio, PouredGrams / MouldMilliliters);

    /// <summary>Moulds that surely hold it, by the high end of the volume.</summary>
    public int MouldsNeeded => (int)Math.Min(int.MaxValue, Math.Ceiling(Math.Max(Volume.High!.Value.Milliliters / MouldMilliliters, 1e-9) - 1e-9));

    /// <summary>How full the last of these moulds gets.</summary>
    public Figure<Ratio> ShareOfLastMould
    {
        get
        {
            int full = MouldsNeeded - 1;
            Ratio Last(Ratio all) => Stored.ToRatio(Math.Max(0, all.DecimalFractions - full));
            Figure<Ratio> all = ShareOfMould;
            return new(Last(all.Value), all.Evidence, all.Sources) { Low = Last(all.Low!.Value), High = Last(all.High!.Value), Note = all.Note };
        }
    }

    /// <summary>True when one mould is too small even by the low end of the volume.</summary>
    public bool SurelyOverflows => ShareOfMould.Low!.Value.DecimalFractions > 1 + 1e-9;

    /// <summary>True when one mould may be too small by the high end of the volume.</summary>
    public bool MayOverflow => ShareOfMould.High!.Value.DecimalFractions > 1 + 1e-9;

    /// <summary>What one mould holds of this batter.</summary>
    public Figure<Mass> MassOfMould => new(MassAt(Batter.Density.Value), Batter.Density.Evidence, Batter.Density.Sources)
    {
        Low = MassAt(Batter.Density.Low!.Value),
        High = MassAt(Batter.Density.High!.Value),
        Note = Batter.Density.Note,
    };

    /// <summary>The factor that makes the formula fill so many moulds, by the middle of the density.</summary>
    /// <param name="moulds">From 1 to 10,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public double FactorToFill(int moulds) => Guard.InRange(moulds, 1, 10_000, "The number of moulds", "") * MouldMilliliters * Batter.Middle / PouredGrams;

    /// <summary>The formula scaled to fill so many moulds, by the middle of the density; what stays in the pot is made as well.</summary>
    /// <param name="moulds">From 1 to 10,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or the formula can't be scaled so far (<see cref="Formula.ScaledBy"/>).</exception>
    public Formula ScaledToFill(int moulds) => Plan.Formula.ScaledBy(FactorToFill(moulds));

    private Mass MassAt(Density density) => Mass.FromGrams(MouldMilliliters * density.GramsPerMilliliter);

    private Figure<T> Figure<T>(Func<double, T> make, double amount) where T : struct
    {
        Figure<Density> density = Batter.Density;
        return new(make(amount / density.Value.GramsPerMilliliter), density.Evidence, density.Sources)
        {
            Low = make(amount / density.High!.Value.GramsPerMilliliter),
            High = make(amount / density.Low!.Value.GramsPerMilliliter),
            Note = density.Note,
        };
    }
}
