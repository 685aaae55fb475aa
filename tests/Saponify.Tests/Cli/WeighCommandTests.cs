using Saponify.Cli;
using Saponify.Tests.Support;

namespace Saponify.Tests.Cli;

/// <summary>Weighing at the bench: one answer after the other, stopped and taken up again.</summary>
public sealed class WeighCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("saponify").FullName;

    private string File { get; }

    private string Weights => Path.ChangeExtension(File, ".weights.json");

    public WeighCommandTests()
    {
        File = Path.Combine(_folder, "batch.json");
        System.IO.File.Copy(Repository.Path("data", "examples", "oat-and-cream.json"), File);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private (int Exit, string Output, string Errors) Weigh(string answers, params string[] options) => Run(answers, ["weigh", File, .. options]);

    private static (int Exit, string Output, string Errors) Run(string answers, params string[] args)
    {
        StringWriter output = new() { NewLine = "\n" }, errors = new() { NewLine = "\n" };
        int exit = CommandLine.Run(args, new StringReader(answers), output, errors);
        return (exit, output.ToString(), errors.ToString());
    }

    private WeighedBatch Kept() => BatchFile.Read(System.IO.File.ReadAllBytes(Weights), Pantry.Reference).Batch!;

    [Fact]
    public void AWeightIsKeptAtOnce_AndTheAlkaliFollowsIt()
    {
        (int exit, string output, string errors) = Weigh("15.2\n8.75 oz\n", "--scale", "0.05oz");
        Assert.Equal((0, ""), (exit, errors));
        Assert.Equal(["fats[olive-oil]", "fats[coconut-oil]"], Kept().Weights.Select(w => w.Line));
        Assert.Equal(15.2, Kept().Weights[0].Mass.Ounces, 9);
        Assert.Contains("Olive oil, plan 14.50 oz:   15.2 oz of Olive oil, +4.8 %.", output, StringComparison.Ordinal);
        Assert.Contains("Weigh now 4.1 oz sodium hydroxide, 97 to 99 % (cut, never rounded up)", output, StringComparison.Ordinal);
    }

    [Fact]
    public void ASecondSitting_GoesOnWithWhatIsMissing()
    {
        Weigh("14.5\n8.75\nstop\n");
        string output = Weigh("3.25\n").Output;
        Assert.DoesNotContain("Olive oil, plan", output, StringComparison.Ordinal);
        Assert.Contains("Cocoa butter, plan 3.25 oz", output, StringComparison.Ordinal);
        Assert.Equal(3, Kept().Weights.Count);
    }

    [Fact]
    public void AMassFarFromThePlan_IsKeptOnlyWhenTypedAgain()
    {
        string output = Weigh("145\n14.5\n\n").Output;
        Assert.Contains("145 oz is +900.0 % off. Type it again to keep it:   Not kept.", output, StringComparison.Ordinal);
        Assert.Empty(Kept().Weights);
        Weigh("29\n29\n");
        Assert.Equal(29, Assert.Single(Kept().Weights).Mass.Ounces, 9);
    }

    [Fact]
    public void LaterBackAndList_DoWhatTheySay()
    {
        string output = Weigh("\n8.75\nback\n8.8\nlist\nnonsense\n").Output;
        Assert.Equal("fats[coconut-oil]", Assert.Single(Kept().Weights).Line);
        Assert.Equal(8.8, Kept().Weights[0].Mass.Ounces, 9);
        Assert.Contains("on the bench: weighing", output, StringComparison.Ordinal);
        Assert.Contains("\"nonsense\":", output, StringComparison.Ordinal);
    }

    [Fact]
    public void TooMuchAlkaliInThePot_IsMetWithFat_AndTheExitTellsWhileItIsNot()
    {
        // all at plan but the alkali, of which 5 oz went in where 4 oz were asked for
        (int exit, string output, _) = Weigh("14.5\n8.75\n3.25\n1.5\n2.5\n1.25\n0.35\n6.35\n5\nin\nstop\n");
        Assert.Equal(1, exit);
        Assert.Contains("LYE-HEAVY", output, StringComparison.Ordinal);
        Assert.Contains("1. Add ", output, StringComparison.Ordinal);
        (exit, output, _) = Weigh("1\n");
        Assert.Equal(0, exit);
        Assert.Contains(" of Olive oil, melted and warm.", output, StringComparison.Ordinal);
        WeighedLine added = Kept().Missing.Single();
        Assert.Equal("fats[added olive-oil]", added.Path.ToString());
        Assert.Equal(0.06, Kept().Superfat!.Value.DecimalFractions, 9);
    }

    [Fact]
    public void AfterAllIsWeighed_ThePourEndsIt()
    {
        (int exit, string output, _) = Weigh("14.5\n8.75\n3.25\n1.5\n2.5\n1.25\n0.35\n6.35\n4\nin\npoured\n");
        Assert.Equal(0, exit);
        Assert.Equal(BatchState.Poured, Kept().State);
        Assert.Contains("1. Leave it as it is. Superfat then: 7.0", output, StringComparison.Ordinal);
    }

    [Fact]
    public void AnotherFormulaUnderTheSameName_IsRefused_AndNothingIsLost()
    {
        Weigh("14.5\n");
        byte[] kept = System.IO.File.ReadAllBytes(Weights);
        System.IO.File.WriteAllText(File, System.IO.File.ReadAllText(File).Replace("8.75 oz", "9.75 oz", StringComparison.Ordinal));
        (int exit, _, string errors) = Weigh("9.75\n");
        Assert.Equal(2, exit);
        Assert.Contains("the file belongs to another formula", errors, StringComparison.Ordinal);
        Assert.Equal(kept, System.IO.File.ReadAllBytes(Weights));
    }

    [Fact]
    public void Plan_WithWeights_SaysHowTheBatchStandsAndHowSureItIs()
    {
        Weigh("15.2\n");
        (int exit, string output, _) = Run("", "plan", File, "--weighed", Weights, "--scale", "0.05oz");
        Assert.Equal(0, exit);
        Golden.Matches(output, "cli", "plan-weighed.txt");
        Assert.Equal(2, Run("", "plan", File, "--weighed", Weights + "x").Exit);
    }
}
