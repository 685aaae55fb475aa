using Saponify.Cli;
using Saponify.Tests.Support;

namespace Saponify.Tests.Cli;

/// <summary><c>saponify process</c> as a person meets it.</summary>
public class ProcessCommandTests
{
    private static (int Exit, string Output, string Errors) Run(params string[] args) => RunWith("", args);

    private static (int Exit, string Output, string Errors) RunWith(string input, params string[] args)
    {
        StringWriter output = new() { NewLine = "\n" }, errors = new() { NewLine = "\n" };
        int exit = CommandLine.Run(["process", .. args], new StringReader(input), output, errors);
        return (exit, output.ToString(), errors.ToString());
    }

    private static string Example(string name) => Repository.Path("data", "examples", name + ".json");

    [Fact]
    public void WithNothingGiven_AsksWithItsOptions()
    {
        (int exit, string output, string errors) = Run(Example("market-day-bar"));
        Assert.Equal((0, ""), (exit, errors));
        foreach (string option in (string[])["--room 21C", "--water 18C", "--fats 38C", "--lye 35C or --mixed 36C", "--vessel polypropylene,1.5L,12cm,140g"])
            Assert.Contains($"({option})", output, StringComparison.Ordinal);
        Assert.DoesNotContain("upper bound", output, StringComparison.Ordinal);
    }

    [Fact]
    public void WithAllGiven_PrintsStepsPlotAndCautions()
    {
        (int exit, string output, _) = Run(Example("market-day-bar"), "--room", "21C", "--water", "18C", "--fats", "50 °C", "--lye", "40C", "--vessel", "stainless-steel,60 fl oz,5in,300g", "--headspace", "10%");
        Assert.Equal(0, exit);
        Assert.DoesNotContain("Not given", output, StringComparison.Ordinal);
        string[] parts = ["1. Warm the fats", "2. Stir the alkali", "3. Let the lye cool", "4. Pour the lye", "Temperatures (", "Handling lye"];
        int[] places = [.. parts.Select(t => output.IndexOf("\n" + t, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
        Assert.Contains("1774 mL, 12.7 cm wide", output, StringComparison.Ordinal);
    }

    [Fact]
    public void IceAndIceBath_CoolThePlan()
    {
        string[] kitchen = [Example("market-day-bar"), "--room", "21C", "--water", "18C", "--lye", "40C", "--vessel", "stainless-steel,1.5L,12cm,300g"];
        Assert.Contains("in ice bath", Run([.. kitchen, "--ice-bath"]).Output, StringComparison.Ordinal);
        Assert.Contains("The ice takes", Run([.. kitchen, "--ice", "50%", "--ice-at", "-18C"]).Output, StringComparison.Ordinal);
        Assert.Contains("how cold the ice is (--ice-at -18C)", Run([.. kitchen, "--ice", "50%"]).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--ice-at", "5C", "\"5C\" is outside -80 to 0 °C")]
    [InlineData("--room", "21", "the unit is missing; write °C, °F or K")]
    [InlineData("--room", "900C", "is outside -30 to 60 °C")]
    [InlineData("--ice", "30", "a share needs the sign %")]
    [InlineData("--vessel", "wood,1L,10cm,100g", "There is no material \"wood\"")]
    [InlineData("--vessel", "hdpe,0L,10cm,100g", "The volume of a vessel")]
    [InlineData("--vessel", "hdpe,1L,10,100g", "the unit is missing; write cm, mm, m or in")]
    [InlineData("--vessel", "hdpe,1L", "has not the four parts")]
    [InlineData("--colour", "red", "no option --colour")]
    public void WrongUse_IsExplained_AndExitsWith64(string option, string value, string fault)
    {
        (int exit, _, string errors) = Run(Example("market-day-bar"), option, value);
        Assert.Equal(64, exit);
        Assert.Contains(fault, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Obstacles_ExitWithOne_AndUnreadableFilesWithTwo()
    {
        string json = File.ReadAllText(Example("market-day-bar")).Replace("tallow", "shea-butter", StringComparison.Ordinal);
        (int exit, string output, _) = RunWith(json, "-");
        Assert.Equal(1, exit);
        Assert.Contains("This batch can't be weighed", output, StringComparison.Ordinal);
        Assert.Equal(2, RunWith("{", "-").Exit);
        (exit, output, _) = Run("no-such-file.json", Example("all-coconut"));
        Assert.Equal(2, exit);
        Assert.Contains("All coconut", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "--room 21C --water 18C --fats 50C --lye 40C --milk-limit 35C --ice 20% --ice-at -18C --vessel stainless-steel,1.5L,12cm,300g --ice-bath --headspace 10%")]
    [InlineData("--room 25C --ice 30%", "--room 25C --water 18C --fats 50C --lye 40C --milk-limit 35C --ice 30% --ice-at -18C --vessel stainless-steel,1.5L,12cm,300g --ice-bath --headspace 10%")]
    [InlineData("--vessel hdpe,2L,14cm,150g", "--room 21C --water 18C --fats 50C --lye 40C --milk-limit 35C --ice 20% --ice-at -18C --vessel hdpe,2L,14cm,150g --ice-bath --headspace 10%")]
    // the pot that is asked for decides how cool the lye must be, not the file
    [InlineData("--mixed 42C", "--room 21C --water 18C --fats 50C --mixed 42C --milk-limit 35C --ice 20% --ice-at -18C --vessel stainless-steel,1.5L,12cm,300g --ice-bath --headspace 10%")]
    public void TheSetupOfTheFile_IsTaken_WhereNoOptionSaysOtherwise(string options, string without)
    {
        string json = File.ReadAllText(Example("market-day-bar")).Replace("\"fats\":", """
            "setup": { "process": {
              "room": "21 °C", "water": "18 °C", "fats": "50 °C", "lye": "40 °C", "milkLimit": "35 °C", "ice": { "share": "20 %", "temperature": "-18 °C" },
              "vessel": { "material": "stainless-steel", "volume": "1.5 L", "diameter": "12 cm", "mass": "300 g" }, "surroundings": { "bath": "ice" }, "leastHeadspace": "10 %" } },
            "fats":
            """, StringComparison.Ordinal);
        (int exit, string output, string errors) = RunWith(json, ["-", .. options.Split(' ', StringSplitOptions.RemoveEmptyEntries)]);
        Assert.Equal((0, ""), (exit, errors));
        Assert.Equal(Run([Example("market-day-bar"), .. without.Split(' ')]).Output, output);
        Assert.DoesNotContain("Not given", output, StringComparison.Ordinal);
    }
}
