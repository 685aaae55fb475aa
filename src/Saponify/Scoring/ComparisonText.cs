using System.Text;
using Saponify.Internals;

namespace Saponify;

/// <summary>Formulas side by side as text for people: figures in columns, scores as bars of plain characters. Invariant, no colours.</summary>
internal static class ComparisonText
{
    private const int NameWidth = 36;
    private const int BarWidth = 40;

    internal static string Of(BarComparison comparison)
    {
        StringBuilder text = new();
        for (int i = 0; i < comparison.Plans.Count; i++)
            text.Append(Letter(i)).Append("  ").Append(comparison.Plans[i].Formula.Name).Append('\n');
        Figures(text, comparison);
        foreach (IGrouping<ScoreGroup, ScoreDefinition> group in ScoreDefinition.All.GroupBy(d => d.Group))
        {
            text.Append('\n').Append(ScoresText.Title(group.Key)).Append('\n');
            foreach (ScoreDefinition definition in group)
                Bars(text, comparison, definition);
        }
        for (int i = 0; i < comparison.Plans.Count; i++)
        {
            BarScores scores = comparison.Scores[i];
            if (!scores.IsScored && scores.Remarks.Count == 0)
                continue;
            text.Append('\n').Append(Letter(i)).Append("  ").Append(comparison.Plans[i].Formula.Name).Append('\n');
            if (scores.IsScored)
                ScoresText.ByFat(text, scores);
            ScoresText.Remarks(text, scores.Remarks);
        }
        text.Append("\nLimits\n");
        ScoresText.Remarks(text, ScoreDefinition.Limits);
        return text.ToString();
    }

    private static void Figures(StringBuilder text, BarComparison comparison)
    {
        text.Append('\n').Append("Listed fats".PadRight(NameWidth));
        for (int i = 0; i < comparison.Plans.Count; i++)
            text.Append(Letter(i).PadLeft(9));
        text.Append('\n');
        Row(text, "saponification value, mg KOH/g", comparison.Blends, b => b?.Saponification?.Value.MilligramsKohPerGram);
        Row(text, "iodine value, g I2/100 g", comparison.Blends, b => b?.Iodine?.GramsPer100Grams);
        Row(text, "saturated acids, % of known acids", comparison.Blends, b => b?.Saturated?.DecimalFractions * 100);
        text.Append("Fresh bar\n");
        Row(text, "superfat of all fat, %", comparison.Plans, p => p.Balance.OfAllFat * 100);
        Row(text, "moisture, %", comparison.Compositions, c => c?.Moisture.DecimalFractions * 100);
        Row(text, "total fatty matter, %", comparison.Compositions, c => c?.TotalFattyMatter.DecimalFractions * 100);
        Row(text, "glycerol, %", comparison.Compositions, c => c?.ShareOf(PartKind.Glycerol).DecimalFractions * 100);
    }

    private static void Row<T>(StringBuilder text, string what, IReadOnlyList<T> of, Func<T, double?> figure)
    {
        text.Append(("  " + what).PadRight(NameWidth));
        foreach (T one in of)
            text.Append((figure(one) is { } value ? Text.Fixed(value, 1) : "-").PadLeft(9));
        text.Append('\n');
    }

    private static void Bars(StringBuilder text, BarComparison comparison, ScoreDefinition definition)
    {
        for (int i = 0; i < Math.Max(2, comparison.Plans.Count); i++)
        {
            string head = i == 0 ? "  " + definition.Name : i == 1 ? "    confidence " + ScoresText.Word(definition.Confidence) : "";
            if (i == comparison.Plans.Count)
            {
                text.Append(head).Append('\n');
                break;
            }
            text.Append(head.PadRight(30)).Append(Letter(i)).Append("  ");
            if (comparison.Scores[i][definition.Kind] is not { } score)
            {
                text.Append("not scored: ").Append(comparison.Scores[i].WhyNotScored).Append('\n');
                continue;
            }
            int length = (int)Math.Round(score.Value * BarWidth / 100, MidpointRounding.AwayFromZero);
            text.Append('#', length).Append('.', BarWidth - length).Append(ScoresText.Points(score.Value).PadLeft(5)).Append("  ").Append(score.Band.Words)
                .Append(score.Confidence < definition.Confidence ? " (here low in confidence)" : "").Append('\n');
        }
    }

    private static string Letter(int place) => ((char)('A' + place)).ToString();
}
