namespace Saponify;

/// <summary>Whether a fat sets at a temperature. Judged by itself: dissolved in oils it may stay liquid a little longer.</summary>
public enum FatSettingVerdict : byte
{
    /// <summary>At or above its melting range.</summary>
    StaysLiquid,

    /// <summary>Inside its melting range.</summary>
    MaySet,

    /// <summary>Below its melting range: the batter stiffens without having reacted, a false trace.</summary>
    Sets,

    /// <summary>No melting range is on file.</summary>
    NoFigure,
}
