using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>The bars that one mould gives. Bars, ends, kerf and rest add up to the volume of the mould. Immutable; equality by content.</summary>
public sealed record BarLayout
{
    /// <summary>Rounding that still counts as a whole bar, in bars.</summary>
    private const double Slack = 1e-9;

    internal BarLayout(Mould mould, int bars, int samples, double barMilliliters, double endsMilliliters)
    {
        Mould = mould;
        Bars = bars;
        Samples = Math.Min(samples, bars);
        BarMilliliters = barMilliliters;
        EndsMilliliters = endsMilliliters;
    }

    private double BarMilliliters { get; }

    private double EndsMilliliters { get; }

    /// <summary>The mould.</summary>
    public Mould Mould { get; }

    /// <summary>Whole bars from one mould, samples included; 0 when the block is too short for one.</summary>
    public int Bars { get; }

    /// <summary>Bars kept back.</summary>
    public int Samples { get; }

    /// <summary>Bars left for sale.</summary>
    public int Saleable => Bars - Samples;

    /// <summary>Volume of one bar as cut.</summary>
    public Volume BarVolume => Volume.FromMilliliters(BarMilliliters);

    /// <summary>Volume of both trimmed ends.</summary>
    public Volume EndsVolume => Volume.FromMilliliters(EndsMilliliters);

    /// <summary>Volume that the cuts take and of what is left over.</summary>
    public Volume KerfAndRest => Volume.FromMilliliters(Math.Max(0, Mould.Milliliters - (Bars * BarMilliliters) - EndsMilliliters));

    /// <summary>Share of the block that is no bar: ends, kerf, rest.</summary>
    public Ratio Waste => Stored.ToRatio(WasteFraction);

    /// <summary>Share of the block that is one bar.</summary>
    public Ratio BarShare => Stored.ToRatio(BarMilliliters / Mould.Milliliters);

    internal double WasteFraction => Math.Max(0, 1 - (Bars * BarMilliliters / Mould.Milliliters));

    /// <summary>Mass of one bar when cut: its share of what the mould holds. What evaporated before the cut is not taken off.</summary>
    /// <param name="inMould">What the mould holds, from 0 to 1e9 g.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Mass MassWhenCut(Mass inMould) => Mass.FromGrams(Stored.Grams(inMould, "The content of a mould") * BarMilliliters / Mould.Milliliters);

    internal static BarLayout Of(Mould mould, CuttingPlan plan)
    {
        (double along, double wide, _) = mould.Block;
        double ends = Math.Min(2 * plan.EndsCentimeters, along), kerf = plan.KerfCentimeters;
        int slices = Whole(along - ends - (ends > 0 ? 2 * kerf : 0), plan.ThicknessCentimeters, kerf);
        int rows = plan.AcrossCentimeters is { } across ? Whole(wide, across, kerf) : 1;
        double bar = mould.CrossSection * plan.ThicknessCentimeters * (plan.AcrossCentimeters is { } second ? second / wide : 1);
        return new(mould, slices * rows, plan.Samples, bar, ends * mould.CrossSection);
    }

    /// <summary>n bars and the n - 1 cuts between them fit: n = floor((length + kerf)/(size + kerf)).</summary>
    private static int Whole(double length, double size, double kerf) => Math.Max(0, (int)Math.Floor(((length + kerf) / (size + kerf)) + Slack));
}
