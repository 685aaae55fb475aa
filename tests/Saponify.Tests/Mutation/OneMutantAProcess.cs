using System.Diagnostics;
using System.Reflection;
using Saponify.Tests.Mutation;
using Xunit.Sdk;
using Xunit.v3;

[assembly: TestCollectionOrderer(typeof(OneMutantAProcess))]

namespace Saponify.Tests.Mutation;

/// <summary>
/// Compiled for mutation runs alone. The runner keeps a process for many mutants, but what is made once a process (the fatty acids, plain water, the rules) is made under
/// the first of them. It runs every test for a mutant of such code; so a run of every test, and the run after it, ends a process that has run before, and the runner tries
/// again in a new one, where the mutant is on from the start.
/// </summary>
public sealed class OneMutantAProcess : ITestCollectionOrderer
{
    private static readonly int s_classes = typeof(OneMutantAProcess).Assembly.GetExportedTypes().Count(t => !t.IsAbstract && t.GetMethods().Any(m => m.GetCustomAttributes().Any(a => a is IFactAttribute)));

    private static bool hasRun, wasWhole;

    public IReadOnlyCollection<TTestCollection> OrderTestCollections<TTestCollection>(IReadOnlyCollection<TTestCollection> testCollections)
        where TTestCollection : ITestCollection
    {
        bool countsCoverage = Environment.GetEnvironmentVariable("STRYKER_COVERAGE_FILE") is not null, isWhole = testCollections.Count >= s_classes;
        if (!countsCoverage && hasRun && (isWhole || wasWhole))
            Process.GetCurrentProcess().Kill();
        (hasRun, wasWhole) = (true, isWhole);
        // a run ends at the first failure: what tells most mutants at once comes first, what takes long last
        return [.. testCollections.OrderBy(c => Rank(c.TestCollectionDisplayName))];
    }

    private static int Rank(string tests) =>
        tests.Contains("RulePageTests", StringComparison.Ordinal) ? 0 : tests.Contains("Laws", StringComparison.Ordinal) || tests.Contains("RuleMatrixTests", StringComparison.Ordinal) ? 2 : 1;
}
