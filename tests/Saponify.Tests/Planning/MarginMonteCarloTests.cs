using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Planning;

/// <summary>
/// The margin, first order and convolution, against Monte Carlo of the full model. Source of the method: JCGM 101:2008, propagation of
/// distributions; the comparison is its clause 8, with a tolerance stated here.
/// </summary>
public class MarginMonteCarloTests
{
    private const int Draws = 20_000;

    [Fact]
    public void FirstOrder_AgreesWithMonteCarlo_OnRandomFormulas()
    {
        int formulas = LawAttribute.Cases(1000) > 1000 ? 1000 : 200;
        Random random = new(20261125);
        double largestEnd = 0, largestProbability = 0, largestDeviation = 0;
        int compared = 0;
        foreach (Formula formula in Any.SoundFormulas.Sample(formulas * 2, 30))
        {
            BatchPlan plan = formula.Plan();
            Scale scale = new(Mass.FromGrams(compared % 2 == 0 ? 0.1 : 2));
            if (compared >= formulas || plan.Margin(scale) is not { } margin)
                continue;
            compared++;
            double[] runs = MonteCarlo(new(plan, scale), random);
            double mean = runs.Average(), deviation = Math.Sqrt(runs.Sum(r => (r - mean) * (r - mean)) / (runs.Length - 1));
            largestDeviation = Math.Max(largestDeviation, Math.Abs(deviation - margin.StandardUncertainty.DecimalFractions));
            largestEnd = Math.Max(largestEnd, Math.Abs(runs[(int)(0.025 * runs.Length)] - margin.Low.DecimalFractions));
            largestEnd = Math.Max(largestEnd, Math.Abs(runs[(int)(0.975 * runs.Length)] - margin.High.DecimalFractions));
            largestProbability = Math.Max(largestProbability, Math.Abs((runs.Count(r => r < 0) / (double)runs.Length) - margin.ProbabilityOfLyeHeavy.DecimalFractions));
        }
        Assert.Equal(formulas, compared);
        // the tolerance: a fifth of a point at the ends and in the uncertainty (which is first order: fats such as egg yolk fat with a range of a third
        // bend it most), one and a half per cent in the probability; sampling itself gives about 0.03 points and 0.35 per cent at 20,000 draws
        Assert.InRange(largestEnd, 0, 0.002);
        Assert.InRange(largestDeviation, 0, 0.002);
        Assert.InRange(largestProbability, 0, 0.015);
        TestContext.Current.TestOutputHelper!.WriteLine(FormattableString.Invariant($"{compared} formulas, largest differences: ends {largestEnd:P3}, uncertainty {largestDeviation:P3}, probability {largestProbability:P3}"));
    }

    private static double[] MonteCarlo(TrueBatch batch, Random random)
    {
        double[] runs = new double[Draws], places = new double[batch.Doubts];
        for (int run = 0; run < runs.Length; run++)
        {
            for (int i = 0; i < places.Length; i++)
                places[i] = random.NextDouble();
            runs[run] = batch.Superfat(places);
        }
        Array.Sort(runs);
        return runs;
    }
}
