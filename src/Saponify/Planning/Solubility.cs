using Saponify.Internals;

namespace Saponify;

/// <summary>How much water dissolves solid alkali at 20 degrees Celsius. A floor for safety, not a recommendation.</summary>
internal static class Solubility
{
    /// <summary>g of water per g of pure NaOH: 52.2 % by mass is saturated at 20 degrees Celsius. Source: gse-naoh.</summary>
    internal const double WaterPerSodiumHydroxide = 0.92;

    /// <summary>g of water per g of pure KOH: 112 g dissolve in 100 g of water at 20 degrees Celsius. Source: gse-koh.</summary>
    internal const double WaterPerPotassiumHydroxide = 0.90;

    internal static double LeastWaterPerMole(AlkaliMix mix) =>
        (mix.SodiumShare * Molar.SodiumHydroxide * WaterPerSodiumHydroxide)
        + ((1 - mix.SodiumShare) * Molar.PotassiumHydroxide * WaterPerPotassiumHydroxide);
}
