using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// An essential oil with the listed allergens in it. A table to look things up; a constituent that is not listed is not thereby absent, and
/// the supplier's sheet of the lot beats it. Immutable, thread-safe; equality by content.
/// </summary>
public sealed record EssentialOil : INamed
{
    internal EssentialOil(string id, string name)
    {
        Id = LineId.Check(id, "The id of an essential oil");
        Name = Guard.Text(name, "The name of an essential oil");
    }

    /// <summary>Short name for look-up.</summary>
    public string Id { get; }

    /// <summary>Name for people.</summary>
    public string Name { get; }

    /// <summary>Other names that the look-up knows.</summary>
    public ValueList<string> Aliases { get; internal init; }

    /// <summary>Its name in the inventory of cosmetic ingredients; from memory where <see cref="InciSources"/> says so.</summary>
    public string? Inci { get; internal init; }

    /// <summary>Keys of the sources of <see cref="Inci"/>.</summary>
    public ValueList<string> InciSources { get; internal init; }

    /// <summary>Entry of Annex III when the oil itself has to be named, beside its constituents; null when it is none.</summary>
    public int? AnnexEntry { get; internal init; }

    /// <summary>True when it tints or browns soap.</summary>
    public bool Tints { get; internal init; }

    /// <summary>Density, or null when not known.</summary>
    public Figure<Density>? Density { get; internal init; }

    /// <summary>Flash point, or null when not known.</summary>
    public Figure<Temperature>? FlashPoint { get; internal init; }

    /// <summary>Listed allergens in it, in the order of the table.</summary>
    public ValueList<OilConstituent> Constituents { get; internal init; }

    /// <summary>What to know about it, or null.</summary>
    public string? Note { get; internal init; }

    IEnumerable<string> INamed.ListedNames => Inci is null ? [] : [Inci];

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
