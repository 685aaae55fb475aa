using Saponify.Internals;

namespace Saponify;

/// <summary>Reads the tidy tables: one row a figure.</summary>
internal static class FigureTable
{
    internal static readonly (string Text, Evidence Value)[] EvidenceNames =
    [
        ("standard", Evidence.Standard), ("pharmacopoeia", Evidence.Pharmacopoeia), ("handbook", Evidence.Handbook), ("measured", Evidence.Measured),
        ("compilation", Evidence.Compilation), ("computed", Evidence.Computed), ("memory", Evidence.Memory),
    ];

    /// <summary>The figures of each material, by material id and name of the figure.</summary>
    internal static Dictionary<string, Dictionary<string, Sourced>> Read(
        string name, Stream utf8, string material, ReadOnlySpan<(string Figure, string Unit, double Low, double High)> figures, HashSet<string> sources, List<TableFault> faults)
    {
        CsvTable table = CsvTable.Read(name, utf8, [material, "figure", "low", "high", "unit", "basis", "source", "place", "evidence", "note"], faults);
        Dictionary<string, Dictionary<string, Sourced>> found = new(StringComparer.Ordinal);
        foreach (CsvTable.Row row in table.Rows)
        {
            string id = row.Required(material), figure = row.Required("figure");
            (string _, string unit, double least, double most) = Find(figures, figure);
            if (unit is null)
            {
                row.Fault("figure", $"\"{figure}\" is no figure of this table");
                continue;
            }
            if (row["unit"] != unit)
                row.Fault("unit", $"\"{row["unit"]}\" should be {unit}");
            (double? low, double? high) = (row.Number("low", least, most), row.Number("high", least, most));
            if (low is null && high is null)
            {
                row.Fault("low", "a figure needs a low or a high end");
                continue;
            }
            if (low > high)
                row.Fault("low", $"{Text.Exact(low.Value)} is above the high end of {Text.Exact(high.Value)}");
            ValueList<string> keys = row.List("source");
            if (keys.Count == 0)
                row.Fault("source", "a figure needs a source");
            foreach (string key in keys)
            {
                if (!sources.Contains(key))
                    row.Fault("source", $"\"{key}\" is not in sources.csv");
            }
            Sourced sourced = new(figure, low, high, unit, row["basis"], keys, row["place"], row.OneOf("evidence", EvidenceNames, Evidence.Memory), row.Optional("note"));
            if (!found.TryGetValue(id, out Dictionary<string, Sourced>? ofMaterial))
                found[id] = ofMaterial = new(StringComparer.Ordinal);
            if (!ofMaterial.TryAdd(figure, sourced))
                row.Fault("figure", $"{id} has {figure} twice");
        }
        return found;
    }

    private static (string Figure, string Unit, double Low, double High) Find(ReadOnlySpan<(string Figure, string Unit, double Low, double High)> figures, string name)
    {
        foreach ((string Figure, string Unit, double Low, double High) known in figures)
        {
            if (string.Equals(known.Figure, name, StringComparison.Ordinal))
                return known;
        }
        return default;
    }
}
