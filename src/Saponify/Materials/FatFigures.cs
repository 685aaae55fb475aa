using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>The published figures of a fat; what is not known stays null. Immutable; equality by content.</summary>
public sealed record FatFigures
{
    /// <summary>Saponification value as published.</summary>
    public Figure<SaponificationValue>? Saponification { get; init; }

    /// <summary>Acid value as published, mg KOH per g; of a wax it is what takes up lye.</summary>
    public Figure<SaponificationValue>? AcidValue { get; init; }

    /// <summary>Iodine value as published.</summary>
    public Figure<IodineValue>? Iodine { get; init; }

    /// <summary>Unsaponifiable matter as published. The value is the middle of the range, or half of a bare upper limit.</summary>
    public Figure<Ratio>? Unsaponifiable { get; init; }

    /// <summary>Fatty acids.</summary>
    public FattyAcidProfile? Profile { get; init; }

    /// <summary>Weakest evidence among the figures of <see cref="Profile"/>.</summary>
    public Evidence ProfileEvidence { get; init => field = Guard.Known(value, "Evidence"); }

    /// <summary>Keys of the sources of <see cref="Profile"/>.</summary>
    public ValueList<string> ProfileSources { get; init; }

    /// <summary>True when <see cref="Profile"/> is the user's own, not from the reference tables.</summary>
    public bool IsProfileOwn { get; init; }

    /// <summary>Density, at the temperature its note states.</summary>
    public Figure<Density>? Density { get; init; }

    /// <summary>Melting range.</summary>
    public Figure<Temperature>? Melting { get; init; }

    /// <summary>True when published figures scatter too much to compute lye from: only the lot's own saponification value will do.</summary>
    public bool NeedsOwnSaponification { get; init; }
}
