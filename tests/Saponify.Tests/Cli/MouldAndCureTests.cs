using Saponify.Cli;
using Saponify.Tests.Support;

namespace Saponify.Tests.Cli;

/// <summary><c>saponify mould</c> and <c>saponify cure</c> as a person meets them.</summary>
public class MouldAndCureTests
{
    private static (int Exit, string Output, string Errors) Run(params string[] args)
    {
        StringWriter output = new() { NewLine = "\n" }, errors = new() { NewLine = "\n" };
        int exit = CommandLine.Run(args, new StringReader(""), output, errors);
        return (exit, output.ToString(), errors.ToString());
    }

    private static string Example(string name) => Repository.Path("data", "examples", name);

    [Theory]
    [InlineData("market-day-bar", "--box 25cm,9cm,7cm --lining 1mm --filled 6cm --cut 2.5cm --kerf 1mm --ends 5mm --samples 1 --pour 38C --loss 9% --bars 20 --each 110g")]
    [InlineData("goat-milk-frozen", "--slab 40cm,30cm,4cm --cut 8cm,5.5cm --pour 90F --insulated")]
    [InlineData("shaving-soap", "--cavities 3,95mL")]
    [InlineData("all-coconut", "--cylinder 7cm,30cm --cut 2.5cm --left-in-pot 1%")]
    public void Mould_MatchesItsGoldenFile(string name, string options)
    {
        (int exit, string output, string errors) = Run(["mould", Example(name + ".json"), .. options.Split(' ')]);
        Assert.Equal((0, ""), (exit, errors));
        Golden.Matches(output, "mould", name + ".txt");
    }

    [Fact]
    public void Cure_MatchesItsGoldenFile()
    {
        (int exit, string output, string errors) = Run("cure", Example("weighings.csv"), "--scale", "0.1g", "--weekly-loss", "1%", "--formula", Example("oat-and-cream.json"), "--poured", "131g", "--declared", "110g", "--further-loss", "1%");
        Assert.Equal((0, ""), (exit, errors));
        Golden.Matches(output, "cure", "weighings.txt");
    }

    [Fact]
    public void FaultsOfASeries_AreErrorsWithTheirPlace()
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".csv");
        try
        {
            File.WriteAllText(path, "date,mass\n2026-03-01,112.4 g\n2026-03-02,113.9 g\n");
            (int exit, string output, string errors) = Run("cure", path);
            Assert.Equal(1, exit);
            Assert.StartsWith(path + "(3, mass): 113.9 g is 1.5 g more than on 2026-03-01", errors, StringComparison.Ordinal);
            Assert.Contains("four to six weeks", output, StringComparison.Ordinal);
            File.WriteAllText(path, "date,mass\n2026-03-01,112.4\n");
            Assert.Equal(2, Run("cure", path).Exit);
        }
        finally
        {
            File.Delete(path);
        }
        Assert.Equal(2, Run("cure", path).Exit);
    }

    [Theory]
    [InlineData("", "Give one mould")]
    [InlineData("--box 25cm,9cm,7cm --volume 1L", "Give one mould")]
    [InlineData("--box 25cm,9cm", "has 2 sizes, not 3")]
    [InlineData("--box 25cm,9,7cm", "the unit is missing; write cm, mm, m or in")]
    [InlineData("--box 25cm,9cm,7cm --lining 5cm", "The lining")]
    [InlineData("--box 25cm,9cm,7cm --filled 8cm", "The fill height")]
    [InlineData("--slab 25cm,9cm,7cm --cut 3cm", "A slab is cut both ways")]
    [InlineData("--cavities 6", "is no count and volume")]
    [InlineData("--volume 1L --bars 3", "--bars and --each go together")]
    public void WrongUse_IsExplained_AndExitsWith64(string options, string fault)
    {
        (int exit, _, string errors) = Run(["mould", Example("all-coconut.json"), .. options.Split(' ', StringSplitOptions.RemoveEmptyEntries)]);
        Assert.Equal(64, exit);
        Assert.Contains(fault, errors, StringComparison.Ordinal);
    }

    private const string Setup = """
        "mould": { "box": { "length": "25 cm", "width": "9 cm", "height": "7 cm", "lining": "1 mm", "filledTo": "6 cm" } },
        "cut": { "thickness": "2.5 cm", "kerf": "1 mm", "ends": "5 mm", "samples": 1 }, "pour": "38 °C", "insulated": true, "leftInPot": "1 %"
        """;

    private static (int Exit, string Output, string Errors) MouldOf(string setup, string options)
    {
        StringWriter output = new() { NewLine = "\n" }, errors = new() { NewLine = "\n" };
        string json = File.ReadAllText(Example("market-day-bar.json")).Replace("\"fats\":", $"\"setup\": {{ {setup} }},\n  \"fats\":", StringComparison.Ordinal);
        int exit = CommandLine.Run(["mould", "-", .. options.Split(' ', StringSplitOptions.RemoveEmptyEntries)], new StringReader(json), output, errors);
        return (exit, output.ToString(), errors.ToString());
    }

    [Theory]
    [InlineData("", "--box 25cm,9cm,7cm --lining 1mm --filled 6cm --cut 2.5cm --kerf 1mm --ends 5mm --samples 1 --pour 38C --insulated --left-in-pot 1%")]
    [InlineData("--lining 2mm", "--box 25cm,9cm,7cm --lining 2mm --filled 6cm --cut 2.5cm --kerf 1mm --ends 5mm --samples 1 --pour 38C --insulated --left-in-pot 1%")]
    [InlineData("--cut 3cm", "--box 25cm,9cm,7cm --lining 1mm --filled 6cm --cut 3cm --kerf 1mm --ends 5mm --samples 1 --pour 38C --insulated --left-in-pot 1%")]
    [InlineData("--kerf 2mm --samples 2 --pour 50C", "--box 25cm,9cm,7cm --lining 1mm --filled 6cm --cut 2.5cm --kerf 2mm --ends 5mm --samples 2 --pour 50C --insulated --left-in-pot 1%")]
    [InlineData("--box 30cm,9cm,7cm", "--box 30cm,9cm,7cm --cut 2.5cm --kerf 1mm --ends 5mm --samples 1 --pour 38C --insulated --left-in-pot 1%")]
    [InlineData("--cavities 9,110mL", "--cavities 9,110mL --samples 1 --pour 38C --insulated --left-in-pot 1%")]
    public void TheMouldOfTheFile_IsTaken_WhereNoOptionSaysOtherwise(string options, string without)
    {
        (int exit, string output, string errors) = MouldOf(Setup, options);
        Assert.Equal((0, ""), (exit, errors));
        Assert.Equal(Run(["mould", Example("market-day-bar.json"), .. without.Split(' ')]).Output, output);
        Assert.Contains("as samples", Run(["mould", Example("market-day-bar.json"), .. without.Split(' ')]).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"form\": \"bar\"", "", "standard input: Give one mould: --box")]
    [InlineData(Setup, "--filled 8cm", "standard input: The fill height must be above 0 and at most 6.9 cm")]
    [InlineData("\"mould\": { \"slab\": { \"length\": \"40 cm\", \"width\": \"30 cm\", \"height\": \"4 cm\" } }, \"cut\": { \"thickness\": \"8 cm\" }", "", "standard input: A slab is cut both ways")]
    public void AMouldThatDoesNotFit_IsExplained(string setup, string options, string fault)
    {
        (int exit, string output, string errors) = MouldOf(setup, options);
        Assert.Equal((64, ""), (exit, output));
        Assert.StartsWith(fault, errors, StringComparison.Ordinal);
    }
}
