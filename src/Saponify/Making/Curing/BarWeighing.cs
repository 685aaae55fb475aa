using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>What a bar weighed on a day. Equality is exact; <c>default</c> is no mass on the first day of the calendar, and no series takes it.</summary>
public readonly record struct BarWeighing
{
    internal static readonly Limits MassLimits = new(1e-6, 1e6);

    /// <summary>Notes a weighing.</summary>
    /// <param name="date">The day.</param>
    /// <param name="mass">What the bar weighed, above 0 up to 1000 kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass outside its range, or not a number.</exception>
    public BarWeighing(DateOnly date, Mass mass)
    {
        Date = date;
        Grams = Guard.InRange(Stored.ToGrams(mass), MassLimits, "The mass of a bar", "g", nameof(mass));
        IsWritten = true;
        Mass = mass;
    }

    internal double Grams { get; }

    internal bool IsWritten { get; }

    /// <summary>The day.</summary>
    public DateOnly Date { get; }

    /// <summary>What the bar weighed, in the unit it was written.</summary>
    public Mass Mass { get; }

    /// <summary>For example <c>2026-11-25: 112.4 g</c>; invariant.</summary>
    public override string ToString() => $"{Text.Day(Date)}: {AmountWriter.Write(Mass)}";
}
