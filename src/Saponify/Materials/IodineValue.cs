using Saponify.Internals;

namespace Saponify;

/// <summary>
/// Iodine value: grams of iodine that 100 g of fat take up, a measure of its double bonds. From 0 to 500;
/// <c>default</c> is 0, a fully saturated fat. Equality is exact on the stored number.
/// </summary>
public readonly record struct IodineValue : IComparable<IodineValue>
{
    private IodineValue(double value) => GramsPer100Grams = value;

    /// <summary>g iodine per 100 g fat.</summary>
    public double GramsPer100Grams { get; }

    /// <summary>An iodine value.</summary>
    /// <param name="value">g iodine per 100 g, from 0 to 500. The free C22:6 acid, the highest in the tables, has 464.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, negative, or above 500.</exception>
    public static IodineValue FromGramsPer100Grams(double value) =>
        new(Guard.InRange(value, 0, 500, "An iodine value", "g iodine per 100 g"));

    /// <inheritdoc/>
    public int CompareTo(IodineValue other) => GramsPer100Grams.CompareTo(other.GramsPer100Grams);

    /// <summary>True when the left value is the lower one.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other value.</param>
    public static bool operator <(IodineValue left, IodineValue right) => left.GramsPer100Grams < right.GramsPer100Grams;

    /// <summary>True when the left value is the higher one.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other value.</param>
    public static bool operator >(IodineValue left, IodineValue right) => left.GramsPer100Grams > right.GramsPer100Grams;

    /// <summary>True when the left value is not the higher one.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other value.</param>
    public static bool operator <=(IodineValue left, IodineValue right) => left.GramsPer100Grams <= right.GramsPer100Grams;

    /// <summary>True when the left value is not the lower one.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other value.</param>
    public static bool operator >=(IodineValue left, IodineValue right) => left.GramsPer100Grams >= right.GramsPer100Grams;

    /// <summary>The value with its unit, for example <c>82 g I2/100 g</c>; invariant.</summary>
    public override string ToString() => Text.Number(GramsPer100Grams) + " g I2/100 g";
}
