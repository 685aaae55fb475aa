using UnitsNet;
using UnitsNet.Units;

namespace Saponify.Internals;

/// <summary>Writes amounts so that <see cref="AmountReader"/> reads back the same double, in the unit they were written in where the table has it.</summary>
internal static class AmountWriter
{
    internal static string Write(Mass mass) => UnitTable.Name(UnitTable.Mass, mass.Unit) is { } unit
        ? $"{Text.Exact(mass.Value)} {unit}"
        : $"{Text.Exact(mass.Grams)} g";

    /// <summary>The unit of a mass as it is printed.</summary>
    internal static string Unit(Mass mass) => UnitTable.Name(UnitTable.Mass, mass.Unit) ?? mass.Unit.ToString();

    internal static string Write(Volume volume) => UnitTable.Name(UnitTable.Volume, volume.Unit) is { } unit
        ? $"{Text.Exact(volume.Value)} {unit}"
        : $"{Text.Exact(volume.Milliliters)} mL";

    internal static string Write(Temperature temperature) => UnitTable.Name(UnitTable.Temperature, temperature.Unit) is { } unit
        ? $"{Text.Exact(temperature.Value)} {unit}"
        : $"{Text.Exact(temperature.DegreesCelsius)} °C";

    /// <summary>A fraction as a percentage: its shortest decimal digits with the point two places on, so that it reads back to the same double.</summary>
    internal static string Percent(double fraction) => Decimals.Shifted(Text.Exact(fraction), 2) + " %";
}
