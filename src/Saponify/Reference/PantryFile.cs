using System.Text.Unicode;

namespace Saponify;

/// <summary>
/// An own table of fats read onto a pantry: a supplier's certificates, a mill's analysis. There is a pantry, or there are faults: a table is
/// never half taken over. Immutable, thread-safe.
/// </summary>
/// <remarks>
/// <para>CSV by RFC 4180, UTF-8, commas, numbers with a point. Columns, in any order: <c>id</c>, <c>name</c>, <c>SV</c> and <c>source</c>
/// must be there; <c>lot</c>, <c>date</c> (2026-03-01), <c>SV_low</c>, <c>SV_high</c>, <c>AV</c>, <c>IV</c>, <c>unsaponifiable</c>,
/// <c>density</c>, <c>class</c>, <c>origin</c>, <c>allergen</c>, <c>aliases</c>, <c>note</c> and a column per fatty acid may. A row without a
/// source is refused.</para>
/// <para><c>SV</c> (mg KOH per g) is the value of what stands on the shelf: the fat becomes that lot, the value is used as it is, beats the
/// table, and makes a fat usable that the tables hold for usable only with its lot's value. <c>SV_low</c> with <c>SV_high</c> instead is a
/// specification: it replaces the published range, and the library's rule takes the lower of its middle and the fatty acids. Together with a
/// <c>lot</c> its low end counts. A wax takes up lye by <c>AV</c>; its <c>SV</c> is shown, not used.</para>
/// <para>An id that the pantry has gets what the row gives and keeps the rest; another id is a new fat, a triglyceride unless
/// <c>class</c> says otherwise. What is blank stays unknown, and what rests on it can't be computed.</para>
/// </remarks>
public sealed class PantryFile
{
    /// <summary>The largest table that is read, in bytes: 16 MB.</summary>
    public const int LargestBytes = 16_000_000;

    private PantryFile(Pantry? pantry, ValueList<Fat> fats, ValueList<TableFault> faults, ValueList<TableFault> notices)
    {
        Pantry = pantry;
        Fats = fats;
        Faults = faults;
        Notices = notices;
    }

    /// <summary>The pantry with the rows on top; null when the table has faults.</summary>
    public Pantry? Pantry { get; }

    /// <summary>The fats of the table as they are in <see cref="Pantry"/>, sorted by id; empty when the table has faults.</summary>
    public ValueList<Fat> Fats { get; }

    /// <summary>What is wrong, with line and column: all faults of fields, and the first of quoting. Empty when there is a pantry.</summary>
    public ValueList<TableFault> Faults { get; }

    /// <summary>What is worth checking and does not hinder: values that take more lye than anything on file for the fat.</summary>
    public ValueList<TableFault> Notices { get; }

    internal static PantryFile Read(ReadOnlySpan<byte> utf8, Pantry below)
    {
        if (utf8.Length > LargestBytes)
            return Failed(FormattableString.Invariant($"the table has {utf8.Length} bytes; at most {LargestBytes} are read"));
        if (!Utf8.IsValid(utf8))
            return Failed("the table is not in UTF-8; save it as \"CSV UTF-8\"");
        List<TableFault> faults = [], notices = [];
        using MemoryStream stream = new(utf8.ToArray(), writable: false);
        OwnFatTable table = new(below, faults, notices);
        table.Read(stream);
        return faults.Count > 0
            ? new(null, default, Sorted(faults), Sorted(notices))
            : new(below.With(table.Fats, table.Sources), [.. table.Changed.OrderBy(f => f.Id, StringComparer.Ordinal)], default, Sorted(notices));
    }

    private static PantryFile Failed(string reason) => new(null, default, [new(OwnFatTable.Name, 0, "", reason)], default);

    private static ValueList<TableFault> Sorted(List<TableFault> faults) => [.. faults.OrderBy(f => f.Line)];
}
