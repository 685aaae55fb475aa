using Saponify.Internals;

namespace Saponify;

/// <summary>From a plan to its margin.</summary>
internal static class MarginComputation
{
    internal static Margin? Of(BatchPlan plan, Scale? scale, Scale? alkaliScale, double coverage)
    {
        if (!plan.Balance.CanBeWeighed || plan.Balance.OfAllFat is not { } nominal)
            return null;
        MarginModel model = new(plan, scale, alkaliScale);
        double fat = model.FatMiddle, net = model.NetMiddle, best = model.BestEstimate;

        // sensitivities at the middles: ds/dF = (N - A)/F^2, ds/dA = 1/F, ds/dN = -1/F
        var inSuperfat = new double[model.Causes.Count];
        double variance = 0;
        for (int i = 0; i < inSuperfat.Length; i++)
        {
            Cause cause = model.Causes[i];
            inSuperfat[i] = cause.HalfWidth * (cause.Of == CauseOf.Fat ? Math.Abs(net) / (fat * fat) : 1 / fat);
            variance += inSuperfat[i] * inSuperfat[i] / 3;
        }
        (double worst, double top) = (Math.Min(model.Worst, best), Math.Max(model.Best, best));
        SuperfatDistribution distribution = new(model.Causes, fat, net);
        double tail = (1 - coverage) / 2;
        return new()
        {
            NominalFraction = nominal,
            BestEstimateFraction = best,
            WorstFraction = worst,
            BestFraction = top,
            UncertaintyFraction = Math.Sqrt(variance),
            LowFraction = distribution.Quantile(tail, worst, top),
            HighFraction = distribution.Quantile(1 - tail, worst, top),
            CoverageFraction = coverage,
            LyeHeavyProbability = worst >= 0 ? 0 : top < 0 ? 1 : distribution.Below(0),
            Causes = Causes(model, inSuperfat, variance),
            NoData = model.NoData,
        };
    }

    private static ValueList<MarginCause> Causes(MarginModel model, double[] inSuperfat, double variance) =>
    [
        .. model.Causes.Select((cause, i) => new MarginCause(cause.Path, cause.Kind, cause.What, inSuperfat[i], variance > 0 ? inSuperfat[i] * inSuperfat[i] / 3 / variance : 0))
            .OrderByDescending(c => c.ShareOfVariance.DecimalFractions).ThenBy(c => c.What, StringComparer.Ordinal),
    ];
}
