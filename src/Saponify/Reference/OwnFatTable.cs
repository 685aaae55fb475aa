using System.Globalization;
using Saponify.Internals;

namespace Saponify;

/// <summary>Reads an own table of fats onto the fats of a pantry; what the columns mean stands at <see cref="PantryFile"/>.</summary>
internal sealed class OwnFatTable(Pantry below, List<TableFault> faults, List<TableFault> notices)
{
    internal const string Name = "own table";

    private const int Id = 0, FatName = 1, Sv = 2, SourceText = 3, LotName = 4, Date = 5, SvLow = 6, SvHigh = 7, Av = 8, Iv = 9, Unsaponifiable = 10, DensityColumn = 11, Class = 12, Origin = 13,
        Allergen = 14, Aliases = 15, Note = 16, FirstAcid = 17;

    /// <summary>No triglyceride on file lies below: what does is a wax, or a value in another unit.</summary>
    private const double LeastOfTriglycerides = 150;

    private static readonly string[] s_columns =
    [
        "id", "name", "SV", "source", "lot", "date", "SV_low", "SV_high", "AV", "IV", "unsaponifiable", "density", "class", "origin", "allergen", "aliases", "note",
        .. FattyAcid.All.Select(a => a.Shorthand),
    ];

    private static readonly (string Text, FatClass? Value)[] s_classes = [("", null), .. FatTable.Classes.Select(c => (c.Text, (FatClass?)c.Value))];

    private readonly Dictionary<string, int> _lines = new(FoldedName.Comparer);
    private readonly Dictionary<string, string> _names = new(FoldedName.Comparer);

    internal Dictionary<string, Fat> Fats { get; } = below.CopyOfFats();

    internal Dictionary<string, Source> Sources { get; } = below.CopyOfSources();

    internal List<Fat> Changed { get; } = [];

    internal void Read(Stream utf8)
    {
        using CsvTable rows = CsvTable.Open(Name, utf8, s_columns, required: 4, faults);
        while (rows.Next())
        {
            int before = faults.Count;
            OwnFatRow row = ReadRow(rows);
            if (faults.Count > before)
                continue;
            try
            {
                Fat fat = row.Make();
                Fats[fat.Id] = fat;
                Changed.Add(fat);
                Sources.TryAdd(row.Source, new(row.Source, row.Source, row.Date?.Year.ToString(CultureInfo.InvariantCulture) ?? "", "own table", Evidence.Measured, ""));
                if (row.Excess(fat) is { } excess)
                    notices.Add(new(Name, rows.Line, "SV", excess));
            }
            catch (ArgumentException fault)
            {
                rows.FaultOfRow(fault.Message);
            }
        }
    }

    private OwnFatRow ReadRow(CsvTable rows)
    {
        string id = ReadId(rows), source = ReadSource(rows);
        Fat? known = Fats.GetValueOrDefault(id);
        FatClass fatClass = rows.OneOf(Class, s_classes, null) ?? known?.Class ?? FatClass.Triglyceride;
        if (known is null && id.Length > 0)
            rows.Required(FatName);
        else if (known is not null && known.Class != fatClass)
            rows.Fault(Class, $"{id} is of another class in the tables; leave it blank, or give the fat an id of its own");
        OwnFatRow row = new(id, rows.Optional(FatName)?.Trim() ?? known?.Name ?? "", source, fatClass, known)
        {
            Evidence = Sources.TryGetValue(source, out Source? listed) ? listed.Evidence : Evidence.Measured,
            Lot = rows.Optional(LotName)?.Trim(),
            Date = ReadDate(rows),
            Origin = ReadWord(rows, Origin, Origins.Known, "origin"),
            Allergen = ReadWord(rows, Allergen, [.. below.AllergenClasses], "allergen class"),
            Aliases = rows.List(Aliases),
            Note = rows.Optional(Note),
            AcidValue = rows.Number(Av, 0, 300),
        };
        ReadSaponification(rows, row);
        ReadFigures(rows, row);
        CheckNames(rows, row);
        return row;
    }

    private string ReadId(CsvTable rows)
    {
        string id = rows.Required(Id).Trim();
        if (id.Length == 0)
            return "";
        if (LineId.Fault(id) is { } fault)
            rows.Fault(Id, $"an id {fault}");
        else if (FoldedName.IsEmpty(id))
            rows.Fault(Id, "an id needs a letter or a digit");
        else if (!_lines.TryAdd(id, rows.Line))
            rows.Fault(Id, FormattableString.Invariant($"\"{id}\" stands in line {_lines[id]} already; give another lot an id of its own"));
        return id;
    }

