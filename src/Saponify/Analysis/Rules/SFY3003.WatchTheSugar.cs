namespace Saponify.Analysis.Rules;

internal sealed class WatchTheSugar() : FormulaRule(new("SFY3003", "WatchTheSugar", Severity.Warning,
    "Much sugar in all",
    "Sugars of milk, honey and fruit add up: the batter overheats, cracks or foams out of the mould, and acids formed from them take up lye.")
{
    Messages = [new("Much", "sugar from everything comes to {sugar} of the fats, more than {limit}")],
    Sources = ["debruijn-1986"],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 3, 0, 100, "Most sugar from everything, of the mass of the listed fats; common practice, no source.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context)
    {
        double sugar = context.Facts.SugarOfFats.DecimalFractions * 100, limit = context.Option(Highest);
        if (sugar <= limit)
            return;
        FormulaPath[] where = [.. context.Facts.Parts.Where(p => p.Grams * p.Contents.SugarFraction > 0).Select(p => p.Path)];
        context.Report("Much", FormulaPath.Root, [Arg.Of("sugar", sugar, "%"), Arg.Of("limit", limit, "%")], related: where);
    }
}
