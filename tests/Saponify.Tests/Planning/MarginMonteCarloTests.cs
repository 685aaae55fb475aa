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
        foreach (Formula formula in Any.SoundFormulas.Sample(formulas * 3, LawAttribute.Seed, 30))
        {
            BatchPlan plan = formula.Plan();
            Scale scale = new(Mass.FromGrams(compared % 2 == 0 ? 0.1 : 2));
            // a line of less than half a step is no weighing; the scale plan refuses it
            if (compared >= formulas || plan.Margin(scale) is not { } margin || plan.OnScale(scale).Lines.Any(l => l.Planned.Grams < scale.Step.Grams / 2))
                continue;
            compared++;
            double[] runs = MonteCarlo(new(plan, scale), random);
            double mean = runs.Average(), deviation = Math.Sqrt(runs.Sum(r => (r - mean) * (r - mean)) / (runs.Length - 1));
            double ends = Math.Max(Math.Abs(runs[(int)(0.025 * runs.Length)] - margin.Low.DecimalFractions), Math.Abs(runs[(int)(0.975 * runs.Length)] - margin.High.DecimalFractions));
            double uncertainty = Math.Abs(deviation - margin.StandardUncertainty.DecimalFractions);
            double probability = Math.Abs((runs.Count(r => r < 0) / (double)runs.Length) - margin.ProbabilityOfLyeHeavy.DecimalFractions);
            // the tolerance: 3 % of what lies between the corners plus 0.03 points at the ends, 1.5 % of it in the first-order uncertainty, 1.5 % in the
            // probability; sampling 20,000 times leaves about 0.4 % of the width (one standard deviation) at an end and 0.35 % in a probability
            double width = margin.Best.DecimalFractions - margin.Worst.DecimalFractions;
            Assert.InRange(ends, 0, (0.03 * width) + 0.0003);
            Assert.InRange(uncertainty, 0, (0.015 * width) + 0.0003);
            Assert.InRange(probability, 0, 0.015);
            (largestEnd, largestDeviation, largestProbability) = (Math.Max(largestEnd, ends), Math.Max(largestDeviation, uncertainty), Math.Max(largestProbability, probability));
        }
        Assert.Equal(formulas, compared);
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
