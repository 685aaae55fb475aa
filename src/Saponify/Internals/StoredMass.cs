using System.Runtime.CompilerServices;
using UnitsNet;

namespace Saponify.Internals;

/// <summary>A mass as it was written, with its grams. Equal when the grams are equal: the unit is presentation.</summary>
internal readonly struct StoredMass : IEquatable<StoredMass>
{
    private StoredMass(Mass written, double grams) => (Written, Grams) = (written, grams);

    internal Mass Written { get; }

    internal double Grams { get; }

    internal static StoredMass Of(Mass mass, string what, [CallerArgumentExpression(nameof(mass))] string? name = null) => new(mass, Stored.Grams(mass, what, name));

    internal StoredMass Times(double factor, string what) => Of(Mass.From(Readable(Written.Value * factor), Written.Unit), what, nameof(factor));

    public bool Equals(StoredMass other) => Grams.Equals(other.Grams);

    public override bool Equals(object? obj) => obj is StoredMass other && Equals(other);

    public override int GetHashCode() => Grams.GetHashCode();

    /// <summary>At most 14 digits, so that 200 g times 0.9391 is written as 187.82 g.</summary>
    private static double Readable(double value) =>
        double.IsFinite(value) && value != 0 && 13 - (int)Math.Floor(Math.Log10(Math.Abs(value))) is var places and >= 0 and <= 15 ? Math.Round(value, places) : value;
}
