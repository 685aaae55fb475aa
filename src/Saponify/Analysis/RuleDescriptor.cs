using Saponify.Internals;

namespace Saponify.Analysis;

/// <summary>What a rule is, apart from its occurrences. Immutable; equality by content.</summary>
public sealed record RuleDescriptor
{
    /// <summary>Describes a rule.</summary>
    /// <param name="id">Letters and digits, for example <c>SFY2001</c> or <c>ACME17</c>; the prefix SFY is the library's own.</param>
    /// <param name="name">What to do, in the imperative: <c>KeepAlkaliWithinDemand</c>.</param>
    /// <param name="severity">Severity unless a configuration says otherwise.</param>
    /// <param name="title">One line for lists; no closing stop.</param>
    /// <param name="harm">What it prevents: one or two sentences.</param>
    /// <exception cref="ArgumentException">A blank text, or an id of other characters.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An unknown severity.</exception>
    public RuleDescriptor(string id, string name, Severity severity, string title, string harm)
    {
        Id = Guard.Text(id, "The id of a rule");
        if (!id.All(char.IsAsciiLetterOrDigit))
            throw new ArgumentException($"\"{id}\" is no id of a rule: letters and digits only.", nameof(id));
        Name = Guard.Text(name, "The name of a rule");
        DefaultSeverity = Guard.Known(severity, "A severity");
        Title = Guard.Text(title, "The title of a rule");
        Harm = Guard.Text(harm, "The harm a rule prevents");
    }

    /// <summary>Id of the rule; never reused.</summary>
    public string Id { get; }

    /// <summary>What to do, in the imperative.</summary>
    public string Name { get; }

    /// <summary>Severity unless a configuration says otherwise.</summary>
    public Severity DefaultSeverity { get; }

    /// <summary>One line for lists.</summary>
    public string Title { get; }

    /// <summary>What it prevents.</summary>
    public string Harm { get; }

    /// <summary>The messages it may give; at least one.</summary>
    /// <exception cref="ArgumentException">A null among them.</exception>
    public required ValueList<MessageTemplate> Messages { get; init => field = LineId.NoNull(value, "The messages of a rule"); }

    /// <summary>Limits that a team may set.</summary>
    /// <exception cref="ArgumentException">A null among them.</exception>
    public ValueList<RuleOption> Options { get; init => field = LineId.NoNull(value, "The options of a rule"); }

    /// <summary>Keys of its sources; empty when it rests on common practice or on arithmetic alone.</summary>
    /// <exception cref="ArgumentException">A null among them.</exception>
    public ValueList<string> Sources { get; init => field = LineId.NoNull(value, "The sources of a rule"); }

    /// <summary>Retired ids that lead to it.</summary>
    /// <exception cref="ArgumentException">A null among them.</exception>
    public ValueList<string> FormerIds { get; init => field = LineId.NoNull(value, "The former ids of a rule"); }

    /// <summary>Severity below which no configuration goes: for lye safety.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such severity.</exception>
    public Severity Floor { get; init => field = Guard.Known(value, "The floor of a rule"); }

    /// <summary>False for a rule that runs only when a configuration asks for it.</summary>
    public bool IsOnByDefault { get; init; } = true;

    /// <summary>What it is about.</summary>
    public RuleCategory Category => Id.Length == 7 && Id.StartsWith("SFY", StringComparison.Ordinal) && Id[3] is >= '0' and <= '8' ? (RuleCategory)(Id[3] - '0') : RuleCategory.Custom;

    /// <summary>Page of the rule below the documentation, for example <c>rules/SFY2001.md</c>.</summary>
    public string HelpPage => $"rules/{Id}.md";

    internal MessageTemplate? Message(string name)
    {
        foreach (MessageTemplate message in Messages)
        {
            if (message.Name == name)
                return message;
        }
        return null;
    }
}
