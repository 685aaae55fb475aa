namespace Saponify;

/// <summary>Which amount a cause moves.</summary>
internal enum CauseOf : byte
{
    /// <summary>The demand of fat.</summary>
    Fat,

    /// <summary>What acids take up.</summary>
    Acid,

    /// <summary>The alkali supplied.</summary>
    Alkali,
}
