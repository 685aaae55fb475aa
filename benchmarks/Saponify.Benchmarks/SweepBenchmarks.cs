using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace Saponify.Benchmarks;

/// <summary>
/// A million blends of four fats, 1000 g each in steps of 5.5 g: a formula is made for each and balanced, and the one with the most alkali is kept.
/// The portions are made once; so the sweep costs a list, a formula and a balance per blend.
/// </summary>
[MemoryDiagnoser]
public class SweepBenchmarks
{
    internal const int Steps = 180;

    /// <summary>All ways of sharing 180 steps among four fats: 183 x 182 x 181 / 6.</summary>
    internal const int Blends = (Steps + 3) * (Steps + 2) * (Steps + 1) / 6;

    private readonly FatPortion[][] _portions = [.. Formulas.SixFatsAndMilk().Fats.Take(4).Select(p => Enumerable.Range(0, Steps + 1).Select(n => p.Fat.Weighing(Mass.FromGrams(n * 1000.0 / Steps))).ToArray())];
    private readonly Formula _formula = Formulas.SixFatsAndMilk();

    [Benchmark(OperationsPerInvoke = Blends)]
    public double MakeAndBalance()
    {
        double most = 0;
        int blends = 0;
        for (int a = 0; a <= Steps; a++)
        {
            for (int b = 0; a + b <= Steps; b++)
            {
                for (int c = 0; a + b + c <= Steps; c++, blends++)
                {
                    Formula blend = _formula with { Fats = [_portions[0][a], _portions[1][b], _portions[2][c], _portions[3][Steps - a - b - c]] };
                    most = Math.Max(most, blend.Balance().AlkaliGrams);
                }
            }
        }
        return blends == Blends ? most : throw new InvalidOperationException("another number of blends");
    }
}
