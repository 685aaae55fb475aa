using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Saponify.Tests.Support;

namespace Saponify.Tests.Reference;

/// <summary>The tables as files, read by another reader than the library's: form, keys, sources, numbers.</summary>
public partial class TableIntegrityTests
{
    private static readonly (string Table, string[] Key)[] s_tables =
    [
        ("sources", ["key"]), ("fats", ["id"]), ("fat-figures", ["fat", "figure"]), ("acids", ["id"]), ("liquids", ["id"]), ("liquid-figures", ["liquid", "figure"]),
        ("additives", ["id"]), ("additive-figures", ["additive", "figure"]), ("fragrance-allergens", ["id"]), ("essential-oils", ["id"]), ("essential-oil-constituents", ["oil", "constituent"]),
        ("lye-curves", ["alkali", "figure", "at"]), ("vessel-materials", ["id"]), ("vessel-figures", ["material", "figure"]),
    ];

    private static readonly string[] s_classes = ["standard", "pharmacopoeia", "handbook", "measured", "compilation", "computed", "memory"];

    /// <summary>The evidence class of each source.</summary>
    private static readonly Dictionary<string, string> s_weakness = CsvText.Table("sources.csv").ToDictionary(r => r["key"], r => r["evidence"]);

    public static TheoryData<string> Tables => [.. s_tables.Select(t => t.Table)];

    public static TheoryData<string> FigureTables => ["fat-figures", "liquid-figures", "additive-figures", "essential-oil-constituents"];

    private static List<Dictionary<string, string>> Table(string name) => CsvText.Table(name + ".csv");

