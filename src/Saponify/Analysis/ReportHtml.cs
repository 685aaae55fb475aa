using System.Globalization;
using Saponify.Internals;

namespace Saponify.Analysis;

/// <summary>A report as HTML: a table of the findings, then those that were accepted with their reasons.</summary>
internal static class ReportHtml
{
    internal static string Of(AnalysisReport report)
    {
        HtmlSheet sheet = new();
        sheet.Name(report.Formula.Name);
        if (report.IsSafeToWeigh)
            sheet.Line("Safe to weigh: no rule reports an error.");
        else
            sheet.Beware("Not safe to weigh.");
        if (report.Diagnostics.Count > 0)
            sheet.Cells("th", "", "rule", "where", "what", "fixes");
        foreach (Diagnostic diagnostic in report.Diagnostics)
            sheet.Cells("td", Diagnostic.Word(diagnostic.Severity), diagnostic.Id, Where(diagnostic), diagnostic.ToMessage(CultureInfo.InvariantCulture), string.Join('\n', diagnostic.Fixes.Select(f => f.Title)));
        if (report.Diagnostics.Count == 0)
            sheet.Line("Nothing found.");
        if (report.Suppressed.Count > 0)
        {
            sheet.Title("Accepted");
            sheet.Cells("th", "", "rule", "where", "what", "reason");
        }
        foreach (Diagnostic diagnostic in report.Suppressed)
            sheet.Cells("td", Diagnostic.Word(diagnostic.Severity), diagnostic.Id, Where(diagnostic), diagnostic.ToMessage(CultureInfo.InvariantCulture), diagnostic.Suppression!.Reason);
        return sheet.ToString();
    }

    private static string Where(Diagnostic diagnostic) =>
        diagnostic.Path.ToString() + (diagnostic.Place is { } place ? FormattableString.Invariant($"\nline {place.Line}, column {place.Column}") : "");
}
