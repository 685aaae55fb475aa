using UnitsNet;

namespace Saponify;

/// <summary>One line of "who takes up lye". The lines of a plan add up to the alkali supplied. Immutable; equality by content.</summary>
public sealed record LyeUptake
{
    internal LyeUptake(FormulaPath path, LyeTaker taker, string what, double hydroxide, double alkaliGrams)
    {
        Path = path;
        Taker = taker;
        What = what;
        Hydroxide = AmountOfSubstance.FromMoles(hydroxide);
        AsAlkali = Mass.FromGrams(alkaliGrams);
    }

    /// <summary>Where in the formula it lies.</summary>
    public FormulaPath Path { get; }

    /// <summary>What kind of line it is.</summary>
    public LyeTaker Taker { get; }

    /// <summary>The material.</summary>
    public string What { get; }

    /// <summary>Hydroxide it takes up, in mol; negative for the superfat, which is lye not given.</summary>
    public AmountOfSubstance Hydroxide { get; }

    /// <summary>The same in the plan's own alkali as weighed.</summary>
    public Mass AsAlkali { get; }
}
