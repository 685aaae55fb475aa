using Saponify.Internals;

namespace Saponify;

/// <summary>
/// One score of a bar: a rank with a scale from 0 to 100, not a measurement. Immutable, thread-safe. What fats and acids bring is worked
/// out when it is asked for.
/// </summary>
public sealed class Score
{
    private readonly BarScores _scores;
    private readonly double[] _points;

    internal Score(BarScores scores, ScoreDefinition definition, double[] points, bool isOutside)
    {
        _scores = scores;
        _points = points;
        Definition = definition;
        Confidence = isOutside ? ScoreConfidence.Low : definition.Confidence;
        Value = Math.Clamp(ScoreMath.Sum(scores.Shares, points), 0, 100);
        Band = definition.BandOf(Value);
    }

    /// <summary>What the score is, what it rests on, what it can't see.</summary>
    public ScoreDefinition Definition { get; }

    /// <summary>Which score.</summary>
    public ScoreKind Kind => Definition.Kind;

    /// <summary>The score, from 0 to 100 points.</summary>
    public double Value { get; }

    /// <summary>The score in words.</summary>
    public ScoreBand Band { get; }

    /// <summary>How far it can be trusted: that of the definition, or low where <see cref="BarScores.Remarks"/> says that the bar lies outside the model.</summary>
    public ScoreConfidence Confidence { get; }

    /// <summary>What each fat brings, in the order of the formula; adds up to the score by the definition's decomposition.</summary>
    public ValueList<FatPoints> ByFat
    {
        get
        {
            List<FatPoints> found = [];
            foreach (AcidPool.Entry fat in _scores.Pool.Fats)
            {
                (double share, double points) = (0, 0);
                ReadOnlySpan<double> acids = fat.Shares;
                for (int i = 0; i < acids.Length; i++)
                {
                    double part = ScoreWeights.IsKnown(i) ? fat.AcidGrams * fat.Named * acids[i] / _scores.ScoredGrams : 0;
                    share += part;
                    points += part * _points[i];
                }
                found.Add(new(fat.Path, fat.What, share, points));
            }
            return found.ToValueList();
        }
    }

    /// <summary>What each acid brings, by chain length; adds up to the score by the definition's decomposition.</summary>
    public ValueList<AcidPoints> ByAcid
    {
        get
        {
            List<AcidPoints> found = [];
            foreach (FattyAcid acid in FattyAcid.All)
            {
                double share = _scores.Shares[acid.Index];
                if (share > 0)
                    found.Add(new(acid, share, share * _points[acid.Index], [.. ScoreMath.WeightsOf(Kind).Select(k => ScoreWeights.Of(acid, k)!)]));
            }
            return found.ToValueList();
        }
    }

    /// <summary>For people, for example <c>hardness 52, firm</c>; invariant.</summary>
    public override string ToString() => $"{Definition.Name} {Text.Fixed(Value, 0)}, {Band}";
}
