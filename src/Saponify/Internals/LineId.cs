using System.Runtime.CompilerServices;
using static System.FormattableString;

namespace Saponify.Internals;

/// <summary>Ids of materials and of lines: short texts that can stand in a path.</summary>
internal static class LineId
{
    internal const int LongestId = 80;

    internal static string Check(string? id, string what)
    {
        Guard.Text(id, what, nameof(id));
        return Fault(id!) is string fault ? throw new ArgumentException($"{what} {fault}", nameof(id)) : id!;
    }

    /// <summary>What is wrong with an id, or null.</summary>
    internal static string? Fault(string id)
    {
        if (id.Length > LongestId)
            return "must have at most 80 characters.";
        if (id != id.Trim())
            return "must not begin or end with a blank.";
        foreach (char c in id)
        {
            if (char.IsControl(c) || char.IsSurrogate(c) || c is '[' or ']' or '/' or '~')
                return "must not hold brackets, slashes, tildes, control characters or characters beyond the basic plane.";
        }
        return null;
    }

    /// <summary>Gives a repeated id the suffix -2, -3 ... that is free; a list whose ids differ already is returned as it is.</summary>
    internal static ValueList<T> MakeUnique<T>(ValueList<T> lines, string what, [CallerArgumentExpression(nameof(lines))] string? name = null) where T : class, ILine<T>, IEquatable<T>
    {
        ReadOnlySpan<T> span = NoNull(lines, what, name).AsSpan();
        return AreUnique(span) ? lines : Renamed(span);
    }

    /// <summary>Refuses a list with a null in it.</summary>
    internal static ValueList<T> NoNull<T>(ValueList<T> lines, string what, [CallerArgumentExpression(nameof(lines))] string? name = null) where T : class, IEquatable<T>
    {
        ReadOnlySpan<T> span = lines.AsSpan();
        for (int i = 0; i < span.Length; i++)
        {
            if (span[i] is null)
                throw new ArgumentException(Invariant($"{what} hold a null at place {i}."), name);
        }
        return lines;
    }

    private static bool AreUnique<T>(ReadOnlySpan<T> lines) where T : class, ILine<T>
    {
        if (lines.Length > 16)
        {
            HashSet<string> seen = new(lines.Length, StringComparer.Ordinal);
            foreach (T line in lines)
            {
                if (!seen.Add(line.Line))
                    return false;
            }
            return true;
        }
        for (int i = 1; i < lines.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (lines[i].Line == lines[j].Line)
                    return false;
            }
        }
        return true;
    }

    private static ValueList<T> Renamed<T>(ReadOnlySpan<T> lines) where T : class, ILine<T>, IEquatable<T>
    {
        T[] renamed = lines.ToArray();
        HashSet<string> names = new(renamed.Select(l => l.Line), StringComparer.Ordinal);
        HashSet<string> seen = new(StringComparer.Ordinal);
        Dictionary<string, int> next = new(StringComparer.Ordinal);
        for (int i = 0; i < renamed.Length; i++)
        {
            string stem = renamed[i].Line;
            if (seen.Add(stem))
                continue;
            int number = next.GetValueOrDefault(stem, 2);
            while (!names.Add(Invariant($"{stem}-{number}")))
                number++;
            next[stem] = number + 1;
            renamed[i] = renamed[i].WithLine(Invariant($"{stem}-{number}"));
            seen.Add(renamed[i].Line);
        }
        return new(renamed);
    }
}
