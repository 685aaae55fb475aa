using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>What bar will it be: scores, composition and the figures of a blend.</summary>
public static class ScoringExtensions
{
    /// <summary>
    /// The scores of a planned bar: all fat counts, that of liquids and additives too, with the superfat of all fat. Never throws on a
    /// plan, and needs no plan that can be weighed.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    public static BarScores Scores(this BatchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(AcidPool.Of(plan), plan.Balance.OfAllFat ?? 0, 1 - plan.Formula.Alkali.Mix.SodiumShare);
    }

    /// <summary>The scores of a formula: those of its plan.</summary>
    /// <param name="formula">The formula.</param>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    public static BarScores Scores(this Formula formula) => formula.Plan().Scores();

    /// <summary>The scores of a bar of this blend, before there is a formula.</summary>
    /// <param name="blend">The blend.</param>
    /// <param name="superfat">Share of the lye demand left unsaponified, from -100 to 100 %; below 0 counts as 0.</param>
    /// <param name="potassium">Potassium as a share of the hydroxide by moles, from 0 (soda soap) to 100 % (potash soap).</param>
    /// <exception cref="ArgumentNullException"><paramref name="blend"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside its range, or not a number.</exception>
    public static BarScores Scores(this FatBlend blend, Ratio superfat, Ratio potassium)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return new(AcidPool.Of(blend), Stored.Fraction(superfat, -1, 1, "A superfat"), Stored.Fraction(potassium, 0, 1, "A share of potassium"));
    }

    /// <summary>Fatty acids, saponification value, iodine value and chain lengths of a blend.</summary>
    /// <param name="blend">The blend.</param>
    /// <exception cref="ArgumentNullException"><paramref name="blend"/> is null.</exception>
    public static BlendFigures Figures(this FatBlend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return new(blend);
    }

    /// <summary>The listed fats of a formula as a blend by mass; null when they weigh nothing.</summary>
    /// <param name="formula">The formula.</param>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    public static FatBlend? Blend(this Formula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return formula.ListedGrams > 0 ? FatBlend.Of([.. formula.Fats.Select(f => (f.Fat, Stored.ToRatio(f.Grams / formula.ListedGrams)))]) : null;
    }

    /// <summary>What the fresh bar is made of; null when the batch can't be weighed, and <see cref="BatchPlan.Obstacles"/> says why.</summary>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    public static BarComposition? Composition(this BatchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Balance.CanBeWeighed ? new CompositionBuilder(plan).Build() : null;
    }

    /// <summary>What the fresh bar is made of; null when the batch can't be weighed, and the obstacles of its plan say why.</summary>
    /// <param name="formula">The formula.</param>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    public static BarComposition? Composition(this Formula formula) => formula.Plan().Composition();
}
