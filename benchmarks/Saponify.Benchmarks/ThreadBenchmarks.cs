using BenchmarkDotNet.Attributes;

namespace Saponify.Benchmarks;

/// <summary>A hundred thousand plans of one shared formula with all their tables, on one thread and on two.</summary>
[MemoryDiagnoser]
public class ThreadBenchmarks
{
    internal const int Plans = 100_000;

    private readonly Formula _formula = Formulas.SixFatsAndMilk();

    [Benchmark(Baseline = true)]
    public int OneThread() => Lines(Plans);

    [Benchmark]
    public int TwoThreads()
    {
        int other = 0;
        Thread thread = new(() => other = Lines(Plans / 2));
        thread.Start();
        int own = Lines(Plans - (Plans / 2));
        thread.Join();
        return own + other;
    }

    private int Lines(int plans)
    {
        int sum = 0;
        for (int i = 0; i < plans; i++)
            sum += Formulas.Tables(_formula.Plan());
        return sum;
    }
}
