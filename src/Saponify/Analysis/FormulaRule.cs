namespace Saponify.Analysis;

/// <summary>
/// A rule. Derive from it, use a prefix of your own for the id, and register it with <c>analyzer.With(new MyRule())</c>. A rule holds no state and
/// is asked from several threads at once.
/// </summary>
public abstract class FormulaRule
{
    /// <summary>Starts a rule.</summary>
    /// <param name="descriptor">What it is.</param>
    /// <exception cref="ArgumentNullException"><paramref name="descriptor"/> is null.</exception>
    /// <exception cref="ArgumentException">The descriptor has no message.</exception>
    protected FormulaRule(RuleDescriptor descriptor)
    {
        ArgumentNullException.ThrowIfNull(descriptor);
        Descriptor = descriptor.Messages.Count > 0 ? descriptor : throw new ArgumentException($"Rule {descriptor.Id} has no message; it needs one at least.", nameof(descriptor));
    }

    /// <summary>What it is.</summary>
    public RuleDescriptor Descriptor { get; }

    /// <summary>Why the rule has nothing to say about a formula, in a few words; null when it applies. Say here what must hold first: one fault, one finding.</summary>
    /// <param name="facts">The formula and what is known of it.</param>
    public virtual string? WhyNotApplicable(FormulaFacts facts) => null;

    /// <summary>Looks at the formula and reports what it finds. Must not throw, whatever the formula.</summary>
    /// <param name="context">The formula, its facts, and where to report.</param>
    public abstract void Analyze(in RuleContext context);
}
