using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// What a sample of cured bars tells about the mass to declare. A help to choose it: which rules hold, and what counts as the net quantity of a product
/// that dries, local rules decide. Immutable.
/// </summary>
public sealed class NetQuantity
{
    /// <summary>The largest sample.</summary>
    internal const int MostBars = 100_000;

    /// <summary>The lower limit of the mean holds with 95 %: the two-sided 90 % of Student's t.</summary>
    private const double Coverage = 0.90;

    private readonly double[] _grams;
    private readonly double _mean;

    /// <summary>Takes a sample.</summary>
    /// <param name="bars">Masses of single bars, 1 to 100,000 of them, each above 0 up to 1000 kg.</param>
    /// <exception cref="ArgumentNullException"><paramref name="bars"/> is null.</exception>
    /// <exception cref="ArgumentException">No bar, or too many.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mass outside its range, or not a number.</exception>
    public NetQuantity(params Mass[] bars)
    {
        ArgumentNullException.ThrowIfNull(bars);
        if (bars.Length is 0 or > MostBars)
            throw new ArgumentException($"A sample has 1 to 100,000 bars, but this one has {Text.Number(bars.Length)}.", nameof(bars));
        _grams = [.. bars.Select(b => Stored.BarGrams(b, "The mass of a bar", nameof(bars)))];
        _mean = _grams.Average();
    }

    /// <summary>Bars in the sample.</summary>
    public int Count => _grams.Length;

    /// <summary>Mean.</summary>
    public Mass Mean => Mass.FromGrams(_mean);

    /// <summary>Standard deviation of single bars; null for a single one.</summary>
    public Mass? Spread => Deviation is { } grams ? Mass.FromGrams(grams) : null;

    /// <summary>The smallest.</summary>
    public Mass Smallest => Mass.FromGrams(_grams.Min());

    /// <summary>The largest.</summary>
    public Mass Largest => Mass.FromGrams(_grams.Max());

    private double? Deviation => _grams.Length < 2 ? null : Math.Sqrt(_grams.Sum(g => (g - _mean) * (g - _mean)) / (_grams.Length - 1));

    /// <summary>Share of the sample that falls short of a declared mass by more than the tolerable negative error; null where the Directive has none.</summary>
    /// <param name="declared">The declared mass.</param>
    public Ratio? ShareBelow(Mass declared) => Share(declared, 1);

    /// <summary>Share of the sample that falls short by more than twice the tolerable negative error: none of these may carry the e mark.</summary>
    /// <param name="declared">The declared mass.</param>
    public Ratio? ShareBelowTwice(Mass declared) => Share(declared, 2);

    /// <summary>
    /// The largest mass to declare, cut down to a whole step, for which the lot's mean is not below it (lower limit of the mean, 95 %, mean - t s/sqrt(n)), and no bar of
    /// the sample falls short by more than the tolerable negative error, after a further loss until the sale. Of a single bar no mean can be told: then its own mass. Null when less than one step is left.
    /// </summary>
    /// <param name="furtherLoss">What the bars will still lose until they are sold, from 0 to 80 %: from your own weighings.</param>
    /// <param name="step">Step to cut to, from 0.01 g to 1 kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure outside its range, or not a number.</exception>
    public Mass? Suggest(Ratio furtherLoss, Mass step)
    {
        double kept = 1 - Stored.Fraction(furtherLoss, 0, 0.8, "The further loss"), whole = Guard.InRange(Stored.ToGrams(step), 0.01, 1000, "The step of a declared mass", "g", nameof(step));
        double smallest = _grams.Min() * kept, most = Deviation is { } s ? (_mean - (StudentT.TwoSided(Count - 1, Coverage) * s / Math.Sqrt(Count))) * kept : smallest;
        double steps = Math.Floor((most / whole) + 1e-9);
        // what may be declared for the smallest bar lies less than a fifth above it: there the tolerable error ends
        steps = Math.Min(steps, Math.Floor(smallest * 1.2 / whole));
        while (steps > 0 && smallest < (steps * whole) - (TolerableNegativeError.Grams(steps * whole) ?? 0) - 1e-9)
            steps--;
        return steps > 0 ? Mass.FromGrams(steps * whole) : null;
    }

    /// <summary>
    /// The declaration in both units, each cut down so that neither says more: <c>Net Wt 3.8 oz (108 g)</c>. Source: 16-cfr-500 asks for both; from one pound on in pounds.
    /// </summary>
    /// <param name="declared">The declared mass, from 1 g to 1000 kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static string Declaration(Mass declared)
    {
        double grams = Guard.InRange(Stored.ToGrams(declared), 1, 1e6, "The declared mass", "g", nameof(declared));
        string Cut(double value, int decimals)
        {
            double power = Math.Pow(10, decimals);
            return Text.Number(Math.Floor((value * power) + 1e-9) / power);
        }
        string us = grams < Stored.GramsPerPound ? Cut(grams / Stored.GramsPerOunce, 1) + " oz" : Cut(grams / Stored.GramsPerPound, 2) + " lb";
        return $"Net Wt {us} ({(grams < 1000 ? Cut(grams, 0) + " g" : Cut(grams / 1000, 2) + " kg")})";
    }

    private Ratio? Share(Mass declared, int times)
    {
        double grams = Stored.ToGrams(declared);
        return TolerableNegativeError.Grams(grams) is { } error ? Stored.ToRatio(_grams.Count(g => g < grams - (times * error) - 1e-9) / (double)_grams.Length) : null;
    }
}
