using System.Text;
using Saponify.Analysis;

namespace Saponify.Tests.Support;

/// <summary>The page of a rule under docs/rules, with its faulty and its clean formula, circumstances included, as files.</summary>
public sealed class RulePage
{
    private const string FaultyTitle = "\n## A faulty formula\n", CleanTitle = "\n## A clean formula\n", SaidTitle = "\nThe rule says:\n\n```text\n";

    private RulePage(string id)
    {
        Id = id;
        Path = Repository.Path("docs", "rules", id + ".md");
        Text = File.Exists(Path) ? File.ReadAllText(Path).ReplaceLineEndings("\n") : "";
    }

    /// <summary>The ids that have a page, in order; read off the files, so that tests can be listed even when the rules can't be made.</summary>
    public static TheoryData<string> IdsWithTheEngines { get; } = [.. Directory.GetFiles(Repository.Path("docs", "rules"), "SFY*.md").Select(f => System.IO.Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    /// <summary>The same without those of the engine.</summary>
    public static TheoryData<string> Ids { get; } = [.. IdsWithTheEngines.Select(r => r.Data).Where(id => !id.StartsWith("SFY0", StringComparison.Ordinal))];

    /// <summary>The pages of all rules but those of the engine, by id.</summary>
    public static IReadOnlyList<RulePage> All { get; } = [.. Ids.Select(r => new RulePage(r.Data))];

    /// <summary>Default rules, and those that are off by default as advice.</summary>
    public static FormulaAnalyzer Analyzer => field ??= FormulaAnalyzer.Default.With(AnalyzerConfig.Of(Preset.Learner));

    public string Id { get; }

    public string Path { get; }

    /// <summary>All of it; empty when there is no page.</summary>
    public string Text { get; private set; }

    public AnalysisReport Faulty => Report(FaultySection);

    public AnalysisReport Clean => Report(Text[At(CleanTitle)..]);

    public FormulaFile FaultyFile => Read(FaultySection);

    /// <summary>What its rule says of the faulty formula: findings, fixes and what these change.</summary>
    public string Said
    {
        get
        {
            StringBuilder text = new();
            foreach (Diagnostic finding in Faulty.Diagnostics.Where(d => d.Id == Id))
            {
                text.Append(finding).Append('\n');
                foreach (FormulaPath path in finding.Related)
                    text.Append("    see also: ").Append(path).Append('\n');
                foreach (Fix fix in finding.Fixes)
                {
                    text.Append("    fix ").Append(fix.Key).Append(": ").Append(fix.Title).Append(fix.Effect == FixEffect.KeepsProduct ? "" : " (changes the product)").Append('\n');
                    foreach (Change change in fix.Changes)
                        text.Append("        ").Append(change).Append('\n');
                }
            }
            return text.ToString();
        }
    }

    /// <summary>The same as the page shows it; empty when it does not.</summary>
    public string ShownSaid => FaultySection.IndexOf(SaidTitle, StringComparison.Ordinal) is > 0 and int at ? FaultySection[(at + SaidTitle.Length)..].Split("```")[0] : "";

    /// <summary>Writes the page anew with another head.</summary>
    public void ApproveHead(string head, int end) => Approve(head + Text[end..]);

    /// <summary>Writes the page anew with what its rule says at the end of the faulty formula.</summary>
    public void ApproveSaid(string said) => Approve(Text[..At(FaultyTitle)] + FaultySection.Split(SaidTitle)[0] + SaidTitle + said + "```\n" + Text[At(CleanTitle)..]);

    public IEnumerable<FormulaFile> Files => [FaultyFile, Read(Text[At(CleanTitle)..])];

    private string FaultySection => Text[At(FaultyTitle)..At(CleanTitle)];

    public static RulePage Of(string id) => All.SingleOrDefault(p => p.Id == id) ?? new(id);

    private static AnalysisReport Report(string section) => Analyzer.Analyze(Read(section));

    private void Approve(string text) => File.WriteAllText(Path, Text = text);

    private static FormulaFile Read(string section)
    {
        FormulaFile file = FormulaFile.Read(Markdown.Blocks(section).Single(b => b.Language == "json").Text, Pantry.Reference);
        Assert.True(file.Formula is not null, string.Join("\n", file.Problems));
        return file;
    }

    private int At(string title)
    {
        int at = Text.IndexOf(title, StringComparison.Ordinal);
        Assert.True(at > 0, $"docs/rules/{Id}.md lacks \"{title.Trim()}\"");
        return at;
    }
}
