using UnitsNet;

namespace Saponify;

/// <summary>Reads essential-oils.csv.</summary>
internal static class EssentialOilTable
{
    private const int Id = 0, Name = 1, Aliases = 2, Inci = 3, InciSource = 4, AnnexEntry = 5, Tints = 6, DensityLow = 7, DensityHigh = 8, DensityBasis = 9, DensitySource = 10,
        DensityEvidence = 11, FlashPoint = 12, FlashPointSource = 13, FlashPointEvidence = 14, Note = 15;

    private static readonly (string Text, bool Value)[] s_yes = [("yes", true), ("no", false)];

    internal static Dictionary<string, EssentialOil> Read(Stream utf8, Dictionary<string, List<OilConstituent>> constituents, Dictionary<string, Source> sources, List<TableFault> faults)
    {
        using CsvTable table = CsvTable.Open("essential-oils.csv", utf8,
            ["id", "name", "aliases", "inci", "inci_source", "annex_entry", "tints", "density_low", "density_high", "density_basis", "density_source", "density_evidence",
             "flash_point", "flash_point_source", "flash_point_evidence", "note"], faults);
        Dictionary<string, EssentialOil> found = MaterialRows.Read("essential-oils.csv", table, [], faults, (rows, _) => new EssentialOil(rows.Text(Id), rows.Text(Name))
        {
            Aliases = rows.List(Aliases),
            Inci = rows.Optional(Inci),
            InciSources = rows.IsBlank(Inci) ? default : FigureTable.Keys(rows, InciSource, sources),
            AnnexEntry = (int?)rows.Number(AnnexEntry, 1, 10_000),
            Tints = rows.OneOf(Tints, s_yes, false),
            Density = DensityOf(rows, sources),
            FlashPoint = FlashPointOf(rows, sources),
            Constituents = constituents.Remove(rows.Text(Id), out List<OilConstituent>? of) ? [.. of] : default,
            Note = rows.Optional(Note),
        });
        foreach (string orphan in constituents.Keys.Order(StringComparer.Ordinal))
            faults.Add(new("essential-oils.csv", 0, "", $"the table of constituents has some of \"{orphan}\", which is not in this table"));
        return found;
    }

    private static Figure<Density>? DensityOf(CsvTable rows, Dictionary<string, Source> sources)
    {
        if (rows.Number(DensityLow, 0.5, 2) is not { } low || rows.Number(DensityHigh, 0.5, 2) is not { } high)
            return null;
        if (low > high)
            rows.Fault(DensityLow, "the low end is above the high end");
        return new(Density.FromGramsPerMilliliter((low + high) / 2), rows.OneOf(DensityEvidence, FigureTable.EvidenceNames, Evidence.Memory), FigureTable.Keys(rows, DensitySource, sources))
        {
            Low = Density.FromGramsPerMilliliter(low),
            High = Density.FromGramsPerMilliliter(high),
            Note = rows.Optional(DensityBasis),
        };
    }

    private static Figure<Temperature>? FlashPointOf(CsvTable rows, Dictionary<string, Source> sources)
    {
        if (rows.Number(FlashPoint, 0, 300) is not { } celsius)
            return null;
        Temperature point = Temperature.FromDegreesCelsius(celsius);
        return new(point, rows.OneOf(FlashPointEvidence, FigureTable.EvidenceNames, Evidence.Memory), FigureTable.Keys(rows, FlashPointSource, sources)) { Low = point, High = point };
    }
}
