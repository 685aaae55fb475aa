using System.Reflection;
using System.Runtime.Loader;
using System.Text.Json;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Saponify.Tests.Support;

namespace Saponify.Samples;

/// <summary>
/// The notebooks run cell by cell, each as a submission of a script, which is what their kernel makes of it; what a cell shows has HTML. The kernel
/// itself runs them by the command on their page.
/// </summary>
public class NotebookTests
{
    public static TheoryData<string> Notebooks => [.. Directory.EnumerateFiles(Repository.Path("docs", "notebooks"), "*.ipynb").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Notebooks))]
    public async Task EveryCell_RunsAndShowsHtml(string notebook)
    {
        string[] cells = [.. Cells(notebook).Where(c => c.GetProperty("cell_type").GetString() == "code").Select(c => string.Concat(c.GetProperty("source").EnumerateArray().Select(l => l.GetString())))];
        CSharpCompilation? before = null;
        object?[] states = new object?[cells.Length + 1];
        int shown = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            before = Compile(cells[i], before, notebook);
            object? value = await RunAsync(before, states);
            if (value is null)
                continue;
            shown++;
            Assert.StartsWith("<div class=\"saponify\">", (string?)value.GetType().GetMethod("ToHtml")?.Invoke(value, null), StringComparison.Ordinal);
        }
        Assert.InRange(shown, 3, cells.Length);
    }

    [Theory]
    [MemberData(nameof(Notebooks))]
    public void Notebook_IsCommittedWithoutOutputs(string notebook) =>
        Assert.All(Cells(notebook).Where(c => c.TryGetProperty("outputs", out _)), c => Assert.Equal(0, c.GetProperty("outputs").GetArrayLength()));

    private static IEnumerable<JsonElement> Cells(string notebook) =>
        JsonDocument.Parse(Repository.Read("docs", "notebooks", notebook)).RootElement.GetProperty("cells").EnumerateArray();

    /// <summary>The references of the first cell are the ones of this test.</summary>
    private static CSharpCompilation Compile(string cell, CSharpCompilation? before, string notebook)
    {
        string code = string.Join('\n', cell.Split('\n').Where(l => !l.StartsWith("#r ", StringComparison.Ordinal)));
        CSharpCompilation compilation = CSharpCompilation.CreateScriptCompilation(
            "Cell" + Guid.NewGuid().ToString("N"),
            CSharpSyntaxTree.ParseText(code, new CSharpParseOptions(kind: SourceCodeKind.Script)),
            ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Select(p => MetadataReference.CreateFromFile(p)),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, usings: ["System", "System.Collections.Generic", "System.Linq"]),
            before,
            typeof(object));
        Assert.Empty(compilation.GetDiagnostics().Where(d => d.Severity >= DiagnosticSeverity.Warning).Select(d => $"{notebook}: {d}"));
        return compilation;
    }

    private static async Task<object?> RunAsync(CSharpCompilation compilation, object?[] states)
    {
        using MemoryStream assembly = new();
        if (!compilation.Emit(assembly).Success)
            return null;                           // its diagnostics were looked at: a cell of directives alone has nothing to run
        assembly.Position = 0;
        IMethodSymbol entry = compilation.GetEntryPoint(TestContext.Current.CancellationToken)!;
        MethodInfo factory = AssemblyLoadContext.Default.LoadFromStream(assembly).GetType(entry.ContainingType.MetadataName)!.GetMethod(entry.MetadataName, BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)!;
        return await (Task<object?>)factory.Invoke(null, [states])!;
    }
}
