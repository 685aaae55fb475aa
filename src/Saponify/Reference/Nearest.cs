using System.Numerics;
using Saponify.Internals;

namespace Saponify;

/// <summary>
/// The names nearest to a misspelt one. Quick on any name: those too long are not looked at, and names whose length or letters differ too
/// much are passed over before their edits are counted. Thread-safe.
/// </summary>
internal sealed class Nearest
{
    private const int LongestName = 100;
    private const int MostEdits = 4;

    private readonly (string Name, string Id, ulong Letters)[] _names;

    internal Nearest(IEnumerable<(string Name, string Id)> names)
    {
        _names = [.. names.Select(n => (Name: FoldedName.Of(n.Name), n.Id)).Select(n => (n.Name, n.Id, Letters(n.Name)))];
    }

    /// <summary>At most three ids, best first, ties by name; none when nothing is near.</summary>
    internal static ValueList<string> To(string name, IEnumerable<string> names) => new Nearest(names.Select(n => (n, n))).To(name);

    /// <summary>At most three ids, best first, ties by name; none when nothing is near.</summary>
    internal ValueList<string> To(string name)
    {
        if (name.Length > LongestName)
            return default;
        string wanted = FoldedName.Of(name);
        ulong letters = Letters(wanted);
        int limit = Math.Clamp(wanted.Length / 3, 2, MostEdits);
        List<(int Distance, string Id)> near = [];
        foreach ((string known, string id, ulong its) in _names)
        {
            int distance = wanted.Length >= 3 && known.Contains(wanted, StringComparison.Ordinal) ? 1
                : Math.Abs(wanted.Length - known.Length) > limit || Math.Max(BitOperations.PopCount(letters & ~its), BitOperations.PopCount(its & ~letters)) > limit ? int.MaxValue
                : Edits(wanted, known, limit);
            if (distance <= limit)
                near.Add((distance, id));
        }
        near.Sort((a, b) => a.Distance != b.Distance ? a.Distance - b.Distance : string.CompareOrdinal(a.Id, b.Id));
        return [.. near.Select(n => n.Id).Distinct(StringComparer.Ordinal).Take(3)];
    }

    /// <summary>One bit per kind of character: each edit can bring in or take away only one.</summary>
    private static ulong Letters(string text)
    {
        ulong letters = 0;
        foreach (char c in text)
            letters |= 1UL << (c & 63);
        return letters;
    }

    /// <summary>Edits (insert, delete, replace, swap of neighbours) from one text to the other; more than the limit are not counted out.</summary>
    private static int Edits(string one, string other, int limit)
    {
        int[] before = new int[other.Length + 1], last = new int[other.Length + 1], row = new int[other.Length + 1];
        for (int j = 0; j <= other.Length; j++)
            last[j] = j;
        for (int i = 1; i <= one.Length; i++)
        {
            row[0] = i;
            int least = i;
            for (int j = 1; j <= other.Length; j++)
            {
                int replace = last[j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1);
                row[j] = Math.Min(replace, Math.Min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                least = Math.Min(least, row[j]);
            }
            if (least > limit + 1)                                 // a swap may still come back by one
                return int.MaxValue;
            (before, last, row) = (last, row, before);
        }
        return last[other.Length];
    }
}
