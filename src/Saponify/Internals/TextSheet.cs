using System.Text;

namespace Saponify.Internals;

/// <summary>Plain characters, no colours; lines end in LF.</summary>
internal sealed class TextSheet : ISheet
{
    private const int AmountWidth = 14;

    private readonly StringBuilder _text = new();

    public void Name(string name) => _text.Append(name).Append('\n');

    public void Title(string title) => _text.Append('\n').Append(title).Append('\n');

    public void Gap() => _text.Append('\n');

    public void Row(string amount, string what) => Line(amount.PadLeft(AmountWidth) + "  " + what);

    public void Line(string text) => _text.Append("  ").Append(text).Append('\n');

    public void Beware(string text) => Line(text);

    public void Item(string text) => Line("- " + text);

    public override string ToString() => _text.ToString();
}
