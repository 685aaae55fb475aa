using System.Reflection;

namespace Saponify.Internals;

/// <summary>Name and version of the library as formula files state them.</summary>
internal static class LibraryVersion
{
    internal static string Name { get; } = Make();

    private static string Make()
    {
        Version? version = typeof(LibraryVersion).Assembly.GetCustomAttribute<AssemblyFileVersionAttribute>() is { } file && Version.TryParse(file.Version, out Version? parsed)
            ? parsed
            : typeof(LibraryVersion).Assembly.GetName().Version;
        return version is null ? "Saponify" : FormattableString.Invariant($"Saponify {version.Major}.{version.Minor}");
    }
}
