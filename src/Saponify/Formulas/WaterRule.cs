namespace Saponify;

/// <summary>How the amount of water is decided.</summary>
public enum WaterRule : byte
{
    /// <summary>By the strength of the lye over all water: pure alkali/(pure alkali + all water).</summary>
    LyeConcentration,

    /// <summary>By parts of all water to one part of pure alkali.</summary>
    WaterToAlkali,

    /// <summary>By all water as a share of the mass of the listed fats.</summary>
    WaterToFats,

    /// <summary>By the mass of all water.</summary>
    TotalWater,

    /// <summary>The liquid the alkali is dissolved in is weighed already.</summary>
    WeighedLyeLiquid,
}
