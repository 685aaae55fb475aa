using System.Globalization;

namespace Saponify.Internals;

/// <summary>Powers of ten done on decimal digits, where binary multiplication would leave the neighbouring double.</summary>
internal static class Decimals
{
    private const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    private static readonly double[] s_powers = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8];

    /// <summary>The double nearest to a number's shortest decimal text times a power of ten: 6.3 % is the double 0.063, not 6.3 / 100.</summary>
    internal static double TimesPowerOfTen(double value, int power)
    {
        // a number of at most six decimals and fifteen digits is an integer over a million; one division rounds it once
        double millionths = Math.Round(value * 1e6);
        if (power is < 0 and >= -8 && Math.Abs(millionths) < 1e15 && millionths / 1e6 == value)
            return millionths / (1e6 * s_powers[-power]);
        Span<char> text = stackalloc char[40];
        return value.TryFormat(text, out int length, "R", CultureInfo.InvariantCulture) && TryParse(text[..length], power, out double shifted) ? shifted : value * Math.Pow(10, power);
    }

    /// <summary>Reads digits times a power of ten, rounded once.</summary>
    internal static bool TryParse(ReadOnlySpan<char> digits, int power, out double value)
    {
        if (power == 0)
            return double.TryParse(digits, Style, CultureInfo.InvariantCulture, out value);
        value = 0;
        int mark = digits.IndexOfAny('e', 'E');
        if (mark >= 0)
        {
            if (!int.TryParse(digits[(mark + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int exponent) || Math.Abs(exponent) > 10_000)
                return false;
            power += exponent;
            digits = digits[..mark];
        }
        if (digits.Length > 400)
            return false;
        Span<char> text = stackalloc char[digits.Length + 12];
        digits.CopyTo(text);
        text[digits.Length] = 'e';
        return power.TryFormat(text[(digits.Length + 1)..], out int written, default, CultureInfo.InvariantCulture)
            && double.TryParse(text[..(digits.Length + 1 + written)], Style, CultureInfo.InvariantCulture, out value);
    }

    /// <summary>The text of a number with its decimal point moved to the right, in plain notation where that is short.</summary>
    internal static string Shifted(string number, int places)
    {
        bool negative = number[0] == '-';
        ReadOnlySpan<char> text = number.AsSpan(negative ? 1 : 0);
        int mark = text.IndexOf('E');
        int exponent = places + (mark < 0 ? 0 : int.Parse(text[(mark + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture));
        ReadOnlySpan<char> mantissa = mark < 0 ? text : text[..mark];
        int dot = mantissa.IndexOf('.');
        string digits = dot < 0 ? mantissa.ToString() : string.Concat(mantissa[..dot], mantissa[(dot + 1)..]);
        int point = (dot < 0 ? digits.Length : dot) + exponent;
        int zeros = digits.Length - digits.TrimStart('0').Length;
        digits = digits.TrimStart('0').TrimEnd('0');
        point -= zeros;
        string plain = digits.Length == 0 ? "0"
            : point > 25 ? $"{digits}e{(point - digits.Length).ToString(CultureInfo.InvariantCulture)}"
            : point < -25 ? $"0.{digits}e{point.ToString(CultureInfo.InvariantCulture)}"
            : point <= 0 ? "0." + new string('0', -point) + digits
            : point >= digits.Length ? digits + new string('0', point - digits.Length)
            : $"{digits.AsSpan(0, point)}.{digits.AsSpan(point)}";
        return negative ? "-" + plain : plain;
    }
}
