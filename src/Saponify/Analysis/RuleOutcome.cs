using Saponify.Analysis;

namespace Saponify;

/// <summary>What became of one rule in one analysis: nothing is silent. Equality by content.</summary>
public readonly record struct RuleOutcome
{
    internal RuleOutcome(RuleDescriptor rule, RuleStatus status, string? reason)
    {
        Rule = rule;
        Status = status;
        Reason = reason;
    }

    /// <summary>The rule.</summary>
    public RuleDescriptor Rule { get; }

    /// <summary>What became of it.</summary>
    public RuleStatus Status { get; }

    /// <summary>Why it did not apply, or how it failed; null otherwise.</summary>
    public string? Reason { get; }
}
