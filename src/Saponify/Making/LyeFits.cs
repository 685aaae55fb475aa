using Saponify.Internals;

namespace Saponify;

/// <summary>
/// Plain formulas that stand for published tables of lye of one alkali. w is g of pure alkali per g of solution, temperatures are in degrees
/// Celsius. Outside its range a formula gives NaN. The largest residual against the table is stated beside each; tests measure it.
/// </summary>
internal static class LyeFits
{
    /// <summary>The strongest lye that there are figures for.</summary>
    internal const double Strongest = 0.50;

    /// <summary>Error of the density of NaOH lye, g/mL.</summary>
    internal const double SodiumDensityError = 0.0025;

    /// <summary>Error of the density of KOH lye, g/mL: 0.0007 against laliberte-2009, 0.0019 against measurements at 18 degrees.</summary>
    internal const double PotassiumDensityError = 0.002;

    /// <summary>Error of the heat capacity of NaOH lye near 60 degrees, J/(g K); near 25 degrees above 30 % there are no figures.</summary>
    internal const double SodiumHeatCapacityError = 0.0078;

    /// <summary>Error of the heat capacity of KOH lye, J/(g K).</summary>
    internal const double PotassiumHeatCapacityError = 0.010;

    /// <summary>Error of boiling points at 101.325 kPa, degrees.</summary>
    internal const double BoilingError = 0.1;

    /// <summary>Strengths up to which the heat capacity at 25 degrees was measured: laliberte-2009.</summary>
    internal const double SodiumMeasuredAt25 = 0.303, PotassiumMeasured = 0.465;

    private const double Slack = 1e-9;

    internal static bool IsInRange(double w) => w >= 0 && w <= Strongest + Slack;

    /// <summary>
    /// g/mL. NaOH: 0 to 50 %, 0 to 100 degrees, source ict-3. KOH: 0 to 50 %, 15 to 80 degrees, source laliberte-2009.
    /// </summary>
    internal static double Density(AlkaliKind kind, double w, double celsius)
    {
        (double low, double high) = DensityRange(kind);
        if (!IsInRange(w) || !(celsius >= low && celsius <= high))
            return double.NaN;
        double t = celsius - 20;
        return kind == AlkaliKind.SodiumHydroxide
            ? 0.998082 + (w * (1.099284 + (w * (0.128621 - (0.441362 * w))))) - (2.71321e-4 * t) - (1.386655e-3 * t * w) + (8.69324e-4 * t * w * w) - (2.69397e-6 * t * t) + (6.72514e-6 * t * t * w)
            : 0.997979 + (w * (0.908190 + (w * (0.155792 + (0.169921 * w))))) - (2.28456e-4 * t) - (1.163897e-3 * t * w) + (1.048861e-3 * t * w * w) - (3.438223e-6 * t * t);
    }

    internal static (double Low, double High) DensityRange(AlkaliKind kind) => kind == AlkaliKind.SodiumHydroxide ? (0, 100) : (15, 80);

    /// <summary>
    /// J/(g K) at 60 degrees: the curve that heat balances use at every strength, since lye warms through 60 degrees when alkali dissolves.
    /// NaOH: source olsson-1997 (the enthalpy equation, differentiated), residual 0.0077. KOH: source laliberte-2009, residual 0.0038, own fit;
    /// beyond 46.5 % extrapolated.
    /// </summary>
    internal static double HeatCapacityAt60(AlkaliKind kind, double w) => !IsInRange(w) ? double.NaN
        : kind == AlkaliKind.SodiumHydroxide
            ? 4.185 + (w * (-5.5644 + (w * (23.8317 + (w * (-47.4261 + (28.4618 * w)))))))
            : 4.179 + (w * (-5.12973 + (w * (4.94174 - (2.28649 * w)))));

    /// <summary>J/(g K) at 25 degrees. NaOH: to 30.3 %, residual 0.0068. KOH: to 46.5 %, residual 0.0087. Source: laliberte-2009.</summary>
    internal static double HeatCapacityAt25(AlkaliKind kind, double w) => !IsInRange(w) || w > (kind == AlkaliKind.SodiumHydroxide ? SodiumMeasuredAt25 : PotassiumMeasured) + Slack ? double.NaN
        : kind == AlkaliKind.SodiumHydroxide
            ? 4.182 + (w * (-5.7263 + (w * (21.6616 + (w * (-41.2832 + (29.5736 * w)))))))
            : 4.182 + (w * (-6.0106 + (w * (8.2212 - (5.6401 * w)))));

    /// <summary>
    /// J/(g K) between: straight from 25 to 60 degrees, level outside, from 0 to 100 degrees. Where there is no figure at 25 degrees, that at 60.
    /// </summary>
    internal static double HeatCapacity(AlkaliKind kind, double w, double celsius)
    {
        if (!(celsius is >= 0 and <= 100))
            return double.NaN;
        double warm = HeatCapacityAt60(kind, w), cool = HeatCapacityAt25(kind, w);
        return double.IsNaN(cool) ? warm : cool + ((warm - cool) * Math.Clamp((celsius - 25) / 35, 0, 1));
    }

    /// <summary>Degrees Celsius at 101.325 kPa. NaOH: source olsson-1997, residual 0.09. KOH: source balej-1985, residual 0.06. Residuals include the rounding of the tables.</summary>
    internal static double BoilingPoint(AlkaliKind kind, double w) => !IsInRange(w) ? double.NaN
        : kind == AlkaliKind.SodiumHydroxide
            ? 100 + (w * (25.323 + (w * (-27.395 + (w * (610.151 - (571.413 * w)))))))
            : 100 + (w * (16.302 + (w * (78.269 + (w * (-66.649 + (399.905 * w)))))));
}
