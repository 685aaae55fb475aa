namespace Saponify;

/// <summary>Whether a material may hold lye.</summary>
public enum LyeFitness : byte
{
    /// <summary>Fit within its temperature.</summary>
    Suitable,

    /// <summary>Holds lye for a time, and suffers from it or may fail.</summary>
    Limited,

    /// <summary>Never: it dissolves, gives hydrogen or falls apart.</summary>
    Never,
}
