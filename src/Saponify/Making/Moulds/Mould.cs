using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// A mould by its inner sizes. <see cref="Volume"/> is what it holds up to the fill height, the lining taken off. Immutable; equality by content.
/// </summary>
public sealed record Mould
{
    internal static readonly Limits SizeLimits = new(0.1, 1000);
    internal static readonly Limits CavityLimits = new(1, 100_000);
    internal static readonly Limits VolumeLimits = new(0.1, 1e7);

    /// <summary>Rounding in the caller's arithmetic that still counts as equal, in cm.</summary>
    private const double Slack = 1e-9;

    private Mould(MouldShape shape, double length, double width, double height, int pieces, double milliliters) =>
        (Shape, LengthCentimeters, WidthCentimeters, HeightCentimeters, Pieces, EachMilliliters) = (shape, length, width, height, pieces, milliliters);

    private double LengthCentimeters { get; }

    private double WidthCentimeters { get; }

    private double HeightCentimeters { get; }

    private double EachMilliliters { get; }

    private double LiningCentimeters { get; init; }

    private double? FilledCentimeters { get; init; }

    /// <summary>The shape.</summary>
    public MouldShape Shape { get; }

    /// <summary>Cavities of a cavity mould; 1 for every other.</summary>
    public int Pieces { get; }

    /// <summary>Inner length without lining; null for what has none. Box and slab are cut across it.</summary>
    public Length? Length => IsBox ? Centimeters(LengthCentimeters) : null;

    /// <summary>Inner width without lining, of a cylinder its diameter; null for what has none.</summary>
    public Length? Width => HasSizes ? Centimeters(WidthCentimeters) : null;

    /// <summary>Inner height without lining; null for what has none.</summary>
    public Length? Height => HasSizes ? Centimeters(HeightCentimeters) : null;

    /// <summary>Thickness of the lining on base and walls; zero without.</summary>
    public Length Lining => Centimeters(LiningCentimeters);

    /// <summary>How high it is filled above the lining of the base: to the brim unless stated otherwise. Null for what has no height.</summary>
    public Length? FillHeight => HasSizes ? Centimeters(Filled) : null;

    /// <summary>What it holds up to the fill height, all cavities together.</summary>
    public Volume Volume => Volume.FromMilliliters(Milliliters);

    internal bool IsBox => Shape is MouldShape.Box or MouldShape.Slab;

    internal bool HasSizes => IsBox || Shape == MouldShape.Cylinder;

    /// <summary>Sizes of the block in cm: along the cut, across it, upright. A cylinder stands, and is cut along its height.</summary>
    internal (double Along, double Wide, double High) Block =>
        IsBox ? (LengthCentimeters - (2 * LiningCentimeters), InnerWidth, Filled) : (Filled, InnerWidth, InnerWidth);

    internal double Milliliters => HasSizes ? CrossSection * Block.Along : Pieces * EachMilliliters;

    /// <summary>Area of the cut face, in cm2.</summary>
    internal double CrossSection => IsBox ? InnerWidth * Filled : Math.PI / 4 * InnerWidth * InnerWidth;

    /// <summary>A lining stays below this, in cm: then no space is left.</summary>
    internal double MostLining => Math.Min(HeightCentimeters, (IsBox ? Math.Min(LengthCentimeters, WidthCentimeters) : WidthCentimeters) / 2);

    /// <summary>The height above the lining, in cm.</summary>
    internal double MostFill => HeightCentimeters - LiningCentimeters;

    private double InnerWidth => WidthCentimeters - (2 * LiningCentimeters);

    private double Filled => FilledCentimeters ?? MostFill;

    /// <summary>A box, such as a loaf mould. Inner volume = length x width x height.</summary>
    /// <param name="length">Inner length, from 1 mm to 10 m; the cuts go across it.</param>
    /// <param name="width">Inner width, from 1 mm to 10 m.</param>
    /// <param name="height">Inner height, from 1 mm to 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size outside its range, or not a number.</exception>
    public static Mould Box(Length length, Length width, Length height) => OfSizes(MouldShape.Box, length, width, height);

