using System.Text;
using Saponify.Internals;
using UnitsNet;

namespace Saponify.Fuzz;

/// <summary>What is read from outside, each with the promises it makes on any bytes whatever; a broken promise is an exception.</summary>
internal static class Readers
{
    // instrumented code may run only once the fuzzer is there, so the tables are loaded by the first reading
    private static Pantry Tables => Pantry.Reference;

    internal static IReadOnlyDictionary<string, Action<byte[]>> All { get; } = new SortedDictionary<string, Action<byte[]>>(StringComparer.Ordinal)
    {
        ["amount"] = Amount,
        ["batch"] = Batch,
        ["config"] = Config,
        ["cure"] = Cure,
        ["formula"] = FormulaText,
        ["table"] = Table,
    };

    private static void Amount(byte[] bytes)
    {
        string text = Encoding.UTF8.GetString(bytes);
        if (AmountReader.TryMass(text, out Mass mass, out string? fault))
            Promise(double.IsFinite(mass.Value), "a mass is finite");
        Promise(fault is null || !fault.Any(char.IsControl), "a fault has no control characters");
        if (AmountReader.TryVolume(text, out Volume volume, out _))
            Promise(double.IsFinite(volume.Value), "a volume is finite");
        if (AmountReader.TryTemperature(text, out Temperature temperature, out _))
            Promise(double.IsFinite(temperature.Value), "a temperature is finite");
        if (AmountReader.TryPercent(text, out Ratio ratio, out _))
            Promise(double.IsFinite(ratio.DecimalFractions), "a share is finite");
    }

    private static void FormulaText(byte[] bytes)
    {
        FormulaFile file = FormulaFile.Read(bytes, Tables);
        Promise(file.Formula is not null || file.Problems.Count > 0, "no formula without a problem that says why");
        Promise(file.Problems.All(p => p.Place.Line > 0 && p.Place.Column > 0), "a problem has a place");
        if (file.Formula is not { } formula)
            return;
        BatchPlan plan = formula.Plan();
        Promise(double.IsFinite(plan.Balance.AlkaliAsWeighed.Grams) && double.IsFinite(plan.BatchMass.Grams), "a plan is finite");
        Promise(plan.ToString().Length > 0 && plan.ToHtml().Length > 0, "a plan can be shown");
        Promise(FormulaFile.Read(FormulaFile.Write(formula, Tables), Tables).Formula is { } again && again.Equals(formula), "what is written is read back equal");
    }

    private static void Batch(byte[] bytes)
    {
        BatchFile file = BatchFile.Read(bytes, Tables);
        Promise(file.Batch is not null || file.Problems.Count > 0, "no batch without a problem that says why");
        if (file.Batch is not { } batch)
            return;
        foreach (BatchChoice choice in batch.Choices)
            Promise(choice.ToString().Length > 0, "a choice says what it is");
        Promise(BatchFile.Read(BatchFile.Write(batch, Tables), Tables).Batch is { } again && again.Equals(batch), "what is written is read back equal");
    }

    private static void Config(byte[] bytes)
    {
        AnalyzerConfigFile file = AnalyzerConfigFile.Read(bytes);
        Promise(file.Problems.All(p => p.Place.Line > 0 && p.Place.Column > 0), "a problem has a place");
    }

    private static void Table(byte[] bytes)
    {
        PantryFile file = Tables.With(bytes);
        Promise(file.Pantry is not null || file.Faults.Count > 0, "no pantry without a fault that says why");
    }

    private static void Cure(byte[] bytes)
    {
        CureFile file = CureFile.Read(bytes, new Scale(Mass.FromGrams(0.1)));
        foreach (CureSeries series in file.Series)
            Promise(series.Fit().ToString() is not null, "a fit can be shown");
    }

    private static void Promise(bool kept, string what)
    {
        if (!kept)
            throw new InvalidOperationException("Broken promise: " + what + ".");
    }
}
