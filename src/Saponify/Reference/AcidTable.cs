using UnitsNet;

namespace Saponify;

/// <summary>Reads acids.csv.</summary>
internal static class AcidTable
{
    private const int Id = 0, Name = 1, MolarMassColumn = 3, Protons = 4, ProtonsInDoubt = 5, Source = 6, EvidenceClass = 8;

    internal static Dictionary<string, Acid> Read(Stream utf8, Dictionary<string, Source> sources, List<TableFault> faults)
    {
        using CsvTable rows = CsvTable.Open("acids.csv", utf8, ["id", "name", "formula", "molar_mass", "protons", "protons_in_doubt", "source", "place", "evidence", "note"], faults);
        Dictionary<string, Acid> found = new(StringComparer.Ordinal);
        while (rows.Next())
        {
            (string id, string name) = (rows.Required(Id), rows.Required(Name));
            (double? molarMass, double? protons, double? inDoubt) = (rows.Number(MolarMassColumn, 1, 10_000), rows.Number(Protons, 0, 30), rows.Number(ProtonsInDoubt, 0, 30));
            FigureTable.Keys(rows, Source, sources);
            rows.OneOf(EvidenceClass, FigureTable.EvidenceNames, Evidence.Memory);
            if (molarMass is null || protons is null || inDoubt is null)
                rows.Fault(MolarMassColumn, "an acid needs molar mass and both numbers of protons");
            else if (id.Length > 0 && name.Length > 0 && !found.TryAdd(id, new(id, name, MolarMass.FromGramsPerMole(molarMass.Value), protons.Value, inDoubt.Value)))
                rows.Fault(Id, $"\"{id}\" stands twice");
        }
        return found;
    }
}
