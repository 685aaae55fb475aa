using BenchmarkDotNet.Attributes;

namespace Saponify.Benchmarks;

/// <summary>A hundred thousand plans of one shared formula, on one thread and on two.</summary>
[MemoryDiagnoser]
public class ThreadBenchmarks
{
    internal const int Plans = 100_000;

    private readonly Formula _formula = Formulas.SixFatsAndMilk();

    [Benchmark(Baseline = true)]
    public double OneThread() => Grams(Plans);

    [Benchmark]
    public double TwoThreads()
    {
        double other = 0;
        Thread thread = new(() => other = Grams(Plans / 2));
        thread.Start();
        double own = Grams(Plans - (Plans / 2));
        thread.Join();
        return own + other;
    }

    private double Grams(int plans)
    {
        double sum = 0;
        for (int i = 0; i < plans; i++)
            sum += _formula.Plan().Balance.AlkaliGrams;
        return sum;
    }
}
