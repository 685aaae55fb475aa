using System.Buffers;
using System.Text;

namespace Saponify;

/// <summary>Replacements of spans of a file; every byte outside them stays.</summary>
internal sealed class FileEdits(byte[] utf8)
{
    private readonly List<(int Start, int End, string Text)> _edits = [];

    internal void Replace(int start, int end, string text) => _edits.Add((start, end, text));

    internal void Insert(int at, string text) => _edits.Add((at, at, text));

    internal void Remove(int start, int end) => _edits.Add((start, end, ""));

    /// <summary>A part of the file with the edits in it. Insertions at one place keep their order and come before what is replaced there; removals may overlap.</summary>
    internal byte[] Apply(int from, int to)
    {
        ArrayBufferWriter<byte> result = new(to - from + 256);
        int at = from;
        foreach ((int start, int end, string text) in _edits.OrderBy(e => e.Start).ThenBy(e => e.End))
        {
            if (start > at)
                result.Write(utf8.AsSpan(at, start - at));
            Encoding.UTF8.GetBytes(text, result);
            at = Math.Max(at, end);
        }
        result.Write(utf8.AsSpan(at, to - at));
        return result.WrittenSpan.ToArray();
    }
}
