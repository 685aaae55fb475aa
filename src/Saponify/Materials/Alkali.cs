using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// An alkali as it stands on the shelf: sodium or potassium hydroxide, solid of a stated purity or a bought solution of a stated
/// strength. Immutable; equality by content.
/// </summary>
public sealed record Alkali
{
    private Alkali(AlkaliKind kind, bool isSolution, Purity purity)
    {
        ArgumentNullException.ThrowIfNull(purity);
        Kind = kind;
        IsSolution = isSolution;
        Purity = purity;
        BoundWaterFraction = UsualBoundWater;
    }

    /// <summary>Water as it is unless stated otherwise: the rest of a solution and of solid KOH, none in solid NaOH.</summary>
    internal double UsualBoundWater => IsSolution || Kind == AlkaliKind.PotassiumHydroxide ? 1 - Purity.HighFraction : 0;

    /// <summary>What the purity leaves, and as much more as rounding makes of it: 10 % beside 90 %.</summary>
    internal double MostBoundWater => 1 - Purity.HighFraction + 1e-9;

    internal double BoundWaterFraction { get; private init; }

    /// <summary>g of pure hydroxide per g as weighed, at the top of the stated purity.</summary>
    internal double PurePerGram => Purity.HighFraction;

    /// <summary>mol of hydroxide per g as weighed.</summary>
    internal double HydroxidePerGram => Purity.HighFraction / Molar.Hydroxide(Kind);

    /// <summary>Which hydroxide.</summary>
    public AlkaliKind Kind { get; }

    /// <summary>True for a bought solution, which brings its own water.</summary>
    public bool IsSolution { get; }

    /// <summary>Purity of the solid or strength of the solution, by mass.</summary>
    public Purity Purity { get; }

    /// <summary>Where the purity is stated, for example <c>certificate 2231 of the supplier</c>; null when not said. Not blank.</summary>
    /// <exception cref="ArgumentException">The text is blank.</exception>
    public string? Certificate { get; init => field = value is null ? null : Guard.Text(value, "The certificate of an alkali"); }

    /// <summary>
    /// Share of the mass as weighed that is water: all that is not hydroxide in a solution and in solid KOH, none in solid NaOH, unless
    /// stated otherwise here. From 0 to what the purity leaves.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">More than the purity leaves, negative, or not a number.</exception>
    public Ratio BoundWater
    {
        get => Ratio.FromDecimalFractions(BoundWaterFraction);
        init => BoundWaterFraction = Math.Min(1 - Purity.HighFraction, Stored.Fraction(value, 0, MostBoundWater, "Bound water"));
    }

    /// <summary>Short name: <c>sodium-hydroxide</c>, <c>potassium-hydroxide</c>, each with <c>-solution</c> when bought dissolved.</summary>
    public string Id => (Kind == AlkaliKind.SodiumHydroxide ? "sodium-hydroxide" : "potassium-hydroxide") + (IsSolution ? "-solution" : "");

    /// <summary>Solid sodium hydroxide of certified purity.</summary>
    /// <param name="purity">Certified purity, above 0, up to 100 %. Use the overload with <see cref="Purity"/> for a range or a label minimum.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static Alkali SodiumHydroxide(Ratio purity) => SodiumHydroxide(Purity.Certified(purity));

    /// <summary>Solid sodium hydroxide.</summary>
    /// <param name="purity">What is known of its purity.</param>
    /// <exception cref="ArgumentNullException"><paramref name="purity"/> is null.</exception>
    public static Alkali SodiumHydroxide(Purity purity) => new(AlkaliKind.SodiumHydroxide, false, purity);

    /// <summary>Solid potassium hydroxide of certified purity; the rest is water.</summary>
    /// <param name="purity">Certified purity, above 0, up to 100 %; flakes have about 85 to 92 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static Alkali PotassiumHydroxide(Ratio purity) => PotassiumHydroxide(Purity.Certified(purity));

    /// <summary>Solid potassium hydroxide; the rest is water.</summary>
    /// <param name="purity">What is known of its purity.</param>
    /// <exception cref="ArgumentNullException"><paramref name="purity"/> is null.</exception>
    public static Alkali PotassiumHydroxide(Purity purity) => new(AlkaliKind.PotassiumHydroxide, false, purity);

    /// <summary>A bought solution of sodium hydroxide; the rest is water.</summary>
    /// <param name="strength">g NaOH per 100 g of solution, above 0, up to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static Alkali SodiumHydroxideSolution(Ratio strength) => SodiumHydroxideSolution(Purity.Certified(strength));

    /// <summary>A bought solution of sodium hydroxide; the rest is water.</summary>
    /// <param name="strength">What is known of its strength.</param>
    /// <exception cref="ArgumentNullException"><paramref name="strength"/> is null.</exception>
    public static Alkali SodiumHydroxideSolution(Purity strength) => new(AlkaliKind.SodiumHydroxide, true, strength);

    /// <summary>A bought solution of potassium hydroxide; the rest is water.</summary>
    /// <param name="strength">g KOH per 100 g of solution, above 0, up to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static Alkali PotassiumHydroxideSolution(Ratio strength) => PotassiumHydroxideSolution(Purity.Certified(strength));

    /// <summary>A bought solution of potassium hydroxide; the rest is water.</summary>
    /// <param name="strength">What is known of its strength.</param>
    /// <exception cref="ArgumentNullException"><paramref name="strength"/> is null.</exception>
    public static Alkali PotassiumHydroxideSolution(Purity strength) => new(AlkaliKind.PotassiumHydroxide, true, strength);

    /// <summary>For example <c>sodium hydroxide, 98 %</c> or <c>potassium hydroxide solution, 45 %</c>; invariant.</summary>
    public override string ToString() =>
        (Kind == AlkaliKind.SodiumHydroxide ? "sodium hydroxide" : "potassium hydroxide") + (IsSolution ? " solution, " : ", ") + Purity;
}
