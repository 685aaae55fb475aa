using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>So many saleable bars of a wanted cured mass, and the batch that it takes. Immutable; equality by content.</summary>
public sealed record BarOrder
{
    internal static readonly Limits BarsLimits = new(1, 1_000_000);
    internal static readonly Limits CuredMassLimits = new(1, 1e5);
    internal static readonly Limits LeftInPotLimits = new(0, 0.5);

    /// <summary>Bars to sell, from 1 to 1,000,000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public required int Saleable { get; init => field = (int)Guard.InRange(value, BarsLimits, "The number of bars", "", nameof(value)); }

    /// <summary>Wanted mass of a cured bar, from 1 g to 100 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public required Mass CuredMass { get => Mass.FromGrams(CuredGrams); init => CuredGrams = Guard.InRange(Stored.ToGrams(value), CuredMassLimits, "The mass of a cured bar", "g", nameof(value)); }

    /// <summary>Share of the poured mass that is lost until then, from 0 to 80 %: from your own weighings, since no rate can be computed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public required Ratio Loss { get => Stored.ToRatio(LossFraction); init => LossFraction = Stored.Fraction(value, 0, 0.8, "The loss on curing"); }

    /// <summary>Further bars for samples, from 0 to 1,000,000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public int Samples { get; init => field = (int)Guard.InRange(value, 0, 1_000_000, "The number of samples", "", nameof(value)); }

    /// <summary>Share of the block lost to ends, kerf and rest, from 0 to 95 %: <see cref="BarLayout.Waste"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Ratio Waste { get => Stored.ToRatio(WasteFraction); init => WasteFraction = Stored.Fraction(value, 0, 0.95, "The waste of cutting"); }

    /// <summary>Share of the batch that stays in the pot, from 0 to 50 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Ratio LeftInPot { get => Stored.ToRatio(LeftFraction); init => LeftFraction = Stored.Fraction(value, LeftInPotLimits, "What stays in the pot"); }

    /// <summary>Mass of a bar as poured: cured mass/(1 - loss).</summary>
    public Mass PouredMass => Mass.FromGrams(CuredGrams / (1 - LossFraction));

    /// <summary>Batch that it takes: (bars + samples) x poured mass/((1 - waste)(1 - left in the pot)).</summary>
    public Mass Batch => Mass.FromGrams((Saleable + Samples) * CuredGrams / ((1 - LossFraction) * (1 - WasteFraction) * (1 - LeftFraction)));

    private double CuredGrams { get; init; }

    private double LossFraction { get; init; }

    private double WasteFraction { get; init; }

    private double LeftFraction { get; init; }
}
