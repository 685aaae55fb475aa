using System.Runtime.CompilerServices;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify.Internals;

/// <summary>
/// How quantities are stored: one unit inside as a double (grams, degrees Celsius, fraction), checked once at the edge.
/// The conversion factors are the exact ones of the international yard and pound agreement (1 lb = 453.59237 g).
/// </summary>
internal static class Stored
{
    internal const double GramsPerOunce = 28.349523125;
    internal const double GramsPerPound = 453.59237;

    /// <summary>Grams of a mass, from 0 to <see cref="Guard.LargestGrams"/>.</summary>
    internal static double Grams(Mass mass, string what, [CallerArgumentExpression(nameof(mass))] string? name = null) =>
        Guard.InRange(ToGrams(mass), 0, Guard.LargestGrams, what, "g", name);

    /// <summary>Mass of one bar in grams: above 0, up to 1000 kg.</summary>
    internal static readonly Limits BarLimits = new(1e-6, 1e6);

    /// <summary>Grams of one bar, within <see cref="BarLimits"/>.</summary>
    internal static double BarGrams(Mass mass, string what, [CallerArgumentExpression(nameof(mass))] string? name = null) =>
        Guard.InRange(ToGrams(mass), BarLimits, what, "g", name);

    /// <summary>Grams of any mass.</summary>
    internal static double ToGrams(Mass mass) => mass.Unit switch
    {
        MassUnit.Gram => mass.Value,
        MassUnit.Kilogram => mass.Value * 1000,
        MassUnit.Milligram => mass.Value / 1000,
        MassUnit.Ounce => mass.Value * GramsPerOunce,
        MassUnit.Pound => mass.Value * GramsPerPound,
        _ => mass.Grams,
    };

    /// <summary>A mass of so many grams in the unit given, for printing in the formula's own unit.</summary>
    internal static double GramsIn(double grams, MassUnit unit) => unit switch
    {
        MassUnit.Gram => grams,
        MassUnit.Kilogram => grams / 1000,
        MassUnit.Milligram => grams * 1000,
        MassUnit.Ounce => grams / GramsPerOunce,
        MassUnit.Pound => grams / GramsPerPound,
        _ => Mass.FromGrams(grams).As(unit),
    };

    internal static double Fraction(Ratio ratio, double low, double high, string what, [CallerArgumentExpression(nameof(ratio))] string? name = null)
    {
        double fraction = ratio.Unit == RatioUnit.Percent ? OfPercent(ratio.Value) : ratio.DecimalFractions;
        if (!(fraction >= low && fraction <= high))
            Guard.InRange(fraction * 100, low * 100, high * 100, what, "%", name);
        return fraction;
    }

    internal static double Fraction(Ratio ratio, Limits limits, string what, [CallerArgumentExpression(nameof(ratio))] string? name = null) =>
        Fraction(ratio, limits.Low, limits.High, what, name);

    /// <summary>The fraction that a percentage means: 6.3 is 0.063.</summary>
    internal static double OfPercent(double percent) => percent == Math.Floor(percent) ? percent / 100 : Decimals.TimesPowerOfTen(percent, -2);

    internal static double Celsius(Temperature temperature, double low, double high, string what, [CallerArgumentExpression(nameof(temperature))] string? name = null)
    {
        double celsius = temperature.Unit == TemperatureUnit.DegreeCelsius ? temperature.Value : temperature.DegreesCelsius;
        return Guard.InRange(celsius, low, high, what, "degrees Celsius", name);
    }

    internal static double Celsius(Temperature temperature, Limits limits, string what, [CallerArgumentExpression(nameof(temperature))] string? name = null) =>
        Celsius(temperature, limits.Low, limits.High, what, name);

    /// <summary>A ratio as percent, so that it reads well and gives back the same fraction.</summary>
    internal static Ratio ToRatio(double fraction) => Ratio.FromDecimalFractions(fraction);
}
