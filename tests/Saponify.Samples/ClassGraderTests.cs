using ClassGrader;
using Saponify.Tests.Support;

namespace Saponify.Samples;

/// <summary>The grader marks the answers that come with it.</summary>
public class ClassGraderTests
{
    [Fact]
    public void Answers_AreMarkedWithTheSlipBehindThem()
    {
        string folder = Repository.Path("docs", "samples", "ClassGrader");
        Grader grader = new(FormulaFile.Read(File.ReadAllBytes(Path.Combine(folder, "exercise.json")), Pantry.Reference).Formula!);
        string[] marks = [.. File.ReadLines(Path.Combine(folder, "answers.csv")).Skip(1).Select(l => l.Split(',')).Select(a => grader.Mark(a[0], double.Parse(a[1], System.Globalization.CultureInfo.InvariantCulture)))];
        Assert.Equal(6, marks.Length);
        Assert.StartsWith("A: right", marks[0], StringComparison.Ordinal);
        Assert.EndsWith("the purity was forgotten", marks[1], StringComparison.Ordinal);
        Assert.EndsWith("the superfat was forgotten", marks[2], StringComparison.Ordinal);
        Assert.EndsWith("the superfat was added to the alkali, not taken off", marks[3], StringComparison.Ordinal);
        Assert.Contains("would burn skin; it looks as if saponification values in KOH", marks[4], StringComparison.Ordinal);
        Assert.DoesNotContain("looks as if", marks[5], StringComparison.Ordinal);
    }
}
