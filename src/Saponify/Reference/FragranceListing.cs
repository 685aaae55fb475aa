namespace Saponify;

/// <summary>When the duty to name a fragrance substance came into European law. Source: eu-2023-1545, annex.</summary>
public enum FragranceListing : byte
{
    /// <summary>One of the first 26, in force for long.</summary>
    First26,

    /// <summary>In the annex before, with limits; the duty to name it came in 2023.</summary>
    Extended2023,

    /// <summary>New in the annex in 2023.</summary>
    Added2023,
}
