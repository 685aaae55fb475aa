using System.Text;
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
