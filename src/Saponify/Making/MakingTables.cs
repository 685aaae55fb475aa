using Saponify.Internals;

namespace Saponify;

/// <summary>The tables of this layer, read once: curves of lye, materials of vessels. A fault in them is a fault of the build.</summary>
internal static class MakingTables
{
    private static readonly Lazy<IReadOnlyDictionary<(string Alkali, string Figure), List<CurvePoint>>> s_curves = new(ReadCurves);
    private static readonly Lazy<IReadOnlyDictionary<string, VesselMaterial>> s_vessels = new(ReadVessels);

    /// <summary>Points of each curve, by id of the alkali and name of the figure.</summary>
    internal static IReadOnlyDictionary<(string Alkali, string Figure), List<CurvePoint>> Curves => s_curves.Value;

    /// <summary>Materials of vessels by id.</summary>
    internal static IReadOnlyDictionary<string, VesselMaterial> Vessels => s_vessels.Value;

    private static Dictionary<(string, string), List<CurvePoint>> ReadCurves()
    {
        Dictionary<(string, string), List<CurvePoint>> curves = [];
        Read("lye-curves.csv", ["alkali", "figure", "at", "low", "high", "unit", "basis", "source", "place", "evidence", "note"], row =>
        {
            (string, string) key = (row.Required("alkali"), row.Required("figure"));
            if (!curves.TryGetValue(key, out List<CurvePoint>? points))
                curves[key] = points = [];
            points.Add(Point(row, row.Number("at", 0, 1e6) ?? 0));
        });
        return curves;
    }

    private static Dictionary<string, VesselMaterial> ReadVessels()
    {
        Dictionary<(string, string), CurvePoint> figures = [];
        Read("vessel-figures.csv", ["material", "figure", "low", "high", "unit", "basis", "source", "place", "evidence", "note"],
            row => figures.Add((row.Required("material"), row.Required("figure")), Point(row, 0)));
        Dictionary<string, VesselMaterial> materials = new(StringComparer.OrdinalIgnoreCase);
        Read("vessel-materials.csv", ["id", "name", "lye", "source", "place", "evidence", "note"], row =>
        {
            string id = row.Required("id");
            materials.Add(id, new(id, row.Required("name"),
                row.OneOf("lye", [("suitable", LyeFitness.Suitable), ("limited", LyeFitness.Limited), ("never", LyeFitness.Never)], LyeFitness.Never),
                row.List("source"), row.OneOf("evidence", FigureTable.EvidenceNames, Evidence.Memory), row.Optional("note"),
                name => figures.GetValueOrDefault((id, name))));
        });
        return materials;
    }

    private static CurvePoint Point(CsvTable.Row row, double at) =>
        new(at, row.Number("low", -1000, 1000) ?? 0, row.Number("high", -1000, 1000) ?? 0, row.List("source"), row.OneOf("evidence", FigureTable.EvidenceNames, Evidence.Memory), row.Optional("note"));

    private static void Read(string name, ReadOnlySpan<string> columns, Action<CsvTable.Row> read)
    {
        List<TableFault> faults = [];
        using Stream stream = typeof(MakingTables).Assembly.GetManifestResourceStream("Saponify.data." + name) ?? throw new InvalidDataException($"The library lacks its table {name}.");
        foreach (CsvTable.Row row in CsvTable.Read(name, stream, columns, faults).Rows)
            read(row);
        if (faults.Count > 0)
            throw new InvalidDataException("The tables have faults:\n" + string.Join("\n", faults));
    }
}
