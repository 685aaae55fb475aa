using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Engines;
using BenchmarkDotNet.Environments;
using BenchmarkDotNet.Filters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using Perfolizer.Horology;

namespace Saponify.Benchmarks;

/// <summary>Measures what <c>benchmarks/results/TABLE.md</c> shows, and writes it.</summary>
internal static class ResultTable
{
    private const double MostOfGrowth = 1.05;

    private static readonly Type[] s_types =
        [typeof(PlanBenchmarks), typeof(MarginBenchmarks), typeof(AnalyzerBenchmarks), typeof(FormulaFileBenchmarks), typeof(AmountBenchmarks), typeof(PantryBenchmarks), typeof(ScoreBenchmarks), typeof(ThreadBenchmarks), typeof(SweepBenchmarks)];

    private static readonly TableRow[] s_rows =
    [
        new("`Balance()` of a milk formula with six fats", "PlanBenchmarks.Balance", "the same arithmetic as straight-line doubles", "PlanBenchmarks.StraightLineBalance")
            { Goal = "at most 2, 0 bytes", IsMet = (ratio, own, _) => ratio <= 2 && own.Bytes == 0 },
        new("`Plan()` of the same", "PlanBenchmarks.Plan", "straight-line code that fills the same object", "PlanBenchmarks.StraightLinePlan")
            { Goal = "at most 3, at most 1024 bytes", IsMet = (ratio, own, _) => ratio <= 3 && own.Bytes <= 1024 },
        new("`Plan()`, then every table of it", "PlanBenchmarks.PlanWithAllTables", "", null),
        new("margin of a bar of three fats", "MarginBenchmarks.Margin", "the same law in straight-line doubles", "MarginBenchmarks.StraightLineDoubles")
            { Goal = "at most 2", IsMet = (ratio, _, _) => ratio <= 2 },
        new("`Analyze()`, twelve rules, clean formula", "AnalyzerBenchmarks.TwelveRules", "the same twelve by FluentValidation over the same facts", "AnalyzerBenchmarks.FluentValidation")
            { Goal = "at most 1/5 of time and bytes", IsMet = (ratio, own, other) => ratio <= 0.2 && own.Bytes * 5 <= other.Bytes },
        new("`Analyze()`, all rules, clean formula", "AnalyzerBenchmarks.Clean", "", null),
        new("`Analyze()`, all rules, faulty formula", "AnalyzerBenchmarks.Faulty", "", null),
        new("the same, and every fix tried", "AnalyzerBenchmarks.FaultyWithFixes", "", null),
        new("the seven scores of six fats", "ScoreBenchmarks.ScoresOfABlend", "the same formulas as straight-line doubles", "ScoreBenchmarks.StraightLineDoubles"),
        new("read a formula, strict, all faults", "FormulaFileBenchmarks.Read", "System.Text.Json, strict, into a class of strings", "FormulaFileBenchmarks.SystemTextJsonIntoStrings")
            { Goal = "at most 2", IsMet = (ratio, _, _) => ratio <= 2 },
        new("read a formula as `Write` writes it", "FormulaFileBenchmarks.ReadAsWritten", "the same", "FormulaFileBenchmarks.SystemTextJsonIntoStringsAsWritten")
            { Goal = "at most 2", IsMet = (ratio, _, _) => ratio <= 2 },
        new("read an amount, `420 g`", "AmountBenchmarks.Grams", "UnitsNet's own parser", "AmountBenchmarks.UnitsNetGrams")
            { Goal = "at most 1/500, 0 bytes", IsMet = (ratio, own, _) => ratio <= 1.0 / 500 && own.Bytes == 0 },
        new("read an amount, `14.5 oz`", "AmountBenchmarks.Ounces", "UnitsNet's own parser", "AmountBenchmarks.UnitsNetOunces")
            { Goal = "at most 1/500, 0 bytes", IsMet = (ratio, own, _) => ratio <= 1.0 / 500 && own.Bytes == 0 },
        new("load all tables, first thing in a process", "PantryBenchmarks.LoadEverything", "bare CsvHelper over the same files", "PantryBenchmarks.BareCsvLibrary")
            { Goal = "at most 1.5", IsMet = (ratio, _, _) => ratio <= 1.5, IsCold = true },
        new("load all tables, again and again", "PantryBenchmarks.LoadEverything", "bare CsvHelper over the same files", "PantryBenchmarks.BareCsvLibrary")
            { Goal = "at most 1.5", IsMet = (ratio, _, _) => ratio <= 1.5 },
        new("100,000 plans with their tables on two threads", "ThreadBenchmarks.TwoThreads", "the same on one", "ThreadBenchmarks.OneThread"),
        new($"make and balance a blend, of {SweepBenchmarks.Blends.ToString("N0", CultureInfo.InvariantCulture)}", "SweepBenchmarks.MakeAndBalance", "", null),
    ];

