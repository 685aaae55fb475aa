using Saponify.Internals;

namespace Saponify;

/// <summary>The margin as HTML: a picture, the figures, what contributes most.</summary>
internal static class MarginHtml
{
    private const double Width = 520, Left = 10, Axis = 46;

    internal static string Of(Margin margin)
    {
        HtmlSheet sheet = new();
        sheet.Name("Superfat of all fat");
        sheet.Picture(Picture(margin));
        sheet.Row(MarginText.Percent(margin.NominalFraction), "nominal: the plan, which reckons for less lye");
        sheet.Row(MarginText.Percent(margin.BestEstimateFraction), "best estimate: the middle of every range");
        sheet.Row($"{MarginText.Percent(margin.LowFraction)} to {MarginText.Percent(margin.HighFraction)}", $"with {Text.Number(margin.CoverageFraction * 100)} % probability");
        sheet.Row(MarginText.Percent(margin.WorstFraction), "at worst");
        sheet.Row(MarginText.Percent(margin.BestFraction), "at best");
        sheet.Row(MarginText.Probability(margin.LyeHeavyProbability), "probability of a lye-heavy bar");
        sheet.Title("Where the doubt comes from");
        sheet.Cells("th", "share of the variance", "alone", "what");
        foreach (MarginCause cause in margin.Causes)
        {
            if (cause.ShareOfVariance.DecimalFractions >= MarginText.LeastShown)
                sheet.Cells("td", Text.Fixed(cause.ShareOfVariance.Percent, 0) + " %", "±" + Text.Fixed(cause.HalfWidth.Percent, 2) + " points", cause.What);
        }
        if (margin.Causes.Count == 0)
            sheet.Line("Nothing in it is stated to be in doubt.");
        foreach (string missing in margin.NoData)
            sheet.Line($"No data: {missing}; its table states no range.");
        return sheet.ToString();
    }

    /// <summary>From worst to best a thin line, the interval a bar, the best estimate a disc, the nominal superfat a tick, and a dashed line where lye-heavy begins.</summary>
    private static string Picture(Margin margin)
    {
        double low = Math.Min(margin.WorstFraction, 0), high = Math.Max(margin.BestFraction, 0), span = Math.Max(high - low, 1e-9);
        double At(double fraction) => Left + ((fraction - low) / span * Width);
        string label = HtmlSheet.Escape($"Superfat from {MarginText.Percent(margin.WorstFraction)} at worst to {MarginText.Percent(margin.BestFraction)} at best");
        return "<svg role=\"img\" aria-label=\"" + label + "\" viewBox=\"0 0 540 90\" width=\"540\" height=\"90\" fill=\"currentColor\" stroke=\"currentColor\" font-family=\"sans-serif\" font-size=\"11\">\n"
            + Line(At(margin.WorstFraction), At(margin.BestFraction), Axis, Axis, "stroke-width=\"1\"")
            + Line(At(margin.LowFraction), At(margin.HighFraction), Axis, Axis, "stroke-width=\"8\" stroke-opacity=\"0.35\"")
            + Line(At(0), At(0), Axis - 24, Axis + 24, "stroke-dasharray=\"3 3\"")
            + Line(At(margin.NominalFraction), At(margin.NominalFraction), Axis - 10, Axis + 10, "stroke-width=\"2\"")
            + $"<circle cx=\"{Number(At(margin.BestEstimateFraction))}\" cy=\"{Number(Axis)}\" r=\"4\"/>\n"
            + Word(At(margin.NominalFraction), Axis - 16, "nominal")
            + Word(At(margin.BestEstimateFraction), Axis + 22, "best estimate")
            + Word(At(0), Axis + 38, margin.WorstFraction < 0 ? "0 %: lye-heavy to the left" : "0 %")
            + "</svg>";
    }

    private static string Line(double x1, double x2, double y1, double y2, string look) =>
        $"<line x1=\"{Number(x1)}\" x2=\"{Number(x2)}\" y1=\"{Number(y1)}\" y2=\"{Number(y2)}\" {look}/>\n";

    /// <summary>A word over or under its place, not beyond the picture.</summary>
    private static string Word(double x, double y, string word) =>
        $"<text x=\"{Number(x)}\" y=\"{Number(y)}\" stroke=\"none\" text-anchor=\"{(x < Width / 5 ? "start" : x > Width * 4 / 5 ? "end" : "middle")}\">{word}</text>\n";

    private static string Number(double value) => Text.Fixed(value, 1);
}
