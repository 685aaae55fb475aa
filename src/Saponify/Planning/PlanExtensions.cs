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
        return new LyeSolver(formula).Solve(out _);
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
}
