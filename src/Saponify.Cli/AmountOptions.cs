using System.CommandLine;
using Saponify.Internals;
using UnitsNet;

namespace Saponify.Cli;

/// <summary>Options that take an amount with its unit.</summary>
internal static class AmountOptions
{
    internal static Option<Temperature?> Warmth(string name, string description, Limits limits) => new(name)
    {
        Description = description,
        CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(t => t.Value));
            if (AmountReader.TryTemperature(text, out Temperature temperature, out string? fault) && temperature.DegreesCelsius >= limits.Low && temperature.DegreesCelsius <= limits.High)
                return temperature;
            result.AddError($"{name}: {fault ?? $"\"{text}\" is outside {Text.Number(limits.Low)} to {Text.Number(limits.High)} °C"}.");
            return null;
        },
    };

    internal static Option<Ratio?> Share(string name, string description) => new(name)
    {
        Description = description,
        CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(t => t.Value));
            if (AmountReader.TryPercent(text, out Ratio share, out string? fault) && share.DecimalFractions is >= 0 and <= 1)
                return share;
            result.AddError($"{name}: {fault ?? $"\"{text}\" is outside 0 to 100 %"}.");
            return null;
        },
    };

    /// <summary>Lengths with commas between them; any number for a count below 0.</summary>
    internal static Option<Length[]?> Lengths(string name, string description, int count, string form) => new(name)
    {
        Description = description,
        CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(t => t.Value));
            string[] parts = text.Split(',', StringSplitOptions.TrimEntries);
            string? fault = null;
            var lengths = new Length[parts.Length];
            for (int i = 0; i < parts.Length && fault is null; i++)
                AmountReader.TryLength(parts[i], out lengths[i], out fault);
            if (fault is null && (count < 0 || parts.Length == count))
                return lengths;
            result.AddError($"{name}: {fault ?? FormattableString.Invariant($"\"{text}\" has {parts.Length} sizes, not {count}")}; write it like {form}.");
            return null;
        },
    };

    internal static Option<Mass?> Masses(string name, string description, Limits limits) => new(name)
    {
        Description = description,
        CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(t => t.Value));
            if (AmountReader.TryMass(text, out Mass mass, out string? fault) && Stored.ToGrams(mass) >= limits.Low && Stored.ToGrams(mass) <= limits.High)
                return mass;
            result.AddError($"{name}: {fault ?? $"\"{text}\" is outside {Text.Number(limits.Low)} to {Text.Number(limits.High)} g"}.");
            return null;
        },
    };
}
