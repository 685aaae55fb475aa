using System.Collections.Frozen;

namespace Saponify.Analysis;

/// <summary>
/// How rules are set: severities by rule and by category, limits, suppressions. Rule beats category beats preset beats the rule's own default;
/// then comes the floor of safety rules. Immutable, thread-safe.
/// </summary>
public sealed class AnalyzerConfig
{
    private readonly FrozenDictionary<string, Severity?> _byRule;
    private readonly FrozenDictionary<RuleCategory, Severity?> _byCategory;
    private readonly FrozenDictionary<string, double> _options;

    private AnalyzerConfig(
        Preset preset, FrozenDictionary<string, Severity?> byRule, FrozenDictionary<RuleCategory, Severity?> byCategory, FrozenDictionary<string, double> options, ValueList<Suppression> suppressions)
    {
        Preset = preset;
        _byRule = byRule;
        _byCategory = byCategory;
        _options = options;
        Suppressions = suppressions;
    }

    /// <summary>Every rule at its own severity.</summary>
    public static AnalyzerConfig Default { get; } = Of(Preset.Default);

    /// <summary>The preset it starts from.</summary>
    public Preset Preset { get; }

    /// <summary>Findings accepted for every formula, beside those that a formula accepts itself.</summary>
    public ValueList<Suppression> Suppressions { get; }

    /// <summary>A configuration that starts from a preset.</summary>
    /// <param name="preset">The preset.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such preset.</exception>
    public static AnalyzerConfig Of(Preset preset) => new(
        Internals.Guard.Known(preset, "A preset"), FrozenDictionary<string, Severity?>.Empty, FrozenDictionary<RuleCategory, Severity?>.Empty, FrozenDictionary<string, double>.Empty, default);

    /// <summary>The same with a rule at another severity, or off.</summary>
    /// <param name="ruleId">Id of the rule.</param>
    /// <param name="severity">The severity; null switches it off. Below the floor of a safety rule, the floor holds.</param>
    /// <exception cref="ArgumentNullException"><paramref name="ruleId"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No such severity.</exception>
    public AnalyzerConfig WithSeverity(string ruleId, Severity? severity)
    {
        ArgumentNullException.ThrowIfNull(ruleId);
        return new(Preset, Set(_byRule, ruleId, Known(severity)), _byCategory, _options, Suppressions);
    }

    /// <summary>The same with all rules of a category at another severity, or off.</summary>
    /// <param name="category">The category.</param>
    /// <param name="severity">The severity; null switches them off. Below the floor of a safety rule, the floor holds.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such category or severity.</exception>
    public AnalyzerConfig WithSeverity(RuleCategory category, Severity? severity) =>
        new(Preset, _byRule, Set(_byCategory, Internals.Guard.Known(category, "A category"), Known(severity)), _options, Suppressions);

    /// <summary>The same with another limit.</summary>
    /// <param name="ruleId">Id of the rule.</param>
    /// <param name="option">The option of that rule.</param>
    /// <param name="value">Its value, in the unit and range of the option.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of the option, or not a number.</exception>
    public AnalyzerConfig WithOption(string ruleId, RuleOption option, double value)
    {
        ArgumentNullException.ThrowIfNull(ruleId);
        ArgumentNullException.ThrowIfNull(option);
        Internals.Guard.InRange(value, option.Least, option.Most, $"Option {option.Key} of {ruleId}", option.Unit);
        return new(Preset, _byRule, _byCategory, Set(_options, Key(ruleId, option), value), Suppressions);
    }

    /// <summary>The same with findings accepted for every formula.</summary>
    /// <param name="suppression">What is accepted, and why.</param>
    /// <exception cref="ArgumentNullException"><paramref name="suppression"/> is null.</exception>
    public AnalyzerConfig WithSuppression(Suppression suppression)
    {
        ArgumentNullException.ThrowIfNull(suppression);
        return new(Preset, _byRule, _byCategory, _options, [.. Suppressions, suppression]);
    }

    /// <summary>The severity of a rule after configuration and floor; null when it is off.</summary>
    /// <param name="rule">The rule.</param>
    /// <exception cref="ArgumentNullException"><paramref name="rule"/> is null.</exception>
    public Severity? SeverityOf(RuleDescriptor rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        Severity? severity = _byRule.TryGetValue(rule.Id, out Severity? own) ? own
            : _byCategory.TryGetValue(rule.Category, out Severity? category) ? category
            : OfPreset(rule);
        return rule.Floor > Severity.Hidden && !(severity >= rule.Floor) ? rule.Floor : severity;
    }

    internal double ValueOf(string ruleId, RuleOption option) => _options.Count > 0 && _options.TryGetValue(Key(ruleId, option), out double value) ? value : option.Default;

    /// <summary>Severity by the preset: a learner sees hidden advice, strict work takes warnings for errors.</summary>
    private Severity? OfPreset(RuleDescriptor rule) => Preset switch
    {
        Preset.Off => null,
        Preset.Learner => rule.DefaultSeverity == Severity.Hidden || !rule.IsOnByDefault ? Severity.Info : rule.DefaultSeverity,
        Preset.Strict => !rule.IsOnByDefault ? null : rule.DefaultSeverity == Severity.Warning ? Severity.Error : rule.DefaultSeverity,
        _ => rule.IsOnByDefault ? rule.DefaultSeverity : null,
    };

    private static Severity? Known(Severity? severity) => severity is { } known ? Internals.Guard.Known(known, "A severity", nameof(severity)) : null;

    private static string Key(string ruleId, RuleOption option) => $"{ruleId}.{option.Key}";

    private static FrozenDictionary<TKey, TValue> Set<TKey, TValue>(FrozenDictionary<TKey, TValue> table, TKey key, TValue value) where TKey : notnull =>
        new Dictionary<TKey, TValue>(table) { [key] = value }.ToFrozenDictionary();
}
