using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// How far a reading of the thermometer may be off, each reading for itself. You say it, there is no default. Equality is exact;
/// <c>default</c> is no error at all.
/// </summary>
public readonly record struct ReadingError
{
    private ReadingError(double kelvins, bool isNormal) => (Kelvins, IsNormal) = (kelvins, isNormal);

    internal double Kelvins { get; }

    /// <summary>True for a normal distribution, false for a rectangular one.</summary>
    public bool IsNormal { get; }

    /// <summary>Half width of the rectangular distribution, or standard uncertainty of the normal one.</summary>
    public TemperatureDelta Size => TemperatureDelta.FromKelvins(Kelvins);

    /// <summary>Anywhere within so much, and never beyond: half a step of the display, for example. A forecast then spans all that can be.</summary>
    /// <param name="halfWidth">From 0 to 50 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static ReadingError Rectangular(TemperatureDelta halfWidth) => new(Guard.InRange(halfWidth.Kelvins, 0, 50, "The half width", "K", nameof(halfWidth)), false);

    /// <summary>Normal with this standard uncertainty. A forecast then spans two of them, about 95 % (JCGM 100, coverage factor 2).</summary>
    /// <param name="standardUncertainty">From 0 to 50 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static ReadingError Normal(TemperatureDelta standardUncertainty) => new(Guard.InRange(standardUncertainty.Kelvins, 0, 50, "The standard uncertainty", "K", nameof(standardUncertainty)), true);
}
