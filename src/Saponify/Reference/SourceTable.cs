namespace Saponify;

/// <summary>Reads sources.csv.</summary>
internal static class SourceTable
{
    private const int Key = 0, Citation = 1, Year = 2, Place = 3, EvidenceClass = 4, Licence = 5;

    internal static Dictionary<string, Source> Read(Stream utf8, List<TableFault> faults)
    {
        using CsvTable rows = CsvTable.Open("sources.csv", utf8, ["key", "citation", "year", "place", "evidence", "licence"], faults);
        Dictionary<string, Source> found = new(200, StringComparer.Ordinal);
        while (rows.Next())
        {
            string key = rows.Required(Key);
            if (!found.TryAdd(key, new(key, rows.Required(Citation), rows.Text(Year), rows.Text(Place), rows.OneOf(EvidenceClass, FigureTable.EvidenceNames, Evidence.Memory), rows.Text(Licence))))
                rows.Fault(Key, $"\"{key}\" stands twice");
        }
        return found;
    }
}
