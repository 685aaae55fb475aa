using Saponify.Cli;
using Saponify.Tests.Support;

namespace Saponify.Tests.Cli;

/// <summary><c>saponify compare</c>: formulas side by side in the terminal.</summary>
public class CompareCommandTests
{
    private static string PathOf(string name) => Repository.Path("data", "examples", name + ".json");

    private static (int Exit, string Output, string Errors) Run(string input, params string[] args)
    {
        StringWriter output = new() { NewLine = "\n" }, errors = new() { NewLine = "\n" };
        int exit = CommandLine.Run(["compare", .. args], new StringReader(input), output, errors);
        return (exit, output.ToString(), errors.ToString());
    }

    [Fact]
    public void TwoFiles_AreDrawnSideBySide()
    {
        (int exit, string output, string errors) = Run("", PathOf("market-day-bar"), PathOf("goat-milk-frozen"));
        Assert.Equal((0, ""), (exit, errors));
        Golden.Matches(output, "scores", "two-bars.txt");
    }

    [Fact]
    public void OneFile_IsEnough()
    {
        (int exit, string output, _) = Run("", PathOf("shaving-soap"));
        Assert.Equal(0, exit);
        Golden.Matches(output, "scores", "shaving-soap.txt");
    }

    [Fact]
    public void GroupsAndLimits_AreInOrder()
    {
        string output = Run("", PathOf("market-day-bar"), PathOf("all-coconut"), PathOf("oat-and-cream")).Output;
        string[] titles = ["\nOn the dish", "\nIn the hand", "\nOn the skin", "\nOn the shelf", "\nWho brings it", "\nLimits"];
        int[] places = [.. titles.Select(t => output.IndexOf(t, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
        Assert.Equal(7, output.Split("confidence ").Length - 1);
        Assert.All(output, c => Assert.InRange(c, '\n', '~'));
    }

    [Fact]
    public void BatchThatCannotBeWeighed_IsStillScored_AndExitsWithOne()
    {
        string json = File.ReadAllText(PathOf("market-day-bar")).Replace("tallow", "shea-butter", StringComparison.Ordinal);
        (int exit, string output, _) = Run(json, "-");
        Assert.Equal(1, exit);
        Assert.Matches("total fatty matter, % +-\n", output);
        Assert.Contains("Shea butter", output, StringComparison.Ordinal);
    }

    [Fact]
    public void BarThatCannotBeScored_SaysWhy()
    {
        string json = File.ReadAllText(PathOf("market-day-bar")).Replace("tallow", "tung-oil", StringComparison.Ordinal);
        (int exit, string output, _) = Run(json, "-");
        Assert.Equal(0, exit);
        Assert.Contains("not scored: ", output, StringComparison.Ordinal);
        Assert.DoesNotContain("Who brings it", output, StringComparison.Ordinal);
    }

    [Fact]
    public void UnreadableFile_ExitsWithTwo_AndTheOthersAreShown()
    {
        (int exit, string output, string errors) = Run("", "no-such-file.json", PathOf("all-coconut"));
        Assert.Equal(2, exit);
        Assert.Contains("All coconut", output, StringComparison.Ordinal);
        Assert.Contains("no-such-file.json: error:", errors, StringComparison.Ordinal);
        Assert.Equal(2, Run("", "no-such-file.json").Exit);
        Assert.Equal(64, Run("").Exit);
        Assert.Equal(64, Run("", PathOf("all-coconut"), "--colour").Exit);
    }
}
