using System.Reflection;
using System.Runtime.Loader;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Saponify.Tests.Support;

/// <summary>Compiles and runs a block of C# from the docs as its reader would: top-level statements, implicit usings, the library referenced.</summary>
public static class CSharpBlock
{
    private const string ImplicitUsings = "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; global using System.Threading.Tasks;";

    private static readonly object s_console = new();

    /// <summary>What the block prints. Fails with the compiler's errors and warnings if it does not compile.</summary>
    public static string Run(string code)
    {
        // a file-based program names what it needs in lines that begin with #: and the compiler then passes over them
        CSharpParseOptions options = new CSharpParseOptions(LanguageVersion.Preview).WithFeatures([new("FileBasedProgram", "true")]);
        CSharpCompilation compilation = CSharpCompilation.Create(
            "Block" + Guid.NewGuid().ToString("N"),
            [CSharpSyntaxTree.ParseText(ImplicitUsings, options), CSharpSyntaxTree.ParseText(code, options)],
            ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Select(p => MetadataReference.CreateFromFile(p)),
            new CSharpCompilationOptions(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable));
        using MemoryStream assembly = new();
        var result = compilation.Emit(assembly);
        string[] complaints = [.. result.Diagnostics.Where(d => d.Severity >= DiagnosticSeverity.Warning).Select(d => d.ToString())];
        Assert.True(result.Success && complaints.Length == 0, string.Join("\n", complaints) + "\n" + code);
        assembly.Position = 0;
        MethodInfo entry = AssemblyLoadContext.Default.LoadFromStream(assembly).EntryPoint!;
        lock (s_console)
        {
            TextWriter before = Console.Out;
            using StringWriter output = new() { NewLine = "\n" };
            Console.SetOut(output);
            try
            {
                object? returned = entry.Invoke(null, entry.GetParameters().Length == 0 ? null : [Array.Empty<string>()]);
                (returned as Task)?.GetAwaiter().GetResult();
            }
            finally
            {
                Console.SetOut(before);
            }
            return output.ToString();
        }
    }
}
