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

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.WhyNoSuperfat
        ?? (facts.Balance.OfAllFat >= 1 - 1e-9 ? "no alkali is left for the fats, which another rule says"
            : UseOneUnitForLyeAndFats.MixedUnits(facts) is not null ? "the units are mixed up, which another rule says"
            : MatchTheAlkaliToItsMass.SuperfatOfTheOther(facts) is not null ? "the mass fits the other alkali, which another rule says"
            : null);

    public override void Analyze(in RuleContext context)
    {
        double superfat = context.Facts.Balance.OfAllFat!.Value, limit = context.Option(Highest);
        if (superfat * 100 > limit + 1e-9)
            context.Report("High", Places.Superfat(context.Formula), [Arg.Of("superfat", Stored.ToRatio(superfat)), Arg.Of("limit", limit, "%")], evidence: context.Facts.Evidence);
    }
}
