using System.Globalization;
using System.Text;
using Microsoft.DotNet.Interactive.Formatting;
using Saponify.Analysis;
using Saponify.Internals;

namespace Saponify;

/// <summary>
/// What an analysis found. There is no "valid": ask <see cref="HasAtLeast"/>. Findings are ordered by place, then rule, message and text.
/// Immutable, thread-safe.
/// </summary>
[TypeFormatterSource(typeof(NotebookFormatters), PreferredMimeTypes = [NotebookFormatters.Html])]
public sealed class AnalysisReport : IShownAsHtml
{
    private readonly FormulaAnalyzer _analyzer;
    private readonly BatchSetup _setup;
    private readonly RuleStatus[] _statuses;
    private readonly string?[]? _reasons;
    private RuleOutcome[]? _outcomes;

    /// <summary>Makes a report.</summary>
    /// <param name="analyzer">Who made it.</param>
    /// <param name="run">What was found.</param>
    /// <param name="statuses">What became of each rule of the analyzer.</param>
    /// <param name="reasons">Why those that did not run did not; null when all ran.</param>
    internal AnalysisReport(FormulaAnalyzer analyzer, AnalysisRun run, RuleStatus[] statuses, string?[]? reasons)
    {
        _analyzer = analyzer;
        _setup = run.Facts.Setup;
        (_statuses, _reasons) = (statuses, reasons);
        Formula = run.Facts.Formula;
        Plan = run.Facts.Plan;
        if (run.Found is not null)
            CheckFixes(run.Found);
        ValueList<Suppression> ofFormula = Formula.Suppressions, ofConfig = analyzer.Config.Suppressions;
        if (ofFormula.Count + ofConfig.Count > 0)
            (Diagnostics, Suppressed) = Sort(run, [.. ofFormula, .. ofConfig]);
        else if (run.Found is { } found)
            (Diagnostics, Suppressed) = (Ordered(found), []);
        else
            (Diagnostics, Suppressed) = ([], []);
    }

    /// <summary>The formula.</summary>
    public Formula Formula { get; }

    /// <summary>Its plan.</summary>
    public BatchPlan Plan { get; }

    /// <summary>Active findings, in order.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics { get; }

    /// <summary>Findings that were accepted with a reason, in order; they stay visible.</summary>
    public IReadOnlyList<Diagnostic> Suppressed { get; }

    /// <summary>What became of each rule, sorted by id: nothing is silent.</summary>
    public IReadOnlyList<RuleOutcome> Outcomes => _outcomes ??= [.. _statuses.Select((s, i) => new RuleOutcome(_analyzer.Rules[i].Descriptor, s, _reasons?[i]))];

    /// <summary>
    /// True when the batch can be weighed and no rule reports an error, active or accepted. For the default analyzer this means a superfat of all fat of at
    /// least 0, a usable saponification value for every fat, and water enough to dissolve the alkali at 20 degrees Celsius; that is tested over a million formulas.
    /// </summary>
    public bool IsSafeToWeigh => Plan.Balance.CanBeWeighed && !HasAtLeast(Severity.Error) && !Suppressed.Any(d => d.Severity >= Severity.Error);

    /// <summary>True when an active finding is at least so grave.</summary>
    /// <param name="severity">The severity.</param>
    public bool HasAtLeast(Severity severity)
    {
        for (int i = 0; i < Diagnostics.Count; i++)
        {
            if (Diagnostics[i].Severity >= severity)
                return true;
        }
        return false;
    }

    /// <summary>The formula with fixes applied, one after the other, until none is left.</summary>
    /// <param name="upTo">Which fixes: only those that keep the product, or those that change it too.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such effect.</exception>
    public Formula Mend(FixEffect upTo = FixEffect.KeepsProduct)
    {
        Guard.Known(upTo, "The effect of a fix");
        return _analyzer.ApplyFixes(Formula, d => d.Fixes.FirstOrDefault(f => f.Effect <= upTo), _setup, 100);
    }

