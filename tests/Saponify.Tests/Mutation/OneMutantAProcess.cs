using System.Diagnostics;
using Saponify.Tests.Mutation;

[assembly: AssemblyFixture(typeof(OneMutantAProcess))]

namespace Saponify.Tests.Mutation;

/// <summary>
/// Compiled for mutation runs alone. The runner keeps a process for many mutants, but what is made once a process (the fatty acids, plain water, the tables) is made under
/// the first of them. So a second run in one process ends it, and the runner tries again in a new one, where the mutant is on from the start.
/// </summary>
public sealed class OneMutantAProcess
{
    private static int runs;

    public OneMutantAProcess()
    {
        bool countsCoverage = Environment.GetEnvironmentVariable("STRYKER_COVERAGE_FILE") is not null;
        if (!countsCoverage && Interlocked.Increment(ref runs) > 1)
        {
            Process.GetCurrentProcess().Kill();
        }
    }
}
