#if NET10_0_OR_GREATER
using System.IO.Compression;
using Saponify.Tests.Support;

namespace Saponify.Tests.Packaging;

/// <summary>The package as others get it: packed, looked into, restored into an empty app, run. Once, on the newest target only.</summary>
public sealed class PackageTests(PackageTests.Packed packed) : IClassFixture<PackageTests.Packed>
{
    /// <summary>The library packed into a folder of its own.</summary>
    public sealed class Packed : IDisposable
    {
        public Packed()
        {
            Version = "0.0.1-test." + DateTime.UtcNow.ToString("yyyyMMddHHmmssfff", System.Globalization.CultureInfo.InvariantCulture);
            Folder = Directory.CreateTempSubdirectory("saponify-package").FullName;
            Feed = Path.Combine(Folder, "feed");
            Shell.Succeed(Repository.Root, "dotnet", "pack", "src/Saponify", "--no-build", "-c", Repository.Configuration, "-o", Feed, "-nologo",
                "-p:MinVerVersionOverride=" + Version);
            File = Path.Combine(Feed, $"Saponify.{Version}.nupkg");
        }

        public string Version { get; }

        public string Folder { get; }

        public string Feed { get; }

        public string File { get; }

        public void Dispose()
        {
            Directory.Delete(Folder, recursive: true);
            string cached = Path.Combine(Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages"), "saponify", Version);
            if (Directory.Exists(cached))
                Directory.Delete(cached, recursive: true);
        }
    }

    [Fact]
    public void Package_HoldsBothTargetsDocsReadmeAndNothingStray()
    {
        using ZipArchive zip = ZipFile.OpenRead(packed.File);
        string[] files = [.. zip.Entries.Select(e => e.FullName).Where(n => !n.StartsWith("package/", StringComparison.Ordinal) && !n.StartsWith("_rels/", StringComparison.Ordinal) && n != "[Content_Types].xml").Order(StringComparer.Ordinal)];
        Assert.Equal(
            ["README.md", "Saponify.nuspec", "lib/net10.0/Saponify.dll", "lib/net10.0/Saponify.xml", "lib/net8.0/Saponify.dll", "lib/net8.0/Saponify.xml"], files);
        using StreamReader reader = new(zip.GetEntry("Saponify.nuspec")!.Open());
        string nuspec = reader.ReadToEnd();
        Assert.Contains("<license type=\"expression\">MIT</license>", nuspec, StringComparison.Ordinal);
        Assert.Contains("<readme>README.md</readme>", nuspec, StringComparison.Ordinal);
        Assert.DoesNotContain(Repository.Root.TrimEnd('/'), nuspec, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.ChangeExtension(packed.File, ".snupkg")));
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
}
#endif
