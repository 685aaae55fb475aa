namespace Saponify.Analysis.Rules;

internal sealed class KnowTheWaterOfTheLiquid() : FormulaRule(new("SFY3011", "KnowTheWaterOfTheLiquid", Severity.Info,
    "The lye liquid is far from being water",
    "Who takes a weighed jug of cream for a jug of water gets a lye nearly twice as strong as thought.")
{
    Messages = [new("Little", "only {water} of {liquid} is water, less than {limit}: the lye while dissolving has {strength}")],
    Sources = ["usda-sr28"],
    Options = [Least],
})
{
    internal static readonly RuleOption Least = new("least", "%", 80, 10, 100, "Least water in a weighed lye liquid that is not remarked on.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Formula.Liquids.Rule != WaterRule.WeighedLyeLiquid ? "the plan works out how much lye liquid it takes" : facts.Balance.CanBeWeighed ? null : "the batch can't be weighed";

    public override void Analyze(in RuleContext context)
    {
        Liquid liquid = context.Formula.Liquids.LyeLiquid.Liquid;
        double water = liquid.WaterPerGram * 100, limit = context.Option(Least);
        if (!(water >= limit) && context.Facts.Balance.LyeConcentrationWhileDissolving is { } strength)
            context.Report("Little", FormulaPath.LyeLiquid, [Arg.Of("water", water, "%"), Arg.Of("liquid", liquid.Name), Arg.Of("limit", limit, "%"), Arg.Of("strength", strength)]);
    }
}
