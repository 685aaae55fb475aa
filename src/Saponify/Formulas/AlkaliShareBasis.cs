namespace Saponify;

/// <summary>What the shares of several alkalis are shares of.</summary>
public enum AlkaliShareBasis : byte
{
    /// <summary>Of the hydroxide: equivalents, moles.</summary>
    Hydroxide,

    /// <summary>Of the mass as weighed, impurity included.</summary>
    MassAsWeighed,
}
