using Saponify.Analysis;

namespace Saponify.Tests.Support;

/// <summary>The page of a rule under docs/rules, with its faulty and its clean formula, circumstances included, as files.</summary>
public sealed class RulePage
{
    private const string FaultyTitle = "\n## A faulty formula\n", CleanTitle = "\n## A clean formula\n";

    private RulePage(string id)
    {
        Id = id;
        Path = Repository.Path("docs", "rules", id + ".md");
        Text = File.Exists(Path) ? File.ReadAllText(Path).ReplaceLineEndings("\n") : "";
    }

    /// <summary>The pages of all rules but those of the engine, by id.</summary>
    public static IReadOnlyList<RulePage> All { get; } = [.. FormulaAnalyzer.BuiltInRules.Select(r => new RulePage(r.Descriptor.Id)).OrderBy(p => p.Id, StringComparer.Ordinal)];

    /// <summary>Default rules, and those that are off by default as advice.</summary>
    public static FormulaAnalyzer Analyzer { get; } = FormulaAnalyzer.Default.With(AnalyzerConfig.Of(Preset.Learner));

    public string Id { get; }

    public string Path { get; }

    /// <summary>All of it; empty when there is no page.</summary>
    public string Text { get; }

    public AnalysisReport Faulty => Report(FaultySection);

    public AnalysisReport Clean => Report(Text[At(CleanTitle)..]);

    public FormulaFile FaultyFile => Read(FaultySection);

    private string FaultySection => Text[At(FaultyTitle)..At(CleanTitle)];

    public static RulePage Of(string id) => All.SingleOrDefault(p => p.Id == id) ?? new(id);

    private static AnalysisReport Report(string section) => Analyzer.Analyze(Read(section));

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
