using System.Text;
using Saponify.Internals;

namespace Saponify;

/// <summary>Scores as HTML: a picture of bars, the bands, what each fat brings.</summary>
internal static class ScoresHtml
{
    private const int Left = 120, Line = 22;

    internal static string Of(BarScores scores)
    {
        HtmlSheet sheet = new();
        sheet.Name("Scores of the bar");
        sheet.Line($"Superfat {Text.Number(scores.Superfat.DecimalFractions * 100)} % of all fat, potassium {Text.Number(scores.Potassium.DecimalFractions * 100)} % of the hydroxide.");
        if (!scores.IsScored)
        {
            sheet.Beware("Not scored: " + scores.WhyNotScored);
            foreach (UnscoredPart part in scores.Unscored)
                sheet.Row(Text.Number(part.Share.DecimalFractions * 100) + " %", $"{part.What}: {part.Why}");
            Remarks(sheet, scores);
            return sheet.ToString();
        }
        sheet.Picture(Picture(scores));
        sheet.Cells("th", "", "score", "of 100", "", "confidence");
        foreach (Score score in scores.All)
            sheet.Cells("td", ScoresText.Title(score.Definition.Group), score.Definition.Name, ScoresText.Points(score.Value), score.Band.Words, ScoresText.Word(score.Confidence));
        sheet.Title("Who brings it, in points");
        sheet.Cells("th", ["", .. scores.All.Select(s => s.Definition.Name)]);
        ValueList<FatPoints>[] columns = [.. scores.All.Select(s => s.ByFat)];
        for (int i = 0; i < columns[0].Count; i++)
            sheet.Cells("td", [columns[0][i].What, .. columns.Select(c => ScoresText.Points(c[i].Points))]);
        Remarks(sheet, scores);
        return sheet.ToString();
    }

    private static void Remarks(HtmlSheet sheet, BarScores scores)
    {
        foreach (string remark in scores.Remarks)
            sheet.Item(remark);
    }

    /// <summary>A bar for each score over its whole scale of 0 to 100; a bar has no colour of its own, since none is good or bad.</summary>
    private static string Picture(BarScores scores)
    {
        StringBuilder svg = new();
        string height = Text.Fixed(scores.All.Count * Line, 0);
        svg.Append("<svg role=\"img\" aria-label=\"Scores as bars\" viewBox=\"0 0 360 ").Append(height).Append("\" width=\"360\" height=\"").Append(height)
            .Append("\" fill=\"currentColor\" font-family=\"sans-serif\" font-size=\"12\">\n");
        for (int i = 0; i < scores.All.Count; i++)
        {
            Score score = scores.All[i];
            string top = Text.Fixed((i * Line) + 5, 0), length = Text.Fixed(score.Value * 2, 1);
            svg.Append("<text x=\"0\" y=\"").Append(Text.Fixed((i * Line) + 15, 0)).Append("\">").Append(HtmlSheet.Escape(score.Definition.Name)).Append("</text>")
                .Append("<rect x=\"").Append(Text.Fixed(Left, 0)).Append("\" y=\"").Append(top).Append("\" width=\"200\" height=\"12\" fill-opacity=\"0.12\"/>")
                .Append("<rect x=\"").Append(Text.Fixed(Left, 0)).Append("\" y=\"").Append(top).Append("\" width=\"").Append(length).Append("\" height=\"12\" fill-opacity=\"0.6\"/>")
                .Append("<text x=\"").Append(Text.Fixed(Left + 210, 0)).Append("\" y=\"").Append(Text.Fixed((i * Line) + 15, 0)).Append("\">").Append(ScoresText.Points(score.Value)).Append("</text>\n");
        }
        return svg.Append("</svg>").ToString();
    }
}