    private string ReadSource(CsvTable rows)
    {
        string source = rows.Required(SourceText).Trim();
        if (Sources.TryGetValue(source, out Source? listed) && listed.Evidence == Evidence.Memory)
            rows.Fault(SourceText, $"\"{source}\" is no source; name the certificate, the sheet or the book");
        return source;
    }

    private static DateOnly? ReadDate(CsvTable rows)
    {
        if (rows.Optional(Date) is not { } text)
            return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date))
            return date;
        rows.Fault(Date, $"\"{text}\" is no date; write it like 2026-03-01");
        return null;
    }

    private static string? ReadWord(CsvTable rows, int column, string[] known, string what)
    {
        if (rows.Optional(column) is not { } text)
            return null;
        if (known.Contains(text, StringComparer.Ordinal))
            return text;
        rows.Fault(column, $"\"{text}\" is no {what}; known: {string.Join(", ", known)}");
        return null;
    }

    private static void ReadSaponification(CsvTable rows, OwnFatRow row)
    {
        row.Saponification = Value(rows, Sv);
        row.SaponificationLow = Value(rows, SvLow);
        row.SaponificationHigh = Value(rows, SvHigh);
        bool hasValue = !rows.IsBlank(Sv), hasLow = !rows.IsBlank(SvLow), hasHigh = !rows.IsBlank(SvHigh);
        if (hasLow != hasHigh)
            rows.Fault(hasLow ? SvHigh : SvLow, "a range needs both ends");
        else if (hasValue && hasLow)
            rows.Fault(Sv, "a value and a range exclude each other: a value for what stands on the shelf, a range for a specification");
        else if (row.SaponificationLow > row.SaponificationHigh)
            rows.Fault(SvLow, "the low end is above the high end");
        else if (!hasValue && !hasLow && !(row.Class == FatClass.Wax && row.AcidValue is not null))
            rows.Fault(Sv, "it is blank; a saponification value in mg KOH per g is needed" + (row.Class == FatClass.Wax ? ", or the acid value of the wax" : ""));
        if (rows.Optional(Class) is null && row.Known is null && (row.Saponification ?? row.SaponificationLow) is < LeastOfTriglycerides and > 0)
            rows.Fault(Class, "no fat or oil on file takes up so little: say the class (triglyceride, wax, free-acid), or give the value in mg KOH per g");
    }

    private static double? Value(CsvTable rows, int column)
    {
        double? value = rows.Number(column, 0, 1000);
        switch (value)
        {
            case > 0 and < 1:
                rows.Fault(column, $"{Text.Exact(value.Value)} looks like g per g; write mg KOH per g (g NaOH per g times 1402.73, g KOH per g times 1000)");
                return null;
            case > 600:
                rows.Fault(column, $"{Text.Exact(value.Value)} is more than any fat takes up; write mg KOH per g");
                return null;
            default:
                return value;
        }
    }

    private static void ReadFigures(CsvTable rows, OwnFatRow row)
    {
        row.Iodine = rows.Number(Iv, 0, 500);
        row.Unsaponifiable = rows.Number(Unsaponifiable, 0, 100);
        row.Density = rows.Number(DensityColumn, 0.5, 2);
        double sum = 0;
        for (int i = 0; i < FattyAcid.Count; i++)
        {
            if (rows.Number(FirstAcid + i, 0, 100) is not { } share)
                continue;
            row.Acids.Add((FattyAcid.All[i], share));
            sum += share;
        }
        if (row.Acids.Count > 0 && sum is not (> 0 and <= 105))
            rows.FaultOfRow($"the fatty acids add up to {Text.Number(sum)} %; an analysis has about 100 %");
    }

    /// <summary>A name leads to one fat only: none of a row may be another fat's.</summary>
    private void CheckNames(CsvTable rows, OwnFatRow row)
    {
        if (row.Id.Length == 0)
            return;
        if (row.Known is null && below.TryGetFat(row.Id, out Fat? meant))
            rows.Fault(Id, $"\"{row.Id}\" is another name of {meant.Id}; write {meant.Id} to give its lot, or another id for a new fat");
        else
            CheckName(rows, Id, row.Id, row.Id);
        CheckName(rows, FatName, row.Name, row.Id);
        foreach (string alias in row.Aliases)
            CheckName(rows, Aliases, alias, row.Id);
    }

    private void CheckName(CsvTable rows, int column, string name, string id)
    {
        string? owner = below.TryGetFat(name, out Fat? other) ? other.Id : null;
        if (!_names.TryAdd(name, id) && owner is null)
            owner = _names[name];
        if (owner is not null && owner != id)
            rows.Fault(column, $"\"{name}\" is a name of {owner} already; a name leads to one fat only");
    }
}
