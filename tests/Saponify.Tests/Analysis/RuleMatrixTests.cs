using System.Text;
using Saponify.Analysis;
using Saponify.Tests.Support;

namespace Saponify.Tests.Analysis;

/// <summary>All rules over the formulas of all rule pages: which rules speak is pinned, every fix and every suppression does what it owes, and nothing depends on order, culture or thread.</summary>
public class RuleMatrixTests
{
    public static TheoryData<string> Ids => [.. RulePage.All.Select(p => p.Id)];

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

    /// <summary>Each finding in words, as its page would print it, with the places that bear on it.</summary>
    [Fact]
    public void WordsOfFindings_AreTheApprovedOnes()
    {
        StringBuilder words = new();
        foreach (Diagnostic diagnostic in RulePage.All.SelectMany(p => p.Faulty.Diagnostics.Where(d => d.Id == p.Id)))
        {
            words.Append(diagnostic).Append('\n');
            foreach (FormulaPath related in diagnostic.Related)
                words.Append("    see ").Append(related).Append('\n');
        }
        Golden.Matches(words.ToString(), "rules", "words.txt");
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void CleanFormulas_HaveNoErrorAndNoWarning(string id) =>
        Assert.DoesNotContain(RulePage.Of(id).Clean.Diagnostics, d => d.Severity >= Severity.Warning);

    /// <summary>What each fix changes, member by member.</summary>
    [Fact]
    public void FixesOfPages_ChangeWhatIsApproved()
    {
        StringBuilder fixes = new();
        foreach (RulePage page in RulePage.All)
        {
            foreach (Fix fix in page.Faulty.Diagnostics.Where(d => d.Id == page.Id).SelectMany(d => d.Fixes))
            {
                fixes.Append(page.Id).Append(' ').Append(fix.Key).Append(": ").Append(fix.Title).Append('\n');
                foreach (Change change in fix.Changes)
                    fixes.Append("    ").Append(change).Append('\n');
            }
        }
        Golden.Matches(fixes.ToString(), "rules", "fixes.txt");
    }

    [Theory]
    [MemberData(nameof(Ids))]
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
    [MemberData(nameof(Ids))]
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

    [Fact]
    public void EightThreads_AnyOrderOfRules_AnyCulture_GiveTheSameReportsAndLogs()
    {
        FormulaFile[] inputs = [.. RulePage.All.Select(p => p.FaultyFile)];
        (string, byte[])[] expected = [.. inputs.Select(i => Written(RulePage.Analyzer, i))];
        Parallel.For(0, 8, new ParallelOptions { MaxDegreeOfParallelism = 8 }, thread =>
        {
            FormulaRule[] rules = [.. FormulaAnalyzer.BuiltInRules];
            new Random(thread).Shuffle(rules);
            FormulaAnalyzer shuffled = new FormulaAnalyzer(rules).With(AnalyzerConfig.Of(Preset.Learner));
            for (int n = 0; n < inputs.Length; n++)
            {
                int at = (n + (thread * 11)) % inputs.Length;
                (string text, byte[] log) = InCulture.Run(InCulture.Names[thread % InCulture.Names.Length], () => Written(shuffled, inputs[at]));
                Assert.Equal(expected[at].Item1, text);
                Assert.Equal(expected[at].Item2, log);
            }
        });
    }

    private static (string Text, byte[] Log) Written(FormulaAnalyzer analyzer, FormulaFile input)
    {
        AnalysisReport report = analyzer.Analyze(input);
        return (report.ToString(), SarifLog.Write(report, "formula.json"));
    }

    private static string Spoken(AnalysisReport report) =>
        string.Join(", ", report.Diagnostics.GroupBy(d => (d.Id, d.Severity)).OrderBy(g => g.Key.Id, StringComparer.Ordinal).Select(g => $"{g.Key.Severity.ToString().ToLowerInvariant()} {g.Key.Id}" + (g.Count() > 1 ? $" x{g.Count()}" : "")));
}
