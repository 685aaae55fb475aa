using System.Text;

namespace Saponify.Internals;

/// <summary>A fragment of HTML for a notebook or a page: no script, nothing from outside, every text escaped; well-formed XML as well.</summary>
internal sealed class HtmlSheet : ISheet
{
    private const string Style =
        "<style>.saponify table{border-collapse:collapse}.saponify table+table{margin-top:1em}.saponify td,.saponify th{padding:0.1em 0.8em 0.1em 0;text-align:left;vertical-align:top}" +
        ".saponify td.amount{text-align:right;white-space:nowrap;font-variant-numeric:tabular-nums}.saponify h4{margin:1em 0 0.3em}</style>\n";

    private readonly StringBuilder _html = new("<div class=\"saponify\">\n" + Style);
    private string? _open;

    public void Name(string name) => Element("h3", name);

    public void Title(string title) => Element("h4", title);

    public void Gap() => Into(null);

    public void Row(string amount, string what)
    {
        Into("table");
        _html.Append("<tr><td class=\"amount\">").Append(Escape(amount)).Append("</td><td>").Append(Escape(what)).Append("</td></tr>\n");
    }

    public void Line(string text) => Element("p", text);

    public void Beware(string text)
    {
        Into(null);
        _html.Append("<p><strong>").Append(Escape(text)).Append("</strong></p>\n");
    }

    public void Item(string text)
    {
        Into("ul");
        _html.Append("<li>").Append(Escape(text)).Append("</li>\n");
    }

    /// <summary>A row of a table that has a head; several lines in a cell are told apart.</summary>
    internal void Cells(string element, params string[] cells)
    {
        Into("table");
        _html.Append("<tr>");
        foreach (string cell in cells)
            _html.Append('<').Append(element).Append('>').AppendJoin("<br/>", cell.Split('\n').Select(Escape)).Append("</").Append(element).Append('>');
        _html.Append("</tr>\n");
    }

    /// <summary>A picture that is HTML already.</summary>
    internal void Picture(string svg)
    {
        Into(null);
        _html.Append(svg).Append('\n');
    }

    public override string ToString()
    {
        Into(null);
        return _html.ToString() + "</div>\n";
    }

    /// <summary>Text that can stand in an element or in an attribute: what HTML has no place for becomes the replacement character.</summary>
    internal static string Escape(string text)
    {
        StringBuilder escaped = new(text.Length + 16);
        foreach (Rune rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '"' => escaped.Append("&quot;"),
                '\'' => escaped.Append("&#39;"),
                '\t' or '\n' => escaped.Append((char)rune.Value),
                _ => escaped.Append((Rune.IsControl(rune) || rune.Value is 0xFFFE or 0xFFFF ? Rune.ReplacementChar : rune).ToString()),
            };
        }
        return escaped.ToString();
    }

    private void Element(string element, string text)
    {
        Into(null);
        _html.Append('<').Append(element).Append('>').Append(Escape(text)).Append("</").Append(element).Append(">\n");
    }

    /// <summary>Closes the table or list that is open, unless it is this one, and opens this one.</summary>
    private void Into(string? element)
    {
        if (_open == element)
            return;
        if (_open is not null)
            _html.Append("</").Append(_open).Append(">\n");
        if (element is not null)
            _html.Append('<').Append(element).Append(">\n");
        _open = element;
    }
}
