using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>From a formula to what to weigh.</summary>
public static class PlanExtensions
{
    /// <summary>
    /// The numbers only: superfats, alkali, lye liquid, strengths. Allocates nothing and never throws on a formula, so it suits sweeps.
    /// </summary>
    /// <param name="formula">The formula.</param>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    public static LyeBalance Balance(this Formula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        LyeSolver solver = new(formula);                    // a local is made in place; a temporary would be copied
        return solver.Solve(out _);
    }

    /// <summary>
    /// The whole plan: what to weigh, the superfats, who takes up lye, the window of liquid, what stands in the way. Never throws on a
    /// formula, and every number in it is finite.
    /// </summary>
    /// <param name="formula">The formula.</param>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    public static BatchPlan Plan(this Formula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return new(formula);
    }

    /// <summary>
    /// How sure the superfat of all fat is, with an interval of 95 % coverage. Null for a plan that can't be weighed.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="scale">The scale that everything is weighed on; null leaves weighing out of it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    public static Margin? Margin(this BatchPlan plan, Scale? scale) => plan.Margin(scale, null, Ratio.FromPercent(95));

    /// <summary>How sure the superfat of all fat is. Null for a plan that can't be weighed.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="scale">The scale for everything but the alkali; null leaves weighing out of it.</param>
    /// <param name="alkaliScale">Another scale for the alkali; null when it is weighed on <paramref name="scale"/>.</param>
    /// <param name="coverage">The probability that the interval covers, from 0 to 99.99 %.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A coverage outside its range, or not a number.</exception>
    public static Margin? Margin(this BatchPlan plan, Scale? scale, Scale? alkaliScale, Ratio coverage)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return MarginComputation.Of(plan, scale, alkaliScale, Stored.Fraction(coverage, 0, 0.9999, "A coverage"));
    }

    /// <summary>The plan in the steps of a scale: what to weigh, and the superfat after rounding.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="scale">The scale.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public static ScalePlan OnScale(this BatchPlan plan, Scale scale) => plan.OnScale(scale, scale);

    /// <summary>The plan in the steps of two scales, a coarse one and a finer one for the alkali.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="scale">The scale for everything but the alkali.</param>
    /// <param name="alkaliScale">The scale for the alkali.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public static ScalePlan OnScale(this BatchPlan plan, Scale scale, Scale alkaliScale)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(scale);
        ArgumentNullException.ThrowIfNull(alkaliScale);
        return new(plan, scale, alkaliScale);
    }
}
