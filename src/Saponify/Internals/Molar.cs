namespace Saponify.Internals;

/// <summary>
/// Molar masses in g/mol from the abridged standard atomic weights as they stand.
/// Source: ciaaw-2021, table of abridged standard atomic weights.
/// </summary>
internal static class Molar
{
    internal const double H = 1.0080;
    internal const double C = 12.011;
    internal const double O = 15.999;
    internal const double Na = 22.990;
    internal const double K = 39.098;
    internal const double I = 126.90;

    internal const double SodiumHydroxide = Na + O + H;            // 39.997
    internal const double PotassiumHydroxide = K + O + H;          // 56.105
    internal const double Water = (2 * H) + O;                     // 18.015
    internal const double Glycerol = (3 * C) + (8 * H) + (3 * O);  // 92.094
    internal const double Iodine = 2 * I;                          // 253.80

    /// <summary>What three acids weigh more as a triglyceride: glycerol less three waters, 38.049 g/mol.</summary>
    internal const double GlycerolLessWater = Glycerol - (3 * Water);

    internal static double Hydroxide(AlkaliKind kind) => kind == AlkaliKind.SodiumHydroxide ? SodiumHydroxide : PotassiumHydroxide;
}
