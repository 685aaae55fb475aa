#if NET10_0_OR_GREATER
using System.IO.Compression;
using Saponify.Tests.Support;

namespace Saponify.Tests.Packaging;

/// <summary>The package as others get it: packed, looked into, restored into an empty app, run. Once, on the newest target only.</summary>
public sealed class PackageTests(PackageTests.Packed packed) : IClassFixture<PackageTests.Packed>
{
    /// <summary>The three packages, packed into a folder of their own.</summary>
    public sealed class Packed : IDisposable
    {
        private static readonly string[] Packages = ["Saponify", "Saponify.Testing", "Saponify.Tool"];

        public Packed()
        {
            Version = "0.0.1-test." + DateTime.UtcNow.ToString("yyyyMMddHHmmssfff", System.Globalization.CultureInfo.InvariantCulture);
            Folder = Directory.CreateTempSubdirectory("saponify-package").FullName;
            Feed = Path.Combine(Folder, "feed");
            foreach (string project in (string[])["Saponify", "Saponify.Testing", "Saponify.Cli"])
            {
                Shell.Succeed(Repository.Root, "dotnet", "pack", "src/" + project, "--no-build", "-c", Repository.Configuration, "-o", Feed, "-nologo",
                    "-p:MinVerVersionOverride=" + Version);
            }
        }

        public string Version { get; }

        public string Folder { get; }

        public string Feed { get; }

        public void Dispose()
        {
            Directory.Delete(Folder, recursive: true);
            string cache = Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
            foreach (string cached in Packages.Select(p => Path.Combine(cache, p.ToLowerInvariant(), Version)).Where(Directory.Exists))
                Directory.Delete(cached, recursive: true);
        }

        /// <summary>The files of a package without the container's own, and its manifest.</summary>
        public (string[] Files, string Manifest) Open(string package)
        {
            using ZipArchive zip = ZipFile.OpenRead(Path.Combine(Feed, $"{package}.{Version}.nupkg"));
            using StreamReader reader = new(zip.GetEntry(package + ".nuspec")!.Open());
            return ([.. zip.Entries.Select(e => e.FullName).Where(n => !n.StartsWith("package/", StringComparison.Ordinal) && n is not ("_rels/.rels" or "[Content_Types].xml")).Order(StringComparer.Ordinal)], reader.ReadToEnd());
        }
    }

    [Theory]
    [InlineData("Saponify")]
    [InlineData("Saponify.Testing")]
    public void Library_HoldsBothTargetsDocsReadmeIconAndNothingStray(string package)
    {
        (string[] files, string manifest) = packed.Open(package);
        Assert.Equal(
            ["README.md", package + ".nuspec", "icon.png", .. ((string[])["net10.0", "net8.0"]).SelectMany(t => (string[])[$"lib/{t}/{package}.dll", $"lib/{t}/{package}.xml"])], files);
        ManifestIsWhole(manifest);
        using ZipArchive symbols = ZipFile.OpenRead(Path.Combine(packed.Feed, $"{package}.{packed.Version}.snupkg"));
        Assert.Contains(symbols.Entries, e => e.FullName == $"lib/net8.0/{package}.pdb");
    }

    [Fact]
    public void Tool_HoldsWhatItRunsWithAndNoDocumentationFile()
    {
        (string[] files, string manifest) = packed.Open("Saponify.Tool");
        ManifestIsWhole(manifest);
        Assert.Contains("tools/net8.0/any/Saponify.Cli.dll", files);
        Assert.All(files, f => Assert.True(
            f is "README.md" or "icon.png" or "Saponify.Tool.nuspec" || (f.StartsWith("tools/net8.0/any/", StringComparison.Ordinal) && Path.GetExtension(f) is ".dll" or ".pdb" or ".json" or ".xml"), f));
        Assert.DoesNotContain("tools/net8.0/any/Saponify.xml", files);
    }

    [Fact]
    public void Tool_InstalledFromAFolderFeed_PlansAFormula()
    {
        string tools = Path.Combine(packed.Folder, "tools"), example = Repository.Path("data", "examples", "goat-milk-frozen.json");
        Shell.Succeed(packed.Folder, "dotnet", "tool", "install", "Saponify.Tool", "--version", packed.Version, "--add-source", packed.Feed, "--tool-path", tools);
        string printed = Shell.Succeed(packed.Folder, Path.Combine(tools, "saponify"), "plan", example);
        Assert.Contains(FormulaFile.Read(File.ReadAllBytes(example), Pantry.Reference).Formula!.Plan().ToString(), printed.ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("net8.0")]
    [InlineData("net10.0")]
    public void EmptyApp_RestoredFromAFolderFeed_RunsTheFirstBlockOfTheReadme(string target)
    {
        (string Language, string Text, int Line) block = Markdown.Blocks(Repository.Read("README.md")).First(b => b.Language == "csharp");
        string folder = Directory.CreateDirectory(Path.Combine(packed.Folder, "app-" + target)).FullName;
        File.WriteAllText(Path.Combine(folder, "app.csproj"), $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType>
                <TargetFramework>{target}</TargetFramework>
                <ImplicitUsings>enable</ImplicitUsings>
                <Nullable>enable</Nullable>
                <TreatWarningsAsErrors>true</TreatWarningsAsErrors>
                <RollForward>Major</RollForward>
                <NuGetAudit>false</NuGetAudit>
                <RestoreAdditionalProjectSources>{packed.Feed}</RestoreAdditionalProjectSources>
              </PropertyGroup>
              <ItemGroup><PackageReference Include="Saponify" Version="{packed.Version}" /></ItemGroup>
            </Project>
            """);
        File.WriteAllText(Path.Combine(folder, "Program.cs"), block.Text);
        Shell.Succeed(folder, "dotnet", "build", "-nologo", "-v", "q");
        string printed = Shell.Succeed(folder, "dotnet", "run", "--no-build");
        Assert.Equal(CSharpBlock.Run(block.Text), printed.ReplaceLineEndings("\n"));
    }

    private static void ManifestIsWhole(string manifest)
    {
        Assert.Contains("<license type=\"expression\">MIT</license>", manifest, StringComparison.Ordinal);
        Assert.Contains("<readme>README.md</readme>", manifest, StringComparison.Ordinal);
        Assert.Contains("<icon>icon.png</icon>", manifest, StringComparison.Ordinal);
        Assert.Contains("<tags>soap ", manifest, StringComparison.Ordinal);
        Assert.DoesNotContain("Package Description", manifest, StringComparison.Ordinal);
        Assert.DoesNotContain(Repository.Root.TrimEnd('/'), manifest, StringComparison.Ordinal);
    }
}
#endif
