using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Makes a pantry from the tables. Every fault of every table is collected before it gives up.</summary>
internal sealed class PantryLoader
{
    private static readonly (string Text, FatClass Value)[] s_classes = [("triglyceride", FatClass.Triglyceride), ("free-acid", FatClass.FreeAcid), ("wax", FatClass.Wax)];
    private static readonly (string Text, bool Value)[] s_fit = [("lye", true), ("lot-only", false)];
    private static readonly (string Text, Stage Value)[] s_stages = [("lye-liquid", Stage.LyeLiquid), ("fats", Stage.Fats), ("trace", Stage.Trace), ("top", Stage.Top)];
    private static readonly (string Text, AdditiveKind Value)[] s_kinds =
    [
        ("other", AdditiveKind.Other), ("acid", AdditiveKind.Acid), ("salt", AdditiveKind.Salt), ("sugar", AdditiveKind.Sugar), ("humectant", AdditiveKind.Humectant),
        ("chelator", AdditiveKind.Chelator), ("antioxidant", AdditiveKind.Antioxidant), ("clay", AdditiveKind.Clay), ("colorant", AdditiveKind.Colorant),
        ("exfoliant", AdditiveKind.Exfoliant), ("botanical", AdditiveKind.Botanical), ("protein", AdditiveKind.Protein), ("milk-solids", AdditiveKind.MilkSolids),
        ("fragrance", AdditiveKind.Fragrance),
    ];

    private static readonly (string, string, double, double)[] s_fatFigures =
    [
        ("SV", "mg/g", 0, 1000), ("AV", "mg/g", 0, 1000), ("IV", "g/100g", 0, 500), ("unsaponifiable", "%", 0, 100), ("density", "g/mL", 0.5, 2), ("melting", "degC", -80, 150),
        .. FattyAcid.All.Select(a => (a.Shorthand, "%", 0.0, 100.0)),
    ];

    private static readonly (string, string, double, double)[] s_contentFigures =
    [
        ("water", "%", 0, 100), ("fat", "%", 0, 100), ("sugar", "%", 0, 100), ("protein", "%", 0, 100), ("ash", "%", 0, 100), ("acid", "%", 0, 100),
        ("alcohol", "%", 0, 100), ("fibre", "%", 0, 100), ("density", "g/mL", 0.2, 3), ("dose", "%", 0, 1000),
    ];

    private readonly Func<string, Stream> _open;
    private readonly List<TableFault> _faults = [];
    private readonly HashSet<string> _sourceKeys = new(StringComparer.Ordinal);

    internal PantryLoader(Func<string, Stream> open) => _open = open;

    internal IReadOnlyList<TableFault> Faults => _faults;

    internal Pantry Load(string version)
    {
        Dictionary<string, Source> sources = Sources();
        Dictionary<string, Fat> fats = Fats();
        Dictionary<string, Acid> acids = Acids();
        Dictionary<string, Liquid> liquids = Liquids(fats, acids);
        Dictionary<string, Additive> additives = Additives(fats, acids);
        if (_faults.Count > 0)
            throw new InvalidDataException("The tables have faults:\n" + string.Join("\n", _faults));
        return new(version, sources, fats, liquids, additives);
    }

    private CsvTable Table(string name, ReadOnlySpan<string> columns)
    {
        using Stream stream = _open(name);
        return CsvTable.Read(name, stream, columns, _faults);
    }

    private Dictionary<string, Dictionary<string, Sourced>> Figures(string name, string material, ReadOnlySpan<(string, string, double, double)> figures)
    {
        using Stream stream = _open(name);
        return FigureTable.Read(name, stream, material, figures, _sourceKeys, _faults);
    }

    private Dictionary<string, Source> Sources()
    {
        CsvTable table = Table("sources.csv", ["key", "citation", "year", "place", "evidence", "licence"]);
        Dictionary<string, Source> found = new(StringComparer.Ordinal);
        foreach (CsvTable.Row row in table.Rows)
        {
            string key = row.Required("key");
            if (!found.TryAdd(key, new(key, row.Required("citation"), row["year"], row["place"], row.OneOf("evidence", FigureTable.EvidenceNames, Evidence.Memory), row["licence"])))
                row.Fault("key", $"\"{key}\" stands twice");
            _sourceKeys.Add(key);
        }
        return found;
    }

