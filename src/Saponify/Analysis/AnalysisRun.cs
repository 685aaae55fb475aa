namespace Saponify.Analysis;

/// <summary>The one object that changes during an analysis: the findings so far. Lives in one thread for one call.</summary>
internal sealed class AnalysisRun(FormulaFacts facts, AnalyzerConfig config, Func<FormulaPath, Place?>? locate, CancellationToken cancellation)
{
    internal FormulaFacts Facts => facts;

    internal AnalyzerConfig Config => config;

    internal CancellationToken Cancellation => cancellation;

    /// <summary>Null until something is found, so that a clean formula costs nothing.</summary>
    internal List<Diagnostic>? Found { get; private set; }

    internal void Report(
        RuleDescriptor rule, MessageTemplate template, FormulaPath path, ReadOnlySpan<Arg> args, ReadOnlySpan<FixOffer> fixes, ReadOnlySpan<FormulaPath> related, Evidence? evidence)
    {
        Fix[] bound = fixes.Length == 0 ? [] : new Fix[fixes.Length];
        for (int i = 0; i < bound.Length; i++)
            bound[i] = new(facts.Formula, fixes[i]);
        (Found ??= []).Add(new(rule, template, config.SeverityOf(rule) ?? rule.DefaultSeverity, path, ValueList.Create(args))
        {
            Place = locate?.Invoke(path),
            Related = ValueList.Create(related),
            Offered = bound,
            RestsOnMemory = evidence == Evidence.Memory,
        });
    }

    /// <summary>Withdraws the findings of a rule that threw.</summary>
    internal void Withdraw(int from) => Found?.RemoveRange(from, Found.Count - from);
}
