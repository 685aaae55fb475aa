using System.Text;
using Saponify.Analysis;
using Saponify.Tests.Support;

namespace Saponify.Tests.Analysis;

/// <summary>All rules over the formulas of all rule pages: which rules speak is pinned, and every fix and every suppression does what it owes.</summary>
public class RuleMatrixTests
{
    /// <summary>One fault, one finding: whatever else speaks over a faulty formula stands in the approved file and has been looked at.</summary>
    [Fact]
    public void RulesThatSpeak_AreTheApprovedOnes()
    {
        StringBuilder matrix = new();
        foreach (RulePage page in RulePage.All)
        {
            matrix.Append(page.Id).Append(" faulty: ").Append(Spoken(page.Faulty)).Append('\n');
            if (Spoken(page.Clean) is { Length: > 0 } clean)
                matrix.Append(page.Id).Append(" clean: ").Append(clean).Append('\n');
        }
        Golden.Matches(matrix.ToString(), "rules", "matrix.txt");
    }

    [Theory]
    [MemberData(nameof(RulePage.Ids), MemberType = typeof(RulePage))]
    public void CleanFormulas_HaveNoErrorAndNoWarning(string id) =>
        Assert.DoesNotContain(RulePage.Of(id).Clean.Diagnostics, d => d.Severity >= Severity.Warning);

    [Theory]
    [MemberData(nameof(RulePage.Ids), MemberType = typeof(RulePage))]
    public void AFixOfAPage_RemovesItsFinding_AddsNoErrorAndNoWarning_AndIsNotOfferedAgain(string id)
    {
        BatchSetup setup = RulePage.Of(id).FaultyFile.Setup;
        AnalysisReport before = RulePage.Of(id).Faulty;
        foreach (Diagnostic diagnostic in before.Diagnostics.Where(d => d.Id == id))
        {
            foreach (Fix fix in diagnostic.Fixes)
            {
                AnalysisReport after = RulePage.Analyzer.Analyze(fix.Apply(), setup);
                Assert.DoesNotContain(after.Diagnostics, d => d.Fingerprint == diagnostic.Fingerprint);
                Assert.DoesNotContain(after.Diagnostics, d => d.Severity >= Severity.Warning && before.Diagnostics.All(b => b.Id != d.Id));
            }
        }
    }

    /// <summary>Lye safety too may be accepted with a reason; the finding then stays in the report, and the formula is not called safe.</summary>
    [Theory]
    [MemberData(nameof(RulePage.Ids), MemberType = typeof(RulePage))]
    public void ASuppressionWithAReason_MovesTheFinding_AndMakesNothingSafe(string id)
    {
        FormulaFile file = RulePage.Of(id).FaultyFile;
        AnalysisReport before = RulePage.Analyzer.Analyze(file.Formula!, file.Setup);
        Suppression[] suppressions = [.. before.Diagnostics.Where(d => d.Id == id).Select(d => d.Path.ToString()).Distinct().Select(p => new Suppression(id, p, "looked at"))];
        AnalysisReport after = RulePage.Analyzer.Analyze(file.Formula! with { Suppressions = [.. suppressions] }, file.Setup);
        Assert.DoesNotContain(after.Diagnostics, d => d.Id == id);
        Assert.Equal(before.Diagnostics.Where(d => d.Id == id).Select(d => d.ToMessage()), after.Suppressed.Select(d => d.ToMessage()));
        Assert.Equal(before.IsSafeToWeigh, after.IsSafeToWeigh);
        Assert.Equal(before.Diagnostics.Where(d => d.Id != id).Select(d => d.ToString()), after.Diagnostics.Select(d => d.ToString()));
    }

    private static string Spoken(AnalysisReport report) =>
        string.Join(", ", report.Diagnostics.GroupBy(d => (d.Id, d.Severity)).OrderBy(g => g.Key.Id, StringComparer.Ordinal).Select(g => $"{g.Key.Severity.ToString().ToLowerInvariant()} {g.Key.Id}" + (g.Count() > 1 ? $" x{g.Count()}" : "")));
}
