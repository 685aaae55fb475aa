using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using Saponify.Analysis;
using UnitsNet;

namespace Saponify.Benchmarks;

/// <summary>
/// Twelve cheap rules over a clean formula, beside the same twelve by FluentValidation; and all rules over a clean and over a faulty formula, beside
/// planning it and filling every table of the plan. Each measurement plans the formula anew.
/// </summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkLogicalGroupRule.ByCategory)]
public class AnalyzerBenchmarks
{
    private static readonly Pantry s_pantry = Pantry.Reference;
    private static readonly BatchSetup s_setup = new() { Scale = new Scale(Mass.FromGrams(1)), Form = ProductForm.Bar, Markets = ["EU"] };
    private readonly FormulaAnalyzer _twelve = new(TwelveChecks.Rules);
    private readonly TwelveChecks _fluent = new();
    private readonly Formula _clean = Of(Ratio.FromPercent(6), Ratio.FromPercent(30));
    private readonly Formula _faulty = Of(Ratio.FromPercent(-3), Ratio.FromPercent(60));

    [GlobalSetup]
    public void SetUp()
    {
        if (FluentValidation() != 0 || TwelveRules().Diagnostics.Count != 0)
            throw new InvalidOperationException("the clean formula is not clean");
        foreach (Formula formula in (Formula[])[_faulty, Of(Ratio.FromPercent(100), Ratio.FromPercent(30)), Of(Ratio.FromPercent(1), Ratio.FromPercent(30)), _faulty.ScaledBy(0.01)])
        {
            string[] fluent = [.. _fluent.Validate(new FormulaFacts(formula, s_setup)).Errors.Select(e => e.ErrorCode).Order(StringComparer.Ordinal)];
            string[] own = [.. _twelve.Analyze(formula, s_setup).Diagnostics.Select(d => d.Id).Order(StringComparer.Ordinal)];
            if (own.Length == 0 || !own.SequenceEqual(fluent))
                throw new InvalidOperationException($"rules found {string.Join(' ', own)}, FluentValidation {string.Join(' ', fluent)}");
        }
    }

    [Benchmark(Baseline = true), BenchmarkCategory("twelve")]
    public int FluentValidation() => _fluent.Validate(new FormulaFacts(_clean, s_setup)).Errors.Count;

    [Benchmark, BenchmarkCategory("twelve")]
    public AnalysisReport TwelveRules() => _twelve.Analyze(_clean, s_setup);

    [Benchmark(Baseline = true), BenchmarkCategory("all")]
    public string PlanAsText() => _clean.Plan().ToString();

    [Benchmark, BenchmarkCategory("all")]
    public AnalysisReport Clean() => FormulaAnalyzer.Default.Analyze(_clean, s_setup);

    /// <summary>A fix is tried when somebody asks for it, which is not in this figure.</summary>
    [Benchmark, BenchmarkCategory("all")]
    public AnalysisReport Faulty() => FormulaAnalyzer.Default.Analyze(_faulty, s_setup);

    [Benchmark, BenchmarkCategory("all")]
    public int FaultyWithFixes() => Faulty().Diagnostics.Sum(d => d.Fixes.Count);

    private static Formula Of(Ratio superfat, Ratio concentration) => new("Benchmark")
    {
        Fats =
        [
            s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(420)), s_pantry.Fat("coconut-oil").Weighing(Mass.FromGrams(180)), s_pantry.Fat("palm-oil").Weighing(Mass.FromGrams(200)),
            s_pantry.Fat("castor-oil").Weighing(Mass.FromGrams(50)), s_pantry.Fat("cocoa-butter").Weighing(Mass.FromGrams(60)), s_pantry.Fat("sunflower-oil").Weighing(Mass.FromGrams(40)).AtTrace(),
        ],
        Alkali = AlkaliPlan.ForSuperfat(superfat, Alkali.SodiumHydroxide(Purity.Certified(Ratio.FromPercent(98)))),
        Liquids = LiquidPlan.LyeConcentration(concentration).HoldingBack(s_pantry.Liquid("milk-cow-whole").Weighing(Mass.FromGrams(60))),
    };
}
