namespace Saponify;

/// <summary>Vapour pressure of water.</summary>
internal static class WaterVapour
{
    internal const double Kelvin = 273.15;

    /// <summary>kPa over pure water. Source: wagner-pruss-1993, recalled; 2.34 at 20 degrees Celsius, 101.4 at 100.</summary>
    internal static double Pressure(double celsius)
    {
        const double CriticalKelvin = 647.096, CriticalPressure = 22064;
        double kelvin = celsius + Kelvin, t = 1 - (kelvin / CriticalKelvin), root = Math.Sqrt(t), cube = t * t * t;
        double sum = (-7.85951783 * t) + (1.84408259 * t * root) - (11.7866497 * cube) + (22.6807411 * cube * root) - (15.9618719 * cube * t) + (1.80122502 * cube * cube * t * root);
        return CriticalPressure * Math.Exp(CriticalKelvin / kelvin * sum);
    }
}
