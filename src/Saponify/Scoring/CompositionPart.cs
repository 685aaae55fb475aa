using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>One part of a bar. The parts of a composition add up to the mass of the bar. Immutable; equality by content.</summary>
public sealed record CompositionPart
{
    internal CompositionPart(PartKind kind, string name, double grams, double share, FattyAcid? acid, AlkaliKind? cation)
    {
        Kind = kind;
        Name = name;
        Grams = grams;
        Share = Stored.ToRatio(share);
        Acid = acid;
        Cation = cation;
    }

    internal double Grams { get; }

    /// <summary>What kind of part it is.</summary>
    public PartKind Kind { get; }

    /// <summary>Name for people, for example <c>sodium oleate</c>.</summary>
    public string Name { get; }

    /// <summary>Its mass in the batch.</summary>
    public Mass Mass => Mass.FromGrams(Grams);

    /// <summary>Its share by mass of the bar.</summary>
    public Ratio Share { get; }

    /// <summary>The fatty acid of a soap; null for other parts and for soap of a fat whose acids are not known.</summary>
    public FattyAcid? Acid { get; }

    /// <summary>Which alkali a soap, a salt or the alkali left comes from; null for other parts.</summary>
    public AlkaliKind? Cation { get; }
}
