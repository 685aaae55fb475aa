namespace Saponify;

/// <summary>One weight of one fatty acid, with what it rests on. Immutable; equality by content.</summary>
public sealed record ScoreWeight
{
    internal ScoreWeight(FattyAcid acid, WeightKind kind, double value, WeightBasis basis, ValueList<string> sources, string why)
    {
        Acid = acid;
        Kind = kind;
        Value = value;
        Basis = basis;
        Sources = sources;
        Why = why;
    }

    /// <summary>The acid.</summary>
    public FattyAcid Acid { get; }

    /// <summary>What it weighs for.</summary>
    public WeightKind Kind { get; }

    /// <summary>The weight, without unit: from 0 to 1, oxidation from 0 to 21.6.</summary>
    public double Value { get; }

    /// <summary>What the number rests on.</summary>
    public WeightBasis Basis { get; }

    /// <summary>Keys of the sources that give its place among the acids; <c>memory</c> where no page was seen.</summary>
    public ValueList<string> Sources { get; }

    /// <summary>How it was set, in one sentence.</summary>
    public string Why { get; }
}
