using System.Text;
using Saponify.Analysis;
using Saponify.Tests.Formulas;
using Saponify.Tests.Support;

namespace Saponify.Tests.Analysis;

/// <summary>
/// Every rule has a page: its head is generated, its sections are there, its faulty formula makes the rule speak and its clean one leaves it silent. So has
/// the index, and the ledgers name every rule. SAPONIFY_APPROVE=1 writes heads and index anew.
/// </summary>
public class RulePageTests
{
    private const string HeadStart = "<!-- head: generated, do not edit -->", HeadEnd = "<!-- end of head -->";

    private static readonly string[] s_sections = ["## Cause", "## Why it matters", "## How to fix it", "## When to accept it", "## A faulty formula", "## A clean formula"];

    /// <summary>The formulas of all pages, and some that few rules apply to.</summary>
    private static readonly FormulaFacts[] s_situations = [.. RulePage.All.SelectMany(p => p.Files).Select(f => new FormulaFacts(f.Formula!, f.Setup)), .. OddFormulas().SelectMany(f => OddSetups().Select(s => new FormulaFacts(f, s)))];

    private static readonly RuleDescriptor[] s_engine = [EngineRules.RuleFailed, EngineRules.SuppressionWithoutReason, EngineRules.SuppressionNotNeeded, EngineRules.SuppressionExpired];

    private static bool Approve => Environment.GetEnvironmentVariable("SAPONIFY_APPROVE") == "1";

    [Fact]
    public void EveryRule_HasAPage() =>
        Assert.Equal(s_engine.Concat(FormulaAnalyzer.BuiltInRules.Select(r => r.Descriptor)).Select(d => d.Id).Order(StringComparer.Ordinal), RulePage.IdsWithTheEngines.Select(r => r.Data));

