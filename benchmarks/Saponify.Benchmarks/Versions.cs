using System.Reflection;

namespace Saponify.Benchmarks;

/// <summary>Versions as packages state them.</summary>
internal static class Versions
{
    internal static string Of(Assembly assembly) =>
        assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? assembly.GetName().Version?.ToString(3) ?? "unknown";
}
