using System.Text.Json;

namespace Saponify;

/// <summary>A JSON value with the bytes it stands in. A file becomes a tree of these in one pass.</summary>
internal sealed class JsonPiece
{
    private const int MostDepth = 16;

    internal required JsonTokenType Kind { get; init; }

    internal required int Start { get; init; }

    internal int Length { get; private set; }

    /// <summary>The text of a string, or the digits of a number.</summary>
    internal string Text { get; private init; } = "";

    internal List<(string Name, int Start, int Length, JsonPiece Value)> Members { get; } = [];

    internal List<JsonPiece> Items { get; } = [];

    internal int End => Start + Length;

    internal string KindName => Kind switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.String => "a text",
        JsonTokenType.Number => "a number",
        JsonTokenType.True or JsonTokenType.False => "true or false",
        _ => "null",
    };

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
            JsonPiece root = ReadValue(ref reader, skip);
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
            fault = "the text holds bytes or escapes that are no Unicode text";
            return null;
        }
    }

    /// <summary>The value at a JSON pointer (RFC 6901), or null.</summary>
    internal JsonPiece? Find(string pointer)
    {
        JsonPiece? at = this;
        foreach (string step in pointer.Split('/').Skip(1))
        {
            string name = step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
            at = at.Kind == JsonTokenType.StartArray
                ? int.TryParse(name, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int index) && index < at.Items.Count ? at.Items[index] : null
                : at.Members.Find(m => m.Name == name).Value;
            if (at is null)
                return null;
        }
        return at;
    }

    private static JsonPiece ReadValue(ref Utf8JsonReader reader, int skip)
    {
        JsonPiece piece = new()
        {
            Kind = reader.TokenType,
            Start = skip + (int)reader.TokenStartIndex,
            Text = reader.TokenType switch
            {
                JsonTokenType.String => reader.GetString()!,
                JsonTokenType.Number => System.Text.Encoding.UTF8.GetString(reader.ValueSpan),
                _ => "",
            },
        };
        if (reader.TokenType == JsonTokenType.StartObject)
        {
            while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
            {
                (string name, int start) = (reader.GetString()!, skip + (int)reader.TokenStartIndex);
                int length = skip + (int)reader.BytesConsumed - start;
                reader.Read();
                piece.Members.Add((name, start, length, ReadValue(ref reader, skip)));
            }
        }
        else if (reader.TokenType == JsonTokenType.StartArray)
        {
            while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                piece.Items.Add(ReadValue(ref reader, skip));
        }
        piece.Length = skip + (int)reader.BytesConsumed - piece.Start;
        return piece;
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

    /// <summary>The reader's message without its own account of the place.</summary>
    private static string Reason(string message)
    {
        int end = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return (end < 0 ? message : message[..end]).TrimEnd('.');
    }
}
