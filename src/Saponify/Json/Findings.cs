using System.Globalization;

namespace Saponify;

/// <summary>What a reading finds, gathered by offset; lines and columns are counted once, in one pass, when it ends.</summary>
internal sealed class Findings(byte[] utf8)
{
    /// <summary>After so many the rest is noise.</summary>
    internal const int Most = 1000;

    private readonly List<(int Start, int Length, string Id, string Pointer, string Text, string? Expected)> _found = [];

    internal int Count => _found.Count;

    /// <summary>True when one more would not be listed.</summary>
    internal bool IsFull => _found.Count > Most;

    internal void Add(string id, int start, int length, string pointer, string text, string? expected)
    {
        if (_found.Count < Most)
            _found.Add((start, length, id, pointer, text, expected));
        else if (_found.Count == Most)
            _found.Add((utf8.Length, 0, ProblemIds.TooLarge, "", string.Create(CultureInfo.InvariantCulture, $"there is more than this; after {Most} the rest is not listed"), null));
    }

    /// <summary>In the order of the file.</summary>
    internal ValueList<Problem> ToProblems()
    {
        if (_found.Count == 0)
            return default;
        PlaceCounter places = new(utf8);
        return
        [
            .. _found.OrderBy(f => f.Start).ThenBy(f => f.Id, StringComparer.Ordinal).ThenBy(f => f.Pointer, StringComparer.Ordinal)
                .Select(f => new Problem(f.Id, places.At(f.Start, f.Length), f.Pointer, f.Text, f.Expected)),
        ];
    }
}
