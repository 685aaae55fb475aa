namespace Saponify.Analysis.Rules;

internal sealed class StayWithinTheScale() : FormulaRule(new("SFY2014", "StayWithinTheScale", Severity.Warning,
    "The scale can't weigh a line",
    "Below its minimum load, or below one step, a scale shows anything.")
{
    Messages = [new("CantWeigh", "{reason}")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => (facts.Setup.Scale ?? facts.Setup.AlkaliScale) is null ? "no scale is given" : facts.Balance.CanBeWeighed ? null : "the batch can't be weighed";

    public override void Analyze(in RuleContext context)
    {
        Scale scale = context.Setup.Scale ?? context.Setup.AlkaliScale!;
        foreach (Obstacle obstacle in context.Facts.Plan.OnScale(scale, context.Setup.AlkaliScale ?? scale).Obstacles)
            context.Report("CantWeigh", obstacle.Path, [Arg.Of("reason", obstacle.Reason.TrimEnd('.'))]);
    }
}
