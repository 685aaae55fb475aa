using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Saponify;

/// <summary>A JSON value with the bytes it stands in. A file becomes a tree of these in one pass.</summary>
internal sealed class JsonPiece
{
    internal const int MostDepth = 16;

    private static readonly List<JsonPiece> s_none = [];

    private readonly JsonPiece? _parent;

    private JsonPiece(ref Utf8JsonReader reader, int skip, JsonPiece? parent)
    {
        _parent = parent;
        Kind = reader.TokenType;
        Start = NameStart = skip + (int)reader.TokenStartIndex;
        Text = Kind == JsonTokenType.String ? reader.GetString()! : Kind == JsonTokenType.Number ? Encoding.UTF8.GetString(reader.ValueSpan) : "";
    }

    internal JsonTokenType Kind { get; }

    /// <summary>Name of the member whose value this is; null for the item of a list and the whole file.</summary>
    internal string? Name { get; private init; }

    /// <summary>Where the name stands, or the value itself when it has none.</summary>
    internal int NameStart { get; private init; }

    internal int NameEnd { get; private init; }

    internal int Start { get; }

    internal int End { get; private set; }

    /// <summary>The text of a string, a number as it is written; empty for every other kind.</summary>
    internal string Text { get; }

    /// <summary>The values of an object's members, or the items of a list, in the order of the file.</summary>
    internal List<JsonPiece> Items { get; private set; } = s_none;

    internal string KindName => Kind switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.String => "a text",
        JsonTokenType.Number => "a number",
        JsonTokenType.True or JsonTokenType.False => "true or false",
        _ => "null",
    };

    /// <summary>The place as a JSON pointer (RFC 6901).</summary>
    internal string Pointer => _parent is null ? ""
        : _parent.PointerTo(Name ?? _parent.Items.IndexOf(this).ToString(CultureInfo.InvariantCulture));

    /// <summary>The pointer to a member that may be missing.</summary>
    internal string PointerTo(string member) =>
        $"{Pointer}/{member.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}";

    /// <summary>The first member of this name, or null.</summary>
    internal JsonPiece? Member(string name)
    {
        foreach (JsonPiece item in Items)
        {
            if (item.Name == name)
                return item;
        }
        return null;
    }

    /// <summary>The value at a JSON pointer (RFC 6901), or null.</summary>
    internal JsonPiece? Find(string pointer)
    {
        JsonPiece? at = this;
        foreach (string step in pointer.Split('/').Skip(1))
        {
            at = at.Kind != JsonTokenType.StartArray ? at.Member(step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal))
                : int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index < at.Items.Count ? at.Items[index]
                : null;
            if (at is null)
                return null;
        }
        return at;
    }

    /// <summary>The tree of a file of so many bytes; null when it is too large, no text or no JSON, and then what is wrong.</summary>
    internal static JsonPiece? Open(byte[] utf8, int length, out Problem? problem)
    {
        problem = null;
        if (length > FormulaFile.LargestBytes)
        {
            problem = new(ProblemIds.TooLarge, new(1, 1, 0, 0), "", FormattableString.Invariant($"the file has more than {FormulaFile.LargestBytes} bytes"), "a file is smaller");
        }
        else if (!Utf8.IsValid(utf8))
        {
            int wrong = FirstWrongByte(utf8);
            problem = new(ProblemIds.Syntax, new PlaceCounter(utf8).At(wrong, 1), "", FormattableString.Invariant($"byte {utf8[wrong]:X2} is no UTF-8 text here"), "save the file as UTF-8");
        }
        else if (Parse(utf8, out int offset, out string? fault) is { } root)
        {
            return root;
        }
        else
        {
            problem = new(ProblemIds.Syntax, new PlaceCounter(utf8).At(offset, 0), "", fault!, null);
        }
        return null;
    }

    /// <summary>Reads a whole file. On a fault of syntax: null, with its offset and what is wrong.</summary>
    internal static JsonPiece? Parse(ReadOnlySpan<byte> utf8, out int offset, out string? fault)
    {
        int skip = utf8 is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;
        Utf8JsonReader reader = new(utf8[skip..], new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, MaxDepth = MostDepth });
        (offset, fault) = (skip, null);
        try
        {
            if (!reader.Read())
            {
                fault = "the file is empty";
                return null;
            }
            JsonPiece root = new(ref reader, skip, null);
            root.ReadItems(ref reader, skip);
            while (reader.Read())
            {
            }
            return root;
        }
        catch (JsonException exception)
        {
            offset = skip + OffsetOf(utf8[skip..], exception);
            fault = Reason(exception.Message);
            return null;
        }
        catch (InvalidOperationException)
        {
            offset = skip + (int)reader.TokenStartIndex;
            fault = "the text holds an escape that is half of a surrogate pair, which is no Unicode text";
            return null;
        }
    }

    private static int FirstWrongByte(ReadOnlySpan<byte> utf8)
    {
        int at = 0;
        while (Rune.DecodeFromUtf8(utf8[at..], out _, out int length) == OperationStatus.Done)
            at += length;
        return at;
    }

    private void ReadItems(ref Utf8JsonReader reader, int skip)
    {
        if (Kind == JsonTokenType.StartObject)
        {
            while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
            {
                (string name, int start, int end) = (reader.GetString()!, skip + (int)reader.TokenStartIndex, skip + (int)reader.TokenStartIndex + reader.ValueSpan.Length + 2);
                reader.Read();
                Add(new(ref reader, skip, this) { Name = name, NameStart = start, NameEnd = end }, ref reader, skip);
            }
        }
        else if (Kind == JsonTokenType.StartArray)
        {
            while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                Add(new(ref reader, skip, this), ref reader, skip);
        }
        End = skip + (int)reader.BytesConsumed;
    }

    private void Add(JsonPiece item, ref Utf8JsonReader reader, int skip)
    {
        item.ReadItems(ref reader, skip);
        if (ReferenceEquals(Items, s_none))
            Items = [];
        Items.Add(item);
    }

    private static int OffsetOf(ReadOnlySpan<byte> utf8, JsonException exception)
    {
        int start = 0;
        for (long line = exception.LineNumber ?? 0; line > 0; line--)
        {
            int next = utf8[start..].IndexOf((byte)'\n');
            if (next < 0)
                break;
            start += next + 1;
        }
        return (int)Math.Min(start + (exception.BytePositionInLine ?? 0), utf8.Length);
    }

    /// <summary>The reader's message without its own account of the place and its advice to programmers.</summary>
    private static string Reason(string message)
    {
        foreach (string end in (string[])[" LineNumber:", " which is not supported in this mode"])
        {
            if (message.IndexOf(end, StringComparison.Ordinal) is var at and >= 0)
                message = message[..at];
        }
        return message.TrimEnd('.');
    }
}
