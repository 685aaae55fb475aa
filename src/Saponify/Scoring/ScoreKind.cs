namespace Saponify;

/// <summary>The seven scores of a bar, in the order in which they are shown.</summary>
public enum ScoreKind : byte
{
    /// <summary>How firm the dried bar is at room temperature.</summary>
    Hardness,

    /// <summary>How slowly the bar is used up.</summary>
    WearResistance,

    /// <summary>How much foam, and how soon.</summary>
    LatherVolume,

    /// <summary>How long the foam stands.</summary>
    LatherStability,

    /// <summary>How strongly it lifts skin grease in tepid water.</summary>
    Cleansing,

    /// <summary>How kindly it leaves the skin.</summary>
    Conditioning,

    /// <summary>How readily the unsaturated part oxidises: high is bad.</summary>
    OxidationRisk,
}
