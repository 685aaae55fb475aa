using System.Runtime.InteropServices;
using System.Text;

namespace Saponify;

/// <summary>A place in a text file. Line and column count from 1, the column in UTF-16 units as editors do; offset and length are in bytes of UTF-8.</summary>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Place
{
    internal Place(int line, int column, int offset, int length) => (Line, Column, Offset, Length) = (line, column, offset, length);

    /// <summary>Line, from 1. A line ends with LF, CR LF or CR.</summary>
    public int Line { get; }

    /// <summary>Column in UTF-16 units, from 1. A byte order mark does not count.</summary>
    public int Column { get; }

    /// <summary>Offset from the start of the file in bytes, a byte order mark included.</summary>
    public int Offset { get; }

    /// <summary>Length in bytes.</summary>
    public int Length { get; }

    /// <summary>The place of an offset: counts its line and the UTF-16 units before it.</summary>
    internal static Place At(ReadOnlySpan<byte> utf8, int offset, int length)
    {
        int start = utf8 is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;
        offset = Math.Clamp(offset, start, Math.Max(start, utf8.Length));
        int line = 1;
        for (int at = start; at < offset; at++)
        {
            bool ends = utf8[at] == '\n' || (utf8[at] == '\r' && !(at + 1 < utf8.Length && utf8[at + 1] == '\n'));
            if (!ends)
                continue;
            line++;
            start = at + 1;
        }
        return new(line, Encoding.UTF8.GetCharCount(utf8[start..offset]) + 1, offset, length);
    }
}
