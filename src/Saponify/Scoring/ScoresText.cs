using System.Text;
using Saponify.Internals;

namespace Saponify;

/// <summary>Scores as text for people. Plain characters, invariant, no colours.</summary>
internal static class ScoresText
{
    /// <summary>The two lines over a column of each score, in the order of the scores.</summary>
    private static readonly (string First, string Second)[] s_heads =
    [
        ("", "hardness"), ("wear", "resistance"), ("lather", "volume"), ("lather", "stability"), ("", "cleansing"), ("", "conditioning"), ("oxidation", "risk"),
    ];

    internal static string Of(BarScores scores)
    {
        StringBuilder text = new();
        text.Append("superfat ").Append(Text.Number(scores.Superfat.DecimalFractions * 100)).Append(" % of all fat, potassium ")
            .Append(Text.Number(scores.Potassium.DecimalFractions * 100)).Append(" % of the hydroxide\n");
        if (!scores.IsScored)
        {
            text.Append("\nNot scored: ").Append(scores.WhyNotScored).Append('\n');
            foreach (UnscoredPart part in scores.Unscored)
                text.Append("  ").Append((Text.Number(part.Share.DecimalFractions * 100) + " %").PadLeft(8)).Append("  ").Append(part.What).Append(": ").Append(part.Why).Append('\n');
            Remarks(text, scores.Remarks);
            return text.ToString();
        }
        ScoreGroup? group = null;
        foreach (Score score in scores.All)
        {
            if (group != score.Definition.Group)
                text.Append('\n').Append(Title(score.Definition.Group)).Append('\n');
            group = score.Definition.Group;
            text.Append("  ").Append(score.Definition.Name.PadRight(16)).Append(Points(score.Value).PadLeft(5)).Append("  ").Append(score.Band.Words.PadRight(34))
                .Append("confidence ").Append(Word(score.Confidence)).Append('\n');
        }
        text.Append('\n');
        ByFat(text, scores);
        Remarks(text, scores.Remarks);
        return text.ToString();
    }

    /// <summary>What each fat brings to each score, in points.</summary>
    internal static void ByFat(StringBuilder text, BarScores scores)
    {
        string[] names = [.. scores.Pool.Fats.Select(f => f.What)];
        int width = Math.Max(24, names.Max(n => n.Length) + 2);
        Heads(text, "".PadRight(width), s_heads.Select(h => h.First));
        Heads(text, "Who brings it, in points".PadRight(width), s_heads.Select(h => h.Second));
        ValueList<FatPoints>[] columns = [.. scores.All.Select(s => s.ByFat)];
        for (int i = 0; i < names.Length; i++)
            Heads(text, ("  " + names[i]).PadRight(width), columns.Select(c => Points(c[i].Points)));
        Heads(text, "  together".PadRight(width), scores.All.Select(s => Points(s.Value)));
    }

    internal static void Remarks(StringBuilder text, ValueList<string> remarks)
    {
        foreach (string remark in remarks)
            text.Append("  - ").Append(remark).Append('\n');
    }

    internal static string Points(double value) => Text.Fixed(value, 0);

    internal static string Title(ScoreGroup group) => group switch
    {
        ScoreGroup.OnTheDish => "On the dish",
        ScoreGroup.InTheHand => "In the hand",
        ScoreGroup.OnTheSkin => "On the skin",
        _ => "On the shelf",
    };

    internal static string Word(ScoreConfidence confidence) => confidence switch
    {
        ScoreConfidence.Fair => "fair",
        ScoreConfidence.LowToFair => "low to fair",
        _ => "low",
    };

    private static void Heads(StringBuilder text, string first, IEnumerable<string> cells)
    {
        StringBuilder line = new(first);
        foreach (string cell in cells)
            line.Append(cell.PadLeft(13));
        text.Append(line.ToString().TrimEnd()).Append('\n');
    }
}
