using UnitsNet;
using UnitsNet.Units;

namespace Saponify.Internals;

/// <summary>
/// Reads amounts as people write them: <c>420 g</c>, <c>1 lb 3 oz</c>, <c>32 %</c>, <c>100 F</c>. Invariant; allocates only to say what is wrong.
/// UnitsNet's own parser takes a thousand times as long and refuses half of these.
/// </summary>
internal static class AmountReader
{
    internal static bool TryMass(ReadOnlySpan<char> text, out Mass mass, out string? fault)
    {
        mass = default;
        if (!TryNumber(text, out double number, out ReadOnlySpan<char> rest, out fault))
            return false;
        ReadOnlySpan<char> first = rest[..Letters(rest)];
        ReadOnlySpan<char> second = rest[first.Length..].Trim();
        if (!UnitTable.TryFind(UnitTable.Mass, first, out MassUnit unit))
        {
            fault = WrongUnit(rest, "g, kg, mg, oz or lb", IsVolume(rest) ? "a volume is not a mass: " : "");
            return false;
        }
        if (second.IsEmpty)
        {
            mass = Mass.From(number, unit);
            return true;
        }
        return TryPoundsAndOunces(number, unit, second, out mass, out fault);
    }

    internal static bool TryVolume(ReadOnlySpan<char> text, out Volume volume, out string? fault)
    {
        bool isOne = TryUnit(text, UnitTable.Volume, "mL, cL, dL, L, fl oz (US) or imp fl oz", out double number, out VolumeUnit unit, out fault);
        volume = isOne ? Volume.From(number, unit) : default;
        return isOne;
    }

    internal static bool TryTemperature(ReadOnlySpan<char> text, out Temperature temperature, out string? fault)
    {
        bool isOne = TryUnit(text, UnitTable.Temperature, "°C, °F or K", out double number, out TemperatureUnit unit, out fault);
        temperature = isOne ? Temperature.From(number, unit) : default;
        return isOne;
    }

    internal static bool TryLength(ReadOnlySpan<char> text, out Length length, out string? fault)
    {
        bool isOne = TryUnit(text, UnitTable.Length, "cm, mm, m or in", out double number, out LengthUnit unit, out fault);
        length = isOne ? Length.From(number, unit) : default;
        return isOne;
    }

    private static bool TryUnit<TUnit>(ReadOnlySpan<char> text, (string Text, TUnit Unit)[] table, string wanted, out double number, out TUnit unit, out string? fault) where TUnit : struct, Enum
    {
        unit = default;
        if (!TryNumber(text, out number, out ReadOnlySpan<char> rest, out fault))
            return false;
        if (UnitTable.TryFind(table, rest, out unit))
            return true;
        fault = WrongUnit(rest, wanted, "");
        return false;
    }

    internal static bool TryPercent(ReadOnlySpan<char> text, out Ratio ratio, out string? fault) => TryPercent(text, needsSign: true, out ratio, out fault);

    /// <summary>A share in per cent; without its sign only where another one follows, as in <c>97 to 99 %</c>.</summary>
    internal static bool TryPercent(ReadOnlySpan<char> text, bool needsSign, out Ratio ratio, out string? fault)
    {
        ratio = default;
        if (!TryNumber(text, -2, out double fraction, out ReadOnlySpan<char> rest, out fault))
            return false;
        if (!(rest.IsEmpty && !needsSign) && !UnitTable.TryFind(UnitTable.Ratio, rest, out _))
        {
            fault = rest.IsEmpty
                ? $"a share needs the sign %: is {Text.Number(fraction * 100)} % meant, or {Text.Number(fraction * 10_000)} %?"
                : WrongUnit(rest, "%", "");
            return false;
        }
        ratio = Ratio.FromDecimalFractions(fraction);
        return true;
    }

    /// <summary>True when the text ends in a unit of volume.</summary>
    internal static bool IsVolume(ReadOnlySpan<char> text) =>
        UnitTable.TryFind(UnitTable.Volume, TryNumber(text, out _, out ReadOnlySpan<char> rest, out _) ? rest : text, out _);

