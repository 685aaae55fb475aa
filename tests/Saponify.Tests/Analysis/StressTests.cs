using System.Text;
using Saponify.Analysis;
using Saponify.Tests.Support;

namespace Saponify.Tests.Analysis;

/// <summary>One pantry and one analyzer for all threads of an app.</summary>
public class StressTests
{
    private const int Threads = 8;

    /// <summary>
    /// Eight threads start together on a pantry that nobody has used before and on shared plans, whose tables are made when first asked for; each does
    /// all of the work many times and gets what one thread alone gets.
    /// </summary>
    [Fact]
    public void EightThreads_OverOnePantryAndOneAnalyzer_GetWhatOneGets()
    {
        byte[][] files = [.. Repository.Examples.Select(File.ReadAllBytes)];
        byte[] own = File.ReadAllBytes(Repository.Path("data", "examples", "own-fats.csv"));
        string alone = All(files, Pantry.Reference.With(own).Pantry!, FormulaAnalyzer.Default, null);
        for (int round = 0; round < 2; round++)
        {
            Pantry pantry = Pantry.Reference.With(own).Pantry!;
            FormulaAnalyzer analyzer = new(FormulaAnalyzer.BuiltInRules);
            BatchPlan[] plans = [.. files.Select(f => FormulaFile.Read(f, pantry).Formula!.Plan())];
            string[] found = new string[Threads];
            using Barrier together = new(Threads);
            Thread[] threads = [.. Enumerable.Range(0, Threads).Select(i => new Thread(() =>
            {
                together.SignalAndWait();
                for (int again = 0; again < 2; again++)
                    found[i] = All(files, pantry, analyzer, plans);
            }))];
            Array.ForEach(threads, t => t.Start());
            Array.ForEach(threads, t => t.Join());
            Assert.All(found, f => Assert.Equal(alone, f));
        }
    }

    [Fact]
    public void EightThreads_AnyOrderOfRules_AnyCulture_GiveTheSameReportsAndLogs()
    {
        FormulaFile[] inputs = [.. RulePage.All.Select(p => p.FaultyFile)];
        (string, byte[])[] expected = [.. inputs.Select(i => Written(RulePage.Analyzer, i))];
        Parallel.For(0, 8, new ParallelOptions { MaxDegreeOfParallelism = 8 }, thread =>
        {
            FormulaRule[] rules = [.. FormulaAnalyzer.BuiltInRules];
            new Random(thread).Shuffle(rules);
            FormulaAnalyzer shuffled = new FormulaAnalyzer(rules).With(AnalyzerConfig.Of(Preset.Learner));
            for (int n = 0; n < inputs.Length; n++)
            {
                int at = (n + (thread * 11)) % inputs.Length;
                (string text, byte[] log) = InCulture.Run(InCulture.Names[thread % InCulture.Names.Length], () => Written(shuffled, inputs[at]));
                Assert.Equal(expected[at].Item1, text);
                Assert.Equal(expected[at].Item2, log);
            }
        });
    }

    private static (string Text, byte[] Log) Written(FormulaAnalyzer analyzer, FormulaFile input)
    {
        AnalysisReport report = analyzer.Analyze(input);
        return (report.ToString(), SarifLog.Write(report, "formula.json"));
    }

    private static string All(byte[][] files, Pantry pantry, FormulaAnalyzer analyzer, BatchPlan[]? plans)
    {
        StringBuilder text = new();
        for (int i = 0; i < files.Length; i++)
        {
            FormulaFile file = FormulaFile.Read(files[i], pantry);
            AnalysisReport report = analyzer.Analyze(file, new() { Scale = new(Mass.FromGrams(1)), Today = new(2026, 11, 25) });
            BatchPlan plan = plans?[i] ?? file.Formula!.Plan();
            text.Append(report).AppendJoin('\n', report.Outcomes.Select(o => $"{o.Rule.Id} {o.Status}"))
                .Append(plan).Append(plan.Margin(new Scale(Mass.FromGrams(1)))).Append(plan.Scores())
                .Append(Encoding.UTF8.GetString(FormulaFile.Write(file.Formula!, pantry)));
        }
        return text.ToString();
    }
}
