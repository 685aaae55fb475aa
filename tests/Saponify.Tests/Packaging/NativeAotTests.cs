#if NET10_0_OR_GREATER
using System.Runtime.InteropServices;
using Saponify.Analysis;
using Saponify.Tests.Support;

namespace Saponify.Tests.Packaging;

/// <summary>A native app plans and checks a formula, and our assemblies give no trim or AOT warning. UnitsNet warns of its own reflection; that is named in the README.</summary>
public class NativeAotTests
{
    [Fact]
    public void NativeApp_PlansAndChecksAFormula_WithoutAWarningOfOurs()
    {
        string? linker = ((string[])["clang", "gcc"]).FirstOrDefault(IsInstalled);
        Assert.SkipUnless(linker is not null && OperatingSystem.IsLinux(), "native AOT needs clang or gcc on Linux");
        string folder = Directory.CreateTempSubdirectory("saponify-aot").FullName;
        try
        {
            string log = Shell.Succeed(Repository.Root, "dotnet", "publish", "tests/Saponify.AotSmoke", "-r", "linux-" + RuntimeInformation.OSArchitecture.ToString().ToLowerInvariant(),
                "-o", Path.Combine(folder, "app"), "--artifacts-path", Path.Combine(folder, "build"), "-nologo", "-p:CppCompilerAndLinker=" + linker);
            string[] warnings = [.. log.Split('\n').Where(l => l.Contains(": warning IL", StringComparison.Ordinal) || l.Contains("analysis warning IL", StringComparison.Ordinal))];
            Assert.All(warnings, w => Assert.Contains("UnitsNet", w, StringComparison.Ordinal));
            string example = Repository.Path("data", "examples", "goat-milk-frozen.json");
            string printed = Shell.Succeed(folder, Path.Combine(folder, "app", "Saponify.AotSmoke"), example);
            Formula formula = FormulaFile.Read(File.ReadAllBytes(example), Pantry.Reference).Formula!;
            Assert.Equal($"{formula.Plan()}{FormulaAnalyzer.Default.Analyze(formula)}", printed);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static bool IsInstalled(string program)
    {
        try
        {
            return Shell.Run(Repository.Root, program, "--version").Exit == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
#endif
