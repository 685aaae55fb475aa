namespace Saponify;

/// <summary>Formulas side by side: their scores and their fresh bars, in the order given. Immutable, thread-safe.</summary>
public sealed class BarComparison
{
    private BarComparison(BatchPlan[] plans)
    {
        Plans = plans;
        Scores = [.. plans.Select(p => p.Scores())];
        Compositions = [.. plans.Select(p => p.Composition())];
        Blends = [.. plans.Select(p => p.Formula.Blend()?.Figures())];
    }

    /// <summary>The plans compared.</summary>
    public IReadOnlyList<BatchPlan> Plans { get; }

    /// <summary>The scores of each.</summary>
    public IReadOnlyList<BarScores> Scores { get; }

    /// <summary>The fresh bar of each; null where the batch can't be weighed.</summary>
    public IReadOnlyList<BarComposition?> Compositions { get; }

    /// <summary>The listed fats of each as one fat; null where they weigh nothing.</summary>
    public IReadOnlyList<BlendFigures?> Blends { get; }

    /// <summary>Puts formulas side by side.</summary>
    /// <param name="formulas">At least one, at most 26.</param>
    /// <exception cref="ArgumentNullException">A null argument or formula.</exception>
    /// <exception cref="ArgumentException">No formula, or more than 26.</exception>
    public static BarComparison Of(params Formula[] formulas)
    {
        ArgumentNullException.ThrowIfNull(formulas);
        if (formulas.Length is 0 or > 26)
            throw new ArgumentException("From one to 26 formulas can be compared.", nameof(formulas));
        return new([.. formulas.Select(f => f.Plan())]);
    }

    /// <summary>One score of each formula, in points from 0 to 100; null where a formula is not scored.</summary>
    /// <param name="kind">Which score.</param>
    /// <exception cref="ArgumentOutOfRangeException">None of the seven.</exception>
    public IReadOnlyList<double?> Values(ScoreKind kind) => [.. Scores.Select(s => s[kind]?.Value)];

    /// <summary>The comparison as text for people: the bars drawn in plain characters, by group, with confidence and limits; invariant.</summary>
    public override string ToString() => ComparisonText.Of(this);
}
