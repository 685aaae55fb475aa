using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace Saponify.Internals;

/// <summary>The one place where impossible arguments are refused. Each message says what was found and what would be right.</summary>
internal static class Guard
{
    /// <summary>The largest mass of one line, in grams: a thousand tonnes.</summary>
    internal const double LargestGrams = 1e9;

    internal static double InRange(double value, double low, double high, string what, string unit, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value >= low && value <= high))                    // written so that NaN fails
            OutOfRange(value, low, high, what, unit, name);
        return value;
    }

    internal static double InRange(double value, Limits limits, string what, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        InRange(value, limits.Low, limits.High, what, unit, name);

    internal static string Text(string? value, string what, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentNullException.ThrowIfNull(value, name);
        if (string.IsNullOrWhiteSpace(value))
            throw new ArgumentException($"{what} must not be blank.", name);
        if (!IsUnicode(value))
            throw new ArgumentException($"{what} must be Unicode text, and half of a surrogate pair is none.", name);
        return value;
    }

    internal static T Known<T>(T value, string what, [CallerArgumentExpression(nameof(value))] string? name = null) where T : struct, Enum
    {
        if (!Enum.IsDefined(value))
            throw new ArgumentOutOfRangeException(name, value, $"{what} is none of: {string.Join(", ", Enum.GetNames<T>())}.");
        return value;
    }

    private static bool IsUnicode(string value)
    {
        for (int i = 0; i < value.Length; i++)
        {
            if (!char.IsSurrogate(value[i]))
                continue;
            if (i + 1 == value.Length || !char.IsSurrogatePair(value[i], value[i + 1]))
                return false;
            i++;
        }
        return true;
    }

    /// <summary>A limit as people write it: 0.000001, 1,000,000.</summary>
    private static string Bound(double limit) => limit.ToString(Math.Abs(limit) switch
    {
        >= 1e4 and < 1e13 => "#,0",
        >= 1e-6 and < 1e-3 => "0.######",
        _ => "G6",
    }, CultureInfo.InvariantCulture);

    [DoesNotReturn]
    private static void OutOfRange(double value, double low, double high, string what, string unit, string? name) =>
        throw new ArgumentOutOfRangeException(name, value, string.Create(CultureInfo.InvariantCulture,
            $"{what} must be a number from {Bound(low)} to {Bound(high)}{(unit.Length > 0 ? " " : "")}{unit}, but was {value:G17}."));
}
