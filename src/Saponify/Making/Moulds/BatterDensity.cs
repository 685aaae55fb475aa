using UnitsNet;

namespace Saponify;

/// <summary>
/// Density of a batter at the pour from its parts: mass over the sum of their volumes. Alkali and all water count as one lye. Not in the range:
/// air that the blender whips in, which makes it lighter, and the change of volume while it turns to soap. Immutable; equality by content.
/// </summary>
public sealed record BatterDensity
{
    /// <summary>Where the pour temperature is not given, it lies in this span, in degrees Celsius.</summary>
    private const double Coldest = 20, Warmest = 60;

    private BatterDensity(ValueList<BatterPart> parts)
    {
        Parts = parts;
        double largest = 0, smallest = 0;
        foreach (BatterPart part in parts)
        {
            Grams += part.Grams;
            largest += part.Grams / part.Low;
            smallest += part.Grams / part.High;
        }
        Middle = 2 * Grams / (largest + smallest);
        Density = new(UnitsNet.Density.FromGramsPerMilliliter(Middle), parts.Max(p => p.Density.Evidence),
            [.. parts.SelectMany(p => p.Density.Sources).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)])
        {
            Low = UnitsNet.Density.FromGramsPerMilliliter(Grams / largest),
            High = UnitsNet.Density.FromGramsPerMilliliter(Grams / smallest),
            Note = "estimate from the parts; whipped-in air makes it lighter",
        };
    }

    internal double Grams { get; }

    /// <summary>g/mL.</summary>
    internal double Middle { get; }

    /// <summary>The parts; their masses add up to the batch.</summary>
    public ValueList<BatterPart> Parts { get; }

    /// <summary>The density with its range: an estimate.</summary>
    public Figure<Density> Density { get; }

    internal static BatterDensity? Of(BatchPlan plan, Temperature? pour)
    {
        double? celsius = pour is { } given ? Internals.Stored.Celsius(given, MouldHeat.PourLimits, "The temperature at the pour", nameof(pour)) : null;
        if (!plan.Balance.CanBeWeighed)
            return null;
        return BatterParts.Of(plan, celsius ?? Coldest, celsius ?? Warmest) is { Count: > 0 } parts ? new([.. parts]) : null;
    }
}
