namespace Saponify.Analysis.Rules;

internal sealed class GiveSaltBarsLauricFat() : FormulaRule(new("SFY5011", "GiveSaltBarsLauricFat", Severity.Info,
    "Much salt for these fats",
    "Salt pushes soap out of solution; only soap of lauric acid lathers in spite of it.")
{
    Messages = [new("Salt", "salt comes to {salt} of the fats, more than {limit}, and lauric acid makes up {lauric} of them, less than {least}: little lather is left")],
    Sources = ["simmons-appleton-1908"],
    Options = [Highest, Lauric],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 5, 0, 100, "Most common salt, of the mass of the listed fats, that any fat stands; common practice, no source.");

    internal static readonly RuleOption Lauric = new("lauric", "%", 30, 0, 100, "Least share of lauric acid, of the listed fats, with more salt; coconut oil holds about half.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context)
    {
        double salt = Doses.CommonSalt(context.Facts) * 100, lauric = Blend.Lauric(context.Formula) * 100, highest = context.Option(Highest), least = context.Option(Lauric);
        if (!(salt <= highest * (1 + 1e-9)) && !(lauric >= least))
            context.Report("Salt", FormulaPath.Additives, [Arg.Of("salt", salt, "%"), Arg.Of("limit", highest, "%"), Arg.Of("lauric", lauric, "%"), Arg.Of("least", least, "%")]);
    }
}
