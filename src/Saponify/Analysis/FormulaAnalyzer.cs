using Saponify.Analysis;
using Saponify.Internals;

namespace Saponify;

/// <summary>
/// Checks a formula like a compiler checks a program: rules with ids, severities, places, sourced reasons and fixes. Deterministic, whatever the order of
/// registration, the culture or the number of threads. Immutable, thread-safe: share one.
/// </summary>
public sealed class FormulaAnalyzer
{
    private readonly FormulaRule[] _rules;

    /// <summary>An analyzer with rules of your choosing.</summary>
    /// <param name="rules">The rules; <see cref="BuiltInRules"/> are those of the library.</param>
    /// <param name="config">How they are set; every rule at its own severity when left out.</param>
    /// <exception cref="ArgumentNullException">A null argument or rule.</exception>
    /// <exception cref="ArgumentException">Two rules with one id, or a foreign rule with the library's prefix SFY.</exception>
    public FormulaAnalyzer(IEnumerable<FormulaRule> rules, AnalyzerConfig? config = null)
    {
        ArgumentNullException.ThrowIfNull(rules);
        _rules = [.. rules.Select((r, i) => r ?? throw new ArgumentNullException(nameof(rules), FormattableString.Invariant($"The rules hold a null at place {i}."))).OrderBy(r => r.Descriptor.Id, StringComparer.Ordinal)];
        Config = config ?? AnalyzerConfig.Default;
        for (int i = 0; i < _rules.Length; i++)
        {
            string id = _rules[i].Descriptor.Id;
            if (i > 0 && _rules[i - 1].Descriptor.Id == id)
                throw new ArgumentException($"Two rules have the id {id}; each needs one of its own.", nameof(rules));
            if (id.StartsWith("SFY", StringComparison.OrdinalIgnoreCase) && _rules[i].GetType().Assembly != typeof(FormulaAnalyzer).Assembly)
                throw new ArgumentException($"The prefix SFY is the library's own; give {id} a prefix of yours.", nameof(rules));
        }
    }

    /// <summary>All rules of the library, each at its own severity.</summary>
    public static FormulaAnalyzer Default { get; } = new(BuiltIn.Rules);

    /// <summary>The rules of the library, sorted by id.</summary>
    public static IReadOnlyList<FormulaRule> BuiltInRules { get; } = [.. BuiltIn.Rules.OrderBy(r => r.Descriptor.Id, StringComparer.Ordinal)];

    /// <summary>How the rules are set.</summary>
    public AnalyzerConfig Config { get; }

    /// <summary>The rules, sorted by id.</summary>
    public IReadOnlyList<FormulaRule> Rules => _rules;

    /// <summary>The same analyzer with more rules.</summary>
    /// <param name="rules">Rules of your own.</param>
    /// <exception cref="ArgumentException">An id that is there already, or the library's prefix.</exception>
    public FormulaAnalyzer With(params FormulaRule[] rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return new(_rules.Concat(rules), Config);
    }

    /// <summary>The same analyzer, set otherwise.</summary>
    /// <param name="config">The configuration.</param>
    /// <exception cref="ArgumentNullException"><paramref name="config"/> is null.</exception>
    public FormulaAnalyzer With(AnalyzerConfig config)
    {
        ArgumentNullException.ThrowIfNull(config);
        return new(_rules, config);
    }

    /// <summary>Analyzes a formula. Throws for null and for cancellation only.</summary>
    /// <param name="formula">The formula, good or bad.</param>
    /// <param name="setup">The circumstances; nothing known when left out.</param>
    /// <param name="cancellation">Asks for an end.</param>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    /// <exception cref="OperationCanceledException">An end was asked for.</exception>
    public AnalysisReport Analyze(Formula formula, BatchSetup? setup = null, CancellationToken cancellation = default) => Analyze(formula, setup, null, cancellation);

