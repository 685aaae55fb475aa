using Saponify.Internals;

namespace Saponify;

/// <summary>
/// Says that a finding is known and accepted, and why. Without a reason it is reported and not applied; what it covers stays in the report.
/// Immutable; equality by content.
/// </summary>
public sealed record Suppression
{
    /// <summary>Accepts the findings of a rule at a place and below it.</summary>
    /// <param name="ruleId">Id of the rule, for example <c>SFY3004</c>; not blank.</param>
    /// <param name="path">The place by its stable path, for example <c>fats[castor]</c>; empty for the whole formula.</param>
    /// <param name="reason">Why it is accepted. May be blank; then the suppression is reported and not applied.</param>
    /// <exception cref="ArgumentException">The rule id is blank.</exception>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public Suppression(string ruleId, string path, string reason)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(reason);
        RuleId = Guard.Text(ruleId, "The rule of a suppression");
        Path = path;
        Reason = reason;
    }

    /// <summary>Id of the rule.</summary>
    public string RuleId { get; }

    /// <summary>The place by its stable path; findings there and below are covered.</summary>
    public string Path { get; }

    /// <summary>Why it is accepted.</summary>
    public string Reason { get; }

    /// <summary>Who accepted it, or null.</summary>
    public string? Author { get; init; }

    /// <summary>Last day on which it holds, or null for ever. It is compared with the date of the setup, if that has one.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>True when a place lies at the place of the suppression or below it.</summary>
    /// <param name="path">The place.</param>
    /// <exception cref="ArgumentNullException"><paramref name="path"/> is null.</exception>
    public bool Covers(FormulaPath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        string text = path.ToString();
        return Path.Length == 0 || (text.StartsWith(Path, StringComparison.Ordinal) && (text.Length == Path.Length || text[Path.Length] is '.' or '['));
    }
}
