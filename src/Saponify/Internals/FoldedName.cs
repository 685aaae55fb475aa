using System.Globalization;
using System.Text;

namespace Saponify.Internals;

/// <summary>
/// Names as look-ups compare them: without case, accents and apostrophes, and with everything else between letters and digits as one blank,
/// so that <c>Karité</c>, <c>KARITE</c> and <c>café-crème</c>, <c>cafe creme</c> are the same. Own tables instead of a culture or the platform's
/// normalisation: the same everywhere, invariant globalisation included.
/// </summary>
internal static class FoldedName
{
    /// <summary>Names are equal when they fold to the same text.</summary>
    internal static IEqualityComparer<string> Comparer { get; } = new ByFoldedName();

    // base letter for U+00C0 to U+017F, Latin letters with accents; a blank stands for no letter, a digit for two letters
    private const string Latin =
        "AAAAAA1CEEEEIIIIDNOOOOO OUUUUY23AAAAAA1CEEEEIIIIDNOOOOO OUUUUY2Y"
        + "AAAAAACCCCCCCCDDDDEEEEEEEEEEGGGGGGGGHHHHIIIIIIIIII44JJKKKLLLLLLLLLLNNNNNNNNNOOOOOO55RRRRRRSSSSSSSSTTTTTTUUUUUUUUUUUUWWYYYZZZZZZS";

    private static readonly string[] s_pairs = ["AE", "TH", "SS", "IJ", "OE"];

    /// <summary>The folded text: capital letters and digits, single blanks between words.</summary>
    internal static string Of(string name)
    {
        StringBuilder text = new(name.Length);
        Walk walk = new(name);
        while (walk.Next())
            text.Append(walk.Current);
        return text.ToString();
    }

    /// <summary>True when the name folds to nothing that can be looked up.</summary>
    internal static bool IsEmpty(string name) => !new Walk(name).Next();

    private ref struct Walk(ReadOnlySpan<char> name)
    {
        private readonly ReadOnlySpan<char> _name = name;
        private int _at;
        private bool _gap;
        private bool _any;
        private char _second;

        internal char Current { get; private set; }

        internal bool Next()
        {
            if (_second != default)
            {
                (Current, _second) = (_second, default);
                return true;
            }
            while (_at < _name.Length)
            {
                char c = _name[_at];
                if (!TryFold(c, out char first, out char second))
                {
                    _at++;
                    _gap = true;
                    continue;
                }
                if (first == default)                       // an apostrophe or a combining accent
                {
                    _at++;
                    continue;
                }
                if (_gap && _any)
                {
                    (_gap, Current) = (false, ' ');
                    return true;
                }
                _at++;
                (_gap, _any) = (false, true);
                (Current, _second) = (first, second);
                return true;
            }
            return false;
        }

        private static bool TryFold(char c, out char first, out char second)
        {
            second = default;
            if (c < 0x80)
            {
                first = c == '\'' ? default : char.ToUpperInvariant(c);
                return char.IsAsciiLetterOrDigit(c) || c is '%' or '\'';
            }
            if (c is >= '\u00C0' and <= '\u017F')
            {
                first = Latin[c - 0xC0];
                if (first is >= '1' and <= '5')
                    (first, second) = (s_pairs[first - '1'][0], s_pairs[first - '1'][1]);
                return first != ' ';
            }
            UnicodeCategory category = CharUnicodeInfo.GetUnicodeCategory(c);
            first = category == UnicodeCategory.NonSpacingMark || c == '\u2019' ? default : char.ToUpperInvariant(c);
            return first == default || category == UnicodeCategory.Surrogate || char.IsLetterOrDigit(c);
        }
    }

    private sealed class ByFoldedName : IEqualityComparer<string>
    {
        public bool Equals(string? x, string? y)
        {
            if (ReferenceEquals(x, y))
                return true;
            if (x is null || y is null)
                return false;
            Walk one = new(x);
            Walk other = new(y);
            while (true)
            {
                (bool more, bool moreOther) = (one.Next(), other.Next());
                if (more != moreOther || (more && one.Current != other.Current))
                    return false;
                if (!more)
                    return true;
            }
        }

        public int GetHashCode(string name)
        {
            HashCode hash = default;
            Walk walk = new(name);
            ulong block = 0;
            for (int i = 1; walk.Next(); i++)
            {
                block = (block << 16) | walk.Current;
                if (i % 4 == 0)
                    hash.Add(block);
            }
            hash.Add(block);
            return hash.ToHashCode();
        }
    }
}
