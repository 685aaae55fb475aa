namespace Saponify;

/// <summary>Something wrong in a file, or worth knowing about it: where, what was found, what would be right. Immutable; equality by content.</summary>
public sealed record Problem
{
    internal Problem(string id, Place place, string pointer, string text, string? expected)
    {
        Id = id;
        Place = place;
        Pointer = pointer;
        Text = text;
        Expected = expected;
    }

    /// <summary>Id of the kind of problem, for example <c>SFY1006</c>; see <see cref="FormulaFile"/>.</summary>
    public string Id { get; }

    /// <summary>Where it stands.</summary>
    public Place Place { get; }

    /// <summary>The same as a JSON pointer (RFC 6901); empty for the whole file.</summary>
    public string Pointer { get; }

    /// <summary>What was found; one sentence in English without a closing stop, invariant.</summary>
    public string Text { get; }

    /// <summary>What would be right, or null when the text says it all.</summary>
    public string? Expected { get; }

    /// <summary>The problem in one line: <c>(3,21): SFY1006: ...</c>.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"({Place.Line},{Place.Column}): {Id}: {Text}{(Expected is null ? "" : "; " + Expected)}");
}
