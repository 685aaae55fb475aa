namespace Saponify.PublishedValues.Making;

/// <summary>Published tables of lye: what the formulas of the library stand for. NaN where a table has no figure.</summary>
internal static class LyeTables
{
    /// <summary>
    /// Density of NaOH lye in g/mL at 20, 40, 60, 80 and 100 degrees Celsius. Source: International Critical Tables, vol. III, p. 79; the rows of 24 %
    /// and more as a trade table of caustic soda gives them, the weaker ones from memory.
    /// </summary>
    internal static readonly (double Percent, double[] Density)[] SodiumDensity =
    [
        (1, [1.0095, 1.0033, 0.9941, 0.9824, 0.9693]), (2, [1.0207, 1.0139, 1.0045, 0.9929, 0.9797]), (4, [1.0428, 1.0352, 1.0254, 1.0139, 1.0009]),
        (8, [1.0869, 1.0780, 1.0676, 1.0560, 1.0432]), (12, [1.1309, 1.1210, 1.1101, 1.0983, 1.0855]), (16, [1.1751, 1.1645, 1.1531, 1.1408, 1.1277]),
        (20, [1.2191, 1.2079, 1.1960, 1.1833, 1.1700]), (24, [1.2629, 1.2512, 1.2388, 1.2259, 1.2124]), (28, [1.3064, 1.2942, 1.2814, 1.2682, 1.2546]),
        (32, [1.3490, 1.3362, 1.3232, 1.3097, 1.2960]), (36, [1.3900, 1.3768, 1.3634, 1.3498, 1.3360]), (40, [1.4300, 1.4164, 1.4027, 1.3889, 1.3750]),
        (44, [1.4685, 1.4545, 1.4405, 1.4266, 1.4127]), (48, [1.5065, 1.4922, 1.4781, 1.4641, 1.4503]), (50, [1.5253, 1.5109, 1.4967, 1.4827, 1.4690]),
    ];

    /// <summary>
    /// NaOH lye: heat capacity in J/(g K) at 25 degrees (Laliberte 2009, to 30.3 %) and at 60 (Olsson 1997, the enthalpy equation differentiated),
    /// boiling point at 101.3 kPa (Olsson 1997).
    /// </summary>
    internal static readonly (double Percent, double At25, double At60, double Boiling)[] Sodium =
    [
        (1, 4.122, 4.124, 100.2), (2, 4.069, 4.076, 100.5), (4, 3.979, 3.993, 101.1), (5, 3.940, 3.958, 101.3), (8, 3.841, 3.871, 102.2),
        (10, 3.789, 3.826, 102.8), (12, 3.744, 3.788, 103.5), (15, 3.690, 3.743, 104.9), (16, 3.674, 3.730, 105.4), (20, 3.622, 3.690, 107.9),
        (24, 3.582, 3.659, 111.1), (25, 3.574, 3.651, 112.0), (28, 3.550, 3.628, 114.9), (30, 3.536, 3.611, 117.0), (32, double.NaN, 3.590, 119.3),
        (33.33, double.NaN, 3.575, 120.9), (35, double.NaN, 3.552, 123.1), (36, double.NaN, 3.538, 124.4), (40, double.NaN, 3.466, 130.1), (44, double.NaN, 3.376, 136.4),
        (45, double.NaN, 3.351, 138.0), (48, double.NaN, 3.270, 143.0), (50, double.NaN, 3.214, 146.4),
    ];

    /// <summary>
    /// KOH lye: density at 20 and 60 degrees, heat capacity at 25 and 60 (Laliberte 2009, heat capacity to 46.5 %), boiling point at 101.3 kPa (Balej 1985).
    /// </summary>
    internal static readonly (double Percent, double DensityAt20, double DensityAt60, double At25, double At60, double Boiling)[] Potassium =
    [
        (1, 1.0072, 0.9918, 4.119, 4.132, 100.2), (2, 1.0163, 1.0005, 4.059, 4.080, 100.4), (4, 1.0346, 1.0180, 3.946, 3.980, 100.8), (5, 1.0438, 1.0268, 3.893, 3.933, 101.0),
        (6, 1.0530, 1.0357, 3.841, 3.886, 101.3), (8, 1.0717, 1.0535, 3.744, 3.796, 101.8), (10, 1.0904, 1.0716, 3.653, 3.711, 102.4), (12, 1.1094, 1.0898, 3.567, 3.629, 103.0),
        (14, 1.1286, 1.1083, 3.486, 3.551, 103.8), (15, 1.1382, 1.1176, 3.447, 3.513, 104.2), (16, 1.1479, 1.1269, 3.410, 3.475, 104.6), (18, 1.1674, 1.1458, 3.337, 3.403, 105.5),
        (20, 1.1872, 1.1649, 3.269, 3.334, 106.5), (22, 1.2071, 1.1842, 3.203, 3.267, 107.6), (24, 1.2273, 1.2038, 3.140, 3.203, 108.8), (25, 1.2375, 1.2137, 3.110, 3.172, 109.5),
        (26, 1.2477, 1.2236, 3.080, 3.141, 110.2), (28, 1.2683, 1.2437, 3.023, 3.082, 111.7), (30, 1.2892, 1.2641, 2.968, 3.024, 113.4), (32, 1.3102, 1.2847, 2.916, 2.969, 115.3),
        (34, 1.3316, 1.3056, 2.865, 2.916, 117.3), (35, 1.3424, 1.3162, 2.841, 2.890, 118.5), (36, 1.3532, 1.3269, 2.817, 2.865, 119.6), (38, 1.3751, 1.3484, 2.771, 2.816, 122.2),
        (40, 1.3972, 1.3703, 2.727, 2.769, 125.0), (42, 1.4196, 1.3924, 2.685, 2.725, 128.1), (44, 1.4423, 1.4150, 2.645, 2.682, 131.6), (45, 1.4538, 1.4264, 2.625, 2.662, 133.5),
        (46, 1.4653, 1.4378, 2.607, 2.642, 135.5), (48, 1.4887, 1.4611, double.NaN, 2.604, 139.7), (50, 1.5123, 1.4847, double.NaN, 2.567, 144.4),
    ];

    internal static LyeProperties Naoh(double percent) => LyeProperties.OfSodiumHydroxide(Ratio.FromPercent(percent));

    internal static LyeProperties Koh(double percent) => LyeProperties.OfPotassiumHydroxide(Ratio.FromPercent(percent));

    internal static double Density(this LyeProperties lye, double celsius) => lye.Density(Temperature.FromDegreesCelsius(celsius))!.Value.GramsPerMilliliter;

    internal static double HeatCapacity(this LyeProperties lye, double celsius) => lye.HeatCapacity(Temperature.FromDegreesCelsius(celsius))!.Value.KilojoulesPerKilogramKelvin;

    internal static double Boiling(this LyeProperties lye) => lye.BoilingPoint!.Value.DegreesCelsius;

    internal static double HeatReleased(this LyeProperties lye) => lye.HeatOfSolution!.Value.KilojoulesPerMole;

    /// <summary>A strength in % from mol of water per mol of NaOH (abridged atomic weights, CIAAW 2021).</summary>
    internal static double PercentNaoh(double molesOfWater) => 100 * 39.997 / (39.997 + (molesOfWater * 18.015));

    /// <summary>The same for KOH.</summary>
    internal static double PercentKoh(double molesOfWater) => 100 * 56.105 / (56.105 + (molesOfWater * 18.015));
}