    /// <summary>A number at the start of a text: sign, digits, a decimal point, an exponent. What follows is given back trimmed.</summary>
    internal static bool TryNumber(ReadOnlySpan<char> text, out double number, out ReadOnlySpan<char> rest, out string? fault) =>
        TryNumber(text, 0, out number, out rest, out fault);

    /// <summary>The same times a power of ten, rounded once.</summary>
    private static bool TryNumber(ReadOnlySpan<char> text, int power, out double number, out ReadOnlySpan<char> rest, out string? fault)
    {
        text = text.Trim();
        int end = NumberLength(text);
        rest = text[end..].Trim();
        fault = null;
        if (end == 0)
        {
            number = 0;
            fault = text.IsEmpty ? "it is empty; write a number and a unit" : $"\"{Shown(text)}\" does not begin with a number";
            return false;
        }
        if (rest is [',' or '.' or '\'' or (>= '0' and <= '9'), ..])
        {
            number = 0;
            fault = $"\"{Shown(text)}\" is ambiguous: write the decimals after a point and no thousands separator, for example 1234.5";
            return false;
        }
        if (!Decimals.TryParse(text[..end], power, out number)
            || !double.IsFinite(number))
        {
            fault = $"\"{Shown(text)}\" is not a number that can be computed with";
            return false;
        }
        return true;
    }

    private static bool TryPoundsAndOunces(double pounds, MassUnit unit, ReadOnlySpan<char> text, out Mass mass, out string? fault)
    {
        mass = default;
        if (!TryNumber(text, out double ounces, out ReadOnlySpan<char> rest, out fault))
            return false;
        if (unit != MassUnit.Pound || !UnitTable.TryFind(UnitTable.Mass, rest, out MassUnit second) || second != MassUnit.Ounce)
        {
            fault = $"\"{Shown(text)}\" can't follow: only pounds and ounces go together, for example 1 lb 3 oz";
            return false;
        }
        if (ounces is < 0 or >= 16 || pounds < 0)
        {
            fault = $"in pounds and ounces the ounces go from 0 to below 16, not {Text.Exact(ounces)}";
            return false;
        }
        mass = Mass.FromOunces((pounds * 16) + ounces);
        return true;
    }

    private static int NumberLength(ReadOnlySpan<char> text)
    {
        int at = text is ['-', ..] or ['+', ..] ? 1 : 0;
        int digits = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        if (at < text.Length - 1 && text[at] == '.' && char.IsAsciiDigit(text[at + 1]))
        {
            at++;
            while (at < text.Length && char.IsAsciiDigit(text[at]))
                at++;
        }
        if (at == digits)
            return 0;
        int exponent = at;
        if (exponent < text.Length && text[exponent] is 'e' or 'E')
        {
            exponent++;
            if (exponent < text.Length && text[exponent] is '-' or '+')
                exponent++;
            int start = exponent;
            while (exponent < text.Length && char.IsAsciiDigit(text[exponent]))
                exponent++;
            if (exponent > start)
                at = exponent;
        }
        return at;
    }

    private static int Letters(ReadOnlySpan<char> text)
    {
        int at = 0;
        while (at < text.Length && char.IsLetter(text[at]))
            at++;
        return at;
    }

    private static string WrongUnit(ReadOnlySpan<char> unit, string right, string why) =>
        unit.IsEmpty ? $"the unit is missing; write {right}" : $"\"{Shown(unit)}\" is no unit here: {why}write {right}";

    private static string Shown(ReadOnlySpan<char> text)
    {
        string shown = text.Length > 40 ? string.Concat(text[..40], "...") : text.ToString();
        return string.Create(shown.Length, shown, static (span, s) =>
        {
            for (int i = 0; i < s.Length; i++)
                span[i] = char.IsControl(s[i]) || char.IsSurrogate(s[i]) ? '?' : s[i];
        });
    }
}