    [Theory]
    [MemberData(nameof(Tables))]
    public void Form_IsPlainAndMinimal(string table)
    {
        byte[] bytes = File.ReadAllBytes(Repository.Path("data", table + ".csv"));
        Assert.DoesNotContain((byte)'\r', bytes);
        string text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        Assert.NotEqual('\uFEFF', text[0]);
        foreach (string field in CsvText.Rows(text).SelectMany(r => r))
        {
            Assert.Equal(field.Trim(), field);
            Assert.DoesNotContain(field, c => char.IsControl(c));
            Assert.DoesNotContain("  ", field, StringComparison.Ordinal);
            // a spreadsheet would take these for formulas
            Assert.False(field.Length > 0 && field[0] is '=' or '+' or '-' or '@', field);
        }
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Rows_AreSortedByTheirKeys_AndUnique(string table)
    {
        string[] key = s_tables.Single(t => t.Table == table).Key;
        List<string> keys = [.. Table(table).Select(r => string.Join('\u0001', key.Select(k => Sortable(r[k]))))];
        Assert.Equal(keys.Distinct().Order(StringComparer.Ordinal), keys);
        Assert.All(Table(table), r => Assert.Matches(Id(), r[key[0]]));
    }

    /// <summary>A key as text, the strength of a point of a curve as its number.</summary>
    private static string Sortable(string key) => decimal.TryParse(key, NumberStyles.Number, CultureInfo.InvariantCulture, out decimal at) ? at.ToString("000000.0000", CultureInfo.InvariantCulture) : key;

    [Fact]
    public void RowsAndSums_AreThoseThatWereChecked()
    {
        // a figure that changes shows here with its table: say why in data/CHANGELOG.md
        StringBuilder text = new("table rows sum-of-low sum-of-high\n");
        foreach ((string table, _) in s_tables.Where(t => t.Table != "sources"))
        {
            List<Dictionary<string, string>> rows = Table(table);
            string Sum(string column) => rows[0].ContainsKey(column) ? rows.Sum(r => r[column].Length == 0 ? 0 : decimal.Parse(r[column], CultureInfo.InvariantCulture)).ToString(CultureInfo.InvariantCulture) : "-";
            text.Append(CultureInfo.InvariantCulture, $"{table} {rows.Count} {Sum(table == "acids" ? "molar_mass" : table == "essential-oils" ? "density_low" : "low")} {Sum(table == "acids" ? "protons" : table == "essential-oils" ? "density_high" : "high")}\n");
        }
        Golden.Matches(text.ToString(), "data", "sums.txt");
    }

    [Fact]
    public void Tables_AreAsLargeAsPromised()
    {
        Assert.InRange(Table("fats").Count, 100, 1000);
        Assert.InRange(Table("liquids").Count, 70, 1000);
        Assert.InRange(Table("additives").Count, 100, 1000);
        Assert.Equal(25, Table("essential-oils").Count);
        Assert.Equal(81, Table("fragrance-allergens").Count(r => r["status"] == "label"));
        Assert.Equal(26, Table("fragrance-allergens").Count(r => r["since"] == "original-26"));
    }

    [Theory]
    [MemberData(nameof(FigureTables))]
    public void Figures_HaveNumbersUnitSourceAndPlace(string table)
    {
        foreach (Dictionary<string, string> row in Table(table))
        {
            string what = string.Join(',', row.Values);
            Assert.True(row["low"].Length + row["high"].Length > 0, what);
            foreach (string number in new[] { row["low"], row["high"] }.Where(n => n.Length > 0))
                Assert.Matches(PlainNumber(), number);
            if (row["low"].Length > 0 && row["high"].Length > 0)
                Assert.True(decimal.Parse(row["low"], CultureInfo.InvariantCulture) <= decimal.Parse(row["high"], CultureInfo.InvariantCulture), what);
            string[] keys = row["source"].Split(';');
            Assert.Equal(keys.Distinct().Order(StringComparer.Ordinal), keys);
            Assert.All(keys, k => Assert.Contains(k, s_weakness));
            // the weakest source decides; a remark from memory is not evidence
            Assert.Equal(keys.Max(k => Array.IndexOf(s_classes, s_weakness[k])), Array.IndexOf(s_classes, row["evidence"]));
            Assert.True(row["place"].Length > 0 || keys.All(k => k is "memory" or "computed" or "common-practice"), what);
        }
    }

    [Fact]
    public void Sources_AreComplete_AndAllInUse()
    {
        HashSet<string> used = [.. s_tables.Where(t => t.Table != "sources").SelectMany(t => Table(t.Table)).SelectMany(r => r.Where(c => c.Key.EndsWith("source", StringComparison.Ordinal)).SelectMany(c => c.Value.Split(';')))];
        string code = string.Join('\n', new[] { "src", "docs", "tests" }.SelectMany(f => Directory.EnumerateFiles(Repository.Path(f), "*.*", SearchOption.AllDirectories))
            .Where(f => f.EndsWith(".cs", StringComparison.Ordinal) || f.EndsWith(".md", StringComparison.Ordinal)).Select(File.ReadAllText));
        foreach (Dictionary<string, string> row in Table("sources"))
        {
            Assert.True(row["citation"].Length > 0 && row["place"].Length > 0 && row["licence"].Length > 0, row["key"]);
            Assert.Contains(row["evidence"], s_classes);
            Assert.Matches("^([0-9]{4})?$", row["year"]);
            // the inventory of ingredient names is named in the notes by its entries; the definition of total fatty matter waits for its use
            Assert.True(used.Contains(row["key"]) || row["key"] is "cosing" or "iso-685" || code.Contains(row["key"], StringComparison.Ordinal), $"nothing uses {row["key"]}");
        }
    }

    [Fact]
    public void Links_LeadToRows()
    {
        HashSet<string> fats = [.. Table("fats").Select(r => r["id"])], acids = [.. Table("acids").Select(r => r["id"])], allergens = [.. Table("fragrance-allergens").Select(r => r["id"])];
        HashSet<string> entries = [.. Table("fragrance-allergens").Select(r => r["annex_entry"])];
        foreach (Dictionary<string, string> row in Table("liquids").Concat(Table("additives")))
        {
            Assert.True(row["fat"].Length == 0 || fats.Contains(row["fat"]), row["id"]);
            Assert.True(row["acid"].Length == 0 || acids.Contains(row["acid"]), row["id"]);
        }
        Assert.Empty(acids.Except(Table("liquids").Concat(Table("additives")).Select(r => r["acid"])));
        Assert.All(Table("essential-oil-constituents"), r => Assert.Contains(r["constituent"], allergens));
        Assert.All(Table("essential-oils").Where(r => r["annex_entry"].Length > 0), r => Assert.Contains(r["annex_entry"], entries));
    }

    [Fact]
    public void AllergenClassesAndOrigins_AreTheKnownOnes()
    {
        List<Dictionary<string, string>> rows = [.. Table("fats"), .. Table("liquids"), .. Table("additives")];
        Assert.Equal(
            ["barley", "bee-product", "egg", "milk", "mustard", "oat", "peanut", "sesame", "soy", "sulphite", "tree-nut", "wheat", "wool"],
            rows.Select(r => r["allergen"]).Where(a => a.Length > 0).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(["animal", "insect", "mineral", "plant", "synthetic"], rows.Select(r => r["origin"]).Distinct().Order(StringComparer.Ordinal));
        Assert.All(rows.Where(r => r["allergen"] is "milk" or "egg" or "wool"), r => Assert.Equal("animal", r["origin"]));
    }

    [Fact]
    public void CasNumbers_HaveTheirCheckDigit()
    {
        string[] numbers = [.. Table("additives").Concat(Table("fragrance-allergens")).SelectMany(r => r["cas"].Split(';', StringSplitOptions.RemoveEmptyEntries))];
        Assert.InRange(numbers.Length, 150, 1000);
        foreach (string cas in numbers)
        {
            Assert.Matches("^[0-9]{2,7}-[0-9]{2}-[0-9]$", cas);
            // the rule of the registry: digits before the last, counted from the right, times 1, 2, 3 ..., modulo 10
            string digits = cas.Replace("-", "", StringComparison.Ordinal);
            Assert.True(digits[..^1].Reverse().Select((c, i) => (c - '0') * (i + 1)).Sum() % 10 == digits[^1] - '0', cas);
        }
    }

    [Fact]
    public void ColourIndexNumbers_AreFiveDigits_AndOnlyOnColorants()
    {
        List<Dictionary<string, string>> coloured = [.. Table("additives").Where(r => r["colour_index"].Length > 0)];
        Assert.InRange(coloured.Count, 8, 100);
        Assert.All(coloured, r => Assert.Matches("^7[0-9]{4}$", r["colour_index"]));
        Assert.All(coloured, r => Assert.Equal("colorant", r["kind"]));
    }

    [Fact]
    public void MolarMassesOfAcids_FollowFromTheirFormulas()
    {
        // source: ciaaw-2021, abridged standard atomic weights as they stand
        Dictionary<string, decimal> weights = new() { ["H"] = 1.0080m, ["C"] = 12.011m, ["O"] = 15.999m, ["N"] = 14.007m, ["Na"] = 22.990m, ["Mg"] = 24.305m, ["P"] = 30.974m, ["B"] = 10.81m };
        foreach (Dictionary<string, string> row in Table("acids"))
        {
            MatchCollection atoms = Regex.Matches(row["formula"], "([A-Z][a-z]?)([0-9]*)");
            Assert.Equal(row["formula"], string.Concat(atoms.Select(a => a.Value)));
            decimal mass = atoms.Sum(a => weights[a.Groups[1].Value] * (a.Groups[2].Length == 0 ? 1 : int.Parse(a.Groups[2].Value, CultureInfo.InvariantCulture)));
            Assert.Equal(mass.ToString("F3", CultureInfo.InvariantCulture), row["molar_mass"]);
        }
    }

    [Fact]
    public void Names_LeadToOneRowOnly()
    {
        Dictionary<string, string> owner = new(StringComparer.Ordinal);
        foreach (string table in (string[])["fats", "liquids", "additives", "essential-oils"])
        {
            foreach (Dictionary<string, string> row in Table(table))
            {
                foreach (string name in new[] { row["id"], row["name"] }.Concat(row["aliases"].Split(';', StringSplitOptions.RemoveEmptyEntries)).Select(Internals.FoldedName.Of).Distinct())
                    Assert.True(owner.TryAdd(name, table + " " + row["id"]), $"{name} is a name of {owner.GetValueOrDefault(name)} and of {table} {row["id"]}");
                Assert.All(row["aliases"].Split(';', StringSplitOptions.RemoveEmptyEntries), a => Assert.NotEqual(Internals.FoldedName.Of(row["name"]), Internals.FoldedName.Of(a)));
            }
        }
    }

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Id();

    [GeneratedRegex(@"^(0|[1-9][0-9]*)(\.[0-9]*[1-9])?$")]
    private static partial Regex PlainNumber();
}
