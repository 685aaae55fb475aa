using System.Globalization;
using BenchmarkDotNet.Attributes;
using Saponify.Internals;
using UnitsNet;

namespace Saponify.Benchmarks;

/// <summary>Reading one amount, beside UnitsNet's own parser of the same text.</summary>
[MemoryDiagnoser]
public class AmountBenchmarks
{
    [Benchmark(Baseline = true)]
    public double UnitsNetGrams() => Mass.Parse("420 g", CultureInfo.InvariantCulture).Value;

    [Benchmark]
    public double UnitsNetOunces() => Mass.Parse("14.5 oz", CultureInfo.InvariantCulture).Value;

    [Benchmark]
    public double Grams() => AmountReader.TryMass("420 g", out Mass mass, out _) ? mass.Value : 0;

    [Benchmark]
    public double Ounces() => AmountReader.TryMass("14.5 oz", out Mass mass, out _) ? mass.Value : 0;

    [Benchmark]
    public double PoundsAndOunces() => AmountReader.TryMass("1 lb 3 oz", out Mass mass, out _) ? mass.Value : 0;

    [Benchmark]
    public double Percent() => AmountReader.TryPercent("32.5 %", out Ratio share, out _) ? share.Value : 0;

    [Benchmark]
    public double FluidOunces() => AmountReader.TryVolume("8 fl oz", out Volume volume, out _) ? volume.Value : 0;
}
