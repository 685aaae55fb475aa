namespace Saponify;

/// <summary>What kind of doubt makes a superfat uncertain.</summary>
public enum MarginCauseKind : byte
{
    /// <summary>The saponification value of a fat is a range.</summary>
    SaponificationValue,

    /// <summary>The purity of an alkali is a range or a minimum.</summary>
    Purity,

    /// <summary>The scale shows steps.</summary>
    Weighing,

    /// <summary>The composition of a liquid or an additive is a range.</summary>
    Composition,

    /// <summary>The alkali is weighed on another scale than the rest, and their relative errors don't cancel.</summary>
    TwoScales,
}
