using Saponify.Internals;

namespace Saponify;

/// <summary>Where figures come from. Immutable; equality by content.</summary>
public sealed record Source : INamed
{
    internal Source(string key, string citation, string year, string place, Evidence evidence, string licence)
    {
        Key = key;
        Citation = citation;
        Year = year;
        Place = place;
        Evidence = evidence;
        Licence = licence;
    }

    /// <summary>Short key, as figures name it.</summary>
    public string Key { get; }

    /// <summary>Author, title, edition.</summary>
    public string Citation { get; }

    /// <summary>Year of the edition; empty when not known.</summary>
    public string Year { get; }

    /// <summary>Which part was used, and whether only a copy, an abstract or a quotation was read.</summary>
    public string Place { get; }

    /// <summary>Evidence class of what comes from it.</summary>
    public Evidence Evidence { get; }

    /// <summary>Licence of the source, in short.</summary>
    public string Licence { get; }

    string INamed.Id => Key;

    string INamed.Name => Key;

    ValueList<string> INamed.Aliases => default;

    IEnumerable<string> INamed.ListedNames => [];
}
