namespace Saponify;

/// <summary>What the number of a weight rests on. No weight is a printed figure of a source.</summary>
public enum WeightBasis : byte
{
    /// <summary>The order among the acids is from the sources, the number is judgement within that order.</summary>
    Order,

    /// <summary>The number, or the temperature it is computed from, was written down from memory. Check it.</summary>
    Memory,

    /// <summary>Nothing was found on this acid: set like its nearest kin.</summary>
    Analogy,
}
