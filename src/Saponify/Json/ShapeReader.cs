using System.Globalization;
using System.Text.Json;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Reads pieces by their shapes and reports every fault of meaning with its place.</summary>
internal sealed class ShapeReader(byte[] utf8)
{
    /// <summary>After so many problems the rest is noise.</summary>
    private const int MostProblems = 1000;

    internal List<Problem> Problems { get; } = [];

    internal List<Problem> Notices { get; } = [];

    internal void Report(string id, int start, int length, FilePointer pointer, string text, string? expected = null)
    {
        if (Problems.Count < MostProblems)
            Problems.Add(new(id, Place.At(utf8, start, length), pointer.ToString(), text, expected));
    }

    internal void Report(string id, JsonPiece piece, FilePointer pointer, string text, string? expected = null) =>
        Report(id, piece.Start, piece.Length, pointer, text, expected);

    internal void Notice(string id, JsonPiece piece, FilePointer pointer, string text, string? expected = null) =>
        Notices.Add(new(id, Place.At(utf8, piece.Start, piece.Length), pointer.ToString(), text, expected));

    /// <summary>The members of an object by the table, checked for unknown, duplicate and missing ones and for their types; null when it is no object.</summary>
    internal BoundObject? Read(JsonPiece piece, Shape shape, FilePointer pointer)
    {
        if (piece.Kind != JsonTokenType.StartObject)
        {
            Report(ProblemIds.WrongType, piece, pointer, $"{shape.Name} is {piece.KindName}", "write an object { ... }");
            return null;
        }
        var found = new JsonPiece?[shape.Members.Length];
        HashSet<string>? unknown = null;
        ulong meantOnes = 0;                                  // members that are there under a misspelt name: one fault, one finding
        foreach ((string name, int start, int length, JsonPiece value) in piece.Members)
        {
            int index = shape.IndexOf(name);
            FilePointer at = pointer.Member(name);
            if (index < 0)
            {
                if ((unknown ??= new(StringComparer.Ordinal)).Add(name))
                {
                    string? meant = Meant(name, shape);
                    meantOnes |= meant is null ? 0 : 1UL << shape.IndexOf(meant);
                    Report(ProblemIds.UnknownMember, start, length, at, $"there is no member \"{Short(name)}\" here",
                        meant is null ? "known here: " + string.Join(", ", shape.Members.Select(m => m.Name)) : $"did you mean \"{meant}\"?");
                }
                else
                    Report(ProblemIds.DuplicateMember, start, length, at, $"\"{Short(name)}\" stands twice");
            }
            else if (found[index] is not null)
            {
                Report(ProblemIds.DuplicateMember, start, length, at, $"\"{name}\" stands twice", "keep one of them");
            }
            else
            {
                found[index] = value;
            }
        }
        for (int i = 0; i < found.Length; i++)
        {
            if (found[i] is null && shape.Members[i].Required && (meantOnes >> i & 1) == 0)
                Report(ProblemIds.MissingMember, piece.Start, 1, pointer.Member(shape.Members[i].Name), $"\"{shape.Members[i].Name}\" is missing", shape.Members[i].Wanted);
        }
        return new(this, piece, shape, pointer, found, meantOnes);
    }

    internal void WrongType(JsonPiece piece, Member member, FilePointer pointer) =>
        Report(ProblemIds.WrongType, piece, pointer, $"\"{member.Name}\" is {piece.KindName}", member.Wanted);

    private static string? Meant(string name, Shape shape)
    {
        ValueList<string> near = Nearest.To(name, shape.Members.Select(m => m.Name));
        return near.Count > 0 ? near[0] : null;
    }

    internal static string Short(string text) => text.Length <= 60 ? text : string.Concat(text.AsSpan(0, 60), "...");
}
