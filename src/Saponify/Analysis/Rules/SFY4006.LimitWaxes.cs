namespace Saponify.Analysis.Rules;

internal sealed class LimitWaxes() : FormulaRule(new("SFY4006", "LimitWaxes", Severity.Warning,
    "Much wax among the fats",
    "Wax stays unsaponified: it dulls the lather, makes the bar waxy or crumbly, and sets in the pot before the batter does.")
{
    Messages = [new("Much", "waxes make up {share} of the fats, more than {limit}")],
    Sources = ["bpc-1911"],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 8, 0, 100, "Highest share of waxes, of the mass of the listed fats; common practice, no source.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context)
    {
        double share = Blend.Share(context.Formula, f => f.Class == FatClass.Wax ? 1 : 0) * 100, limit = context.Option(Highest);
        if (!(share <= limit))
            context.Report("Much", FormulaPath.Fats, [Arg.Of("share", share, "%"), Arg.Of("limit", limit, "%")], related: Blend.Lines(context.Formula, f => f.Class == FatClass.Wax));
    }
}
