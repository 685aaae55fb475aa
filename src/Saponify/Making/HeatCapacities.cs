using Saponify.Internals;

namespace Saponify;

/// <summary>Heat capacities in J/(g K) and latent heats in J/g of what is not lye.</summary>
internal static class HeatCapacities
{
    /// <summary>Water. Source: kessler-1981; geankoplis has 4.185 at 20 degrees.</summary>
    internal const double Water = 4.18;

    /// <summary>Ice. Source: geankoplis.</summary>
    internal const double Ice = 1.958;

    /// <summary>Melting of ice at 0 degrees. Source: crc-fusion, 6.01 kJ/mol.</summary>
    internal const double MeltingOfIce = 333.6;

    /// <summary>Liquid fat. Source: geankoplis, olive oil at 20 degrees; other oils are within 5 % (memory).</summary>
    internal const double Fat = 2.01;

    /// <summary>The most that any fat takes up in melting: tristearin in its stable form. Source: charbonnet-singleton-1947.</summary>
    internal const double MeltingOfTristearin = 228;

    /// <summary>Melting of coconut oil. Source: kahwaji-white-2019.</summary>
    internal const double MeltingOfCoconutOil = 105, MeltingOfCoconutOilError = 11;

    /// <summary>The part of an alkali that is neither hydroxide nor water, as ash. Source: kessler-1981.</summary>
    internal const double Inert = 0.8;

    /// <summary>Solid hydroxide. Source: crc-thermodynamics, 59.5 and 68.9 J/(mol K).</summary>
    internal static double Solid(AlkaliKind kind) => kind == AlkaliKind.SodiumHydroxide ? 59.5 / Molar.SodiumHydroxide : 68.9 / Molar.PotassiumHydroxide;

    /// <summary>
    /// What a gram of a liquid or an additive has beside its water: 1.4 for carbohydrate and the unnamed rest, 1.6 for protein, 1.7 for fat,
    /// 0.8 for ash. Source: kessler-1981. Alcohol 2.4 (memory).
    /// </summary>
    internal static double BesideWater(Contents contents)
    {
        double named = contents.ProteinFraction + contents.FatFraction + contents.AshFraction + contents.AlcoholFraction;
        double rest = Math.Max(0, 1 - contents.WaterFraction - named);
        return (1.4 * rest) + (1.6 * contents.ProteinFraction) + (1.7 * contents.FatFraction) + (0.8 * contents.AshFraction) + (2.4 * contents.AlcoholFraction);
    }

    internal static double Of(Contents contents) => (Water * contents.WaterFraction) + BesideWater(contents);

    /// <summary>Heat content of a portion in J, counted from the liquid at 0 degrees: ice has yet to warm and to melt.</summary>
    internal static double HeatContent(LiquidPortion portion)
    {
        Contents contents = portion.Liquid.Contents;
        double celsius = portion.StoredTemperature!.Value.Celsius, water = contents.WaterFraction;
        return portion.Grams * ((BesideWater(contents) * celsius)
            + (portion.IsFrozen ? water * ((Ice * celsius) - MeltingOfIce) : water * Water * celsius));
    }
}
