namespace Saponify;

/// <summary>How far a batch is.</summary>
public enum BatchState : byte
{
    /// <summary>Things stand apart in their cups: every mass can still be changed.</summary>
    Weighing,

    /// <summary>The alkali is in: only additions are possible from here on.</summary>
    Mixed,

    /// <summary>Poured, or too thick to stir anything in evenly.</summary>
    Poured,
}
