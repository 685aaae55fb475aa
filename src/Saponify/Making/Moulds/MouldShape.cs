namespace Saponify;

/// <summary>The shape of a mould.</summary>
public enum MouldShape : byte
{
    /// <summary>A box that is cut into slices across its length.</summary>
    Box,

    /// <summary>A flat box that is cut both ways; its fill height is the height of the bars.</summary>
    Slab,

    /// <summary>A tube or a round mould, cut across its axis.</summary>
    Cylinder,

    /// <summary>Several equal cavities, each of them a bar.</summary>
    Cavities,

    /// <summary>Any other shape of known volume: one piece.</summary>
    Volume,
}