    /// <summary>Applies one fix after the other, analyzing anew each time, until none is chosen, a formula comes back, or so many were applied.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="choose">Chooses a fix of a finding, or null to leave it.</param>
    /// <param name="setup">The circumstances; nothing known when left out.</param>
    /// <param name="mostPasses">How many fixes at most, from 1 to 1000.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number of passes outside its range.</exception>
    public Formula ApplyFixes(Formula formula, Func<Diagnostic, Fix?> choose, BatchSetup? setup = null, int mostPasses = 20)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(choose);
        Guard.InRange(mostPasses, 1, 1000, "The number of fixes", "");
        HashSet<Formula> seen = [formula];
        for (int pass = 0; pass < mostPasses; pass++)
        {
            Fix? fix = null;
            foreach (Diagnostic diagnostic in Analyze(formula, setup).Diagnostics)
            {
                if ((fix = choose(diagnostic)) is not null)
                    break;
            }
            if (fix is null)
                break;
            Formula next = fix.Apply();
            if (!seen.Add(next))
                break;
            formula = next;
        }
        return formula;
    }

    internal AnalysisReport Analyze(Formula formula, BatchSetup? setup, Func<FormulaPath, Place?>? locate, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(formula);
        cancellation.ThrowIfCancellationRequested();
        AnalysisRun run = new(new(formula, setup ?? BatchSetup.Unknown), Config, locate, cancellation);
        var statuses = new RuleStatus[_rules.Length];
        string?[]? reasons = null;
        for (int i = 0; i < _rules.Length; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            statuses[i] = Run(_rules[i], run, out string? reason);
            if (reason is null)
                continue;
            reasons ??= new string?[_rules.Length];
            reasons[i] = reason;
        }
        return new(this, run, statuses, reasons);
    }

    /// <summary>
    /// True when a fix does what it promises: it changes the formula, its finding is gone, and no error is there that was not there before. A rule can't
    /// foresee what the others will say, so the engine tries each fix before it offers it.
    /// </summary>
    internal bool Works(Fix fix, Diagnostic finding, IReadOnlyList<Diagnostic> before, BatchSetup setup)
    {
        Formula after;
        try
        {
            after = fix.Apply();
        }
#pragma warning disable CA1031 // a fix that throws is none; asking for fixes never throws
        catch (Exception)
#pragma warning restore CA1031
        {
            return false;
        }
        AnalysisRun run = new(new(after, setup), Config, null, CancellationToken.None);
        foreach (FormulaRule rule in _rules)
            Run(rule, run, out _);
        return !after.Equals(fix.Before)
            && !(run.Found?.Exists(d => d.Fingerprint == finding.Fingerprint || (d.Severity == Severity.Error && before.All(b => b.Id != d.Id))) ?? false);
    }

    private RuleStatus Run(FormulaRule rule, AnalysisRun run, out string? reason)
    {
        RuleDescriptor descriptor = rule.Descriptor;
        reason = null;
        if (Config.SeverityOf(descriptor) is null)
            return RuleStatus.Disabled;
        int before = run.Found?.Count ?? 0;
        try
        {
            if ((reason = rule.WhyNotApplicable(run.Facts)) is not null)
                return RuleStatus.NotApplicable;
            RuleContext context = new(run, rule);
            rule.Analyze(in context);
            return RuleStatus.Ran;
        }
        catch (OperationCanceledException) when (run.Cancellation.IsCancellationRequested)
        {
            throw;
        }
#pragma warning disable CA1031 // a rule that throws becomes a finding; the others run on
        catch (Exception fault)
#pragma warning restore CA1031
        {
            run.Withdraw(before);
            run.Report(EngineRules.RuleFailed, EngineRules.RuleFailed.Messages[0], FormulaPath.Root,
                [Arg.Of("rule", descriptor.Id), Arg.Of("exception", fault.GetType().Name), Arg.Of("message", fault.Message.ReplaceLineEndings(" "))], default, default, null);
            reason = fault.GetType().Name;
            return RuleStatus.Failed;
        }
    }
}
