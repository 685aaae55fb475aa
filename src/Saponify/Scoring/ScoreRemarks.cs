using Saponify.Internals;

namespace Saponify;

/// <summary>What to know before reading the scores of one bar.</summary>
internal static class ScoreRemarks
{
    /// <summary>A part of less than this share is not worth a line.</summary>
    private const double MostUnsaid = 0.01;

    internal static ValueList<string> Of(BarScores scores, double analogous, bool isPotash)
    {
        List<string> remarks = [];
        if (scores.IsLyeHeavy)
            remarks.Add("LYE-HEAVY: more alkali than all fat can take up, and no score counts it. Do not make this.");
        if (!scores.IsScored)
            return remarks.ToValueList();
        if (analogous > 0)
            remarks.Add($"{Percent(analogous)} % of the acids are hydroxy acids or C20 and longer, whose weights are set by analogy: low confidence.");
        if (isPotash)
            remarks.Add($"{Percent(scores.Potassium.DecimalFractions)} % of the hydroxide is potassium; the scores describe soda soap: low confidence.");
        foreach (UnscoredPart part in scores.Unscored)
        {
            if (part.Share.DecimalFractions >= MostUnsaid)
                remarks.Add($"{part.What}, {Percent(part.Share.DecimalFractions)} % of the acids, is not counted: {part.Why}.");
        }
        Named(scores, remarks, f => f.Figures.ProfileEvidence == Evidence.Memory, "From memory, check it, in whole or in part: the profile of ");
        Named(scores, remarks, f => f.Profile!.IsWide, "Published ranges so wide that the middle is a poor picture of any one lot: the profile of ");
        return remarks.ToValueList();
    }

    private static string Percent(double share) => Text.Fixed(share * 100, 1);

    private static void Named(BarScores scores, List<string> remarks, Func<Fat, bool> which, string text)
    {
        string[] names = [.. scores.Pool.Fats.Where(f => f.IsCounted && which(f.Fat!)).Select(f => f.Fat!.Name).Distinct(StringComparer.Ordinal)];
        if (names.Length > 0)
            remarks.Add(text + string.Join(", ", names) + ".");
    }
}
