using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class ReadScoresAtAnEdgeAsBoth() : FormulaRule(new("SFY4107", "ReadScoresAtAnEdgeAsBoth", Severity.Info,
    "A score at the edge of a band",
    "A score is a rank, not a measurement: at the edge of a band its words say more than is known.")
{
    Messages = [new("Edge", "at the edge of a band lies {scores}")],
    Options = [Near],
    IsOnByDefault = false,
})
{
    internal static readonly RuleOption Near = new("near", "points", 1, 0.1, 5, "How near to an edge a score lies at it.");

    public override string? WhyNotApplicable(FormulaFacts facts) => Bars.WhyNoScores(facts);

    public override void Analyze(in RuleContext context)
    {
        double near = context.Option(Near);
        List<string> edges = [];
        foreach (Score score in context.Facts.Scores.All)
        {
            ValueList<ScoreBand> bands = score.Definition.Bands;
            for (int i = 1; i < bands.Count; i++)
            {
                if (Math.Abs(score.Value - bands[i].From) <= near)
                    edges.Add($"{score.Definition.Name} {Text.Fixed(score.Value, 0)} of 100, between \"{bands[i - 1].Words}\" and \"{bands[i].Words}\"");
            }
        }
        if (edges.Count > 0)
            context.Report("Edge", FormulaPath.Fats, [Arg.Of("scores", string.Join("; ", edges))]);
    }
}
