namespace Saponify.Tests.Support;

/// <summary>Nearness with a stated tolerance, relative to the larger of the two and to a floor.</summary>
public static class Near
{
    public static bool Is(double one, double other, double relative = 1e-9, double floor = 1e-12) =>
        Math.Abs(one - other) <= (relative * Math.Max(Math.Abs(one), Math.Abs(other))) + floor;

    public static bool Is(Ratio? one, Ratio? other, double absolute = 1e-9) =>
        one is null ? other is null : other is { } second && Math.Abs(one.Value.DecimalFractions - second.DecimalFractions) <= absolute * Math.Max(1, Math.Abs(second.DecimalFractions));

    public static bool Is(Mass one, Mass other, double relative = 1e-9) => Is(one.Grams, other.Grams, relative);
}
