using UnitsNet;

namespace Saponify;

/// <summary>Reads additives.csv with its figures.</summary>
internal static class AdditiveTable
{
    private const int Aliases = 2, Kind = 3, StageColumn = 4, FatId = 5, AcidId = 6, Formula = 7, ColourIndex = 8, Cas = 9, Allergen = 10, Origin = 11, Inci = 12, Caution = 13, Note = 14;

    private static readonly (string Text, Stage Value)[] s_stages = [("lye-liquid", Stage.LyeLiquid), ("fats", Stage.Fats), ("trace", Stage.Trace), ("top", Stage.Top)];
    private static readonly (string Text, AdditiveKind Value)[] s_kinds =
    [
        ("other", AdditiveKind.Other), ("acid", AdditiveKind.Acid), ("salt", AdditiveKind.Salt), ("sugar", AdditiveKind.Sugar), ("humectant", AdditiveKind.Humectant),
        ("chelator", AdditiveKind.Chelator), ("antioxidant", AdditiveKind.Antioxidant), ("clay", AdditiveKind.Clay), ("colorant", AdditiveKind.Colorant),
        ("exfoliant", AdditiveKind.Exfoliant), ("botanical", AdditiveKind.Botanical), ("protein", AdditiveKind.Protein), ("milk-solids", AdditiveKind.MilkSolids),
        ("fragrance", AdditiveKind.Fragrance),
    ];

    internal static Dictionary<string, Additive> Read(Stream utf8, Dictionary<string, List<SourcedFigure>> figures, Dictionary<string, Fat> fats, Dictionary<string, Acid> acids, List<TableFault> faults)
    {
        using CsvTable table = CsvTable.Open("additives.csv", utf8,
            ["id", "name", "aliases", "kind", "stage", "fat", "acid", "formula", "colour_index", "cas", "allergen", "origin", "inci", "caution", "note"], faults);
        return MaterialRows.Read("additives.csv", table, figures, faults, (rows, of) =>
            new Additive(rows.Text(MaterialRows.Id), rows.Text(MaterialRows.Name), rows.OneOf(Kind, s_kinds, default), rows.OneOf(StageColumn, s_stages, Stage.Trace),
                MaterialRows.Contents(of, MaterialRows.Linked(rows, FatId, fats), MaterialRows.Linked(rows, AcidId, acids)))
            {
                Aliases = rows.List(Aliases),
                Origin = rows.Optional(Origin),
                Allergen = rows.Optional(Allergen),
                Inci = rows.Optional(Inci),
                Formula = rows.Optional(Formula),
                Cas = rows.Optional(Cas),
                ColourIndex = rows.Optional(ColourIndex),
                UsualDose = MaterialRows.Figure(of, "dose", v => Ratio.FromPercent(v)),
                Caution = rows.Optional(Caution),
                Evidence = MaterialRows.Weakest(of),
                Sources = MaterialRows.Keys(of),
                Provenance = [.. of],
                Note = rows.Optional(Note),
            });
    }
}
