using Saponify.Internals;

namespace Saponify;

/// <summary>Reads the tidy tables: one row a figure.</summary>
internal static class FigureTable
{
    /// <summary>The unit of a density against water instead of in g/mL.</summary>
    internal const string Relative = "relative";

    internal static readonly (string Text, Evidence Value)[] EvidenceNames =
    [
        ("standard", Evidence.Standard), ("pharmacopoeia", Evidence.Pharmacopoeia), ("handbook", Evidence.Handbook), ("measured", Evidence.Measured),
        ("compilation", Evidence.Compilation), ("computed", Evidence.Computed), ("memory", Evidence.Memory),
    ];

    /// <summary>Figures of fats, in the order of the sorted table.</summary>
    internal static readonly FigureShape[] OfFats = Sorted(
    [
        new("SV", "mg/g", 0, 1000), new("AV", "mg/g", 0, 1000), new("IV", "g/100g", 0, 500), new("unsaponifiable", "%", 0, 100), new("density", "g/mL", 0.5, 2), new("melting", "degC", -80, 150),
        .. FattyAcid.All.Select(a => new FigureShape(a.Shorthand, "%", 0, 100)),
    ]);

    /// <summary>Figures of liquids and additives, in the order of the sorted table.</summary>
    internal static readonly FigureShape[] OfContents = Sorted(
    [
        .. new[] { "water", "fat", "sugar", "protein", "ash", "acid", "alcohol", "fibre" }.Select(n => new FigureShape(n, "%", 0, 100)),
        new("density", "g/mL", 0.2, 3), new("dose", "%", 0, 1000),
    ]);

    private const int Material = 0, Name = 1, Low = 2, High = 3, Unit = 4, Basis = 5, Source = 6, Place = 7, EvidenceClass = 8, Note = 9;

    /// <summary>The figures of each material, in the order of the table.</summary>
    internal static Dictionary<string, List<SourcedFigure>> Read(string table, Stream utf8, string material, FigureShape[] shapes, Dictionary<string, Source> sources, List<TableFault> faults)
    {
        using CsvTable rows = CsvTable.Open(table, utf8, [material, "figure", "low", "high", "unit", "basis", "source", "place", "evidence", "note"], faults);
        Dictionary<string, List<SourcedFigure>> found = new(StringComparer.Ordinal);
        (string? lastId, List<SourcedFigure>? ofLast) = (null, null);
        int at = 0;
        while (rows.Next())
        {
            string id = rows.Required(Material);
            if (Figure(rows, shapes, ref at, sources) is not { } figure)
                continue;
            if (ofLast is null || !ReferenceEquals(id, lastId))
            {
                if (!found.TryGetValue(id, out ofLast))
                    found[id] = ofLast = new(20);
                lastId = id;
            }
            if (ofLast.Find(figure.Name) is not null)
                rows.Fault(Name, $"{id} has {figure.Name} twice");
            else
                ofLast.Add(figure);
        }
        return found;
    }

    /// <summary>The figure with this name, or null.</summary>
    internal static SourcedFigure? Find(this List<SourcedFigure> figures, string name)
    {
        foreach (SourcedFigure figure in figures)
        {
            if (figure.Name == name)
                return figure;
        }
        return null;
    }

    private static SourcedFigure? Figure(CsvTable rows, FigureShape[] shapes, ref int at, Dictionary<string, Source> sources)
    {
        if (Shape(rows, shapes, ref at) is not { } shape)
        {
            if (rows.Required(Name) is { Length: > 0 } name)
                rows.Fault(Name, $"\"{name}\" is no figure of this table");
            return null;
        }
        bool isRelative = shape.Name == "density" && rows.Is(Unit, Relative);
        if (!isRelative && !rows.Is(Unit, shape.Unit))
            rows.Fault(Unit, $"\"{rows.Text(Unit)}\" should be {shape.Unit}");
        (double? low, double? high) = (rows.Number(Low, shape.Least, shape.Most), rows.Number(High, shape.Least, shape.Most));
        if (low is null && high is null)
        {
            if (rows.IsBlank(Low) && rows.IsBlank(High))
                rows.Fault(Low, "a figure needs a low or a high end");
            return null;
        }
        if (low > high)
            rows.Fault(Low, $"{Text.Exact(low.Value)} is above the high end of {Text.Exact(high.Value)}");
        ValueList<string> keys = Keys(rows, Source, sources);
        return new(shape.Name, low, high, isRelative ? Relative : shape.Unit, rows.Text(Basis), keys, rows.Text(Place), rows.OneOf(EvidenceClass, EvidenceNames, Evidence.Memory), rows.Optional(Note));
    }

    /// <summary>The keys of the sources in a column; none and unknown ones are faults.</summary>
    internal static ValueList<string> Keys(CsvTable rows, int column, Dictionary<string, Source> sources)
    {
        ValueList<string> keys = rows.List(column);
        if (keys.Count == 0)
            rows.Fault(column, "a figure needs a source");
        foreach (string key in keys)
        {
            if (!sources.ContainsKey(key))
                rows.Fault(column, $"\"{key}\" is not in sources.csv");
        }
        return keys;
    }

    /// <summary>The figure that the row names. The search starts where the last one was found: in a sorted table the next is near.</summary>
    private static FigureShape? Shape(CsvTable rows, FigureShape[] shapes, ref int at)
    {
        for (int i = 0; i < shapes.Length; i++, at++)
        {
            if (at == shapes.Length)
                at = 0;
            if (rows.Is(Name, shapes[at].Name))
                return shapes[at];
        }
        return null;
    }

    private static FigureShape[] Sorted(FigureShape[] shapes)
    {
        Array.Sort(shapes, (a, b) => string.CompareOrdinal(a.Name, b.Name));
        return shapes;
    }
}
