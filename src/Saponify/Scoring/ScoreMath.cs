namespace Saponify;

/// <summary>
/// The formulas of the scores. Each is written as points that one share of an acid brings, so that value, contribution of an acid and
/// contribution of a fat are the same sum taken over different things.
/// </summary>
internal static class ScoreMath
{
    /// <summary>Quick-foaming share at which half of the lather is reached; judgement.</summary>
    private const double HalfLather = 0.08;

    /// <summary>Cox value, in fractions, at which the risk is 50; judgement.</summary>
    private const double HalfRisk = 2;

    /// <summary>Superfat from which more free fat brings no more points; judgement.</summary>
    private const double FullSuperfat = 0.08;

    /// <summary>Fills in the points that a share of 1 of each acid brings.</summary>
    /// <param name="kind">Which score.</param>
    /// <param name="shares">Shares of the scored acids by mass, adding up to 1.</param>
    /// <param name="potassium">Potassium by moles of the hydroxide, from 0 to 1.</param>
    /// <param name="superfat">Of all fat, as a fraction, not below 0.</param>
    /// <param name="points">One for each acid.</param>
    internal static void Points(ScoreKind kind, ReadOnlySpan<double> shares, double potassium, double superfat, Span<double> points)
    {
        switch (kind)
        {
            case ScoreKind.Hardness:
                Scale(WeightKind.Hardness, 100 * (1 - (0.8 * potassium)), points);
                break;
            case ScoreKind.WearResistance:
                Scale(WeightKind.Wear, 100 * (1 - (0.5 * potassium)), points);
                break;
            case ScoreKind.LatherVolume:
                double quick = Sum(shares, ScoreWeights.Values(WeightKind.Quick));
                Mix(0, WeightKind.Quick, 60 / (quick + HalfLather), WeightKind.Film, 40 * quick / (quick + HalfLather), points);
                break;
            case ScoreKind.LatherStability:
                Scale(WeightKind.Lasting, 100, points);
                break;
            case ScoreKind.Cleansing:
                Scale(WeightKind.Cleansing, 100, points);
                break;
            case ScoreKind.Conditioning:
                Mix(75, WeightKind.Irritation, -75, WeightKind.Emollient, 25 * Math.Clamp(superfat / FullSuperfat, 0, 1), points);
                break;
            default:
                Scale(WeightKind.Oxidation, 100 / (Sum(shares, ScoreWeights.Values(WeightKind.Oxidation)) + HalfRisk), points);
                break;
        }
    }

    /// <summary>The kinds of weights that go into a score.</summary>
    internal static WeightKind[] WeightsOf(ScoreKind kind) => kind switch
    {
        ScoreKind.Hardness => [WeightKind.Hardness],
        ScoreKind.WearResistance => [WeightKind.Wear],
        ScoreKind.LatherVolume => [WeightKind.Quick, WeightKind.Film],
        ScoreKind.LatherStability => [WeightKind.Lasting],
        ScoreKind.Cleansing => [WeightKind.Cleansing],
        ScoreKind.Conditioning => [WeightKind.Irritation, WeightKind.Emollient],
        _ => [WeightKind.Oxidation],
    };

    internal static double Sum(ReadOnlySpan<double> shares, ReadOnlySpan<double> weights)
    {
        double sum = 0;
        for (int i = 0; i < shares.Length; i++)
            sum += shares[i] * weights[i];
        return sum;
    }

    private static void Scale(WeightKind kind, double factor, Span<double> points) => Mix(0, kind, factor, kind, 0, points);

    private static void Mix(double fixedPoints, WeightKind first, double firstFactor, WeightKind second, double secondFactor, Span<double> points)
    {
        ReadOnlySpan<double> one = ScoreWeights.Values(first), two = ScoreWeights.Values(second);
        for (int i = 0; i < points.Length; i++)
            points[i] = fixedPoints + (firstFactor * one[i]) + (secondFactor * two[i]);
    }
}
