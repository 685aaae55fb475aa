namespace Saponify.Analysis.Rules;

internal sealed class LimitSolids() : FormulaRule(new("SFY5010", "LimitSolids", Severity.Warning,
    "Many grains in the soap",
    "Clay, colour, scrub and leaves hold no bar together: it cracks, crumbles and scratches. Common practice, no source.")
{
    Messages = [new("Many", "clays, colours, scrubs and botanicals come to {share} of the fats, more than {limit}")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 20, 1, 100, "Most grains in sum, of the mass of the listed fats.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context)
    {
        double share = Doses.Solids(context.Facts) * 100, limit = context.Option(Highest);
        if (!(share <= limit * (1 + 1e-9)))
            context.Report("Many", FormulaPath.Additives, [Arg.Of("share", share, "%"), Arg.Of("limit", limit, "%")]);
    }
}
