using System.Text;

namespace Saponify;

/// <summary>Counts lines and columns in one pass over a file; places are asked for in the order of the file.</summary>
internal sealed class PlaceCounter
{
    private readonly byte[] _utf8;
    private int _at;
    private int _line = 1;
    private int _column = 1;

    internal PlaceCounter(byte[] utf8)
    {
        _utf8 = utf8;
        _at = utf8 is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;
    }

    internal Place At(int offset, int length)
    {
        offset = Math.Clamp(offset, _at, Math.Max(_at, _utf8.Length));
        int start = _at;
        for (; _at < offset; _at++)
        {
            bool ends = _utf8[_at] == '\n' || (_utf8[_at] == '\r' && !(_at + 1 < _utf8.Length && _utf8[_at + 1] == '\n'));
            if (!ends)
                continue;
            _line++;
            _column = 1;
            start = _at + 1;
        }
        _column += Encoding.UTF8.GetCharCount(_utf8.AsSpan(start, offset - start));
        return new(_line, _column, offset, length);
    }
}
