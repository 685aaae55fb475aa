using UnitsNet;

namespace Saponify;

/// <summary>Reads essential-oil-constituents.csv.</summary>
internal static class OilConstituentTable
{
    private const int Oil = 0, Constituent = 1, Low = 2, High = 3, Unit = 4, Basis = 5, Source = 6, Place = 7, EvidenceClass = 8, Note = 9;

    internal static Dictionary<string, List<OilConstituent>> Read(Stream utf8, Dictionary<string, FragranceAllergen> allergens, Dictionary<string, Source> sources, List<TableFault> faults)
    {
        using CsvTable rows = CsvTable.Open("essential-oil-constituents.csv", utf8, ["oil", "constituent", "low", "high", "unit", "basis", "source", "place", "evidence", "note"], faults);
        Dictionary<string, List<OilConstituent>> found = new(StringComparer.Ordinal);
        while (rows.Next())
        {
            string oil = rows.Required(Oil);
            FragranceAllergen? allergen = MaterialRows.Linked(rows, Constituent, allergens);
            (double? low, double? high) = (rows.Number(Low, 0, 100), rows.Number(High, 0, 100));
            if (rows.Text(Unit) != "%")
                rows.Fault(Unit, "a share is given in %");
            if (low is null || high is null || low > high)
                rows.Fault(Low, "a share needs a low and a high end, the low one first");
            ValueList<string> keys = FigureTable.Keys(rows, Source, sources);
            Evidence evidence = rows.OneOf(EvidenceClass, FigureTable.EvidenceNames, Evidence.Memory);
            if (allergen is null || low is null || high is null)
                continue;
            if (!found.TryGetValue(oil, out List<OilConstituent>? of))
                found[oil] = of = [];
            if (of.Exists(c => c.Allergen.Id == allergen.Id))
                rows.Fault(Constituent, $"{oil} has {allergen.Id} twice");
            of.Add(new(allergen, Ratio.FromPercent(low.Value), Ratio.FromPercent(high.Value),
                new(allergen.Name, low, high, "%", rows.Text(Basis), keys, rows.Text(Place), evidence, rows.Optional(Note))));
        }
        return found;
    }
}
