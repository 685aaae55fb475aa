namespace Saponify;

/// <summary>
/// How well a figure is supported, best first. A value computed from several figures carries the weakest class among them.
/// </summary>
public enum Evidence : byte
{
    /// <summary>Set by a standard (Codex Alimentarius, ISO, CIAAW).</summary>
    Standard,

    /// <summary>Set by a pharmacopoeia.</summary>
    Pharmacopoeia,

    /// <summary>Given by a handbook or a critical review.</summary>
    Handbook,

    /// <summary>Measured, in a paper or on a supplier's certificate.</summary>
    Measured,

    /// <summary>Taken from a compilation such as a food-composition table.</summary>
    Compilation,

    /// <summary>Computed from other figures.</summary>
    Computed,

    /// <summary>Written down from memory; no page was seen. Check it before you rely on it.</summary>
    Memory,
}
