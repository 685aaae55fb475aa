using System.Text;

namespace Saponify;

/// <summary>Text for people in two columns, a label and what it says, wrapped with a hanging indent. Plain characters, LF.</summary>
internal sealed class SheetWriter
{
    private const int LabelWidth = 20;
    private const int Width = 110;

    private readonly StringBuilder _text = new();

    internal bool IsEmpty => _text.Length == 0;

    internal void Title(string title) => _text.Append(_text.Length > 0 ? "\n" : "").Append(title).Append('\n');

    /// <summary>A label with its text; nothing when there is no text.</summary>
    internal void Row(string label, string? text)
    {
        if (string.IsNullOrEmpty(text))
            return;
        bool own = label.Length > LabelWidth - 4;
        string lead = own ? $"  {label}\n{new string(' ', LabelWidth)}" : "  " + label.PadRight(LabelWidth - 2);
        foreach (string line in Wrapped(text, Width - LabelWidth))
        {
            _text.Append(lead).Append(line).Append('\n');
            lead = new string(' ', LabelWidth);
        }
    }

    internal void Line(string text) => _text.Append("  ").Append(text.TrimEnd()).Append('\n');

    public override string ToString() => _text.ToString();

    private static IEnumerable<string> Wrapped(string text, int width)
    {
        StringBuilder line = new();
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line.ToString();
                line.Clear();
            }
            line.Append(line.Length > 0 ? " " : "").Append(word);
        }
        yield return line.ToString();
    }
}
