namespace Saponify;

/// <summary>What kind of statement a temperature is.</summary>
public enum Claim : byte
{
    /// <summary>Given by the maker or the formula.</summary>
    Given,

    /// <summary>An upper bound: the truth lies below, since every loss is left out.</summary>
    UpperBound,

    /// <summary>An estimate: the truth may lie on either side.</summary>
    Estimate,
}
