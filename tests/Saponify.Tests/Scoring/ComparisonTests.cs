using Saponify.Tests.Support;

namespace Saponify.Tests.Scoring;

/// <summary>Formulas side by side, as data.</summary>
public class ComparisonTests
{
    private static Formula Example(string name) => FormulaFile.Read(File.ReadAllBytes(Repository.Path("data", "examples", name + ".json")), Pantry.Reference).Formula!;

    [Fact]
    public void Comparison_IsData()
    {
        BarComparison comparison = BarComparison.Of(Example("market-day-bar"), Example("goat-milk-frozen"));
        Assert.Equal(2, comparison.Plans.Count);
        Assert.Equal(comparison.Scores.Select(s => (double?)s.Hardness!.Value), comparison.Values(ScoreKind.Hardness));
        Assert.Equal(comparison.Plans[0].BatchMass.Grams, comparison.Compositions[0]!.BarMass.Grams, 6);
        Assert.Equal(Example("market-day-bar").Blend()!.Figures().Iodine, comparison.Blends[0]!.Iodine);
        Assert.Throws<ArgumentException>(() => BarComparison.Of());
        Assert.Throws<ArgumentOutOfRangeException>(() => comparison.Values((ScoreKind)9));
    }

    [Fact]
    public void Composition_AsText_IsTheApprovedOne() =>
        Golden.Matches(Example("oat-and-cream").Composition()!.ToString() + "\n" + Example("oat-and-cream").Composition()!.AtMoisture(Ratio.FromPercent(10)), "scores", "oat-and-cream-composition.txt");

    [Fact]
    public void Scores_AsText_AreTheApprovedOnes() => Golden.Matches(Example("oat-and-cream").Scores().ToString(), "scores", "oat-and-cream-scores.txt");
}
