using Saponify.Internals;

namespace Saponify;

/// <summary>The tables of this layer, read once: curves of lye, materials of vessels. A fault in them is a fault of the build.</summary>
internal static class MakingTables
{
    private static readonly string[] s_figure = ["low", "high", "unit", "basis", "source", "place", "evidence", "note"];
    private static readonly Lazy<IReadOnlyDictionary<(string Alkali, string Figure), List<CurvePoint>>> s_curves = new(ReadCurves);
    private static readonly Lazy<IReadOnlyDictionary<string, VesselMaterial>> s_vessels = new(ReadVessels);

    /// <summary>Points of each curve, by id of the alkali and name of the figure.</summary>
    internal static IReadOnlyDictionary<(string Alkali, string Figure), List<CurvePoint>> Curves => s_curves.Value;

    /// <summary>Materials of vessels by id.</summary>
    internal static IReadOnlyDictionary<string, VesselMaterial> Vessels => s_vessels.Value;

    private static Dictionary<(string, string), List<CurvePoint>> ReadCurves()
    {
        const int alkali = 0, figure = 1, at = 2, first = 3;
        Dictionary<(string, string), List<CurvePoint>> curves = [];
        Read("lye-curves.csv", ["alkali", "figure", "at", .. s_figure], rows =>
        {
            (string, string) key = (rows.Required(alkali), rows.Required(figure));
            if (!curves.TryGetValue(key, out List<CurvePoint>? points))
                curves[key] = points = [];
            points.Add(Point(rows, rows.Number(at, 0, 1e6) ?? 0, first));
        });
        return curves;
    }

    private static Dictionary<string, VesselMaterial> ReadVessels()
    {
        const int material = 0, figure = 1, first = 2;
        Dictionary<(string, string), CurvePoint> figures = [];
        Read("vessel-figures.csv", ["material", "figure", .. s_figure], rows => figures.Add((rows.Required(material), rows.Required(figure)), Point(rows, 0, first)));

        const int id = 0, name = 1, lye = 2, source = 3, evidence = 5, note = 6;
        Dictionary<string, VesselMaterial> materials = new(StringComparer.OrdinalIgnoreCase);
        Read("vessel-materials.csv", ["id", "name", "lye", "source", "place", "evidence", "note"], rows =>
        {
            string key = rows.Required(id);
            materials.Add(key, new(key, rows.Required(name),
                rows.OneOf(lye, [("suitable", LyeFitness.Suitable), ("limited", LyeFitness.Limited), ("never", LyeFitness.Never)], LyeFitness.Never),
                rows.List(source), rows.OneOf(evidence, FigureTable.EvidenceNames, Evidence.Memory), rows.Optional(note),
                of => figures.GetValueOrDefault((key, of))));
        });
        return materials;
    }

    private static CurvePoint Point(CsvTable rows, double at, int first) =>
        new(at, rows.Number(first, -1000, 1000) ?? 0, rows.Number(first + 1, -1000, 1000) ?? 0, rows.List(first + 4), rows.OneOf(first + 6, FigureTable.EvidenceNames, Evidence.Memory), rows.Optional(first + 7));

    private static void Read(string name, string[] columns, Action<CsvTable> read)
    {
        List<TableFault> faults = [];
        using Stream stream = typeof(MakingTables).Assembly.GetManifestResourceStream("Saponify.data." + name) ?? throw new InvalidDataException($"The library lacks its table {name}.");
        using CsvTable rows = CsvTable.Open(name, stream, columns, faults);
        while (rows.Next())
            read(rows);
        if (faults.Count > 0)
            throw new InvalidDataException("The tables have faults:\n" + string.Join("\n", faults));
    }
}
