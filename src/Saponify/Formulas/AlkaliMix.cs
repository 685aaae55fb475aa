using Saponify.Internals;

namespace Saponify;

/// <summary>What one mole of hydroxide of an alkali plan weighs and brings. Made once with the plan, so that sweeps need not repeat it.</summary>
internal sealed record AlkaliMix
{
    /// <summary>g as weighed per mol of hydroxide.</summary>
    internal double WeighedPerMole { get; private init; }

    /// <summary>g of pure hydroxide per mol.</summary>
    internal double PurePerMole { get; private init; }

    /// <summary>g of water brought per mol: bound water, or the water of a solution.</summary>
    internal double WaterPerMole { get; private init; }

    /// <summary>Share of the moles that is sodium hydroxide; the rest is potassium hydroxide.</summary>
    internal double SodiumShare { get; private init; }

    /// <summary>True when every alkali of the mix is a bought solution, so that nothing is left to dissolve.</summary>
    internal bool IsAllSolution { get; private init; }

    /// <summary>A mix from the relative moles of each alkali; they need not add up to 1.</summary>
    internal static AlkaliMix Of(ReadOnlySpan<(Alkali Alkali, double Moles)> parts)
    {
        double total = 0;
        foreach ((_, double moles) in parts)
            total += moles;
        AlkaliMix mix = new() { IsAllSolution = true };
        foreach ((Alkali alkali, double moles) in parts)
        {
            double share = total > 0 ? moles / total : 1.0 / parts.Length;
            mix = new()
            {
                WeighedPerMole = mix.WeighedPerMole + (share / alkali.HydroxidePerGram),
                PurePerMole = mix.PurePerMole + (share * Molar.Hydroxide(alkali.Kind)),
                WaterPerMole = mix.WaterPerMole + (share / alkali.HydroxidePerGram * alkali.BoundWaterFraction),
                SodiumShare = mix.SodiumShare + (alkali.Kind == AlkaliKind.SodiumHydroxide ? share : 0),
                IsAllSolution = mix.IsAllSolution && alkali.IsSolution,
            };
        }
        return mix;
    }
}
