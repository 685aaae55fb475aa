namespace Saponify.Analysis;

/// <summary>One rule in one analysis. It can't be stored, captured or awaited, so that rules stay without state.</summary>
public readonly ref struct RuleContext
{
    private readonly AnalysisRun _run;
    private readonly FormulaRule _rule;

    internal RuleContext(AnalysisRun run, FormulaRule rule) => (_run, _rule) = (run, rule);

    /// <summary>The formula.</summary>
    public Formula Formula => _run.Facts.Formula;

    /// <summary>The circumstances.</summary>
    public BatchSetup Setup => _run.Facts.Setup;

    /// <summary>What is known of the formula, computed once for all rules.</summary>
    public FormulaFacts Facts => _run.Facts;

    /// <summary>Asks for an end.</summary>
    public CancellationToken Cancellation => _run.Cancellation;

    /// <summary>The value of an option: the configured one, or its default.</summary>
    /// <param name="option">An option of this rule's descriptor.</param>
    /// <exception cref="ArgumentException">The descriptor has no such option.</exception>
    public double Option(RuleOption option)
    {
        ArgumentNullException.ThrowIfNull(option);
        return _rule.Descriptor.Options.AsSpan().Contains(option)
            ? _run.Config.ValueOf(_rule.Descriptor.Id, option)
            : throw new ArgumentException($"Rule {_rule.Descriptor.Id} does not declare the option {option.Key}; add it to the options of its descriptor.", nameof(option));
    }

    /// <summary>The value of another rule's option, so that where one falls silent the other speaks.</summary>
    internal double OptionOf(string ruleId, RuleOption option) => _run.Config.ValueOf(ruleId, option);

    /// <summary>Reports a finding.</summary>
    /// <param name="message">Name of a message of this rule's descriptor.</param>
    /// <param name="path">Where it lies.</param>
    /// <param name="args">Arguments of the message.</param>
    /// <param name="fixes">What would certainly mend it, best first.</param>
    /// <param name="related">Other places involved.</param>
    /// <param name="evidence">Weakest evidence of the figures that the verdict rests on; figures from memory are said.</param>
    /// <exception cref="ArgumentException">The descriptor has no such message.</exception>
    public void Report(string message, FormulaPath path, ReadOnlySpan<Arg> args = default, ReadOnlySpan<FixOffer> fixes = default, ReadOnlySpan<FormulaPath> related = default, Evidence? evidence = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        MessageTemplate template = _rule.Descriptor.Message(message) ?? throw new ArgumentException($"Rule {_rule.Descriptor.Id} has no message \"{message}\"; add it to the messages of its descriptor.", nameof(message));
        _run.Report(_rule.Descriptor, template, path, args, fixes, related, evidence);
    }
}
