using Saponify.Internals;

namespace Saponify.Analysis;

/// <summary>
/// A message of a rule: its name, and a text with the names of its arguments in braces: <c>{alkali} of alkali against a demand of {demand}</c>.
/// Immutable; equality by content.
/// </summary>
public sealed record MessageTemplate
{
    /// <summary>Makes a template.</summary>
    /// <param name="name">Its name within the rule, for example <c>Excess</c>; not blank.</param>
    /// <param name="format">What is, and what was expected; no closing stop, no line break.</param>
    /// <exception cref="ArgumentException">A blank text, a closing stop, or a line break.</exception>
    public MessageTemplate(string name, string format)
    {
        Name = Guard.Text(name, "The name of a message");
        Format = Guard.Text(format, "The format of a message");
        if (format.EndsWith('.') || format.Contains('\n', StringComparison.Ordinal))
            throw new ArgumentException($"The format of a message must have no closing stop and no line break, but that of {name} {(format.EndsWith('.') ? "ends with a stop" : "has a line break")}.", nameof(format));
    }

    /// <summary>Name within the rule.</summary>
    public string Name { get; }

    /// <summary>The text with its arguments in braces.</summary>
    public string Format { get; }

    /// <summary>The text with arguments filled in, in one pass: an argument that itself holds braces stays as it is.</summary>
    internal string Fill(ReadOnlySpan<Arg> args, IFormatProvider culture)
    {
        System.Text.StringBuilder text = new(Format.Length + 32);
        int at = 0;
        while (at < Format.Length)
        {
            int open = Format.IndexOf('{', at), close = open < 0 ? -1 : Format.IndexOf('}', open);
            if (close < 0)
                break;
            text.Append(Format, at, open - at);
            ReadOnlySpan<char> name = Format.AsSpan(open + 1, close - open - 1);
            text.Append(ValueOf(name, args, culture) ?? Format[open..(close + 1)]);
            at = close + 1;
        }
        return text.Append(Format, at, Format.Length - at).ToString();
    }

    private static string? ValueOf(ReadOnlySpan<char> name, ReadOnlySpan<Arg> args, IFormatProvider culture)
    {
        foreach (Arg arg in args)
        {
            if (name.SequenceEqual(arg.Name))
                return arg.ToText(culture);
        }
        return null;
    }
}
