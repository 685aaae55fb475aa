using UnitsNet;

namespace Saponify.Internals;

/// <summary>A volume as it was poured, with its millilitres. Equal when those are equal.</summary>
internal readonly struct StoredVolume : IEquatable<StoredVolume>
{
    private StoredVolume(Volume written, double millilitres) => (Written, Millilitres) = (written, millilitres);

    internal Volume Written { get; }

    internal double Millilitres { get; }

    internal static StoredVolume Of(Volume volume) =>
        new(volume, Guard.InRange(volume.Milliliters, 0, Guard.LargestGrams, "A volume", "mL", nameof(volume)));

    /// <summary>The mass of this volume at a density.</summary>
    internal Mass Weight(Density density) =>
        Mass.FromGrams(Millilitres * Guard.InRange(density.GramsPerMilliliter, 0.1, 5, "A density", "g/mL", nameof(density)));

    public bool Equals(StoredVolume other) => Millilitres.Equals(other.Millilitres);

    public override bool Equals(object? obj) => obj is StoredVolume other && Equals(other);

    public override int GetHashCode() => Millilitres.GetHashCode();
}
