namespace Saponify;

/// <summary>Reads fragrance-allergens.csv.</summary>
internal static class FragranceAllergenTable
{
    private const int Id = 0, Name = 1, Cas = 2, AnnexEntry = 3, Since = 4, Status = 5, Covers = 6, Condition = 7, Source = 8, Place = 9, EvidenceClass = 10, Note = 11;

    private static readonly (string Text, FragranceListing Value)[] s_since =
        [("original-26", FragranceListing.First26), ("extended-2023", FragranceListing.Extended2023), ("added-2023", FragranceListing.Added2023)];

    private static readonly (string Text, bool Value)[] s_prohibited = [("label", false), ("prohibited", true)];

    internal static Dictionary<string, FragranceAllergen> Read(Stream utf8, Dictionary<string, Source> sources, List<TableFault> faults)
    {
        using CsvTable rows = CsvTable.Open("fragrance-allergens.csv", utf8,
            ["id", "name", "cas", "annex_entry", "since", "status", "covers", "condition", "source", "place", "evidence", "note"], faults);
        return MaterialRows.Read("fragrance-allergens.csv", rows, [], faults, (row, _) =>
            new FragranceAllergen(row.Text(Id), row.Text(Name), (int)(row.Number(AnnexEntry, 1, 10_000) ?? 0), row.OneOf(Since, s_since, default))
            {
                IsProhibited = row.OneOf(Status, s_prohibited, false),
                Cas = row.List(Cas),
                Covers = row.List(Covers),
                Condition = row.Optional(Condition),
                Sources = FigureTable.Keys(row, Source, sources),
                Place = row.Text(Place),
                Evidence = row.OneOf(EvidenceClass, FigureTable.EvidenceNames, Evidence.Memory),
                Note = row.Optional(Note),
            });
    }
}
