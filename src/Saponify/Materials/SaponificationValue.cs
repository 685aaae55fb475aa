using Saponify.Internals;

namespace Saponify;

/// <summary>
/// Saponification value: milligrams of KOH that one gram of fat takes up, free acid included. Source: iso-3657, definition.
/// From 0 to 1000 mg/g; <c>default</c> is 0, a material that takes up no lye. Equality is exact on the stored number.
/// </summary>
public readonly record struct SaponificationValue : IComparable<SaponificationValue>
{
    private SaponificationValue(double value) => MilligramsKohPerGram = value;

    /// <summary>mg KOH per g, the form in which standards and certificates state it.</summary>
    public double MilligramsKohPerGram { get; }

    /// <summary>The same demand as g NaOH per g: the value times 39.997/56.105/1000.</summary>
    public double GramsNaohPerGram => MilligramsKohPerGram / 1000 * (Molar.SodiumHydroxide / Molar.PotassiumHydroxide);

    internal double MolPerGram => MilligramsKohPerGram / (1000 * Molar.PotassiumHydroxide);

    /// <summary>A saponification value as standards state it.</summary>
    /// <param name="value">mg KOH per g, from 0 to 1000. Tributyrin, the highest of the food fats, has 557.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, negative, or above 1000.</exception>
    public static SaponificationValue FromMilligramsKohPerGram(double value) =>
        new(Guard.InRange(value, 0, 1000, "A saponification value", "mg KOH per g"));

    /// <summary>A saponification value given as sodium hydroxide, as some suppliers do.</summary>
    /// <param name="value">g NaOH per g, from 0 to 0.7129. Most fats lie between 0.12 and 0.19.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, negative, or above 0.7129. A value above 1 is most likely in mg KOH per g.</exception>
    public static SaponificationValue FromGramsNaohPerGram(double value) =>
        new(Math.Min(1000, Guard.InRange(value, 0, 0.7129, "A saponification value as sodium hydroxide", "g NaOH per g") * 1000 * (Molar.PotassiumHydroxide / Molar.SodiumHydroxide)));

    /// <inheritdoc/>
    public int CompareTo(SaponificationValue other) => MilligramsKohPerGram.CompareTo(other.MilligramsKohPerGram);

    /// <summary>True when the left value is the lower one.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other value.</param>
    public static bool operator <(SaponificationValue left, SaponificationValue right) => left.MilligramsKohPerGram < right.MilligramsKohPerGram;

    /// <summary>True when the left value is the higher one.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other value.</param>
    public static bool operator >(SaponificationValue left, SaponificationValue right) => left.MilligramsKohPerGram > right.MilligramsKohPerGram;

    /// <summary>True when the left value is not the higher one.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other value.</param>
    public static bool operator <=(SaponificationValue left, SaponificationValue right) => left.MilligramsKohPerGram <= right.MilligramsKohPerGram;

    /// <summary>True when the left value is not the lower one.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other value.</param>
    public static bool operator >=(SaponificationValue left, SaponificationValue right) => left.MilligramsKohPerGram >= right.MilligramsKohPerGram;

    /// <summary>The value with its unit, for example <c>192.4 mg KOH/g</c>; invariant.</summary>
    public override string ToString() => Text.Number(MilligramsKohPerGram) + " mg KOH/g";
}
