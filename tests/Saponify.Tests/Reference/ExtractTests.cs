using System.Globalization;
using System.Text.RegularExpressions;

namespace Saponify.Tests.Reference;

/// <summary>
/// The tables against extracts of what they were typed from: USDA SR28 and Ciqual 2020 row by row, and what each source of a fat gives by
/// itself. Differences that are meant stand in data/checks/differences.csv with their reason; the tests pin exactly that list.
/// </summary>
public class ExtractTests
{
    private static readonly (string Figure, string Usda, string Ciqual)[] s_contents =
    [
        ("water", "water_g", "water_g_per_100g"), ("fat", "total_lipid_g", "fat_g_per_100g"), ("sugar", "total_sugars_g", "sugars_g_per_100g"), ("protein", "protein_g", "protein_jones_g_per_100g"),
        ("ash", "ash_g", "ash_g_per_100g"), ("alcohol", "alcohol_g", "alcohol_g_per_100g"), ("fibre", "fibre_g", "fibre_g_per_100g"), ("acid", "", "organic_acids_g_per_100g"),
    ];

    private static decimal? Number(string text) => text.Length == 0 ? null : decimal.Parse(text, CultureInfo.InvariantCulture);

    [Fact]
    public void Differences_AreExactlyTheOnesWithAReason()
    {
        List<Dictionary<string, string>> meant = CsvText.Table("checks", "differences.csv");
        string[] found = [.. Foods("liquid-figures", "liquid").Concat(Foods("additive-figures", "additive")).Concat(Fats()).Order(StringComparer.Ordinal)];
        Assert.Equal(meant.Select(r => $"{r["table"]} {r["material"]} {r["figure"]}: {r["extract"]} here {r["here"]}").Order(StringComparer.Ordinal), found);
        Assert.All(meant, r => Assert.InRange(r["reason"].Length, 10, 200));
    }

    [Fact]
    public void MostFigures_CanBeCompared()
    {
        // about three quarters of the figures of fats are read, the rest is computed or from memory
        Assert.InRange(CsvText.Table("fat-figures.csv").Count(r => Compared(r).Count > 0), 950, 1264);
        Assert.InRange(CsvText.Table("liquid-figures.csv").Count(r => Regex.IsMatch(r["place"], "^(NDB|CIQUAL) [0-9]+$")), 500, 590);
    }

    [Fact]
    public void ABetterSource_IsNeverReplacedByAWorse()
    {
        string[] classes = ["standard", "pharmacopoeia", "handbook", "measured", "compilation", "computed", "memory"];
        Dictionary<string, string> weakness = CsvText.Table("sources.csv").ToDictionary(r => r["key"], r => r["evidence"]);
        ILookup<(string, string), string> bySource = CsvText.Table("extracts", "fats-by-source.csv").ToLookup(r => (r["fat"], r["figure"]), r => weakness[r["source"]]);
        string[] replaced = [.. CsvText.Table("fat-figures.csv")
            .Where(r => bySource[(r["fat"], r["figure"])].Any(c => Array.IndexOf(classes, c) < Array.IndexOf(classes, r["evidence"])))
            .Select(r => $"{r["fat"]} {r["figure"]}")];
        // the monograph limits palmitic acid only through the sum with stearic acid; what follows from it is computed
        Assert.Equal(["stearic-acid-50 C16:0", "stearic-acid-70 C16:0", "stearic-acid-95 C16:0"], replaced);
    }

    /// <summary>Rows that name one row of a food table, against that row.</summary>
    private static IEnumerable<string> Foods(string table, string key)
    {
        Dictionary<string, Dictionary<string, string>> usda = CsvText.Table("extracts", "usda-sr28.csv").ToDictionary(r => r["ndb_no"]), ciqual = CsvText.Table("extracts", "ciqual-2020.csv").ToDictionary(r => r["alim_code"]);
        foreach (Dictionary<string, string> row in CsvText.Table(table + ".csv"))
        {
            Match place = Regex.Match(row["place"], "^(NDB|CIQUAL) ([0-9]+)$");
            if (!place.Success || row["source"] is not ("usda-sr28" or "ciqual-2020") || row["figure"] is "density" or "dose")
                continue;
            (string _, string inUsda, string inCiqual) = s_contents.Single(c => c.Figure == row["figure"]);
            string raw = place.Groups[1].Value == "NDB" ? usda[place.Groups[2].Value][inUsda] : ciqual[place.Groups[2].Value][inCiqual];
            bool below = raw.StartsWith('<');
            decimal? value = Number(raw.TrimStart('<', ' ') is "-" or "traces" or "" ? "" : raw.TrimStart('<', ' '));
            bool same = below ? Number(row["high"]) == value && row["low"].Length == 0 : Number(row["low"]) == value && Number(row["high"]) == value;
            if (!same)
                yield return $"{table} {row[key]} {row["figure"]}: {(raw.Length == 0 ? "none" : raw)} here {Range(row["low"], row["high"])}";
        }
    }

    /// <summary>Rows of fats against the union of what their sources give.</summary>
    private static IEnumerable<string> Fats()
    {
        foreach (Dictionary<string, string> row in CsvText.Table("fat-figures.csv"))
        {
            List<Dictionary<string, string>> by = Compared(row);
            string[] read = [.. row["source"].Split(';').Where(k => k is not ("memory" or "computed"))];
            if (by.Count == 0)
            {
                if (read.Length > 0)
                    yield return $"fat-figures {row["fat"]} {row["figure"]}: none here {Range(row["low"], row["high"])}";
                continue;
            }
            decimal per = by[0]["unit"] == "g/kg" ? 10 : 1;
            decimal? low = by.Any(r => r["low"].Length > 0) ? by.Min(r => Number(r["low"])) / per : null, high = by.Any(r => r["high"].Length > 0) ? by.Max(r => Number(r["high"])) / per : null;
            if (low != Number(row["low"]) || high != Number(row["high"]))
                yield return $"fat-figures {row["fat"]} {row["figure"]}: {Range(Shown(low), Shown(high))} here {Range(row["low"], row["high"])}";
        }
    }

    private static readonly ILookup<(string, string), Dictionary<string, string>> s_bySource = CsvText.Table("extracts", "fats-by-source.csv").ToLookup(r => (r["fat"], r["figure"]));

    private static List<Dictionary<string, string>> Compared(Dictionary<string, string> row)
    {
        string[] keys = row["source"].Split(';');
        return [.. s_bySource[(row["fat"], row["figure"])].Where(r => keys.Contains(r["source"]) && (r["source"] != "usda-sr26" || row["place"].Contains(r["place"], StringComparison.Ordinal)))];
    }

    private static string Shown(decimal? value) => value?.ToString("0.######", CultureInfo.InvariantCulture) ?? "";

    private static string Range(string low, string high) => low == high ? low : $"{low}..{high}";
}
