using System.Globalization;
using FsCheck.Xunit;

namespace Saponify.Tests.Support;

/// <summary>
/// A law: a property that holds for every case FsCheck makes. 1,000 cases by default; the environment variable SAPONIFY_CASES asks for
/// more (see DEVELOPERS.md, long runs).
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class LawAttribute : PropertyAttribute
{
    public LawAttribute()
    {
        MaxTest = Cases(1000);
        QuietOnSuccess = true;
    }

    public static int Cases(int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable("SAPONIFY_CASES"), NumberStyles.None, CultureInfo.InvariantCulture, out int cases) ? cases : usual;
}
