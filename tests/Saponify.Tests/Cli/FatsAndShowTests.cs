using System.Text.Json;
using Saponify.Cli;
using Saponify.Tests.Support;

namespace Saponify.Tests.Cli;

/// <summary>The tables on the command line.</summary>
public class FatsAndShowTests
{
    private static (int Exit, string Output, string Errors) Run(params string[] args)
    {
        StringWriter output = new() { NewLine = "\n" }, errors = new() { NewLine = "\n" };
        int exit = CommandLine.Run(args, TextReader.Null, output, errors);
        return (exit, output.ToString(), errors.ToString());
    }

    private static string Own => Repository.Path("data", "examples", "own-fats.csv");

    [Theory]
    [InlineData("olive-oil")]
    [InlineData("shea-butter")]
    [InlineData("beeswax")]
    [InlineData("stearic-acid-95")]
    [InlineData("unspecified-vegetable-oil")]
    [InlineData("milk-goat")]
    [InlineData("coconut-milk-canned")]
    [InlineData("citric-acid-monohydrate")]
    [InlineData("ultramarine-blue")]
    [InlineData("vanillin")]
    [InlineData("lavender")]
    [InlineData("linalool")]
    [InlineData("tree-nut")]
    public void Show_SaysEverything(string name)
    {
        (int exit, string output, string errors) = Run("show", name);
        Assert.Equal((0, ""), (exit, errors));
        Golden.Matches(output, "show", name + ".txt");
    }

    [Fact]
    public void Show_WithOwnTables_ShowsThem()
    {
        (int exit, string output, _) = Run("show", "shea-butter", "kiwi-seed-oil", "olive-oil", "--own", Own);
        Assert.Equal(0, exit);
        Golden.Matches(output, "show", "own-fats.txt");
    }

    [Fact]
    public void Fats_ListsAll()
    {
        (int exit, string output, string errors) = Run("fats");
        Assert.Equal((0, ""), (exit, errors));
        Golden.Matches(output, "show", "fats.txt");
    }

    [Theory]
    [InlineData("fats", "palm", "kernel")]
    [InlineData("fats", "--class", "wax", "--vegan")]
    [InlineData("fats", "--class", "free-acid", "--evidence", "pharmacopoeia")]
    public void Fats_Filters(params string[] args)
    {
        (int exit, string output, _) = Run(args);
        Assert.Equal(0, exit);
        Golden.Matches(output, "show", string.Join('-', args.Select(a => a.TrimStart('-'))) + ".txt");
    }

    [Fact]
    public void Fats_WithoutAnAllergen_LeavesThemOut()
    {
        string output = Run("fats", "--without", "tree-nut", "--without", "milk").Output;
        Assert.DoesNotContain("tree-nut", output, StringComparison.Ordinal);
        Assert.DoesNotContain("milk", output, StringComparison.Ordinal);
        Assert.Contains("sesame-oil", output, StringComparison.Ordinal);
        Assert.Contains("  0 of 127", "  " + Run("fats", "unobtainium").Output.Split('\n')[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Fats_AsJson_IsJson()
    {
        using JsonDocument json = JsonDocument.Parse(Run("fats", "-o", "json", "--own", Own).Output);
        Assert.Equal(("saponify-fats/1", "2026.11+own"), (json.RootElement.GetProperty("format").GetString(), json.RootElement.GetProperty("data").GetString()));
        JsonElement shea = json.RootElement.GetProperty("fats").EnumerateArray().Single(f => f.GetProperty("id").GetString() == "shea-butter");
        Assert.Equal((178.4, true), (shea.GetProperty("saponificationValueMilligramsKohPerGram").GetDouble(), shea.GetProperty("own").GetBoolean()));
        JsonElement avocado = json.RootElement.GetProperty("fats").EnumerateArray().Single(f => f.GetProperty("id").GetString() == "avocado-oil");
        Assert.Equal(JsonValueKind.Null, avocado.GetProperty("saponificationValueMilligramsKohPerGram").ValueKind);
        Assert.True(avocado.GetProperty("needsLotsOwnValue").GetBoolean());
    }

    [Fact]
    public void Show_OfSomethingUnknown_NamesTheNearest_AndGoesOn()
    {
        (int exit, string output, string errors) = Run("show", "olvie-oil", "water");
        Assert.Equal(2, exit);
        Assert.Contains("nothing called \"olvie-oil\"; nearest: olive-oil", errors, StringComparison.Ordinal);
        Assert.StartsWith("Water (water)", output, StringComparison.Ordinal);
    }

    [Fact]
    public void OwnTables_ServeAllCommands_AndTheirFaultsAreTold()
    {
        string formula = Repository.Path("data", "examples", "market-day-bar.json");
        Assert.Equal(0, Run("plan", formula, "--own", Own).Exit);
        (int exit, string output, string errors) = Run("plan", formula, "--own", formula);
        Assert.Equal((2, ""), (exit, output));
        Assert.Contains("market-day-bar.json(1): error:", errors, StringComparison.Ordinal);
        Assert.Equal(2, Run("fats", "--own", "no-such.csv").Exit);
        Assert.Contains("no-such.csv: error:", Run("check", formula, "--own", "no-such.csv").Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("show")]
    [InlineData("show", "--loud")]
    [InlineData("fats", "--without", "nuts")]
    [InlineData("fats", "--class", "oil")]
    [InlineData("fats", "--evidence", "3")]
    public void WrongUse_ExitsWithSixtyFour(params string[] args) => Assert.Equal(64, Run(args).Exit);

    [Fact]
    public void Pages_AreTheSameInEveryCulture()
    {
        string expected = Run("show", "olive-oil").Output + Run("fats").Output;
        foreach (string culture in InCulture.Names)
            Assert.Equal(expected, InCulture.Run(culture, () => Run("show", "olive-oil").Output + Run("fats").Output));
    }
}
