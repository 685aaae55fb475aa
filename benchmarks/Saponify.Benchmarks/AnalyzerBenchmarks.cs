using BenchmarkDotNet.Attributes;
using Saponify.Analysis;
using UnitsNet;

namespace Saponify.Benchmarks;

/// <summary>All rules over a clean and over a faulty formula, against planning it and filling every table of the plan.</summary>
[MemoryDiagnoser]
public class AnalyzerBenchmarks
{
    private static readonly Pantry s_pantry = Pantry.Reference;
    private static readonly BatchSetup s_setup = new() { Scale = new Scale(Mass.FromGrams(1)), Form = ProductForm.Bar, Markets = ["EU"] };
    private readonly Formula _clean = Of(Ratio.FromPercent(6), Ratio.FromPercent(30));
    private readonly Formula _faulty = Of(Ratio.FromPercent(-3), Ratio.FromPercent(60));

    [Benchmark(Baseline = true)]
    public string PlanAsText() => _clean.Plan().ToString();

    [Benchmark]
    public AnalysisReport Clean() => FormulaAnalyzer.Default.Analyze(_clean, s_setup);

    /// <summary>Each fix is tried before it is offered, so a finding costs more analyses.</summary>
    [Benchmark]
    public AnalysisReport Faulty() => FormulaAnalyzer.Default.Analyze(_faulty, s_setup);

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
