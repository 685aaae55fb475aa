using UnitsNet.Units;

namespace Saponify.Internals;

/// <summary>The one table of unit spellings: the first spelling of a unit is the one that is printed.</summary>
internal static class UnitTable
{
    internal static readonly (string Text, MassUnit Unit)[] Mass =
    [
        ("g", MassUnit.Gram), ("kg", MassUnit.Kilogram), ("oz", MassUnit.Ounce), ("lb", MassUnit.Pound), ("mg", MassUnit.Milligram),
        ("gram", MassUnit.Gram), ("grams", MassUnit.Gram), ("G", MassUnit.Gram), ("kilogram", MassUnit.Kilogram), ("kilograms", MassUnit.Kilogram),
        ("KG", MassUnit.Kilogram), ("Kg", MassUnit.Kilogram), ("ounce", MassUnit.Ounce), ("ounces", MassUnit.Ounce), ("OZ", MassUnit.Ounce),
        ("lbs", MassUnit.Pound), ("pound", MassUnit.Pound), ("pounds", MassUnit.Pound), ("LB", MassUnit.Pound),
    ];

    internal static readonly (string Text, VolumeUnit Unit)[] Volume =
    [
        ("mL", VolumeUnit.Milliliter), ("L", VolumeUnit.Liter), ("fl oz", VolumeUnit.UsOunce), ("imp fl oz", VolumeUnit.ImperialOunce),
        ("cL", VolumeUnit.Centiliter), ("dL", VolumeUnit.Deciliter), ("ml", VolumeUnit.Milliliter), ("l", VolumeUnit.Liter),
        ("cl", VolumeUnit.Centiliter), ("dl", VolumeUnit.Deciliter), ("ML", VolumeUnit.Milliliter), ("US fl oz", VolumeUnit.UsOunce),
    ];

    internal static readonly (string Text, TemperatureUnit Unit)[] Temperature =
    [
        ("°C", TemperatureUnit.DegreeCelsius), ("°F", TemperatureUnit.DegreeFahrenheit), ("K", TemperatureUnit.Kelvin),
        ("C", TemperatureUnit.DegreeCelsius), ("F", TemperatureUnit.DegreeFahrenheit),
    ];

    internal static readonly (string Text, LengthUnit Unit)[] Length =
    [
        ("cm", LengthUnit.Centimeter), ("mm", LengthUnit.Millimeter), ("m", LengthUnit.Meter), ("in", LengthUnit.Inch),
        ("inch", LengthUnit.Inch), ("inches", LengthUnit.Inch),
    ];

    internal static readonly (string Text, RatioUnit Unit)[] Ratio = [("%", RatioUnit.Percent)];

    /// <summary>The printed spelling of a unit, or null when the table has none.</summary>
    internal static string? Name<TUnit>((string Text, TUnit Unit)[] table, TUnit unit) where TUnit : struct, Enum
    {
        foreach ((string text, TUnit known) in table)
        {
            if (EqualityComparer<TUnit>.Default.Equals(known, unit))
                return text;
        }
        return null;
    }

    internal static bool TryFind<TUnit>((string Text, TUnit Unit)[] table, ReadOnlySpan<char> text, out TUnit unit) where TUnit : struct, Enum
    {
        foreach ((string known, TUnit candidate) in table)
        {
            if (text.SequenceEqual(known))
            {
                unit = candidate;
                return true;
            }
        }
        unit = default;
        return false;
    }
}
