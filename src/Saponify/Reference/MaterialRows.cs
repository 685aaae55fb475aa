using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>What the tables of fats, liquids and additives have in common: an identity row meets its figures.</summary>
internal static class MaterialRows
{
    /// <summary>The first columns of an identity table.</summary>
    internal const int Id = 0, Name = 1;

    /// <summary>One material per row, with its figures; a row that can't be made is a fault, and so are figures without their row.</summary>
    internal static Dictionary<string, T> Read<T>(string table, CsvTable rows, Dictionary<string, List<SourcedFigure>> figures, List<TableFault> faults, Func<CsvTable, List<SourcedFigure>, T> make)
    {
        Dictionary<string, T> found = new(160, StringComparer.Ordinal);
        while (rows.Next())
        {
            string id = rows.Required(Id);
            if (!figures.Remove(id, out List<SourcedFigure>? of))
                of = [];
            if (id.Length > 0 && rows.Required(Name).Length > 0 && Made(rows, of, make) is { } material && !found.TryAdd(id, material))
                rows.Fault(Id, $"\"{id}\" stands twice");
        }
        foreach (string orphan in figures.Keys.Order(StringComparer.Ordinal))
            faults.Add(new(table, 0, "", $"the table of figures has figures of \"{orphan}\", which is not in this table"));
        return found;
    }

    /// <summary>The material that a column names by id; null when it is blank or, which is a fault, in no table.</summary>
    internal static T? Linked<T>(CsvTable rows, int column, Dictionary<string, T> table) where T : class
    {
        if (rows.Optional(column) is not { } id)
            return null;
        if (table.TryGetValue(id, out T? found))
            return found;
        rows.Fault(column, $"\"{id}\" is in no table");
        return null;
    }

    internal static Contents Contents(List<SourcedFigure> of, Fat? fat, Acid? acid)
    {
        double Part(string name) => of.Find(name) is { } figure ? Stored.OfPercent(figure.Middle()) : 0;
        (Ratio Low, Ratio High)? Range(string name) => of.Find(name) is { Low: { } low, High: { } high } && low < high ? (Ratio.FromPercent(low), Ratio.FromPercent(high)) : null;
        return new()
        {
            WaterFraction = Part("water"),
            FatFraction = Part("fat"),
            LeastFat = Range("fat")?.Low,
            MostFat = Range("fat")?.High,
            FatKind = fat,
            SugarFraction = Part("sugar"),
            ProteinFraction = Part("protein"),
            AcidFraction = Part("acid"),
            LeastAcid = Range("acid")?.Low,
            MostAcid = Range("acid")?.High,
            AcidKind = acid,
            AlcoholFraction = Part("alcohol"),
            AshFraction = Part("ash"),
        };
    }

    /// <summary>A figure with its range and sources, or null when the table has none.</summary>
    internal static Figure<T>? Figure<T>(List<SourcedFigure> of, string name, Func<double, T> make, bool halfOfUpperLimit = false) where T : struct =>
        of.Find(name) is { } row
            ? new(make(row.Middle(halfOfUpperLimit)), row.Evidence, row.Sources)
            {
                Low = row.Low is { } low ? make(low) : null,
                High = row.High is { } high ? make(high) : null,
                IsOwn = row.IsOwn,
                Note = row.Basis.Length == 0 ? row.Note : row.Note is null ? row.Basis : $"{row.Basis}; {row.Note}",
            }
            : null;

    internal static Evidence? Weakest(List<SourcedFigure> figures)
    {
        Evidence? weakest = null;
        foreach (SourcedFigure figure in figures)
        {
            if (!(weakest >= figure.Evidence))
                weakest = figure.Evidence;
        }
        return weakest;
    }

    /// <summary>The keys of the sources of all figures, each once, sorted.</summary>
    internal static ValueList<string> Keys(List<SourcedFigure> figures)
    {
        List<string> keys = [];
        foreach (SourcedFigure figure in figures)
        {
            foreach (string key in figure.Sources)
            {
                if (!keys.Contains(key))
                    keys.Add(key);
            }
        }
        keys.Sort(StringComparer.Ordinal);
        return [.. keys];
    }

    private static T? Made<T>(CsvTable rows, List<SourcedFigure> of, Func<CsvTable, List<SourcedFigure>, T> make)
    {
        try
        {
            return make(rows, of);
        }
        catch (ArgumentException fault)
        {
            rows.FaultOfRow(fault.Message);
            return default;
        }
    }
}
