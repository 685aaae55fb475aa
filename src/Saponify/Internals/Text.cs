using System.Globalization;

namespace Saponify.Internals;

/// <summary>Numbers as text, the same in every culture.</summary>
internal static class Text
{
    /// <summary>At most four significant digits, for people: <c>192.4</c>, <c>0.1351</c>, <c>1240</c>.</summary>
    internal static string Number(double value) =>
        value == 0 ? "0" : Math.Round(value, Decimals(value), MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);

    /// <summary>The same, but never more than the value: for alkali.</summary>
    internal static string Cut(double value)
    {
        int decimals = Decimals(value);
        double step = Math.Pow(10, decimals);
        // the slack keeps 101.6 from becoming 101.5 where the product falls short by a rounding error
        return Fixed(Math.Floor((value * step) + 1e-9) / step, decimals);
    }

    private static int Decimals(double value)
    {
        double size = Math.Abs(value);
        return size >= 1e15 || size == 0 ? 0 : Math.Clamp(3 - (int)Math.Floor(Math.Log10(size)), 0, 12);
    }

    /// <summary>The shortest number that reads back to the same double.</summary>
    internal static string Exact(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A number with so many decimals.</summary>
    internal static string Fixed(double value, int decimals) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>A date as standards write it: 2026-11-25.</summary>
    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
