namespace Saponify.PublishedValues.Scoring;

/// <summary>The formulas of the scores written down once more, from the published weights and a profile alone, so that weights can be moved.</summary>
public sealed class StraightLineScores
{
    private readonly Dictionary<(FattyAcid Acid, WeightKind Kind), double> _weights;

    public StraightLineScores(Func<ScoreWeight, double> weigh) => _weights = ScoreWeights.All.ToDictionary(w => (w.Acid, w.Kind), weigh);

    /// <summary>A score of soda soap with 5 % superfat.</summary>
    public double Of(ScoreKind kind, FatBlend blend)
    {
        FattyAcidProfile profile = blend.Figures().Profile!;
        Dictionary<FattyAcid, double> shares = FattyAcid.All.Where(a => _weights.ContainsKey((a, WeightKind.Hardness))).ToDictionary(a => a, a => profile[a].DecimalFractions);
        double known = shares.Values.Sum();
        double Sum(WeightKind weight) => shares.Sum(s => s.Value / known * _weights[(s.Key, weight)]);
        double quick = Sum(WeightKind.Quick), cox = Sum(WeightKind.Oxidation);
        return kind switch
        {
            ScoreKind.Hardness => 100 * Sum(WeightKind.Hardness),
            ScoreKind.WearResistance => 100 * Sum(WeightKind.Wear),
            ScoreKind.LatherVolume => 100 * quick / (quick + 0.08) * (0.6 + (0.4 * Sum(WeightKind.Film))),
            ScoreKind.LatherStability => 100 * Sum(WeightKind.Lasting),
            ScoreKind.Cleansing => 100 * Sum(WeightKind.Cleansing),
            ScoreKind.Conditioning => 100 * ((0.75 * (1 - Sum(WeightKind.Irritation))) + (0.25 * Sum(WeightKind.Emollient) * 5 / 8)),
            _ => 100 * cox / (cox + 2),
        };
    }
}
