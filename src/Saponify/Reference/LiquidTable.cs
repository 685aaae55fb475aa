using UnitsNet;

namespace Saponify;

/// <summary>Reads liquids.csv with its figures.</summary>
internal static class LiquidTable
{
    private const int Aliases = 2, FatId = 3, AcidId = 4, Allergen = 5, Origin = 6, Inci = 7, Note = 8;

    internal static Dictionary<string, Liquid> Read(Stream utf8, Dictionary<string, List<SourcedFigure>> figures, Dictionary<string, Fat> fats, Dictionary<string, Acid> acids, List<TableFault> faults)
    {
        using CsvTable table = CsvTable.Open("liquids.csv", utf8, ["id", "name", "aliases", "fat", "acid", "allergen", "origin", "inci", "note"], faults);
        return MaterialRows.Read("liquids.csv", table, figures, faults, (rows, of) =>
            new Liquid(rows.Text(MaterialRows.Id), rows.Text(MaterialRows.Name), MaterialRows.Contents(of, MaterialRows.Linked(rows, FatId, fats), MaterialRows.Linked(rows, AcidId, acids)))
            {
                Aliases = rows.List(Aliases),
                Origin = rows.Optional(Origin),
                Allergen = rows.Optional(Allergen),
                Inci = rows.Optional(Inci),
                Density = of.Find("density") is { } density ? Density.FromGramsPerMilliliter(density.Middle()) : null,
                Evidence = MaterialRows.Weakest(of),
                Sources = MaterialRows.Keys(of),
                Provenance = [.. of],
                Note = rows.Optional(Note),
            });
    }
}
