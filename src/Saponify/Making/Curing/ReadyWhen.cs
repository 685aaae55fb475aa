using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>When a bar counts as ready, as the maker decides it; there is no default. Equality is exact; <c>default</c> is never ready.</summary>
public readonly record struct ReadyWhen
{
    internal static readonly Limits ShareLimits = new(1e-4, 0.5);

    private ReadyWhen(double fraction, bool isRate) => (Fraction, IsRate) = (fraction, isRate);

    internal double Fraction { get; }

    internal bool IsRate { get; }

    /// <summary>When it loses less than this share of its mass in the seven days that follow. Below about 1 % is common practice, no source.</summary>
    /// <param name="share">From 0.01 to 50 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static ReadyWhen WeeklyLossBelow(Ratio share) => new(Stored.Fraction(share, ShareLimits, "A weekly loss"), true);

    /// <summary>When it is heavier than its final mass by no more than this share of it.</summary>
    /// <param name="share">From 0.01 to 50 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static ReadyWhen WithinOfFinal(Ratio share) => new(Stored.Fraction(share, ShareLimits, "A nearness to the final mass"), false);

    /// <summary>For example <c>weekly loss below 1 %</c>; invariant.</summary>
    public override string ToString() => IsRate ? $"weekly loss below {Text.Number(Fraction * 100)} %" : $"within {Text.Number(Fraction * 100)} % of the final mass";

    /// <summary>
    /// Ratio of loss yet to come to final mass at the ready moment, by the time constant in days. With q = exp(-7/t), a(t) the loss to come and e the final
    /// mass: a (1 - q) = r (e + a), so a/e = r/(1 - q - r); infinite where even the whole loss comes slower than that.
    /// </summary>
    internal double ExcessAtReady(double timeConstant)
    {
        if (!IsRate)
            return Fraction;
        double weekly = 1 - Math.Exp(-7 / timeConstant) - Fraction;
        return weekly > 0 ? Fraction / weekly : double.PositiveInfinity;
    }
}
