namespace Saponify.Analysis.Rules;

internal sealed class LimitCastorOil() : FormulaRule(new("SFY4102", "LimitCastorOil", Severity.Info,
    "Much castor oil",
    "Soap of castor oil takes up water: a bar with much of it stays sticky and soft. Common practice, no source.")
{
    Messages = [new("Sticky", "ricinoleic acid of castor oil makes up {share} of the fats, more than {limit}")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 15, 0, 100, "Highest share of ricinoleic acid, of the listed fats.");

    public override string? WhyNotApplicable(FormulaFacts facts) => !facts.HasFat ? "no listed fat takes up lye" : facts.Setup.Form == ProductForm.Soft ? "a soft soap is to come out" : null;

    public override void Analyze(in RuleContext context)
    {
        double share = Blend.Ricinoleic(context.Formula) * 100, limit = context.Option(Highest);
        if (!(share <= limit))
            context.Report("Sticky", FormulaPath.Fats, [Arg.Of("share", share, "%"), Arg.Of("limit", limit, "%")]);
    }
}