    /// <summary>Measures and writes; true when everything could be measured.</summary>
    internal static bool Write(string path, string? date)
    {
        Dictionary<(string, bool), Measured> results = [];
        Job warm = Job.Default.WithWarmupCount(5).WithIterationCount(15).WithIterationTime(TimeInterval.FromMilliseconds(200));
        Job cold = Job.Default.WithStrategy(RunStrategy.ColdStart).WithLaunchCount(15).WithWarmupCount(0).WithIterationCount(1);
        Summary[] summaries = [.. Measure(warm, isCold: false, results), .. Measure(cold, isCold: true, results)];
        (string What, double Exponent)[] growth = Growth.Exponents(Console.Out);
        if (s_rows.Any(r => !results.ContainsKey((r.Method, r.IsCold)) || (r.Baseline is not null && !results.ContainsKey((r.Baseline, r.IsCold)))))
            return false;
        StringBuilder text = new();
        text.Append("# Results\n\nWritten by `dotnet run -c Release --project benchmarks/Saponify.Benchmarks -- table`; `benchmarks/README.md` says how to read it.\n\n");
        text.Append(CultureInfo.InvariantCulture, $"{Machine(summaries[0].HostEnvironmentInfo)}{(date is null ? "" : $" Measured {date}.")}\n\n");
        text.Append("| what | against | median | of the baseline | ratio | bytes | of the baseline | goal | |\n|---|---|---:|---:|---:|---:|---:|---|---|\n");
        foreach (TableRow row in s_rows)
            text.Append(row.Text(results)).Append('\n');
        text.Append("\n| growth | exponent | goal | |\n|---|---:|---|---|\n");
        foreach ((string what, double exponent) in growth)
            text.Append(CultureInfo.InvariantCulture, $"| {what} | {exponent:F2} | at most {MostOfGrowth} | {(exponent <= MostOfGrowth ? "met" : "missed")} |\n");
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text.ToString());
        Console.Write(text);
        return true;
    }

    private static Summary[] Measure(Job job, bool isCold, Dictionary<(string, bool), Measured> results)
    {
        HashSet<string> wanted = [.. s_rows.Where(r => r.IsCold == isCold).SelectMany(r => new[] { r.Method, r.Baseline }).OfType<string>()];
        ManualConfig config = ManualConfig.CreateEmpty().AddJob(job).AddLogger(ConsoleLogger.Default).AddColumnProvider(DefaultColumnProviders.Instance)
            .AddFilter(new SimpleFilter(c => wanted.Contains(Key(c)))).WithOptions(ConfigOptions.JoinSummary);
        Summary[] summaries = BenchmarkRunner.Run(s_types, config);
        foreach (BenchmarkReport report in summaries.SelectMany(s => s.Reports))
        {
            if (report is { Success: true, ResultStatistics: { } statistics })
                results[(Key(report.BenchmarkCase), isCold)] = new(statistics.Median, report.GcStats.GetBytesAllocatedPerOperation(report.BenchmarkCase) ?? 0);
        }
        return summaries;
    }

    private static string Key(BenchmarkCase benchmark) => $"{benchmark.Descriptor.Type.Name}.{benchmark.Descriptor.WorkloadMethod.Name}";

    /// <summary>The machine and the versions, without names of host and user.</summary>
    private static string Machine(HostEnvironmentInfo host)
    {
        string Version<T>() => Versions.Of(typeof(T).Assembly);
        return $"{host.Cpu.Value?.ProcessorName ?? "unknown processor"}, {Environment.ProcessorCount} cores, {host.Os.Value?.Name ?? RuntimeInformation.OSDescription} {host.Os.Value?.Version}, "
            + $"{RuntimeInformation.FrameworkDescription}, Saponify {Version<Formula>()}, CsvHelper {Version<CsvHelper.CsvReader>()}, FluentValidation {Version<FluentValidation.IValidator>()}, "
            + $"UnitsNet {Version<UnitsNet.Mass>()}, BenchmarkDotNet {Version<Summary>()}.";
    }
}
