using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// Purity of a solid alkali, or strength of a bought solution, by mass. The plan divides by its top, because an alkali that is purer
/// than assumed makes a lye-heavy soap. Immutable; equality by content.
/// </summary>
public sealed record Purity
{
    private Purity(PurityKind kind, double low, double high) => (Kind, LowFraction, HighFraction) = (kind, low, high);

    internal double LowFraction { get; }

    internal double HighFraction { get; }

    /// <summary>What the statement says.</summary>
    public PurityKind Kind { get; }

    /// <summary>The least it can be.</summary>
    public Ratio Low => Ratio.FromDecimalFractions(LowFraction);

    /// <summary>The most it can be: the certified value, the upper end of the range, 100 % for a bare minimum. The plan divides by it.</summary>
    public Ratio High => Ratio.FromDecimalFractions(HighFraction);

    /// <summary>A value from a certificate.</summary>
    /// <param name="value">Above 0, up to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static Purity Certified(Ratio value)
    {
        double fraction = Check(value);
        return new(PurityKind.Certified, fraction, fraction);
    }

    /// <summary>A range as stated by the supplier.</summary>
    /// <param name="low">Low end, above 0.</param>
    /// <param name="high">High end, up to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end outside that range, or not a number.</exception>
    /// <exception cref="ArgumentException">The low end is above the high end.</exception>
    public static Purity Between(Ratio low, Ratio high)
    {
        (double least, double most) = (Check(low), Check(high));
        if (least > most)
            throw new ArgumentException($"A purity can't range from {Text.Number(least * 100)} % down to {Text.Number(most * 100)} %.", nameof(low));
        return new(PurityKind.Range, least, most);
    }

    /// <summary>A label that states only a minimum. The plan then reckons with 100 %: ask for the certificate, above all for KOH.</summary>
    /// <param name="minimum">Above 0, up to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static Purity AtLeast(Ratio minimum) => new(PurityKind.LabelMinimum, Check(minimum), 1);

    /// <summary>For example <c>98 %</c>, <c>97 to 100 %</c>, <c>at least 85 %</c>; invariant.</summary>
    public override string ToString() => Kind switch
    {
        PurityKind.Certified => Percent(HighFraction),
        PurityKind.Range => $"{Text.Number(LowFraction * 100)} to {Percent(HighFraction)}",
        _ => $"at least {Percent(LowFraction)}",
    };

    private static string Percent(double fraction) => Text.Number(fraction * 100) + " %";

    private static double Check(Ratio ratio)
    {
        double fraction = Stored.Fraction(ratio, 0, 1, "A purity");
        // 1e-6 keeps every mass computed from it finite; a real alkali is far above
        return fraction >= 1e-6 ? fraction : throw new ArgumentOutOfRangeException(nameof(ratio), fraction, "A purity must be above 0 %.");
    }
}
