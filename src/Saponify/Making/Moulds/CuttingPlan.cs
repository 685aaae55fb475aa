using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>How a block is cut into bars. Immutable; equality by content.</summary>
public sealed record CuttingPlan
{
    internal static readonly Limits KerfLimits = new(0, 5);
    internal static readonly Limits EndsLimits = new(0, 100);
    internal static readonly Limits SampleLimits = new(0, 100_000);

    /// <summary>Thickness of a slice: the size of a bar along the length of a box or slab, along the height of a cylinder. From 1 mm to 10 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public required Length Thickness { get => Length.FromCentimeters(ThicknessCentimeters); init => ThicknessCentimeters = Guard.InRange(value.Centimeters, Mould.SizeLimits, "The thickness of a slice", "cm", nameof(value)); }

    /// <summary>Size of a bar across the width, when each slice is cut again; null for whole slices. From 1 mm to 10 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Length? Across
    {
        get => AcrossCentimeters is { } across ? Length.FromCentimeters(across) : null;
        init => AcrossCentimeters = value is { } across ? Guard.InRange(across.Centimeters, Mould.SizeLimits, "The second size of a bar", "cm", nameof(value)) : null;
    }

    /// <summary>What one cut takes away: about nothing for a wire or a blade, more for a saw. From 0 to 5 cm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Length Kerf { get => Length.FromCentimeters(KerfCentimeters); init => KerfCentimeters = Guard.InRange(value.Centimeters, KerfLimits, "The kerf", "cm", nameof(value)); }

    /// <summary>What is trimmed off each end of the block, from 0 to 100 cm; with it go two more cuts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Length Ends { get => Length.FromCentimeters(EndsCentimeters); init => EndsCentimeters = Guard.InRange(value.Centimeters, EndsLimits, "The trimmed end", "cm", nameof(value)); }

    /// <summary>Bars of each block that are kept back for weighing and tests, from 0 to 100,000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public int Samples { get; init => field = (int)Guard.InRange(value, SampleLimits, "The number of samples", "", nameof(value)); }

    internal double ThicknessCentimeters { get; private init; }

    internal double? AcrossCentimeters { get; private init; }

    internal double KerfCentimeters { get; private init; }

    internal double EndsCentimeters { get; private init; }
}
