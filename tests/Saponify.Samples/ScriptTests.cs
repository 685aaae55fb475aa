using Saponify.Tests.Support;

namespace Saponify.Samples;

/// <summary>
/// The file-based programs of docs/samples compile and print what their page shows. They run in this process, where that is quick, and one of
/// them as its reader would run it. SAPONIFY_APPROVE=1 writes the shown output anew.
/// </summary>
public class ScriptTests
{
    private const string Command = "dotnet run docs/samples/";

    private static readonly string s_page = Repository.Path("docs", "samples", "README.md");

    public static TheoryData<string> Scripts => [.. Directory.EnumerateFiles(Repository.Path("docs", "samples"), "*.cs").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Scripts))]
    public void Script_PrintsWhatItsPageShows(string script)
    {
        string printed = CSharpBlock.Run(File.ReadAllText(Repository.Path("docs", "samples", script)));
        string page = File.ReadAllText(s_page);
        int shown = BlockThatShows(page, script);
        if (Environment.GetEnvironmentVariable("SAPONIFY_APPROVE") == "1")
            File.WriteAllText(s_page, Markdown.Replace(page, shown, printed));
        else
            Assert.Equal(Markdown.Blocks(page).ElementAt(shown).Text, printed);
    }

    [Fact]
    public void Script_RunByTheCommandOfItsPage_PrintsTheSame()
    {
        const string script = "weigh-in.cs";
        string page = File.ReadAllText(s_page);
        string printed = Shell.Succeed(Repository.Root, "dotnet", "run", "docs/samples/" + script);
        Assert.Equal(Markdown.Blocks(page).ElementAt(BlockThatShows(page, script)).Text, printed.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Page_NamesNoScriptThatIsNotThere() =>
        Assert.All(Markdown.Blocks(File.ReadAllText(s_page)).Where(b => b.Language == "bash"), b => Assert.Contains(b.Text.TrimEnd()[Command.Length..], Scripts.Select(s => s.Data)));

    private static int BlockThatShows(string page, string script)
    {
        List<(string Language, string Text, int Line)> blocks = [.. Markdown.Blocks(page)];
        int at = blocks.FindIndex(b => b.Language == "bash" && b.Text == Command + script + "\n");
        Assert.True(at >= 0 && at + 1 < blocks.Count && blocks[at + 1].Language == "text", $"the page shows no command and output for {script}");
        return at + 1;
    }
}
