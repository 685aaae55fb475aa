using System.Globalization;
using FsCheck.Xunit;

namespace Saponify.Tests.Support;

/// <summary>
/// A law: a property that holds for every case FsCheck makes. 1,000 cases, or as many as it says, from a fixed seed by default, so that a build passes or fails for its
/// code alone; the environment variable SAPONIFY_CASES asks for more, from a new seed each time (see DEVELOPERS.md, long runs), or for fewer, from the fixed seed.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class LawAttribute : PropertyAttribute
{
    /// <param name="cases">Cases of an ordinary run.</param>
    public LawAttribute(int cases = 1000)
    {
        MaxTest = Cases(cases);
        QuietOnSuccess = true;
        if (!IsLongRun)
            Replay = "(20261125,20261127)";
    }

    /// <summary>A generator's seed for tests that draw samples themselves.</summary>
    public static FsCheck.Rnd Seed => IsLongRun ? new FsCheck.Rnd((ulong)DateTime.UtcNow.Ticks) : new FsCheck.Rnd(20261125);

    private static bool IsLongRun => Cases(1000) > 1000;

    public static int Cases(int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable("SAPONIFY_CASES"), NumberStyles.None, CultureInfo.InvariantCulture, out int cases) ? cases : usual;
}