    private Dictionary<string, Fat> Fats()
    {
        Dictionary<string, Dictionary<string, Sourced>> figures = Figures("fat-figures.csv", "fat", s_fatFigures);
        CsvTable table = Table("fats.csv", ["id", "name", "aliases", "class", "origin", "allergen", "fit", "inci", "inci_sodium", "inci_potassium", "note"]);
        return Materials(table, figures, (row, of) => new Fat(row["id"], row["name"], row.OneOf("class", s_classes, default), FatFigures(of, !row.OneOf("fit", s_fit, false)))
        {
            Aliases = row.List("aliases"),
            Origin = row.Optional("origin"),
            Allergen = row.Optional("allergen"),
            Inci = row.Optional("inci"),
            Note = row.Optional("note"),
        });
    }

    private Dictionary<string, Acid> Acids()
    {
        CsvTable table = Table("acids.csv", ["id", "name", "formula", "molar_mass", "protons", "protons_in_doubt", "source", "place", "evidence", "note"]);
        Dictionary<string, Acid> found = new(StringComparer.Ordinal);
        foreach (CsvTable.Row row in table.Rows)
        {
            string id = row.Required("id");
            Acid acid = new(id, row.Required("name"), MolarMass.FromGramsPerMole(row.Number("molar_mass", 1, 10_000) ?? 1), row.Number("protons", 0, 30) ?? 0, row.Number("protons_in_doubt", 0, 30) ?? 0);
            if (!found.TryAdd(id, acid))
                row.Fault("id", $"\"{id}\" stands twice");
        }
        return found;
    }

    private Dictionary<string, Liquid> Liquids(Dictionary<string, Fat> fats, Dictionary<string, Acid> acids)
    {
        Dictionary<string, Dictionary<string, Sourced>> figures = Figures("liquid-figures.csv", "liquid", s_contentFigures);
        CsvTable table = Table("liquids.csv", ["id", "name", "aliases", "fat", "acid", "allergen", "origin", "inci", "note"]);
        return Materials(table, figures, (row, of) => new Liquid(row["id"], row["name"], Contents(row, of, fats, acids))
        {
            Aliases = row.List("aliases"),
            Origin = row.Optional("origin"),
            Allergen = row.Optional("allergen"),
            Density = of.TryGetValue("density", out Sourced? density) ? Density.FromGramsPerMilliliter(density.Middle()) : null,
            Evidence = Weakest(of.Values),
            Sources = Keys(of.Values),
            Note = row.Optional("note"),
        });
    }

    private Dictionary<string, Additive> Additives(Dictionary<string, Fat> fats, Dictionary<string, Acid> acids)
    {
        Dictionary<string, Dictionary<string, Sourced>> figures = Figures("additive-figures.csv", "additive", s_contentFigures);
        CsvTable table = Table("additives.csv", ["id", "name", "aliases", "kind", "stage", "fat", "acid", "formula", "colour_index", "cas", "allergen", "origin", "inci", "caution", "note"]);
        return Materials(table, figures, (row, of) => new Additive(row["id"], row["name"], row.OneOf("kind", s_kinds, default), row.OneOf("stage", s_stages, Stage.Trace), Contents(row, of, fats, acids))
        {
            Aliases = row.List("aliases"),
            Origin = row.Optional("origin"),
            Allergen = row.Optional("allergen"),
            UsualDose = Figure(of, "dose", v => Ratio.FromPercent(v)),
            Caution = row.Optional("caution"),
            Evidence = Weakest(of.Values),
            Sources = Keys(of.Values),
            Note = row.Optional("note"),
        });
    }

    /// <summary>One material per row of an identity table, with its figures; a row that can't be made is a fault, and so is a figure without its row.</summary>
    private static Dictionary<string, T> Materials<T>(CsvTable table, Dictionary<string, Dictionary<string, Sourced>> figures, Func<CsvTable.Row, Dictionary<string, Sourced>, T> make)
    {
        Dictionary<string, T> found = new(StringComparer.Ordinal);
        foreach (CsvTable.Row row in table.Rows)
        {
            string id = row.Required("id");
            row.Required("name");
            if (!figures.Remove(id, out Dictionary<string, Sourced>? of))
                of = [];
            try
            {
                if (!found.TryAdd(id, make(row, of)))
                    row.Fault("id", $"\"{id}\" stands twice");
            }
            catch (ArgumentException fault)
            {
                row.Fault("", fault.Message);
            }
        }
        foreach (string orphan in figures.Keys)
            table.Fault($"the table of figures has figures of \"{orphan}\", which is not in this table");
        return found;
    }

