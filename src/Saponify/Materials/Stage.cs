namespace Saponify;

/// <summary>When something goes in.</summary>
public enum Stage : byte
{
    /// <summary>Into the lye liquid, before or with the alkali.</summary>
    LyeLiquid,

    /// <summary>Into the fat pot, before the lye.</summary>
    Fats,

    /// <summary>At trace, when the batter has thickened.</summary>
    Trace,

    /// <summary>On top, when the soap is in the mould.</summary>
    Top,
}
