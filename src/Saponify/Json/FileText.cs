using System.Text;
using System.Text.Json;

namespace Saponify;

/// <summary>The looks of a file: its lines, blanks and comments, and how a value is written so that it fits in.</summary>
internal sealed class FileText
{
    private readonly byte[] _utf8;
    private readonly int _start;
    private readonly string _newline;
    private readonly string _unit = "  ";
    private readonly string _colon = ": ";
    private readonly string _pad = " ";
    private readonly bool _objectsOnOneLine = true;

    internal FileText(byte[] utf8, JsonPiece root)
    {
        _utf8 = utf8;
        _start = utf8 is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;
        int end = utf8.AsSpan().IndexOfAny((byte)'\r', (byte)'\n');
        _newline = end < 0 || utf8[end] == '\n' ? "\n" : end + 1 < utf8.Length && utf8[end + 1] == '\n' ? "\r\n" : "\r";
        if (root.Items is not [{ } first, ..])
            return;
        if (Indent(first.NameStart) is { Length: > 0 } unit)
            _unit = unit;
        if (utf8.AsSpan(first.NameEnd, first.Start - first.NameEnd) is var colon && colon.IndexOfAny("/\r\n"u8) < 0)
            _colon = Encoding.UTF8.GetString(colon);
        _pad = Gap;
        if (root.Items.Find(i => i is { Kind: JsonTokenType.StartArray, Items: [{ Items.Count: > 0 }, ..] })?.Items[0] is { } line)
        {
            _objectsOnOneLine = IsOnOneLine(line);
            if (_objectsOnOneLine)
                _pad = _utf8[line.Start + 1] == ' ' ? " " : "";
        }
    }

    internal ReadOnlySpan<byte> Utf8 => _utf8;

    internal string Newline => _newline;

    /// <summary>What follows a comma on one line: a blank unless the file has none after its colons.</summary>
    internal string Gap => _colon.EndsWith(' ') ? " " : "";

    /// <summary>True when only blanks stand before this place on its line, and another line before that.</summary>
    internal bool StartsLine(int at) => BeforeBlanks(at) is var start && start > _start && _utf8[start - 1] is (byte)'\n' or (byte)'\r';

    /// <summary>The blanks before a place that starts its line; null for one that does not.</summary>
    internal string? Indent(int at) => StartsLine(at) ? Encoding.UTF8.GetString(_utf8.AsSpan(BeforeBlanks(at), at - BeforeBlanks(at))) : null;

    internal int BeforeBlanks(int at)
    {
        while (at > _start && _utf8[at - 1] is (byte)' ' or (byte)'\t')
            at--;
        return at;
    }

    internal int AfterBlanks(int at)
    {
        while (at < _utf8.Length && _utf8[at] is (byte)' ' or (byte)'\t')
            at++;
        return at;
    }

    internal bool EndsLine(int at) => at == _utf8.Length || _utf8[at] is (byte)'\n' or (byte)'\r';

    internal int AfterNewline(int at) => at == _utf8.Length ? at : at + (_utf8[at] == '\r' && at + 1 < _utf8.Length && _utf8[at + 1] == '\n' ? 2 : 1);

    /// <summary>The place after blanks, new lines and comments.</summary>
    internal int AfterTrivia(int at)
    {
        while (true)
        {
            if (at < _utf8.Length && _utf8[at] is (byte)' ' or (byte)'\t' or (byte)'\n' or (byte)'\r')
                at++;
            else if (AfterComment(at) is var after && after > at)
                at = after;
            else
                return at;
        }
    }

    /// <summary>The end of the line when only blanks and comments are left on it; the place itself when there is more.</summary>
    internal int EndOfLine(int at)
    {
        int end = AfterBlanks(at);
        while (!EndsLine(end))
        {
            int after = AfterComment(end);
            if (after == end || _utf8.AsSpan(end, after - end).IndexOfAny((byte)'\n', (byte)'\r') >= 0)
                return at;
            end = AfterBlanks(after);
        }
        return end;
    }

    internal bool IsOnOneLine(JsonPiece piece) => _utf8.AsSpan(piece.Start, piece.End - piece.Start).IndexOfAny((byte)'\n', (byte)'\r') < 0;

    /// <summary>A value, with its name if it has one, as this file would write it on lines of this indentation; all on one line when indent is null.</summary>
    internal string Write(JsonPiece piece, byte[] source, string? indent, bool? objectsOnOneLine = null)
    {
        StringBuilder text = new();
        Write(text, piece, source, indent, objectsOnOneLine ?? _objectsOnOneLine);
        return text.ToString();
    }

    /// <summary>The items of a list with what stands between them and the brackets.</summary>
    internal string WriteItems(List<JsonPiece> items, byte[] source, string? indent)
    {
        StringBuilder text = new();
        WriteItems(text, items, source, indent, indent is null ? null : indent + _unit, _objectsOnOneLine);
        return text.ToString();
    }

    private void Write(StringBuilder text, JsonPiece piece, byte[] source, string? indent, bool objectsOnOneLine)
    {
        if (piece.Name is not null)
            text.Append(Encoding.UTF8.GetString(source.AsSpan(piece.NameStart, piece.NameEnd - piece.NameStart))).Append(_colon);
        if (piece.Kind is not (JsonTokenType.StartObject or JsonTokenType.StartArray) || piece.Items.Count == 0)
        {
            text.Append(Encoding.UTF8.GetString(source.AsSpan(piece.Start, piece.End - piece.Start)));
            return;
        }
        bool isObject = piece.Kind == JsonTokenType.StartObject;
        text.Append(isObject ? '{' : '[');
        WriteItems(text, piece.Items, source, indent, indent is null || (isObject && objectsOnOneLine) ? null : indent + _unit, objectsOnOneLine);
        text.Append(isObject ? '}' : ']');
    }

    private void WriteItems(StringBuilder text, List<JsonPiece> items, byte[] source, string? indent, string? inner, bool objectsOnOneLine)
    {
        for (int i = 0; i < items.Count; i++)
        {
            text.Append(i == 0 ? "" : ",").Append(inner is not null ? _newline + inner : i == 0 ? _pad : Gap);
            Write(text, items[i], source, inner, objectsOnOneLine);
        }
        text.Append(inner is not null ? _newline + indent : _pad);
    }

    private int AfterComment(int at)
    {
        ReadOnlySpan<byte> rest = _utf8.AsSpan(at);
        if (rest.StartsWith("//"u8))
            return rest.IndexOfAny((byte)'\n', (byte)'\r') is var end and >= 0 ? at + end : _utf8.Length;
        return rest.StartsWith("/*"u8) ? at + 2 + rest[2..].IndexOf("*/"u8) + 2 : at;
    }
}
