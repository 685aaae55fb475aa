namespace Saponify;

/// <summary>The names nearest to a misspelt one.</summary>
internal static class Nearest
{
    private const int LongestName = 100;

    /// <summary>At most three ids, best first, ties by name; those whose words or letters differ too much are left out.</summary>
    internal static ValueList<string> To(string name, IEnumerable<string> names, Func<string, string> id)
    {
        if (name.Length > LongestName)
            return default;
        string wanted = name.ToUpperInvariant();
        int limit = Math.Max(2, wanted.Length / 3);
        return
        [
            .. names.Select(n => (Id: id(n), Distance: Score(wanted, n.ToUpperInvariant(), limit)))
                .Where(n => n.Distance <= limit)
                .GroupBy(n => n.Id, StringComparer.Ordinal)
                .Select(g => (Id: g.Key, Distance: g.Min(n => n.Distance)))
                .OrderBy(n => n.Distance).ThenBy(n => n.Id, StringComparer.Ordinal)
                .Take(3).Select(n => n.Id),
        ];
    }

    /// <summary>Edit distance; a name that holds the wanted one as a whole counts as near. Lengths that differ by more than the limit need no comparing.</summary>
    private static int Score(string wanted, string name, int limit)
    {
        if (wanted.Length >= 3 && name.Contains(wanted, StringComparison.Ordinal))
            return 1;
        return Math.Abs(wanted.Length - name.Length) > limit ? int.MaxValue : Distance(wanted, name);
    }

    /// <summary>Edits (insert, delete, replace, swap of neighbours) from one text to the other.</summary>
    private static int Distance(string one, string other)
    {
        int[] before = new int[other.Length + 1], last = new int[other.Length + 1], row = new int[other.Length + 1];
        for (int j = 0; j <= other.Length; j++)
            last[j] = j;
        for (int i = 1; i <= one.Length; i++)
        {
            row[0] = i;
            for (int j = 1; j <= other.Length; j++)
            {
                int replace = last[j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1);
                row[j] = Math.Min(replace, Math.Min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
            }
            (before, last, row) = (last, row, before);
        }
        return last[other.Length];
    }
}
