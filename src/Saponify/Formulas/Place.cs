using System.Runtime.InteropServices;

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
}
