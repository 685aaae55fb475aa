using System.Globalization;
using Saponify.Analysis;

namespace Saponify;

/// <summary>One finding of a rule in a formula. Immutable; equality by rule, message, place and arguments.</summary>
public sealed class Diagnostic : IEquatable<Diagnostic>
{
    internal Diagnostic(RuleDescriptor rule, MessageTemplate template, Severity severity, FormulaPath path, ValueList<Arg> args)
    {
        Rule = rule;
        Template = template;
        Severity = severity;
        Path = path;
        Args = args;
    }

    /// <summary>The rule.</summary>
    public RuleDescriptor Rule { get; }

    /// <summary>Id of the rule.</summary>
    public string Id => Rule.Id;

    /// <summary>The message without its arguments.</summary>
    public MessageTemplate Template { get; }

    /// <summary>Severity after configuration.</summary>
    public Severity Severity { get; }

    /// <summary>Where it lies.</summary>
    public FormulaPath Path { get; }

    /// <summary>Line and column, when the formula came from a file.</summary>
    public Place? Place { get; internal init; }

    /// <summary>The arguments of the message, with units.</summary>
    public ValueList<Arg> Args { get; }

    /// <summary>Other places involved.</summary>
    public ValueList<FormulaPath> Related { get; internal init; }

    /// <summary>
    /// What mends it, best first. Each is tried when the list is first asked for: it removes the finding and adds no error. Empty when nothing certainly does.
    /// </summary>
    public IReadOnlyList<Fix> Fixes => Tried?.Value ?? [];

    /// <summary>What its rule offers.</summary>
    internal Fix[] Offered { get; init; } = [];

    /// <summary>What is left of it when each was tried; null for an offer of nothing.</summary>
    internal Lazy<IReadOnlyList<Fix>>? Tried { get; set; }

    /// <summary>True when the verdict rests on figures from memory: check those before you rely on it.</summary>
    public bool RestsOnMemory { get; internal init; }

    /// <summary>The suppression that covers it; null for an active finding.</summary>
    public Suppression? Suppression { get; internal init; }

    /// <summary>Rule, message and stable place, without numbers: stays the same when amounts change or lines are reordered.</summary>
    public string Fingerprint => $"{Id}/{Template.Name}/{Path}";

    /// <summary>The message with its arguments.</summary>
    /// <param name="culture">How numbers are written; invariant when left out.</param>
    public string ToMessage(IFormatProvider? culture = null) =>
        Template.Fill(Args.AsSpan(), culture ?? CultureInfo.InvariantCulture) + (RestsOnMemory ? " (rests on figures from memory)" : "");

    /// <inheritdoc/>
    public bool Equals(Diagnostic? other) => other is not null && (ReferenceEquals(this, other)
        || (Id == other.Id && Template.Equals(other.Template) && Severity == other.Severity && Path.Equals(other.Path) && Args == other.Args
            && RestsOnMemory == other.RestsOnMemory && Equals(Suppression, other.Suppression)));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Diagnostic);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Template, Severity, Path);

    /// <summary>Severity, id, place and message in one line; invariant.</summary>
    public override string ToString() => $"{(Place is { } place ? FormattableString.Invariant($"({place.Line},{place.Column}): ") : "")}{Word(Severity)} {Id}: {(Path.Equals(FormulaPath.Root) ? "" : Path + ": ")}{ToMessage(CultureInfo.InvariantCulture)}";

    internal static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        Severity.Info => "info",
        _ => "hidden",
    };
}
