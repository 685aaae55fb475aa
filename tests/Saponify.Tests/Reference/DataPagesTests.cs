using System.Globalization;
using System.Text;
using Saponify.Internals;
using Saponify.Tests.Support;

namespace Saponify.Tests.Reference;

/// <summary>The generated pages under docs/data say what the tables say. SAPONIFY_APPROVE=1 writes them anew.</summary>
public class DataPagesTests
{
    private static readonly string[] s_classes = ["standard", "pharmacopoeia", "handbook", "measured", "compilation", "computed", "memory"];

    [Fact]
    public void FatsPage_ListsEveryFat()
    {
        StringBuilder page = new("""
            # All fats

            Generated from the tables; a test keeps it so. Saponification values in mg KOH per g. *Used* is what lye is computed from, by the
            [rule](README.md#the-saponification-value-used), cut to a tenth. *At the low end*: points of superfat lost when a lot takes up no more
            than the published low end, (used - low)/used; *and by the acids*: the same when the published acids have to allow it too.


            """.ReplaceLineEndings("\n"));
        page.Append("| id | class | published | used | at the low end | and by the acids | evidence | fit |\n|---|---|---|---|---|---|---|---|\n");
        foreach (Fat fat in Pantry.Reference.Fats)
        {
            string used = fat.Saponification is { } value ? Cut(value.Value.MilligramsKohPerGram) : "";
            page.Append(CultureInfo.InvariantCulture, $"| {fat.Id} | {FatText.Class(fat.Class)} | {Range(fat.Figures.Saponification)} | {used} | {Points(fat, fat.Saponification?.Low?.MilligramsKohPerGram)} | {Points(fat, FatChecks.LowestByBoth(fat))} | {fat.Evidence?.ToString().ToLowerInvariant()} | {(fat.Figures.NeedsOwnSaponification ? "lot-only" : "lye")} |\n");
        }
        Page.Matches(page.ToString(), "fats.md");
    }

    [Fact]
    public void OutliersPage_GivesEveryReason()
    {
        StringBuilder page = new("""
            # Figures that don't fit each other

            Generated from the tables; a test pins exactly this list. *SV*: the value of the scaled middles of the acids, less the unsaponifiable part,
            lies outside the published range. *SV middle*: the middle of the published range is more than any profile within the published acids can
            give, without unsaponifiable matter; taking it would mean more lye than the fat takes up. *IV*: the same as SV for the iodine value.
            Deviations of a few units are normal: a middle is not an oil, and many rows rest on one sample.


            """.ReplaceLineEndings("\n"));
        page.Append("| fat | check | from the acids | published | reason |\n|---|---|---|---|---|\n");
        Dictionary<(string, string), string> reasons = CsvText.Table("checks", "outliers.csv").ToDictionary(r => (r["fat"], r["check"]), r => r["reason"]);
        foreach (FatChecks.Outlier outlier in FatChecks.Outliers())
            page.Append(CultureInfo.InvariantCulture, $"| {outlier.Fat} | {outlier.Check} | {outlier.Computed} | {outlier.Published} | {reasons[(outlier.Fat, outlier.Check)]} |\n");
        page.Append("\n## Figures that differ from what was typed\n\nAgainst the [extracts](../../data/extracts/README.md); a test pins exactly this list.\n\n| table | row | figure | extract | here | reason |\n|---|---|---|---|---|---|\n");
        foreach (Dictionary<string, string> row in CsvText.Table("checks", "differences.csv"))
            page.Append(CultureInfo.InvariantCulture, $"| {row["table"]} | {row["material"]} | {row["figure"]} | {row["extract"]} | {row["here"]} | {row["reason"]} |\n");
        Page.Matches(page.ToString(), "outliers.md");
    }

    [Fact]
    public void TablesPage_CountsRowsByEvidence()
    {
        StringBuilder page = new("# Rows per table and evidence\n\nGenerated from the tables; a test keeps it so.\n\n");
        page.Append(CultureInfo.InvariantCulture, $"| table | rows | {string.Join(" | ", s_classes)} |\n|---|---|{string.Concat(Enumerable.Repeat("---|", s_classes.Length))}\n");
        foreach (string table in (string[])["fats", "fat-figures", "acids", "liquids", "liquid-figures", "additives", "additive-figures", "fragrance-allergens", "essential-oils", "essential-oil-constituents", "sources"])
        {
            List<Dictionary<string, string>> rows = CsvText.Table(table + ".csv");
            IEnumerable<string> counts = s_classes.Select(c => rows[0].ContainsKey("evidence") ? rows.Count(r => r["evidence"] == c).ToString(CultureInfo.InvariantCulture) : "");
            page.Append(CultureInfo.InvariantCulture, $"| {table} | {rows.Count} | {string.Join(" | ", counts)} |\n");
        }
        IEnumerable<string> used = s_classes.Select(c => Pantry.Reference.Fats.Count(f => f.Saponification?.Evidence.ToString().ToLowerInvariant() == c).ToString(CultureInfo.InvariantCulture));
        page.Append(CultureInfo.InvariantCulture, $"| values used for lye | {Pantry.Reference.Fats.Count(f => f.Saponification is not null)} | {string.Join(" | ", used)} |\n");
        Page.Matches(page.ToString(), "tables.md");
    }

    [Fact]
    public void Changelog_NamesRowsThatAreThere()
    {
        string[] lines = [.. Repository.Read("data", "CHANGELOG.md").Split('\n').Where(l => l.StartsWith("- DATA ", StringComparison.Ordinal))];
        Assert.InRange(lines.Length, 20, 10_000);
        foreach (string line in lines)
        {
            Assert.Matches(@"^- DATA [a-z-]+ \S+ [^>]+: .+ -> .+ \([^)]+\): .{4,}$", line);
            string[] words = line.Split(' ');
            Assert.True(words[3] == "32" || CsvText.Table(words[2] + ".csv").Any(r => r.Values.First() == words[3]), line);
        }
    }

    private static string Cut(double value) => Text.Fixed(Math.Floor((value * 10) + 1e-9) / 10, 1);

    private static string Range(Figure<SaponificationValue>? figure) => figure is null ? ""
        : figure.High is not { } high ? "at least " + Text.Number(figure.Low!.Value.MilligramsKohPerGram)
        : figure.Low == high ? Text.Number(high.MilligramsKohPerGram)
        : $"{Text.Number(figure.Low?.MilligramsKohPerGram ?? 0)} to {Text.Number(high.MilligramsKohPerGram)}";

    private static string Points(Fat fat, double? low) => fat.Saponification is { } used && low is { } least && used.Value.MilligramsKohPerGram > 0
        ? Text.Fixed(FatText.Points(least, used.Value.MilligramsKohPerGram), 1)
        : "";

    private static class Page
    {
        internal static void Matches(string actual, string file)
        {
            string path = Repository.Path("docs", "data", file);
            if (Environment.GetEnvironmentVariable("SAPONIFY_APPROVE") == "1")
                File.WriteAllText(path, actual);
            Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), actual);
        }
    }
}
