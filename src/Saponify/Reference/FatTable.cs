using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Reads fats.csv with its figures.</summary>
internal static class FatTable
{
    internal static readonly (string Text, FatClass Value)[] Classes = [("triglyceride", FatClass.Triglyceride), ("free-acid", FatClass.FreeAcid), ("wax", FatClass.Wax)];

    private const int Aliases = 2, Class = 3, Origin = 4, Allergen = 5, Fit = 6, Inci = 7, InciSodium = 8, InciPotassium = 9, Note = 10;

    private static readonly (string Text, bool Value)[] s_fit = [("lye", true), ("lot-only", false)];

    internal static Dictionary<string, Fat> Read(Stream utf8, Dictionary<string, List<SourcedFigure>> figures, List<TableFault> faults)
    {
        using CsvTable table = CsvTable.Open("fats.csv", utf8, ["id", "name", "aliases", "class", "origin", "allergen", "fit", "inci", "inci_sodium", "inci_potassium", "note"], faults);
        return MaterialRows.Read("fats.csv", table, figures, faults, (rows, of) =>
            new Fat(rows.Text(MaterialRows.Id), rows.Text(MaterialRows.Name), rows.OneOf(Class, Classes, default), Figures(of, !rows.OneOf(Fit, s_fit, false)))
            {
                Aliases = rows.List(Aliases),
                Origin = rows.Optional(Origin),
                Allergen = rows.Optional(Allergen),
                Inci = rows.Optional(Inci),
                InciSodiumSoap = rows.Optional(InciSodium),
                InciPotassiumSoap = rows.Optional(InciPotassium),
                Provenance = [.. of],
                Note = rows.Optional(Note),
            });
    }

    /// <summary>The figures of a fat from its rows.</summary>
    internal static FatFigures Figures(List<SourcedFigure> of, bool needsOwn)
    {
        List<SourcedFigure> acids = new(of.Count);
        double most = 0;
        foreach (SourcedFigure figure in of)
        {
            if (figure.Name[0] != 'C')
                continue;
            acids.Add(figure);
            most = Math.Max(most, figure.High ?? figure.Low!.Value);
        }
        var ranges = new (FattyAcid, double, double)[acids.Count];
        for (int i = 0; i < ranges.Length; i++)
            ranges[i] = (FattyAcid.FromShorthand(acids[i].Name), Stored.OfPercent(acids[i].Low ?? 0), Stored.OfPercent(acids[i].High ?? acids[i].Low!.Value));
        return new()
        {
            Saponification = MaterialRows.Figure(of, "SV", SaponificationValue.FromMilligramsKohPerGram),
            AcidValue = MaterialRows.Figure(of, "AV", SaponificationValue.FromMilligramsKohPerGram),
            Iodine = MaterialRows.Figure(of, "IV", IodineValue.FromGramsPer100Grams),
            Unsaponifiable = MaterialRows.Figure(of, "unsaponifiable", v => Ratio.FromPercent(v), halfOfUpperLimit: true),
            Density = DensityOf(of),
            Melting = MaterialRows.Figure(of, "melting", v => Temperature.FromDegreesCelsius(v)),
            Profile = most > 0 ? new FattyAcidProfile(ranges) : null,
            ProfileEvidence = OfProfile(acids),
            ProfileSources = MaterialRows.Keys(acids),
            IsProfileOwn = acids.Exists(a => a.IsOwn),
            NeedsOwnSaponification = needsOwn,
        };
    }

    private static Figure<Density>? DensityOf(List<SourcedFigure> of)
    {
        double water = of.Find("density") is { Unit: FigureTable.Relative } relative ? WaterDensity(relative.Basis) : 1;
        return MaterialRows.Figure(of, "density", v => Density.FromGramsPerMilliliter(v * water));
    }

    /// <summary>
    /// Density in g/mL of the water that a relative density compares with. Source: water-density-table. When its temperature is not
    /// stated, the lowest of the three: a poured volume then counts as less fat and takes less lye.
    /// </summary>
    private static double WaterDensity(string basis) =>
        basis.EndsWith("water 15.5 degC", StringComparison.Ordinal) ? 0.9990
        : basis.EndsWith("water 20 degC", StringComparison.Ordinal) ? 0.9982
        : 0.9970;

    /// <summary>
    /// Evidence of a profile: the weakest among its acids, but for acids that together hold less than 1 % of the fat. Those move the
    /// saponification value by less than 0.3 %, and a remembered trace of C22:0 shall not cry wolf over an oil whose main acids were read.
    /// </summary>
    private static Evidence OfProfile(List<SourcedFigure> acids)
    {
        const double Trace = 1;
        double passed = 0;
        for (Evidence evidence = Evidence.Memory; evidence > default(Evidence); evidence--)
        {
            foreach (SourcedFigure acid in acids)
            {
                if (acid.Evidence == evidence)
                    passed += acid.Middle();
            }
            if (passed >= Trace)
                return evidence;
        }
        return default;
    }
}
