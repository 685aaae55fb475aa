using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using Saponify.Cli;
using Saponify.Tests.Support;

namespace Saponify.Tests.Cli;

/// <summary>The command line as a person or a script meets it.</summary>
public class CommandLineTests
{
    private static (int Exit, string Output, string Errors) Run(params string[] args) => RunWith("", args);

    private static (int Exit, string Output, string Errors) RunWith(string input, params string[] args)
    {
        StringWriter output = new() { NewLine = "\n" }, errors = new() { NewLine = "\n" };
        int exit = CommandLine.Run(args, new StringReader(input), output, errors);
        return (exit, output.ToString(), errors.ToString());
    }

    private static string Example(string name) => Repository.Path("data", "examples", name + ".json");

    [Fact]
    public void Plan_OfAnExample_PrintsItByVessel()
    {
        (int exit, string output, string errors) = Run("plan", Example("market-day-bar"));
        Assert.Equal((0, ""), (exit, errors));
        string[] titles = ["Fat pot", "Lye jug", "Superfat", "Who takes up lye", "Handling lye"];
        int[] places = [.. titles.Select(t => output.IndexOf("\n" + t, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void Plan_InAnotherUnit_PrintsOunces() =>
        Assert.Contains(" oz  Canola oil", Run("plan", Example("market-day-bar"), "--unit", "oz").Output, StringComparison.Ordinal);

    [Fact]
    public void Plan_OnAScale_PrintsWholeStepsAndHowSureItIs()
    {
        (int exit, string output, _) = Run("plan", Example("oat-and-cream"), "--scale", "0.1oz");
        Assert.Equal(0, exit);
        Assert.Contains("4.0 oz  sodium hydroxide", output, StringComparison.Ordinal);
        Assert.Contains("One step of the alkali's scale, 0.1 oz, is worth 2.31 points of superfat", output, StringComparison.Ordinal);
        Assert.Contains("lye-heavy with", output, StringComparison.Ordinal);
        Assert.Equal(64, Run("plan", Example("oat-and-cream"), "--scale", "0g").Exit);
    }

    [Fact]
    public void Check_PrintsFindingsAsCompilersDo()
    {
        string json = File.ReadAllText(Example("market-day-bar")).Replace("\"7 %\"", "\"-3 %\"", StringComparison.Ordinal);
        (int exit, string output, _) = RunWith(json, "check", "-");
        Assert.Equal(1, exit);
        Assert.StartsWith("standard input(10,17): error SFY2001: alkali.superfat: ", output, StringComparison.Ordinal);
        Assert.Contains("    fix: Plan for a superfat of 5 % of all fat (changes the product)", output, StringComparison.Ordinal);
        Assert.EndsWith("1 formula: 1 error, 0 warnings, 1 info\n", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SFY6101", 0, "warning SFY6101", """ "mould": { "box": { "length": "14 cm", "width": "8 cm", "height": "6 cm" } }, "pour": "38 °C" """)]
    [InlineData("SFY3103", 0, "warning SFY3103", """ "process": { "room": "20 °C", "water": "15 °C", "lye": "40 °C", "milkLimit": "35 °C" } """)]
    [InlineData("SFY3104", 1, "error SFY3104", """ "process": { "vessel": { "material": "aluminium", "volume": "1 L", "diameter": "11 cm", "mass": "200 g" } } """)]
    [InlineData("SFY6104", 0, "warning SFY6104", """ "mould": { "slab": { "length": "40 cm", "width": "30 cm", "height": "4 cm" } }, "cut": { "thickness": "8 cm" } """)]
    [InlineData("SFY6108", 0, "info SFY6108", """ "pouredOn": "2026-11-01", "soldFrom": "2026-11-15" """)]
    public void Check_TakesTheCircumstancesFromTheFile(string rule, int expected, string finding, string setup)
    {
        JsonNode file = JsonNode.Parse(File.ReadAllText(Example("oat-and-cream")))!;
        Assert.DoesNotContain(rule, RunWith(file.ToJsonString(), "check", "-").Output, StringComparison.Ordinal);
        file["setup"] = JsonNode.Parse($"{{{setup}}}");
        (int exit, string output, string errors) = RunWith(file.ToJsonString(), "check", "-");
        Assert.Equal((expected, ""), (exit, errors));
        Assert.Contains(finding, output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_OfAWrongSetup_SaysWhere_AndExitsWithTwo()
    {
        string json = File.ReadAllText(Example("market-day-bar")).Replace("\"fats\":", "\"setup\": { \"pour\": \"38 cm\", \"moulds\": 0 },\n  \"fats\":", StringComparison.Ordinal);
        (int exit, string output, string errors) = RunWith(json, "check", "-");
        Assert.Equal(2, exit);
        Assert.Contains("standard input(4,22): error SFY1006: \"pour\": ", errors, StringComparison.Ordinal);
        Assert.Contains("standard input(4,41): error SFY1007: ", errors, StringComparison.Ordinal);
        Assert.DoesNotContain("SFY", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_OfAMouldTooSmall_IsMendedByFix_AndTheSetupStays()
    {
        string json = File.ReadAllText(Example("market-day-bar")).Replace("\"fats\":", "\"setup\": { \"mould\": { \"box\": { \"length\": \"14 cm\", \"width\": \"8 cm\", \"height\": \"6 cm\" } }, \"pour\": \"38 °C\" },\n  \"fats\":", StringComparison.Ordinal);
        (int exit, string output, string errors) = RunWith(json, "fix", "-", "--product", "--rule", "SFY6101");
        Assert.Equal(0, exit);
        Assert.Contains("which fills the mould", errors, StringComparison.Ordinal);
        Assert.Contains("\"setup\": { \"mould\": { \"box\": { \"length\": \"14 cm\",", output, StringComparison.Ordinal);
        Assert.DoesNotContain("SFY6101", RunWith(output, "check", "-").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_OfManyFiles_GoesThroughAll_AndWritesSarif()
    {
        string sarif = Path.GetTempFileName();
        try
        {
            (int exit, string output, string errors) = Run(["check", .. Repository.Examples, "no-such-file.json", "--sarif", sarif, "--scale", "1g", "--form", "soft"]);
            Assert.Equal(2, exit);
            Assert.Contains("6 formulas: 0 errors", output, StringComparison.Ordinal);
            Assert.Contains("1 can't be read", output, StringComparison.Ordinal);
            Assert.Contains("no-such-file.json: error", errors, StringComparison.Ordinal);
            using JsonDocument log = JsonDocument.Parse(File.ReadAllBytes(sarif));
            Assert.Equal("2.1.0", log.RootElement.GetProperty("version").GetString());
        }
        finally
        {
            File.Delete(sarif);
        }
    }

    [Fact]
    public void Check_WithAFaultyConfiguration_ExitsWithTwo()
    {
        string config = Path.GetTempFileName();
        try
        {
            File.WriteAllText(config, "{ \"severity\": { \"SFY2001\": \"off\" } }");
            (int exit, _, string errors) = Run("check", Example("all-coconut"), "--config", config);
            Assert.Equal(2, exit);
            Assert.Contains("SFY2001 is a safety rule and stays at error", errors, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(config);
        }
    }

    [Fact]
    public void Plan_AsJson_IsJson()
    {
        (int exit, string output, _) = Run("plan", Example("goat-milk-frozen"), "--output", "json");
        Assert.Equal(0, exit);
        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal("saponify-plan/1", json.RootElement.GetProperty("format").GetString());
        Assert.Equal(0.055, json.RootElement.GetProperty("superfatFraction").GetProperty("ofAllFat").GetDouble(), 9);
    }

    [Fact]
    public void Plan_WithAnObstacle_ExitsWithOne()
    {
        string json = File.ReadAllText(Example("market-day-bar")).Replace("tallow", "shea-butter", StringComparison.Ordinal);
        (int exit, string output, _) = RunWith(json, "plan", "-");
        Assert.Equal(1, exit);
        Assert.Contains("fats[shea-butter]: Shea butter", output, StringComparison.Ordinal);
        Assert.DoesNotContain("Lye jug", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfAFaultyFile_PrintsFaultsAsCompilersDo_AndExitsWithTwo()
    {
        string json = File.ReadAllText(Example("market-day-bar")).Replace("390 g", "390 ml", StringComparison.Ordinal);
        (int exit, string output, string errors) = RunWith(json, "plan", "-");
        Assert.Equal((2, ""), (exit, output));
        Assert.StartsWith("standard input(7,32): error SFY1006: \"mass\": \"ml\" is no unit here: a volume is not a mass: write g, kg, mg, oz or lb", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfAMissingFile_SaysSo_AndGoesOnWithTheNext()
    {
        (int exit, string output, string errors) = Run("plan", "no-such-file.json", Example("all-coconut"));
        Assert.Equal(2, exit);
        Assert.Contains("no-such-file.json: error:", errors, StringComparison.Ordinal);
        Assert.Contains("All coconut", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfTenFaultyFiles_PrintsTheFaultsOfAllTen()
    {
        string folder = Directory.CreateTempSubdirectory("saponify").FullName;
        try
        {
            string[] files = [.. Enumerable.Range(0, 10).Select(i => Path.Combine(folder, $"batch {i}.json"))];
            for (int i = 0; i < 10; i++)
                File.WriteAllText(files[i], File.ReadAllText(Example("market-day-bar")).Replace("390 g", $"{i},5 kg", StringComparison.Ordinal).Replace("7 %", "7", StringComparison.Ordinal));
            (int exit, string output, string errors) = Run(["plan", .. files]);
            Assert.Equal((2, ""), (exit, output));
            string[] lines = errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);
            Assert.Equal(20, lines.Length);
            for (int i = 0; i < 10; i++)
            {
                Assert.StartsWith($"{files[i]}(7,32): error SFY1006: \"mass\": \"{i},5 kg\" is ambiguous", lines[2 * i], StringComparison.Ordinal);
                Assert.StartsWith($"{files[i]}(10,17): error SFY1006: \"superfat\": a share needs the sign %", lines[(2 * i) + 1], StringComparison.Ordinal);
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Plan_OfStandardInput_BesideFiles_PlansThemAll()
    {
        (int exit, string output, string errors) = RunWith(File.ReadAllText(Example("shaving-soap")), "plan", Example("all-coconut"), "-", Example("market-day-bar"));
        Assert.Equal((0, ""), (exit, errors));
        int[] places = [.. new[] { "All coconut", "Shaving soap", "Market-day bar" }.Select(t => output.IndexOf(t, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void Plan_OfAVolume_PrintsANoteAndGoesOn()
    {
        string json = File.ReadAllText(Example("market-day-bar")).Replace("\"mass\": \"390 g\"", "\"volume\": \"400 mL\"", StringComparison.Ordinal).Replace("tallow", "olive-oil", StringComparison.Ordinal);
        (int exit, string output, string errors) = RunWith(json, "plan", "-");
        Assert.Equal(0, exit);
        Assert.StartsWith("standard input(7,", errors, StringComparison.Ordinal);
        Assert.Contains("note SFY1016: the volume of Olive oil was converted", errors, StringComparison.Ordinal);
        Assert.Contains("Olive oil", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfMoreThanAMegabyte_IsRefused()
    {
        (int exit, _, string errors) = RunWith(new string(' ', 3_000_000), "plan", "-");
        Assert.Equal(2, exit);
        Assert.StartsWith("standard input(1,1): error SFY1014: the file has more than 1000000 bytes", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfBytesThatAreNoUtf8_SaysSo()
    {
        using StreamReader input = new(new MemoryStream([(byte)'{', 0xB0]), new System.Text.UTF8Encoding(false, throwOnInvalidBytes: true));
        StringWriter output = new() { NewLine = "\n" }, errors = new() { NewLine = "\n" };
        Assert.Equal(2, CommandLine.Run(["plan", "-"], input, output, errors));
        Assert.StartsWith("standard input: error: ", errors.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("bake", "x.json")]
    [InlineData("plan", "x.json", "--unit", "stone")]
    [InlineData("plan", "x.json", "--colour")]
    public void WrongUse_ExitsWithSixtyFour(params string[] args) => Assert.Equal(64, Run(args).Exit);

    [Fact]
    public void Help_NamesTheCommandAndTheExitCodes()
    {
        (int exit, string output, _) = Run("--help");
        Assert.Equal(0, exit);
        Assert.Contains("plan", output, StringComparison.Ordinal);
        Assert.Contains("Exit codes: 0 fine", output, StringComparison.Ordinal);
    }
}