    private static FatFigures FatFigures(Dictionary<string, Sourced> of, bool needsOwn)
    {
        List<(FattyAcid, Ratio, Ratio)> acids = [];
        List<Sourced> acidRows = [];
        foreach (FattyAcid acid in FattyAcid.All)
        {
            if (!of.TryGetValue(acid.Shorthand, out Sourced? row))
                continue;
            acidRows.Add(row);
            acids.Add((acid, Ratio.FromPercent(row.Low ?? 0), Ratio.FromPercent(row.High ?? row.Low!.Value)));
        }
        bool any = acids.Exists(a => a.Item3.Value > 0);
        return new()
        {
            Saponification = Figure(of, "SV", SaponificationValue.FromMilligramsKohPerGram),
            AcidValue = Figure(of, "AV", SaponificationValue.FromMilligramsKohPerGram),
            Iodine = Figure(of, "IV", IodineValue.FromGramsPer100Grams),
            Unsaponifiable = Figure(of, "unsaponifiable", v => Ratio.FromPercent(v), halfOfUpperLimit: true),
            Density = Figure(of, "density", v => UnitsNet.Density.FromGramsPerMilliliter(v)),
            Melting = Figure(of, "melting", v => Temperature.FromDegreesCelsius(v)),
            Profile = any ? FattyAcidProfile.FromRanges([.. acids]) : null,
            ProfileEvidence = OfProfile(acidRows),
            ProfileSources = Keys(acidRows),
            NeedsOwnSaponification = needsOwn,
        };
    }

    private static Contents Contents(CsvTable.Row row, Dictionary<string, Sourced> of, Dictionary<string, Fat> fats, Dictionary<string, Acid> acids)
    {
        Ratio Part(string figure) => of.TryGetValue(figure, out Sourced? sourced) ? Ratio.FromPercent(sourced.Middle()) : Ratio.Zero;
        (Ratio Low, Ratio High)? Range(string figure) => of.TryGetValue(figure, out Sourced? sourced) && sourced.Low < sourced.High
            ? (Ratio.FromPercent(sourced.Low.Value), Ratio.FromPercent(sourced.High.Value))
            : null;
        return new()
        {
            Water = Part("water"),
            Fat = Part("fat"),
            LeastFat = Range("fat")?.Low,
            MostFat = Range("fat")?.High,
            FatKind = Linked(row, "fat", fats),
            Sugar = Part("sugar"),
            Protein = Part("protein"),
            Acid = Part("acid"),
            LeastAcid = Range("acid")?.Low,
            MostAcid = Range("acid")?.High,
            AcidKind = Linked(row, "acid", acids),
            Alcohol = Part("alcohol"),
            Ash = Part("ash"),
        };
    }

    private static T? Linked<T>(CsvTable.Row row, string column, Dictionary<string, T> table) where T : class
    {
        if (row.Optional(column) is not { } id)
            return null;
        if (table.TryGetValue(id, out T? found))
            return found;
        row.Fault(column, $"\"{id}\" is in no table");
        return null;
    }

    private static Figure<T>? Figure<T>(Dictionary<string, Sourced> of, string name, Func<double, T> make, bool halfOfUpperLimit = false) where T : struct =>
        of.TryGetValue(name, out Sourced? row)
            ? new(make(row.Middle(halfOfUpperLimit)), row.Evidence, row.Sources)
            {
                Low = row.Low is { } low ? make(low) : null,
                High = row.High is { } high ? make(high) : null,
                Note = row.Note,
            }
            : null;

    /// <summary>
    /// Evidence of a profile: the weakest among its acids, but for acids that together hold less than 1 % of the fat. Those move the
    /// saponification value by less than 0.3 %, and a remembered trace of C22:0 shall not cry wolf over an oil whose main acids were read.
    /// </summary>
    private static Evidence OfProfile(List<Sourced> acids)
    {
        const double Trace = 1;
        double passed = 0;
        Evidence evidence = default;
        foreach (Sourced acid in acids.OrderByDescending(a => a.Evidence))
        {
            evidence = acid.Evidence;
            passed += acid.Middle();
            if (passed >= Trace)
                break;
        }
        return evidence;
    }

    private static Evidence? Weakest(IReadOnlyCollection<Sourced> rows) => rows.Count == 0 ? null : rows.Max(r => r.Evidence);

    private static ValueList<string> Keys(IEnumerable<Sourced> rows) => [.. rows.SelectMany(r => r.Sources).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
}
