using Saponify.Internals;

namespace Saponify;

/// <summary>
/// A fragrance substance, or a plant oil, that a label in the European Union has to name above a limit, or that is banned by now.
/// Source: eu-1223-2009, Annex III, with eu-2023-1545. Immutable; equality by content.
/// </summary>
public sealed record FragranceAllergen : INamed
{
    internal FragranceAllergen(string id, string name, int annexEntry, FragranceListing listing)
    {
        Id = LineId.Check(id, "The id of a fragrance allergen");
        Name = Guard.Text(name, "The name of a fragrance allergen");
        AnnexEntry = annexEntry;
        Listing = listing;
    }

    /// <summary>Short name for look-up.</summary>
    public string Id { get; }

    /// <summary>The name that the label shows.</summary>
    public string Name { get; }

    /// <summary>Number of the entry of Annex III, from 1; of a banned one the number it had.</summary>
    public int AnnexEntry { get; }

    /// <summary>When the duty to name it came.</summary>
    public FragranceListing Listing { get; }

    /// <summary>True when it may not be used at all any more.</summary>
    public bool IsProhibited { get; internal init; }

    /// <summary>CAS numbers of the substance, its isomers or its plant sources. Some plant oils share one.</summary>
    public ValueList<string> Cas { get; internal init; }

    /// <summary>Names of single substances or plant parts that count under this entry.</summary>
    public ValueList<string> Covers { get; internal init; }

    /// <summary>Further limits, or null.</summary>
    public string? Condition { get; internal init; }

    /// <summary>Keys of the sources.</summary>
    public ValueList<string> Sources { get; internal init; }

    /// <summary>Place in the source.</summary>
    public string Place { get; internal init; } = "";

    /// <summary>How well the entry is supported.</summary>
    public Evidence Evidence { get; internal init; }

    /// <summary>What to know about it, or null.</summary>
    public string? Note { get; internal init; }

    ValueList<string> INamed.Aliases => default;

    IEnumerable<string> INamed.ListedNames => Cas.Concat(Covers);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
