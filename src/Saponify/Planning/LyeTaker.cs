namespace Saponify;

/// <summary>What takes up lye.</summary>
public enum LyeTaker : byte
{
    /// <summary>A fat in the fat pot.</summary>
    Fat,

    /// <summary>A fat added at trace.</summary>
    LateFat,

    /// <summary>The fat in a liquid or an additive.</summary>
    FatInOther,

    /// <summary>The acid in a liquid or an additive.</summary>
    Acid,

    /// <summary>What the alkali leaves of the demand of all fat; its line is negative.</summary>
    Superfat,
}
