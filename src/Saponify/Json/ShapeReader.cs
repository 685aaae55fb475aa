using System.Text.Json;

namespace Saponify;

/// <summary>Reads pieces by their shapes and reports every fault of meaning with its place.</summary>
internal sealed class ShapeReader(byte[] utf8)
{
    /// <summary>Looking for the nearest of some hundred names is slow; a file with more unknown ones than this was written by no person.</summary>
    internal const int MostSuggestions = 25;

    internal Findings Problems { get; } = new(utf8);

    internal Findings Notices { get; } = new(utf8);

    /// <summary>How many times the nearest names were looked for.</summary>
    internal int Suggestions { get; private set; }

    internal void Report(string id, JsonPiece piece, string text, string? expected = null)
    {
        if (!Problems.IsFull)
            Problems.Add(id, piece.Start, piece.End - piece.Start, piece.Pointer, text, expected);
    }

    internal void Notice(string id, JsonPiece piece, string text, string? expected = null)
    {
        if (!Notices.IsFull)
            Notices.Add(id, piece.Start, piece.End - piece.Start, piece.Pointer, text, expected);
    }

    /// <summary>A member that is not there: reported at the opening brace of its object.</summary>
    internal void Missing(JsonPiece owner, Member member, string text, string? expected)
    {
        if (!Problems.IsFull)
            Problems.Add(ProblemIds.MissingMember, owner.Start, 1, owner.PointerTo(member.Name), text, expected);
    }

    internal void WrongType(JsonPiece piece, Member member) =>
        Report(ProblemIds.WrongType, piece, $"\"{member.Name}\" is {piece.KindName}", member.Wanted);

    /// <summary>The names nearest to an unknown one; none once too many were asked for.</summary>
    internal ValueList<string> Suggest(Func<string, ValueList<string>> nearest, string name)
    {
        if (Suggestions == MostSuggestions)
            return default;
        Suggestions++;
        return nearest(name);
    }

    /// <summary>The members of an object by the table, checked for unknown, duplicate, missing and contradicting ones; null when it is no object.</summary>
    internal BoundObject? Read(JsonPiece piece, Shape shape)
    {
        if (piece.Kind != JsonTokenType.StartObject)
        {
            Report(ProblemIds.WrongType, piece, $"{(piece.Name is null ? "this" : $"\"{piece.Name}\"")} is {piece.KindName}", "write an object { ... }");
            return null;
        }
        var found = new JsonPiece?[shape.Members.Length];
        HashSet<string>? unknown = null;
        uint misspelt = 0;                                    // members that are there under another name: one fault, one finding
        foreach (JsonPiece item in piece.Items)
        {
            int index = shape.IndexOf(item.Name);
            if (index >= 0 && found[index] is null)
                found[index] = item;
            else if (index >= 0 || (unknown ??= new(StringComparer.Ordinal)).Add(item.Name!) is false)
                AtName(ProblemIds.DuplicateMember, item, $"\"{Short(item.Name!)}\" stands twice", "keep one of them");
            else if (!Problems.IsFull)
                Unknown(item, shape, ref misspelt);
        }
        BoundObject read = new(this, piece, shape, found, misspelt);
        for (int i = 0; i < found.Length; i++)
        {
            Member member = shape.Members[i];
            if (member.Required && !read.IsMeant(member))
                Missing(piece, member, $"\"{member.Name}\" is missing", member.Wanted);
            else if (found[i] is { } refused && member.Refusal is not null)
                AtName(ProblemIds.WrongAmount, refused, member.Refusal, member.Wanted);
        }
        foreach (Alternatives alternatives in shape.OneOf)
            Check(read, alternatives);
        return read;
    }

    internal static string Short(string text) => text.Length <= 60 ? text : string.Concat(text.AsSpan(0, 60), "...");

    private void Unknown(JsonPiece item, Shape shape, ref uint misspelt)
    {
        ValueList<string> near = Nearest.To(item.Name!, shape.Members.Where(m => m.Refusal is null).Select(m => m.Name));
        if (near.Count > 0)
            misspelt |= 1u << shape.IndexOf(near[0]);
        AtName(ProblemIds.UnknownMember, item, $"there is no member \"{Short(item.Name!)}\" here",
            near.Count > 0 ? $"did you mean \"{near[0]}\"?" : "known here: " + string.Join(", ", shape.Members.Where(m => m.Refusal is null).Select(m => m.Name)));
    }

    private void Check(BoundObject read, Alternatives alternatives)
    {
        Member? first = null;
        bool meant = false;
        foreach (Member member in alternatives.Members)
        {
            meant |= read.IsMeant(member);
            if (read.At(member) is not { } piece)
                continue;
            if (first is null)
                first = member;
            else
                Report(ProblemIds.Conflict, piece, $"\"{member.Name}\" stands beside \"{first.Name}\"", alternatives.Keep);
        }
        if (!meant && alternatives.Missing is { } missing)
            Missing(read.Piece, alternatives.Members[0], missing, alternatives.Wanted);
    }

    private void AtName(string id, JsonPiece item, string text, string? expected)
    {
        if (!Problems.IsFull)
            Problems.Add(id, item.NameStart, item.NameEnd - item.NameStart, item.Pointer, text, expected);
    }
}
