using System.Globalization;

namespace Saponify.Internals;

/// <summary>Numbers as text, the same in every culture.</summary>
internal static class Text
{
    /// <summary>At most four significant digits, for people: <c>192.4</c>, <c>0.1351</c>, <c>1240</c>.</summary>
    internal static string Number(double value)
    {
        if (value == 0)
            return "0";
        double size = Math.Abs(value);
        int decimals = size >= 1e15 ? 0 : Math.Clamp(3 - (int)Math.Floor(Math.Log10(size)), 0, 12);
        return Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>The shortest number that reads back to the same double.</summary>
    internal static string Exact(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A number with so many decimals.</summary>
    internal static string Fixed(double value, int decimals) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
