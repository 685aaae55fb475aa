using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>
/// A scale: its step and what else is stated of it. A circumstance, not part of a formula. Immutable; equality by content.
/// </summary>
public sealed record Scale
{
    internal static readonly Limits StepLimits = new(1e-6, 1e5);

    /// <summary>A scale of this step.</summary>
    /// <param name="step">The smallest difference it shows, from 1e-6 g to 100 kg. Its unit is the one that is printed.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Scale(Mass step) => Step = step;

    internal double StepGrams => StoredStep.Grams;

    internal MassUnit Unit => UnitTable.Name(UnitTable.Mass, Step.Unit) is null ? MassUnit.Gram : Step.Unit;

    private StoredMass StoredStep { get; init; }

    private StoredMass? StoredMinimum { get; init; }

    private StoredMass? StoredCapacity { get; init; }

    /// <summary>The smallest difference it shows.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1e-6 g to 100 kg, or not a number.</exception>
    public Mass Step
    {
        get => StoredStep.Written;
        init
        {
            StoredStep = StoredMass.Of(value, "The step of a scale");
            Guard.InRange(StoredStep.Grams, StepLimits, "The step of a scale", "g", nameof(value));
        }
    }

    /// <summary>The smallest load it may be used for; null when none is stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 1e9 g, or not a number.</exception>
    public Mass? MinimumLoad
    {
        get => StoredMinimum?.Written;
        init => StoredMinimum = value is { } mass ? StoredMass.Of(mass, "The minimum load of a scale", nameof(value)) : null;
    }

    /// <summary>The largest load; null when none is stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 1e9 g, or not a number.</exception>
    public Mass? Capacity
    {
        get => StoredCapacity?.Written;
        init => StoredCapacity = value is { } mass ? StoredMass.Of(mass, "The capacity of a scale", nameof(value)) : null;
    }

    internal double MinimumGrams => StoredMinimum?.Grams ?? 0;

    internal double CapacityGrams => StoredCapacity?.Grams ?? double.PositiveInfinity;

    /// <summary>
    /// Stated relative accuracy, from 0 to 20 %; null when none is stated. It cancels between weighings on the same scale, since a superfat is
    /// a ratio of masses, and counts only when the alkali is weighed on another scale.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 20 %, or not a number.</exception>
    public Ratio? Accuracy
    {
        get => AccuracyFraction is { } fraction ? Stored.ToRatio(fraction) : null;
        init => AccuracyFraction = value is { } ratio ? Stored.Fraction(ratio, 0, 0.2, "The accuracy of a scale", nameof(value)) : null;
    }

    internal double? AccuracyFraction { get; private init; }

    /// <summary>True when each weighing is tared, the usual way: it may be off by half a step. Without taring two readings are subtracted, and it may be off by a whole one.</summary>
    public bool IsTared { get; init; } = true;

    /// <summary>By how much one weighing may be off, in grams.</summary>
    internal double HalfWidth => IsTared ? StepGrams / 2 : StepGrams;
}