    [Theory]
    [MemberData(nameof(RulePage.IdsWithTheEngines), MemberType = typeof(RulePage))]
    public void Page_HasTheGeneratedHead_AndMentionsEveryOption(string id)
    {
        // made anew: a run of mutants would else see the rules as they were made under the first one
        RuleDescriptor rule = s_engine.SingleOrDefault(d => d.Id == id) ?? ((FormulaRule)Activator.CreateInstance(FormulaAnalyzer.BuiltInRules.Single(r => r.Descriptor.Id == id).GetType())!).Descriptor;
        string page = RulePage.Of(id).Text;
        Assert.True(page.Length > 0, $"docs/rules/{id}.md is missing");
        int start = page.IndexOf(HeadStart, StringComparison.Ordinal), end = page.IndexOf(HeadEnd, StringComparison.Ordinal);
        Assert.True(start == 0 && end > 0, $"docs/rules/{id}.md does not begin with its head");
        string head = Head(rule);
        if (Approve)
            RulePage.Of(id).ApproveHead(head, end + HeadEnd.Length);
        else
            Assert.Equal(head, page[..(end + HeadEnd.Length)]);
        string text = page[end..];
        Assert.All(rule.Options, o => Assert.Contains($"`{o.Key}`", text, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(RulePage.Ids), MemberType = typeof(RulePage))]
    public void Page_ShowsAFormulaThatTheRuleFinds_AndOneThatItDoesNot(string id)
    {
        RulePage page = RulePage.Of(id);
        int at = 0;
        foreach (string section in s_sections)
        {
            int next = page.Text.IndexOf("\n" + section + "\n", at, StringComparison.Ordinal);
            Assert.True(next > 0, $"docs/rules/{id}.md lacks \"{section}\", or has it in another place");
            at = next;
        }
        AnalysisReport found = page.Faulty, silent = page.Clean;
        Assert.Contains(found.Diagnostics, d => d.Id == id);
        Assert.DoesNotContain(silent.Diagnostics, d => d.Id == id);
        Assert.Equal(RuleStatus.Ran, silent.Outcomes.Single(o => o.Rule.Id == id).Status);
    }

    /// <summary>Every word of a finding and its fixes, with its place, its numbers and what a fix changes, as readers of the page see it.</summary>
    [Theory]
    [MemberData(nameof(RulePage.Ids), MemberType = typeof(RulePage))]
    public void Page_ShowsWhatTheRuleSaysOfTheFaultyFormula(string id)
    {
        RulePage page = RulePage.Of(id);
        string said = page.Said;
        if (Approve)
            page.ApproveSaid(said);
        else
            Assert.Equal(page.ShownSaid, said);
    }

    [Fact]
    public void Index_ListsEveryRule_AndCountsThemByCategory()
    {
        StringBuilder counts = new("| category | rules | with a fix | with a published source |\n|---|---|---|---|\n"), lists = new();
        (int Rules, int Fixes, int Sourced) all = default;
        foreach (var category in s_engine.Concat(FormulaAnalyzer.BuiltInRules.Select(r => r.Descriptor)).GroupBy(d => d.Category).OrderBy(g => g.Key))
        {
            lists.Append("\n## ").Append(CategoryName(category.Key)).Append("\n\n| id | severity | what | fix |\n|---|---|---|---|\n");
            foreach (RuleDescriptor rule in category.OrderBy(d => d.Id, StringComparer.Ordinal))
                lists.Append("| [").Append(rule.Id).Append("](").Append(rule.Id).Append(".md) | ").Append(SeverityText(rule)).Append(" | ").Append(rule.Title).Append(" | ").Append(HasFix(rule) ? "yes" : "").Append(" |\n");
            if (category.Key == RuleCategory.Engine)
                continue;
            (int rules, int fixes, int sourced) = (category.Count(), category.Count(HasFix), category.Count(r => r.Sources.Any(IsPublished)));
            counts.Append(FormattableString.Invariant($"| {CategoryName(category.Key)} | {rules} | {fixes} | {sourced} |\n"));
            all = (all.Rules + rules, all.Fixes + fixes, all.Sourced + sourced);
        }
        counts.Append(FormattableString.Invariant($"| all | {all.Rules} | {all.Fixes} | {all.Sourced} |\n"));
        string index = "# Rules\n\nGenerated from the rules; each page says cause, harm, source, fix, and shows a faulty and a clean formula. A fix is counted when the faulty formula of\n"
            + "the page gets one; a source is published when it is neither memory nor common practice. What the engine itself says is not counted.\n\n" + counts + lists;
        Golden.MatchesFile(index, "docs", "rules", "README.md");
    }

    [Fact]
    public void Ledgers_NameEveryRuleOnce_WithItsSeverity()
    {
        string[] lines = [.. ((string[])["RuleReleases.Shipped.md", "RuleReleases.Unshipped.md"]).SelectMany(f => File.ReadAllLines(Repository.Path("docs", "rules", f))).Where(l => l.StartsWith("SFY", StringComparison.Ordinal))];
        string[] expected = [.. s_engine.Concat(FormulaAnalyzer.BuiltInRules.Select(r => r.Descriptor)).OrderBy(d => d.Id, StringComparer.Ordinal).Select(d => $"{d.Id} | {d.Name} | {d.DefaultSeverity}")];
        if (Approve)
            File.WriteAllText(Repository.Path("docs", "rules", "RuleReleases.Unshipped.md"), "# Rules not released yet\n\nid | name | default severity\n---|---|---\n" + string.Join("\n", expected) + "\n");
        else
            Assert.Equal(expected, lines.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Ids_AreInTheirCategory_AndTheNextFreeOnesAreWrittenDown()
    {
        string[] ids = [.. FormulaAnalyzer.BuiltInRules.Select(r => r.Descriptor.Id)];
        Assert.All(ids, id => Assert.Matches("^SFY[1-8][0-9]{3}$", id));
        foreach (string line in File.ReadAllLines(Repository.Path("docs", "rules", "ids.txt")).Where(l => l.StartsWith("SFY", StringComparison.Ordinal)))
        {
            string next = line.Split(' ')[0];
            Assert.DoesNotContain(next, ids);
            Assert.All(ids.Where(i => i[..4] == next[..4] && i[4] == next[4]), id => Assert.True(string.CompareOrdinal(id, next) < 0, $"{id} is at or above the next free id {next}"));
        }
    }

    [Fact]
    public void SourcesOfRules_AreInTheTableOfSources() =>
        Assert.All(FormulaAnalyzer.BuiltInRules.SelectMany(r => r.Descriptor.Sources).Distinct(), key => Assert.Equal(key, Pantry.Reference.Source(key).Key));

    private static bool HasFix(RuleDescriptor rule) => rule.Category != RuleCategory.Engine && (Approve ? RulePage.Of(rule.Id).Said : RulePage.Of(rule.Id).ShownSaid).Contains("\n    fix ", StringComparison.Ordinal);

    private static string Head(RuleDescriptor rule)
    {
        StringBuilder head = new(HeadStart + "\n");
        head.Append("# ").Append(rule.Id).Append(' ').Append(rule.Name).Append("\n\n").Append(rule.Title).Append(". ").Append(rule.Harm).Append("\n\n| | |\n|---|---|\n");
        head.Append("| category | ").Append(CategoryName(rule.Category)).Append(" |\n| severity | ").Append(SeverityText(rule)).Append(" |\n");
        foreach (MessageTemplate message in rule.Messages)
            head.Append("| message `").Append(message.Name).Append("` | ").Append(message.Format.Replace("|", "\\|", StringComparison.Ordinal)).Append(" |\n");
        foreach (RuleOption option in rule.Options)
            head.Append("| option `").Append(option.Key).Append("` | ").Append(option.Help).Append(FormattableString.Invariant($" Default {option.Default} {option.Unit}, from {option.Least} to {option.Most}.")).Append(" |\n");
        if (Reasons(rule) is { Length: > 0 } reasons)
            head.Append("| does not apply when | ").AppendJoin("; ", reasons).Append(" |\n");
        head.Append("| sources | ").Append(rule.Sources.Count == 0 ? "common practice or arithmetic, no source" : string.Join(", ", rule.Sources.Select(s => $"`{s}`"))).Append(" |\n| since | 0.1 |\n");
        return head.Append('\n').Append(HeadEnd).ToString();
    }

    /// <summary>Why a rule has nothing to say about one formula or the other; without the figures of that one, which follow a colon.</summary>
    private static string[] Reasons(RuleDescriptor rule) =>
        FormulaAnalyzer.BuiltInRules.SingleOrDefault(r => r.Descriptor.Id == rule.Id) is { } speaker ? [.. s_situations.Select(speaker.WhyNotApplicable).OfType<string>().Select(r => r.Split(": ")[0]).Distinct().Order(StringComparer.Ordinal)] : [];

    private static IEnumerable<Formula> OddFormulas()
    {
        Formula plain = FormulaTests.Plain(Pantry.Reference.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        yield return plain;
        yield return plain with { Fats = [] };
        yield return plain with { Fats = [new Fat("unknown", "Unknown oil", FatClass.Triglyceride, new()).Weighing(Mass.FromGrams(500))] };
        yield return plain with { Alkali = AlkaliPlan.Weighed(Alkali.SodiumHydroxide(Ratio.FromPercent(98)).Weighing(Mass.Zero)) };
        yield return plain with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.SodiumHydroxideSolution(Ratio.FromPercent(50))) };
        yield return plain with { Liquids = LiquidPlan.TotalWater(Mass.Zero) };
    }

    private static IEnumerable<BatchSetup> OddSetups()
    {
        yield return BatchSetup.Unknown;
        yield return new() { Form = ProductForm.Soft, Scale = new(Mass.FromGrams(1)), WantedBars = 10, DeclaredMass = Mass.FromGrams(100) };
        yield return new() { Form = ProductForm.Bar, Process = new() };
    }

    private static bool IsPublished(string key) => Pantry.Reference.Source(key).Evidence != Evidence.Memory && key is not ("common-practice" or "computed");

    private static string SeverityText(RuleDescriptor rule) =>
        rule.DefaultSeverity.ToString().ToLowerInvariant() + (rule.Floor > Severity.Hidden ? $", never below {rule.Floor.ToString().ToLowerInvariant()}" : "") + (rule.IsOnByDefault ? "" : ", off by default");

    private static string CategoryName(RuleCategory category) => category switch
    {
        RuleCategory.Engine => "Engine",
        RuleCategory.Structure => "Structure and units",
        RuleCategory.Lye => "Lye safety",
        RuleCategory.Liquids => "Liquids and heat",
        RuleCategory.Fats => "Fats and the bar",
        RuleCategory.Additives => "Additives and scent",
        RuleCategory.Batch => "Order, batch, mould and cure",
        RuleCategory.Label => "Label and records",
        _ => "Data",
    };
}
