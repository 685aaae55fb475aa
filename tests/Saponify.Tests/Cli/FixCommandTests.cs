using Saponify.Cli;
using Saponify.Tests.Support;

namespace Saponify.Tests.Cli;

/// <summary>Fixes from the command line: shown first, written only when asked to.</summary>
public sealed class FixCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("saponify").FullName;

    private readonly string _file;

    public FixCommandTests()
    {
        _file = Path.Combine(_folder, "batch.json");
        // a superfat below zero, with a comment and a spacing of its own
        string text = File.ReadAllText(Repository.Path("data", "examples", "market-day-bar.json"));
        File.WriteAllText(_file, text.Replace("\"superfat\": \"7 %\"", "\"superfat\":   \"-3 %\" /* from the old sheet */", StringComparison.Ordinal));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static (int Exit, string Output, string Errors) Run(string input, params string[] args)
    {
        StringWriter output = new() { NewLine = "\n" }, errors = new() { NewLine = "\n" };
        int exit = CommandLine.Run(args, new StringReader(input), output, errors);
        return (exit, output.ToString(), errors.ToString());
    }

    [Fact]
    public void WithoutWrite_TheChangeIsShown_AndTheFileStays()
    {
        string before = File.ReadAllText(_file);
        (int exit, string output, string errors) = Run("", "fix", _file, "--product");
        Assert.Equal((0, ""), (exit, errors));
        Assert.Contains("SFY2001: Plan for a superfat of 5 % of all fat (changes the product)", output, StringComparison.Ordinal);
        Assert.Contains("    10 -     \"superfat\":   \"-3 %\" /* from the old sheet */,\n    10 +     \"superfat\":   \"5 %\" /* from the old sheet */,\n", output, StringComparison.Ordinal);
        Assert.EndsWith("not written; --write does that\n", output, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(_file));
    }

    [Fact]
    public void WithWrite_OnlyWhatChangedIsReplaced()
    {
        string before = File.ReadAllText(_file);
        Assert.Equal(0, Run("", "fix", _file, "--product", "--write").Exit);
        Assert.Equal(before.Replace("-3 %", "5 %", StringComparison.Ordinal), File.ReadAllText(_file));
        Assert.Equal([_file], Directory.GetFiles(_folder));
        Assert.Contains("nothing to fix", Run("", "fix", _file, "--product").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void AFixThatChangesTheProduct_NeedsToBeAskedFor()
    {
        (int exit, string output, _) = Run("", "fix", _file);
        Assert.Equal(1, exit);
        Assert.Contains("nothing to fix", output, StringComparison.Ordinal);
        Assert.Contains("1 error left; see: saponify check", output, StringComparison.Ordinal);
    }

    [Fact]
    public void RulesCanBeChosen_AndAnUnknownOneIsWrongUse()
    {
        Assert.Contains("nothing to fix", Run("", "fix", _file, "--product", "--rule", "SFY1104").Output, StringComparison.Ordinal);
        Assert.Contains("SFY2001:", Run("", "fix", _file, "--product", "--rule", "SFY2001").Output, StringComparison.Ordinal);
        (int exit, _, string errors) = Run("", "fix", _file, "--rule", "SFY9999");
        Assert.Equal((64, "There is no rule SFY9999.\n"), (exit, errors));
    }

    [Fact]
    public void StandardInput_ComesOutFixed_AndTheTalkGoesToErrors()
    {
        (int exit, string output, string errors) = Run(File.ReadAllText(_file), "fix", "-", "--product");
        Assert.Equal(0, exit);
        Assert.Equal(File.ReadAllText(_file).Replace("-3 %", "5 %", StringComparison.Ordinal), output);
        Assert.Contains("standard input: SFY2001:", errors, StringComparison.Ordinal);
        Assert.Equal(2, Run("{", "fix", "-").Exit);
    }
}
