using System.Reflection;

namespace Saponify.Tests.Support;

/// <summary>Files of the checkout that the tests run in.</summary>
public static class Repository
{
    public static string Root { get; } = Metadata("RepositoryRoot");

    public static string Configuration { get; } = Metadata("Configuration");

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    public static string Read(params string[] parts) => File.ReadAllText(Path(parts));

    public static IEnumerable<string> Examples => Directory.EnumerateFiles(Path("data", "examples"), "*.json").Order(StringComparer.Ordinal);

    private static string Metadata(string key) =>
        typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == key).Value!;
}
