using BenchmarkDotNet.Attributes;
using CsvHelper;

namespace Saponify.Benchmarks;

/// <summary>
/// Loading all tables, beside the CSV library reading the same files into strings and nothing else, with the same strictness. For a cold
/// process: <c>--strategy ColdStart --launchCount 10 --warmupCount 0 --iterationCount 1</c>.
/// </summary>
[MemoryDiagnoser]
public class PantryBenchmarks
{
    private static readonly string[] s_tables =
    [
        "sources", "fats", "fat-figures", "acids", "liquids", "liquid-figures", "additives", "additive-figures", "fragrance-allergens", "essential-oils", "essential-oil-constituents",
    ];

    private static readonly CsvReaderOptions s_options = CsvReaderOptions.Default with { Separator = ',', TrackLineNumbers = true, MalformedData = CsvMalformedDataHandling.Throw };

    private Pantry _pantry = null!;
    private string[] _misspelt = null!;
    private string _certificates = null!;

    [GlobalSetup(Targets = [nameof(FindFatByAlias), nameof(SuggestForAThousandNames), nameof(OwnTableOfAThousandFats)])]
    public void SetUp()
    {
        _pantry = Pantry.LoadEmbedded();
        _misspelt = [.. Enumerable.Range(0, 1000).Select(i => _pantry.Fats[i % _pantry.Fats.Count].Id.Replace('i', 'o') + (i % 10))];
        _certificates = "id,name,SV,source,lot\n" + string.Concat(Enumerable.Range(0, 1000).Select(i => FormattableString.Invariant($"own-{i},Own {i},{180 + (i % 20)}.5,certificate {i % 9},L-{i}\n")));
    }

    [Benchmark(Baseline = true)]
    public int BareCsvLibrary()
    {
        int characters = 0;
        foreach (string table in s_tables)
        {
            using Stream stream = typeof(Pantry).Assembly.GetManifestResourceStream($"Saponify.data.{table}.csv")!;
            using CsvReader reader = CsvReader.Create(stream, s_options);
            while (reader.Read())
            {
                for (int i = 0; i < reader.FieldCount; i++)
                    characters += reader.GetString(i).Length;
            }
        }
        return characters;
    }

    [Benchmark]
    public int LoadEverything() => Pantry.LoadEmbedded().Fats.Count;

    [Benchmark]
    public double FindFatByAlias() => _pantry.Fat("Groundnut Oil").Saponification!.Value.MilligramsKohPerGram;

    [Benchmark]
    public int SuggestForAThousandNames() => _misspelt.Sum(n => _pantry.NearestFats(n).Count);

    [Benchmark]
    public int OwnTableOfAThousandFats() => _pantry.With(_certificates).Fats.Count;
}
