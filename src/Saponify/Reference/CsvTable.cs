using System.Globalization;
using System.Text;
using CsvHelper;
using Saponify.Internals;

namespace Saponify;

/// <summary>
/// A CSV table (RFC 4180, UTF-8, header row) read row by row. Columns are named once and then asked for by their index in that list. All
/// faults of fields and of the number of fields are reported, and the first fault of quoting, which hides what follows. The only file that
/// knows the CSV library.
/// </summary>
internal sealed class CsvTable : IDisposable
{
    private static readonly double[] s_powers = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14];

    private readonly CsvReader _reader;
    private readonly List<TableFault> _faults;
    private readonly string _name;
    private readonly string[] _columns;
    private readonly int[] _places;
    private int _fields;
    private readonly string[] _texts;
    private string? _listText;
    private ValueList<string> _list;

    private CsvTable(string name, CsvReader reader, string[] columns, List<TableFault> faults)
    {
        _name = name;
        _reader = reader;
        _columns = columns;
        _places = new int[columns.Length];
        _texts = new string[columns.Length];
        _faults = faults;
    }

    /// <summary>The line the row starts at, from 1.</summary>
    internal int Line => (int)_reader.LineNumber;

    /// <summary>Opens a table with these columns in any order, the first ones of which must be there; a column that is not named is a fault.</summary>
    /// <param name="name">How faults name the table.</param>
    /// <param name="utf8">Its bytes.</param>
    /// <param name="columns">The columns it may have.</param>
    /// <param name="required">How many of them, from the first, it must have.</param>
    /// <param name="faults">Where faults go.</param>
    internal static CsvTable Open(string name, Stream utf8, string[] columns, int required, List<TableFault> faults)
    {
        CsvReaderOptions options = CsvReaderOptions.Default with
        {
            Separator = ',',
            FormatProvider = CultureInfo.InvariantCulture,
            TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Throw,
            FieldCountMismatch = CsvFieldCountHandling.Allow,
            IncludeValuesInExceptions = false,
        };
        CsvTable table = new(name, CsvReader.Create(utf8, options), columns, faults);
        table.ReadHeader(required);
        return table;
    }

    internal static CsvTable Open(string name, Stream utf8, string[] columns, List<TableFault> faults) => Open(name, utf8, columns, columns.Length, faults);

    /// <summary>Goes to the next row; false at the end. Rows with too few or too many fields are faults and passed over.</summary>
    internal bool Next()
    {
        while (_fields > 0 && Advance())
        {
            if (_reader.FieldCount == _fields)
                return true;
            _faults.Add(new(_name, Line, "", FormattableString.Invariant($"the row has {_reader.FieldCount} fields and the header {_fields}; put a text with a comma in quotes")));
        }
        _fields = 0;
        return false;
    }

    public void Dispose() => _reader.Dispose();

    /// <summary>A fault of the row, or of one of its columns.</summary>
    internal void Fault(int column, string reason) => FaultAt(Line, column, reason);

    internal void FaultOfRow(string reason) => _faults.Add(new(_name, Line, "", reason));

    internal void FaultAt(int line, int column, string reason) => _faults.Add(new(_name, line, _columns[column], reason));

    /// <summary>True when the header names this column.</summary>
    internal bool Has(int column) => _places[column] >= 0;

    /// <summary>The text of a field; the same object as in the row before where that has the same text, which sorted tables often have.</summary>
    internal string Text(int column)
    {
        if (_places[column] is not (>= 0 and int place) || _reader.IsEmpty(place))
            return "";
        ReadOnlySpan<byte> utf8 = _reader.GetSpan(place);
        return _texts[column] is { } last && Ascii.Equals(utf8, last) ? last : _texts[column] = Encoding.UTF8.GetString(utf8);
    }

    internal bool IsBlank(int column) => _places[column] is not (>= 0 and int place) || _reader.IsEmpty(place);

    internal string? Optional(int column) => Text(column) is { Length: > 0 } text ? text : null;

    internal string Required(int column)
    {
        string text = Text(column);
        if (string.IsNullOrWhiteSpace(text))
            Fault(column, "it is blank; a value is needed");
        return text;
    }

    /// <summary>A finite number in the range, or null when the field is blank or wrong.</summary>
    internal double? Number(int column, double low, double high)
    {
        if (IsBlank(column))
            return null;
        ReadOnlySpan<byte> text = _reader.GetSpan(_places[column]);
        if (!TryShort(text, out double value)
            && (!double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value) || !double.IsFinite(value)))
        {
            Fault(column, $"\"{Shown(text)}\" is no number; write it with a decimal point and without a thousands separator");
            return null;
        }
        if (value < low || value > high)
        {
            Fault(column, $"{Internals.Text.Exact(value)} is outside {Internals.Text.Exact(low)} to {Internals.Text.Exact(high)}");
            return null;
        }
        return value;
    }

    /// <summary>The value that a word stands for.</summary>
    internal T OneOf<T>(int column, ReadOnlySpan<(string Text, T Value)> choices, T otherwise)
    {
        ReadOnlySpan<byte> text = _places[column] is >= 0 and int place ? _reader.GetSpan(place) : default;
        foreach ((string known, T value) in choices)
        {
            if (Ascii.Equals(text, known))
                return value;
        }
        List<string> names = [];
        foreach ((string known, _) in choices)
            names.Add(known);
        Fault(column, $"\"{Shown(text)}\" is none of: {string.Join(", ", names)}");
        return otherwise;
    }

    /// <summary>The parts of a field, separated by semicolons.</summary>
    internal ValueList<string> List(int column)
    {
        string text = Text(column);
        if (text.Length == 0)
            return default;
        if (!ReferenceEquals(text, _listText))                 // neighbouring rows often name the same sources
            (_listText, _list) = (text, text.Contains(';', StringComparison.Ordinal) ? [.. text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)] : text.Trim() is { Length: > 0 } only ? [only] : default);
        return _list;
    }

    /// <summary>True when the field has this text of plain letters.</summary>
    internal bool Is(int column, string text) => _places[column] is >= 0 and int place ? Ascii.Equals(_reader.GetSpan(place), text) : text.Length == 0;

    /// <summary>Up to fifteen digits with a point: an integer over a power of ten, both exact, so that one division rounds once.</summary>
    private static bool TryShort(ReadOnlySpan<byte> text, out double value)
    {
        long digits = 0;
        int point = -1;
        value = 0;
        if (text.Length > 15 || text[^1] == '.')
            return false;
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] is >= (byte)'0' and <= (byte)'9')
                digits = (digits * 10) + (text[i] - '0');
            else if (text[i] == '.' && point < 0 && i > 0)
                point = i;
            else
                return false;
        }
        value = point < 0 ? digits : digits / s_powers[text.Length - 1 - point];
        return true;
    }

    private bool Advance()
    {
        try
        {
            return _reader.Read();
        }
        catch (CsvFormatException fault)
        {
            QuoteFault(fault);
            return false;
        }
    }

    private void ReadHeader(int required)
    {
        string[] headers;
        try
        {
            _reader.ReadHeader();
            headers = [.. _reader.Headers];
        }
        catch (CsvFormatException fault)
        {
            QuoteFault(fault);
            return;
        }
        if (headers is [var only] && only.Contains(';', StringComparison.Ordinal))
        {
            _faults.Add(new(_name, 1, "", "the fields are separated by semicolons; separate them by commas and write numbers with a point"));
            return;
        }
        int before = _faults.Count;
        for (int i = 0; i < _columns.Length; i++)
        {
            _places[i] = Array.FindIndex(headers, h => Matches(h, _columns[i]));
            if (_places[i] < 0 && i < required)
                _faults.Add(new(_name, 1, _columns[i], "the column is missing; wanted: " + string.Join(",", _columns[..required])));
        }
        if (_faults.Count == before)
            _fields = headers.Length;
        for (int i = 0; i < headers.Length; i++)
        {
            int column = Array.FindIndex(_columns, c => Matches(headers[i], c));
            if (column < 0)
                _faults.Add(new(_name, 1, headers[i], "there is no such column; known: " + string.Join(",", _columns)));
            else if (_places[column] != i)
                _faults.Add(new(_name, 1, headers[i], "the column stands twice"));
        }
    }

    private void QuoteFault(CsvFormatException fault) =>
        _faults.Add(new(_name, (int)fault.LineNumber, "", $"the quotes are not those of a table (RFC 4180): {fault.Message}"));

    private static bool Matches(string header, string column) => header.AsSpan().Trim().Equals(column, StringComparison.OrdinalIgnoreCase);

    private static string Shown(ReadOnlySpan<byte> text)
    {
        string shown = Encoding.UTF8.GetString(text[..Math.Min(text.Length, 40)]);
        return text.Length > 40 ? shown + "..." : shown;
    }
}
