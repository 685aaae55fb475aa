namespace Saponify.PublishedValues;

/// <summary>
/// Every acid against figures worked out apart from the library, by its molecular formula, with the longer atomic weights of
/// CIAAW 2021: Na 22.98976928, K 39.0983, I 126.90447; H 1.0080, C 12.011, O 15.999.
/// </summary>
public class FattyAcidConstantsTests
{
    // relative: K 39.098 for 39.0983 is 5e-6 of M(KOH); Na 22.990 for 22.98976928 is 2e-6 of the least soap
    private const double Weights = 1e-5;

    // I 126.90 for 126.90447
    private const double IodineWeight = 3.6e-5;

    /// <summary>Acid, M, M of the simple triglyceride, its saponification value, acid value of the acid, M of the sodium soap, iodine value of the triglyceride.</summary>
    public static TheoryData<string, double, double, double, double, double, double> Acids => new()
    {
        { "C4:0", 88.106, 302.367, 556.66, 636.79, 110.088, 0 },
        { "C6:0", 116.160, 386.529, 435.45, 483.00, 138.142, 0 },
        { "C8:0", 144.214, 470.691, 357.59, 389.04, 166.196, 0 },
        { "C10:0", 172.268, 554.853, 303.35, 325.69, 194.250, 0 },
        { "C12:0", 200.322, 639.015, 263.40, 280.08, 222.304, 0 },
        { "C14:0", 228.376, 723.177, 232.75, 245.67, 250.358, 0 },
        { "C14:1", 226.360, 717.129, 234.71, 247.86, 248.342, 106.18 },
        { "C15:0", 242.403, 765.258, 219.95, 231.45, 264.385, 0 },
        { "C16:0", 256.430, 807.339, 208.48, 218.79, 278.412, 0 },
        { "C16:1", 254.414, 801.291, 210.06, 220.53, 276.396, 95.03 },
        { "C17:0", 270.457, 849.420, 198.15, 207.45, 292.439, 0 },
        { "C17:1", 268.441, 843.372, 199.57, 209.00, 290.423, 90.28 },
        { "C18:0", 284.484, 891.501, 188.80, 197.22, 306.466, 0 },
        { "C18:1", 282.468, 885.453, 190.09, 198.63, 304.450, 85.99 },
        { "C18:1-OH", 298.467, 933.450, 180.32, 187.98, 320.449, 81.57 },
        { "C18:2", 280.452, 879.405, 191.40, 200.05, 302.434, 173.17 },
        { "C18:3", 278.436, 873.357, 192.72, 201.50, 300.418, 261.55 },
        { "C20:0", 312.538, 975.663, 172.51, 179.52, 334.520, 0 },
        { "C20:1", 310.522, 969.615, 173.59, 180.68, 332.504, 78.53 },
        { "C20:4", 304.474, 951.471, 176.90, 184.27, 326.456, 320.11 },
        { "C20:5", 302.458, 945.423, 178.03, 185.50, 324.440, 402.69 },
        { "C22:0", 340.592, 1059.825, 158.81, 164.73, 362.574, 0 },
        { "C22:1", 338.576, 1053.777, 159.73, 165.71, 360.558, 72.26 },
        { "C22:6", 328.496, 1023.537, 164.45, 170.79, 350.478, 446.35 },
        { "C24:0", 368.646, 1143.987, 147.13, 152.19, 390.628, 0 },
        { "C24:1", 366.630, 1137.939, 147.91, 153.03, 388.612, 66.91 },
    };

    /// <summary>Acids beyond that table, by their molecular formula.</summary>
    public static TheoryData<string, int, int, int> Formulas => new()
    {
        { "C18:3-conj", 18, 30, 2 },
        { "C18:4", 18, 28, 2 },
        { "C20:2", 20, 36, 2 },
        { "C22:2", 22, 40, 2 },
        { "C22:5", 22, 34, 2 },
    };

    [Theory]
    [MemberData(nameof(Acids))]
    public void Acid_HasTheFiguresOfItsFormula(string shorthand, double acid, double triglyceride, double saponification, double acidValue, double soap, double iodine)
    {
        FattyAcid actual = FattyAcid.FromShorthand(shorthand);
        Near(acid, actual.MolarMass.GramsPerMole, 0.0005, 0);
        Near(triglyceride, actual.TriglycerideMolarMass.GramsPerMole, 0.0005, 0);
        Near(saponification, actual.SaponificationOfTriglyceride.MilligramsKohPerGram, 0.005, Weights);
        Near(acidValue, actual.SaponificationOfAcid.MilligramsKohPerGram, 0.005, Weights);
        Near(soap, actual.SoapMolarMass(AlkaliKind.SodiumHydroxide).GramsPerMole, 0.0005, Weights);
        Near(iodine, actual.IodineValueOfTriglyceride.GramsPer100Grams, 0.005, IodineWeight);
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    public void Acid_BeyondTheTable_HasTheMolarMassOfItsFormula(string shorthand, int carbon, int hydrogen, int oxygen) =>
        Given.Near((12.011 * carbon) + (1.0080 * hydrogen) + (15.999 * oxygen), FattyAcid.FromShorthand(shorthand).MolarMass.GramsPerMole, 1e-9);

    [Fact]
    public void Library_HasNoAcidUnchecked() => Assert.Equal(
        Acids.Select(row => row.Data.Item1).Concat(Formulas.Select(row => row.Data.Item1)).Order(StringComparer.Ordinal),
        FattyAcid.All.Select(acid => acid.Shorthand).Order(StringComparer.Ordinal));

    /// <summary>Half of the last printed digit, plus what the shorter atomic weights move.</summary>
    private static void Near(double printed, double actual, double halfDigit, double relative) =>
        Given.Near(printed, actual, halfDigit + (relative * printed) + 1e-9);
}
