using Saponify.Analysis;

namespace Saponify.Tests.Support;

/// <summary>The page of a rule under docs/rules, with its faulty and its clean formula.</summary>
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

    public (FormulaFile File, BatchSetup? Setup) FaultyInput => Input(FaultySection);

    private string FaultySection => Text[At(FaultyTitle)..At(CleanTitle)];

    public static RulePage Of(string id) => All.SingleOrDefault(p => p.Id == id) ?? new(id);

    private static AnalysisReport Report(string section)
    {
        (FormulaFile file, BatchSetup? setup) = Input(section);
        return Analyzer.Analyze(file, setup);
    }

    private static (FormulaFile File, BatchSetup? Setup) Input(string section)
    {
        (string Language, string Text, int Line)[] blocks = [.. Markdown.Blocks(section)];
        FormulaFile file = FormulaFile.Read(blocks.Single(b => b.Language == "json").Text, Pantry.Reference);
        Assert.True(file.Formula is not null, string.Join("\n", file.Problems));
        string? circumstances = blocks.SingleOrDefault(b => b.Language == "json circumstances").Text;
        return (file, circumstances is null ? null : Circumstances.Read(circumstances));
    }

    private int At(string title)
    {
        int at = Text.IndexOf(title, StringComparison.Ordinal);
        Assert.True(at > 0, $"docs/rules/{Id}.md lacks \"{title.Trim()}\"");
        return at;
    }
}
