using UnitsNet;

namespace Saponify;

/// <summary>From what to weigh to how warm it gets.</summary>
public static class MakingExtensions
{
    /// <summary>
    /// What temperatures to expect, in which order. Never throws on a formula; what is not given is asked for in the result.
    /// </summary>
    /// <param name="plan">The plan of what to weigh.</param>
    /// <param name="setup">How warm things are, and what the lye is made in.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public static ProcessPlan Process(this BatchPlan plan, ProcessSetup setup)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(setup);
        return new(plan, setup);
    }

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
