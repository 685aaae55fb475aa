using System.Text.Json;
using System.Text.Json.Serialization;
using BenchmarkDotNet.Attributes;
using Saponify;

namespace Saponify.Benchmarks;

/// <summary>
/// Reading a formula file strictly, every amount understood and every material looked up, beside System.Text.Json (source generated,
/// strict) reading the same bytes into a class whose amounts are just strings.
/// </summary>
[MemoryDiagnoser]
public class FormulaFileBenchmarks
{
    private byte[] _file = null!, _written = null!, _faulty = null!;
    private Pantry _pantry = null!;
    private Formula _formula = null!;

    [GlobalSetup]
    public void SetUp()
    {
        _pantry = Pantry.Reference;
        _file = """
            {
              "format": "saponify-formula/1",
              "name": "Oat drink and cream, with late hazelnut oil",
              "fats": [
                { "fat": "olive-oil", "mass": "14.5 oz" },
                { "fat": "coconut-oil", "mass": "8.75 oz" },
                { "fat": "cocoa-butter", "mass": "3.25 oz" },
                { "line": "late hazelnut", "fat": "hazelnut-oil", "mass": "1.5 oz", "stage": "trace" }
              ],
              "alkali": {
                "superfat": "6 %",
                "alkalis": [ { "alkali": "sodium-hydroxide", "purity": "97 to 99 %" } ]
              },
              "liquids": {
                "lyeConcentration": "30 %",
                "lyeLiquid": { "liquid": "water", "temperature": "50 °F" },
                "heldBack": [
                  { "liquid": "oat-drink", "mass": "2.5 oz", "temperature": "41 °F" },
                  { "liquid": "heavy-cream", "mass": "1.25 oz", "temperature": "41 °F" }
                ]
              },
              "additives": [
                { "additive": "kaolin", "ofFats": "1.2 %", "stage": "trace" }
              ]
            }
            """u8.ToArray();
        FormulaFile file = FormulaFile.Read(_file, _pantry);
        _formula = file.Formula ?? throw new InvalidOperationException(file.Problems[0].ToString());
        _written = FormulaFile.Write(_formula, _pantry);
        using MemoryStream faulty = new();
        typeof(FormulaFileBenchmarks).Assembly.GetManifestResourceStream("thirteen-faults.json")!.CopyTo(faulty);
        _faulty = faulty.ToArray();
        if (ReadThirteenFaults() != 13)
            throw new InvalidOperationException("the file with thirteen faults has another number of them");
        if (JsonSerializer.Deserialize(_written, PlainContext.Default.PlainFormula)?.Fats?.Length != 4)
            throw new InvalidOperationException("the plain class does not read the file");
    }

    [Benchmark(Baseline = true)]
    public PlainFormula SystemTextJsonIntoStrings() => JsonSerializer.Deserialize(_file, PlainContext.Default.PlainFormula)!;

    [Benchmark]
    public Formula Read() => FormulaFile.Read(_file, _pantry).Formula!;

    [Benchmark]
    public PlainFormula SystemTextJsonIntoStringsAsWritten() => JsonSerializer.Deserialize(_written, PlainContext.Default.PlainFormula)!;

    [Benchmark]
    public Formula ReadAsWritten() => FormulaFile.Read(_written, _pantry).Formula!;

    [Benchmark]
    public int ReadThirteenFaults() => FormulaFile.Read(_faulty, _pantry).Problems.Count;

    [Benchmark]
    public byte[] Write() => FormulaFile.Write(_formula, _pantry);
}

public sealed class PlainFormula
{
    public required string Format { get; set; }
    public string? WrittenBy { get; set; }
    public string? Data { get; set; }
    public required string Name { get; set; }
    public required PlainFat[] Fats { get; set; }
    public required PlainAlkaliPlan Alkali { get; set; }
    public required PlainLiquids Liquids { get; set; }
    public PlainAdditive[]? Additives { get; set; }
}

public sealed class PlainFat
{
    public string? Line { get; set; }
    public required string Fat { get; set; }
    public string? Mass { get; set; }
    public string? Volume { get; set; }
    public string? Stage { get; set; }
    public string? SaponificationValue { get; set; }
}

public sealed class PlainAlkaliPlan
{
    public string? Superfat { get; set; }
    public string? Of { get; set; }
    public required PlainAlkali[] Alkalis { get; set; }
}

public sealed class PlainAlkali
{
    public string? Line { get; set; }
    public required string Alkali { get; set; }
    public required string Purity { get; set; }
    public string? ShareOfHydroxide { get; set; }
    public string? Mass { get; set; }
}

public sealed class PlainLiquids
{
    public string? LyeConcentration { get; set; }
    public PlainLiquid? LyeLiquid { get; set; }
    public PlainLiquid[]? HeldBack { get; set; }
}

public sealed class PlainLiquid
{
    public string? Line { get; set; }
    public required string Liquid { get; set; }
    public string? Mass { get; set; }
    public string? Temperature { get; set; }
    public bool? Frozen { get; set; }
}

public sealed class PlainAdditive
{
    public string? Line { get; set; }
    public required string Additive { get; set; }
    public string? Mass { get; set; }
    public string? OfFats { get; set; }
    public string? Stage { get; set; }
}

[JsonSourceGenerationOptions(JsonSerializerDefaults.Strict, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(PlainFormula))]
internal sealed partial class PlainContext : JsonSerializerContext;