    /// <summary>A slab: a flat box that is cut both ways.</summary>
    /// <param name="length">Inner length, from 1 mm to 10 m.</param>
    /// <param name="width">Inner width, from 1 mm to 10 m.</param>
    /// <param name="height">Inner height, from 1 mm to 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size outside its range, or not a number.</exception>
    public static Mould Slab(Length length, Length width, Length height) => OfSizes(MouldShape.Slab, length, width, height);

    /// <summary>A standing tube. Inner volume = pi/4 x diameter^2 x height.</summary>
    /// <param name="diameter">Inner diameter, from 1 mm to 10 m.</param>
    /// <param name="height">Inner height, from 1 mm to 10 m; the cuts go across it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size outside its range, or not a number.</exception>
    public static Mould Cylinder(Length diameter, Length height) => new(MouldShape.Cylinder, 0, Size(diameter, "diameter"), Size(height, "height"), 1, 0);

    /// <summary>Equal cavities, each of them a bar.</summary>
    /// <param name="count">From 1 to 100,000.</param>
    /// <param name="each">What one cavity holds, from 0.1 mL to 10,000 L.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public static Mould Cavities(int count, Volume each) => new(MouldShape.Cavities, 0, 0, 0,
        (int)Guard.InRange(count, CavityLimits, "The number of cavities", "", nameof(count)), Guard.InRange(each.Milliliters, VolumeLimits, "The volume of a cavity", "mL", nameof(each)));

    /// <summary>Any shape of known volume; fill it with water and weigh to find out.</summary>
    /// <param name="volume">What it holds, from 0.1 mL to 10,000 L.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static Mould OfVolume(Volume volume) => new(MouldShape.Volume, 0, 0, 0, 1, Guard.InRange(volume.Milliliters, VolumeLimits, "The volume of a mould", "mL", nameof(volume)));

    /// <summary>The same mould with a lining on base and walls. A fill height stays, counted from the lining.</summary>
    /// <param name="thickness">From 0; so thin that a space is left.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, not a number, or no space is left between it.</exception>
    /// <exception cref="InvalidOperationException">Cavities and moulds of a stated volume: state the volume that the lining leaves.</exception>
    public Mould WithLining(Length thickness)
    {
        RefuseWithoutSizes("lining", "the volume that the lining leaves");
        double most = MostLining, lining = Guard.InRange(thickness.Centimeters, 0, most, "The lining", "cm", nameof(thickness));
        if (!Takes(lining))
            throw new ArgumentOutOfRangeException(nameof(thickness), lining, $"A lining of {Text.Number(lining)} cm leaves no space in a mould that is {Text.Number(most)} cm from base or wall to the brim or the middle.");
        Mould lined = this with { LiningCentimeters = lining };
        return lined.Checked(nameof(thickness));
    }

    /// <summary>The same mould filled to this height only.</summary>
    /// <param name="height">Above 0, up to the height above the lining.</param>
    /// <exception cref="ArgumentOutOfRangeException">0, negative, above the brim, or not a number.</exception>
    /// <exception cref="InvalidOperationException">Cavities and moulds of a stated volume: state the volume that is filled.</exception>
    public Mould FilledTo(Length height)
    {
        RefuseWithoutSizes("fill height", "the volume that is filled");
        Mould filled = this with { FilledCentimeters = height.Centimeters };
        return filled.Checked(nameof(height));
    }

    /// <summary>The bars that a cutting plan gives.</summary>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    /// <exception cref="InvalidOperationException">A slab without the second cut, a cylinder with one, or a mould that is not cut: see <see cref="Unmould"/>.</exception>
    public BarLayout Cut(CuttingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        RefuseUncut(plan.Across);
        return BarLayout.Of(this, plan);
    }

    /// <summary>The pieces as they come out, uncut: the cavities, or the whole block.</summary>
    /// <param name="samples">Pieces kept back for weighing and tests, from 0 to 100,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public BarLayout Unmould(int samples) => new(this, Pieces, (int)Guard.InRange(samples, CuttingPlan.SampleLimits, "The number of samples", "", nameof(samples)), Milliliters / Pieces, 0);

    /// <summary>How thick a slice must be to have a volume; thickness = volume/(area of the cut face).</summary>
    /// <param name="bar">Volume of a bar, from 0.1 mL to the whole block.</param>
    /// <param name="across">The second size of the bars, when the block is cut both ways; null for whole slices.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <exception cref="InvalidOperationException">A slab without the second size, a cylinder with one, or a mould that is not cut by sizes.</exception>
    public Length ThicknessFor(Volume bar, Length? across)
    {
        RefuseUncut(across);
        double volume = Guard.InRange(bar.Milliliters, 0.1, Milliliters, "The volume of a bar", "mL", nameof(bar));
        double share = across is { } second ? Guard.InRange(second.Centimeters, 0.1, Block.Wide, "The second size of a bar", "cm", nameof(across)) / Block.Wide : 1;
        return Centimeters(volume / (CrossSection * share));
    }

    /// <summary>For example <c>box 25 x 9 x 7 cm, lining 0.1 cm, filled to 6 cm</c>; invariant.</summary>
    public override string ToString()
    {
        string size = Shape switch
        {
            MouldShape.Box or MouldShape.Slab => $"{(Shape == MouldShape.Box ? "box" : "slab")} {Text.Number(LengthCentimeters)} x {Text.Number(WidthCentimeters)} x {Text.Number(HeightCentimeters)} cm",
            MouldShape.Cylinder => $"cylinder {Text.Number(WidthCentimeters)} cm wide, {Text.Number(HeightCentimeters)} cm high",
            MouldShape.Cavities => $"{Text.Number(Pieces)} cavities of {Text.Number(EachMilliliters)} mL",
            _ => $"mould of {Text.Number(EachMilliliters)} mL",
        };
        return size + (LiningCentimeters > 0 ? $", lining {Text.Number(LiningCentimeters)} cm" : "") + (FilledCentimeters is { } filled ? $", filled to {Text.Number(filled)} cm" : "");
    }

    private static Mould OfSizes(MouldShape shape, Length length, Length width, Length height) => new(shape, Size(length, "length"), Size(width, "width"), Size(height, "height"), 1, 0);

    private static double Size(Length length, string what) => Guard.InRange(length.Centimeters, SizeLimits, $"The {what} of a mould", "cm", what);

    private static Length Centimeters(double value) => UnitsNet.Length.FromCentimeters(value);

    /// <summary>True when a lining of so many cm leaves a space.</summary>
    internal bool Takes(double lining) => lining >= 0 && MostLining - lining >= Slack;

    /// <summary>True when it can be filled so many cm high above its lining.</summary>
    internal bool CanBeFilledTo(double height) => height > 0 && height <= MostFill + Slack;

    private Mould Checked(string name)
    {
        if (FilledCentimeters is { } filled && !CanBeFilledTo(filled))
            throw new ArgumentOutOfRangeException(name, filled, $"The fill height must be above 0 and at most {Text.Number(MostFill)} cm, the height above the lining, but was {Text.Number(filled)} cm.");
        return this;
    }

    private void RefuseUncut(Length? across)
    {
        if (Shape == MouldShape.Slab && across is null)
            throw new InvalidOperationException("A slab is cut both ways: state the second size of the bars as well.");
        if (Shape == MouldShape.Cylinder && across is not null)
            throw new InvalidOperationException("A cylinder is cut one way only, into discs: leave out the second size.");
        if (!HasSizes)
            throw new InvalidOperationException("Only boxes, slabs and cylinders are cut by sizes; cavities and moulds of a stated volume give their pieces as they are.");
    }

    private void RefuseWithoutSizes(string what, string instead)
    {
        if (!HasSizes)
            throw new InvalidOperationException($"A {what} can't be set for cavities or for a mould of a stated volume; state {instead}.");
    }
}
