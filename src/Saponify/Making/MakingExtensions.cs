using UnitsNet;

namespace Saponify;

/// <summary>Heat and temperatures of liquids.</summary>
public static class MakingExtensions
{
    /// <summary>
    /// Heat capacity of a liquid by what is in it, within 5 %: 4.18 J/(g K) for water, 1.4 for sugar and the unnamed rest, 1.6 for protein, 1.7 for fat,
    /// 0.8 for minerals. Source: kessler-1981; 2.4 for alcohol (memory).
    /// </summary>
    /// <param name="liquid">The liquid.</param>
    /// <exception cref="ArgumentNullException"><paramref name="liquid"/> is null.</exception>
    public static Figure<SpecificEntropy> HeatCapacity(this Liquid liquid)
    {
        ArgumentNullException.ThrowIfNull(liquid);
        double value = HeatCapacities.Of(liquid.Contents);
        return new(SpecificEntropy.FromKilojoulesPerKilogramKelvin(value), Evidence.Computed, ["computed", "kessler-1981"])
        {
            Low = SpecificEntropy.FromKilojoulesPerKilogramKelvin(value * 0.95),
            High = SpecificEntropy.FromKilojoulesPerKilogramKelvin(value * 1.05),
        };
    }
}