    /// <summary>One line a finding, accepted ones with their reason; invariant.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        foreach (Diagnostic diagnostic in Diagnostics)
        {
            text.Append(diagnostic).Append('\n');
            foreach (Fix fix in diagnostic.Fixes)
                text.Append("    fix: ").Append(fix.Title).Append('\n');
        }
        foreach (Diagnostic diagnostic in Suppressed)
            text.Append("accepted: ").Append(diagnostic).Append(" (").Append(diagnostic.Suppression!.Reason).Append(")\n");
        return text.Length == 0 ? "nothing found\n" : text.ToString();
    }

    /// <summary>A table of the findings as a fragment of HTML, without script, every text escaped; notebooks show it by themselves.</summary>
    public string ToHtml() => ReportHtml.Of(this);

    /// <summary>Leaves only the fixes that work; trying them takes longer than all else, and few who analyze ask for them.</summary>
    private void CheckFixes(List<Diagnostic> found)
    {
        foreach (Diagnostic diagnostic in found)
        {
            if (diagnostic.Offered.Length > 0)
                diagnostic.Tried = new(() => [.. diagnostic.Offered.Where(f => _analyzer.Works(f, diagnostic, found, _setup))]);
        }
    }

    private (Diagnostic[] Active, Diagnostic[] Suppressed) Sort(AnalysisRun run, Suppression[] suppressions)
    {
        List<Diagnostic> found = [.. run.Found ?? []];
        List<Diagnostic> active = [], accepted = [];
        bool[] used = new bool[suppressions.Length];
        foreach (Diagnostic diagnostic in found)
        {
            int index = diagnostic.Rule.Category == RuleCategory.Engine ? -1 : Array.FindIndex(suppressions, s => Holds(s) && Matches(s, diagnostic.Rule) && s.Covers(diagnostic.Path));
            if (index < 0)
            {
                active.Add(diagnostic);
                continue;
            }
            used[index] = true;
            accepted.Add(new(diagnostic.Rule, diagnostic.Template, diagnostic.Severity, diagnostic.Path, diagnostic.Args)
            {
                Place = diagnostic.Place,
                Related = diagnostic.Related,
                Tried = diagnostic.Tried,
                RestsOnMemory = diagnostic.RestsOnMemory,
                Suppression = suppressions[index],
            });
        }
        for (int i = 0; i < suppressions.Length; i++)
        {
            if (Fault(suppressions[i], used[i]) is var (rule, args) && _analyzer.Config.SeverityOf(rule) is { } severity)
                active.Add(new(rule, rule.Messages[0], severity, i < Formula.Suppressions.Count ? FormulaPath.Root.Member("suppressions").Item(i, suppressions[i].RuleId) : FormulaPath.Root, args));
        }
        return (Ordered(active), Ordered(accepted));
    }

    /// <summary>What is wrong with a suppression, or null.</summary>
    private (RuleDescriptor Rule, ValueList<Arg> Args)? Fault(Suppression suppression, bool used)
    {
        Arg rule = Arg.Of("rule", suppression.RuleId), path = Arg.Of("path", suppression.Path);
        if (string.IsNullOrWhiteSpace(suppression.Reason))
            return (EngineRules.SuppressionWithoutReason, [rule, path]);
        if (IsExpired(suppression))
            return (EngineRules.SuppressionExpired, [rule, path, Arg.Of("until", Text.Day(suppression.Until!.Value))]);
        bool ran = Outcomes.Any(o => o.Status == RuleStatus.Ran && Matches(suppression, o.Rule)) || !Outcomes.Any(o => Matches(suppression, o.Rule));
        return !used && ran ? (EngineRules.SuppressionNotNeeded, [rule, path]) : null;
    }

    private bool Holds(Suppression suppression) => !string.IsNullOrWhiteSpace(suppression.Reason) && !IsExpired(suppression);

    private bool IsExpired(Suppression suppression) => suppression.Until < _setup.Today;

    private static bool Matches(Suppression suppression, RuleDescriptor rule) =>
        string.Equals(suppression.RuleId, rule.Id, StringComparison.OrdinalIgnoreCase) || rule.FormerIds.Any(f => string.Equals(suppression.RuleId, f, StringComparison.OrdinalIgnoreCase));

    private static Diagnostic[] Ordered(List<Diagnostic> found) =>
    [
        .. found.OrderBy(d => d.Path).ThenBy(d => d.Id, StringComparer.Ordinal).ThenBy(d => d.Template.Name, StringComparer.Ordinal).ThenBy(d => d.ToMessage(CultureInfo.InvariantCulture), StringComparer.Ordinal),
    ];
}
