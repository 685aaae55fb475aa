using System.Globalization;
using System.Text.Unicode;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// Weighings of curing bars from a CSV table: columns <c>date</c> (2026-11-25) and <c>mass</c> with its unit (112.4 g, 3.96 oz), and, for more than one
/// bar, <c>bar</c>; a column <c>note</c> is passed over. RFC 4180, UTF-8, commas. Immutable, thread-safe.
/// </summary>
public sealed class CureFile
{
    /// <summary>The largest table that is read, in bytes: 1 MB.</summary>
    public const int LargestBytes = 1_000_000;

    private const string Name = "weighings";

    private const int Date = 0, MassColumn = 1, Bar = 2;

    private static readonly string[] s_columns = ["date", "mass", "bar", "note"];

    private CureFile(ValueList<CureSeries> series, ValueList<TableFault> faults, ValueList<TableFault> findings) => (Series, Faults, Findings) = (series, faults, findings);

    /// <summary>A series a bar, in the order the bars come first; empty when the table can't be read.</summary>
    public ValueList<CureSeries> Series { get; }

    /// <summary>Why the table can't be read, each with line and column; empty when it can.</summary>
    public ValueList<TableFault> Faults { get; }

    /// <summary>What is wrong in the series (<see cref="CureSeries.Faults"/>), each with line and column.</summary>
    public ValueList<TableFault> Findings { get; }

    /// <summary>Reads a table.</summary>
    /// <param name="utf8">Its bytes.</param>
    /// <param name="scale">The scale; null when it is not known.</param>
    /// <param name="poured">What each bar weighed as poured; null when it is not known.</param>
    /// <param name="moisture">What of the batter can evaporate; null when the formula is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A poured mass of 0, negative, above 1000 kg, or not a number.</exception>
    public static CureFile Read(ReadOnlySpan<byte> utf8, Scale? scale = null, Mass? poured = null, Moisture? moisture = null)
    {
        if (poured is { } mass)
            Stored.BarGrams(mass, "The poured mass of a bar", nameof(poured));
        if (utf8.Length > LargestBytes)
            return Failed(FormattableString.Invariant($"the table has {utf8.Length} bytes; at most {LargestBytes} are read"));
        if (!Utf8.IsValid(utf8))
            return Failed("the table is not in UTF-8; save it as \"CSV UTF-8\"");
        List<TableFault> faults = [], findings = [];
        List<string> order = [];
        Dictionary<string, List<(BarWeighing Weighing, int Line)>> bars = new(StringComparer.Ordinal);
        using MemoryStream stream = new(utf8.ToArray(), writable: false);
        using (CsvTable rows = CsvTable.Open(Name, stream, s_columns, required: 2, faults))
        {
            while (rows.Next())
            {
                string bar = rows.Has(Bar) ? rows.Required(Bar).Trim() : CureSeries.Unnamed;
                if (ReadRow(rows) is not { } weighing || bar.Length == 0)
                    continue;
                if (!bars.TryGetValue(bar, out List<(BarWeighing, int)>? noted))
                {
                    bars[bar] = noted = [];
                    order.Add(bar);
                }
                noted.Add((weighing, rows.Line));
            }
        }
        if (faults.Count == 0 && order.Count == 0)
            return Failed("there is no weighing in it");
        if (faults.Count > 0)
            return new(default, [.. faults.OrderBy(f => f.Line)], default);
        List<CureSeries> series = [];
        foreach (string bar in order)
        {
            CureSeries one = new(bar, [.. bars[bar].Select(w => w.Weighing)]) { Scale = scale, Poured = poured, Moisture = moisture };
            series.Add(one);
            foreach (CureFault fault in one.Faults)
                findings.Add(new(Name, bars[bar][fault.Index].Line, s_columns[fault.Kind == CureFaultKind.DateBackwards ? Date : MassColumn], fault.Reason));
        }
        return new([.. series], default, [.. findings.OrderBy(f => f.Line)]);
    }

    private static BarWeighing? ReadRow(CsvTable rows)
    {
        string day = rows.Required(Date).Trim(), text = rows.Required(MassColumn).Trim();
        if (day.Length == 0 || text.Length == 0)
            return null;
        bool hasDate = DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date);
        if (!hasDate)
            rows.Fault(Date, $"\"{day}\" is no date; write it like 2026-03-01");
        if (!AmountReader.TryMass(text, out Mass mass, out string? fault))
            rows.Fault(MassColumn, fault!);
        else if (!Stored.BarLimits.Holds(Stored.ToGrams(mass)))
            rows.Fault(MassColumn, $"\"{text}\" is no mass of a bar: it lies above 0 and up to 1000 kg");
        else if (hasDate)
            return new(date, mass);
        return null;
    }

    private static CureFile Failed(string reason) => new(default, [new(Name, 0, "", reason)], default);
}
