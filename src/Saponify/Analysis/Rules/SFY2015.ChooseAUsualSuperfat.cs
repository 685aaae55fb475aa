using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class ChooseAUsualSuperfat() : FormulaRule(new("SFY2015", "ChooseAUsualSuperfat", Severity.Info,
    "An unusual superfat",
    "Much free fat makes a soap soft and goes rancid sooner; lather falls. Common practice, no source.")
{
    Messages = [new("High", "a superfat of {superfat} of all fat is more than the usual {limit}")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 20, 1, 100, "Highest superfat that is not remarked on.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.OfAllFat is null ? "no fat takes up lye" : null;

    public override void Analyze(in RuleContext context)
    {
        double superfat = context.Facts.Balance.OfAllFat!.Value, limit = context.Option(Highest);
        if (superfat * 100 > limit)
            context.Report("High", Places.Superfat(context.Formula), [Arg.Of("superfat", Stored.ToRatio(superfat)), Arg.Of("limit", limit, "%")], evidence: context.Facts.Evidence);
    }
}
