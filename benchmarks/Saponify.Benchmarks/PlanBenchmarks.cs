using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using Saponify;

namespace Saponify.Benchmarks;

/// <summary>
/// One lye computation of a six-fat milk formula, beside the same arithmetic written down as straight-line doubles. Both begin where the
/// formula ends: it has summed up its fats when it was made, so the straight code gets those sums, and both end with the same fourteen figures.
/// </summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkLogicalGroupRule.ByCategory)]
public class PlanBenchmarks
{
    private Formula _formula = null!;
    private StraightLine _straight = null!;

    [GlobalSetup]
    public void SetUp()
    {
        _formula = Formulas.SixFatsAndMilk();
        _straight = new(_formula);
        _straight.MustAgree();
    }

    [Benchmark(Baseline = true), BenchmarkCategory("balance")]
    public double StraightLineBalance() => _straight.Balance().AlkaliGrams;

    [Benchmark, BenchmarkCategory("balance")]
    public double Balance() => _formula.Balance().AlkaliGrams;

    [Benchmark(Baseline = true), BenchmarkCategory("plan")]
    public PlainPlan StraightLinePlan() => _straight.Plan();

    [Benchmark, BenchmarkCategory("plan")]
    public BatchPlan Plan() => _formula.Plan();

    /// <summary>The tables of a plan are made when they are asked for; this asks for all of them.</summary>
    [Benchmark, BenchmarkCategory("plan")]
    public int PlanWithAllTables() => Formulas.Tables(_formula.Plan());
}
