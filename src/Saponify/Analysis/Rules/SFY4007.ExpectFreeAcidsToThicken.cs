namespace Saponify.Analysis.Rules;

internal sealed class ExpectFreeAcidsToThicken() : FormulaRule(new("SFY4007", "ExpectFreeAcidsToThicken", Severity.Warning,
    "Free fatty acids in a cold process",
    "Free acid turns to soap the moment lye meets it: the batter goes grainy or seizes before it can be poured.")
{
    Messages = [new("Thickens", "free fatty acids make up {share} of the fats, more than {limit}: a cold batter seizes")],
    Sources = ["simmons-appleton-1908"],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 5, 0, 100, "Highest share of free fatty acids, of the mass of the listed fats.");

    public override string? WhyNotApplicable(FormulaFacts facts) => !facts.HasFat ? "no listed fat takes up lye"
        : facts.Setup.Form == ProductForm.Soft || facts.Formula.Alkali.Mix.SodiumShare < 0.5 ? "potash and soft soaps are cooked" : null;

    public override void Analyze(in RuleContext context)
    {
        double share = Blend.Share(context.Formula, f => f.Class == FatClass.FreeAcid ? 1 : 0) * 100, limit = context.Option(Highest);
        if (!(share <= limit))
            context.Report("Thickens", FormulaPath.Fats, [Arg.Of("share", share, "%"), Arg.Of("limit", limit, "%")], related: Blend.Lines(context.Formula, f => f.Class == FatClass.FreeAcid));
    }
}
