using Saponify.Tests.Support;

namespace Saponify.Tests.Packaging;

/// <summary>
/// Every C# block of the README and the docs compiles and runs, and prints what the text block after it shows; so does every command of
/// the command line, and every formula file is read, and its faults are shown. SAPONIFY_APPROVE=1 writes the shown output anew.
/// </summary>
[Collection(Together)]
public class DocTests
{
    /// <summary>Tests that may write documents run one after the other.</summary>
    public const string Together = "documents";

    private const string Command = "dotnet run --project src/Saponify.Cli -- ";

    public static TheoryData<string> Documents =>
    [
        .. Directory.EnumerateFiles(Repository.Path("docs"), "*.md", SearchOption.AllDirectories)
            .Where(f => !f.Contains("_site", StringComparison.Ordinal))
            .Select(f => Path.GetRelativePath(Repository.Root, f).Replace('\\', '/'))
            .Append("README.md").Append("DEVELOPERS.md").Append("src/Saponify.Testing/README.md").Order(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Documents))]
    public void EveryBlock_RunsAndPrintsWhatIsShown(string file)
    {
        string path = Repository.Path(file), markdown = File.ReadAllText(path);
        List<(string Language, string Text, int Line)> blocks = [.. Markdown.Blocks(markdown)];
        for (int i = 0; i < blocks.Count; i++)
        {
            string? printed = Printed(blocks[i]);
            if (string.IsNullOrEmpty(printed))
                continue;
            Assert.True(i + 1 < blocks.Count && blocks[i + 1].Language == "text", $"{file}({blocks[i].Line}) prints something, but no text block after it shows it:\n{printed}");
            if (Environment.GetEnvironmentVariable("SAPONIFY_APPROVE") == "1")
                markdown = Markdown.Replace(markdown, i + 1, printed);
            else
                Assert.Equal(blocks[i + 1].Text, printed);
        }
        if (Environment.GetEnvironmentVariable("SAPONIFY_APPROVE") == "1")
            File.WriteAllText(path, markdown);
    }

    [Fact]
    public void Readme_StartsWithTheJobAndTwoCommands()
    {
        string[] languages = [.. Markdown.Blocks(Repository.Read("README.md")).Select(b => b.Language).Take(3)];
        Assert.Equal(["bash", "text", "csharp"], languages);
    }

    private static string? Printed((string Language, string Text, int Line) block)
    {
        if (block.Language == "csharp")
            return CSharpBlock.Run(block.Text);
        if (block.Language == "json" && block.Text.Contains("\"saponify-formula/", StringComparison.Ordinal))
        {
            FormulaFile file = FormulaFile.Read(block.Text, Pantry.Reference);
            return string.Concat(file.Problems.Concat(file.Notices).Select(p => p + "\n"));
        }
        if (block.Language != "bash" || !block.Text.StartsWith(Command, StringComparison.Ordinal))
            return null;
        string[] words = block.Text.Split('\n')[0][Command.Length..].Split(' ');
        StringWriter output = new() { NewLine = "\n" };
        Saponify.Cli.CommandLine.Run([.. words.Select(w => w.StartsWith("data/", StringComparison.Ordinal) ? Repository.Path(w) : w)], TextReader.Null, output, output);
        return output.ToString().Replace(Repository.Root, "", StringComparison.Ordinal);
    }
}
