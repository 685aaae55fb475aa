using System.Globalization;
using CsvHelper;
using Saponify.Internals;
using static System.FormattableString;

namespace Saponify;

/// <summary>
/// A CSV table (RFC 4180, UTF-8, header row) read whole. All faults of fields are reported, and the first fault of structure.
/// The only file that knows the CSV library.
/// </summary>
internal sealed class CsvTable
{
    private readonly List<TableFault> _faults;
    private readonly string _name;
    private readonly string[] _columns;

    private CsvTable(string name, string[] columns, List<TableFault> faults)
    {
        _name = name;
        _columns = columns;
        _faults = faults;
    }

    internal List<Row> Rows { get; } = [];

    /// <summary>Reads a table with exactly these columns in any order, more columns are a fault.</summary>
    internal static CsvTable Read(string name, Stream utf8, ReadOnlySpan<string> columns, List<TableFault> faults)
    {
        CsvTable table = new(name, columns.ToArray(), faults);
        CsvReaderOptions options = CsvReaderOptions.Default with
        {
            Separator = ',',
            FormatProvider = CultureInfo.InvariantCulture,
            TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Throw,
            FieldCountMismatch = CsvFieldCountHandling.Throw,
            PoolStrings = true,
        };
        using CsvReader reader = CsvReader.Create(utf8, options, leaveOpen: true);
        try
        {
            table.ReadRows(reader);
        }
        catch (CsvFormatException fault)
        {
            faults.Add(new(name, (int)fault.LineNumber, "", fault.Message));
        }
        return table;
    }

    /// <summary>A fault of the whole table.</summary>
    internal void Fault(string reason) => _faults.Add(new(_name, 0, "", reason));

    private void ReadRows(CsvReader reader)
    {
        bool any = reader.Read();
        int[] places = new int[_columns.Length];
        for (int i = 0; i < places.Length; i++)
        {
            places[i] = Array.IndexOf([.. reader.Headers], _columns[i]);
            if (places[i] < 0)
                _faults.Add(new(_name, 1, _columns[i], "the column is missing; wanted: " + string.Join(",", _columns)));
        }
        foreach (string header in reader.Headers)
        {
            if (!_columns.Contains(header, StringComparer.Ordinal))
                _faults.Add(new(_name, 1, header, "there is no such column; wanted: " + string.Join(",", _columns)));
        }
        if (places.Contains(-1))
            return;
        for (; any; any = reader.Read())
        {
            string[] fields = new string[places.Length];
            for (int i = 0; i < fields.Length; i++)
                fields[i] = reader.GetString(places[i]);
            Rows.Add(new(this, (int)reader.LineNumber, fields));
        }
    }

    /// <summary>One row of a table; what is wrong with a field goes to the table's faults.</summary>
    internal sealed class Row(CsvTable table, int line, string[] fields)
    {
        internal int Line => line;

        internal string this[string column] => fields[Array.IndexOf(table._columns, column)];

        internal void Fault(string column, string reason) => table._faults.Add(new(table._name, line, column, reason));

        internal string? Optional(string column) => this[column] is { Length: > 0 } text ? text : null;

        internal string Required(string column)
        {
            string text = this[column];
            if (text.Length == 0)
                Fault(column, "it is blank; a value is needed");
            return text;
        }

        /// <summary>A finite number, or null when the field is blank or wrong.</summary>
        internal double? Number(string column, double low, double high)
        {
            string text = this[column];
            if (text.Length == 0)
                return null;
            if (!double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out double value) || !double.IsFinite(value))
            {
                Fault(column, $"\"{text}\" is no number; write it with a decimal point and without a thousands separator");
                return null;
            }
            if (value < low || value > high)
            {
                Fault(column, $"{Text.Exact(value)} is outside {Text.Exact(low)} to {Text.Exact(high)}");
                return null;
            }
            return value;
        }

        internal T OneOf<T>(string column, ReadOnlySpan<(string Text, T Value)> choices, T otherwise)
        {
            string text = this[column];
            foreach ((string known, T value) in choices)
            {
                if (string.Equals(text, known, StringComparison.Ordinal))
                    return value;
            }
            List<string> names = [];
            foreach ((string known, _) in choices)
                names.Add(known);
            Fault(column, $"\"{text}\" is none of: {string.Join(", ", names)}");
            return otherwise;
        }

        internal ValueList<string> List(string column) => [.. this[column].Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

        public override string ToString() => Invariant($"{table._name}({line})");
    }
}
