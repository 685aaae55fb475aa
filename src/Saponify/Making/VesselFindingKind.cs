namespace Saponify;

/// <summary>What speaks against a vessel.</summary>
public enum VesselFindingKind : byte
{
    /// <summary>The material must never hold lye.</summary>
    NeverForLye,

    /// <summary>The peak passes the temperature it stands at all.</summary>
    TooHot,

    /// <summary>The peak passes the temperature it stands for long; a short peak it may stand.</summary>
    HotForLong,

    /// <summary>Hot lye takes its surface off strongly.</summary>
    Attacked,

    /// <summary>The step of temperature may crack it.</summary>
    ThermalShock,

    /// <summary>The content does not fit in.</summary>
    TooSmall,

    /// <summary>Less space is left free than asked for.</summary>
    LittleHeadspace,

    /// <summary>The lye is stronger than the figures reach, so its heat can't be told.</summary>
    NoFigures,
}
