namespace Saponify.Analysis.Rules;

internal sealed class KnowTheWorstCase() : FormulaRule(new("SFY2003", "KnowTheWorstCase", Severity.Info,
    "At the very worst the soap is lye-heavy",
    "It is unlikely that every figure lies at its unlucky end, but it can; a lot's own saponification value and a certificate of the alkali narrow it.")
{
    Messages = [new("Possible", "if every figure lies at its unlucky end, the superfat is {worst}; the probability of a lye-heavy soap is {probability}")],
    Sources = ["jcgm-100", "jcgm-101"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Plan.Balance.CanBeWeighed ? null : "the batch can't be weighed";

    public override void Analyze(in RuleContext context)
    {
        if (context.Facts.Margin is not { NominalFraction: >= 0, WorstFraction: < 0 } margin || margin.LyeHeavyProbability > context.OptionOf(KeepLyeHeavyUnlikely.Id, KeepLyeHeavyUnlikely.Highest) / 100)
            return;
        context.Report("Possible", Places.Superfat(context.Formula), [Arg.Of("worst", margin.Worst), margin.LyeHeavyProbability < 0.0001 ? Arg.Of("probability", "less than 0.01 %") : Arg.Of("probability", margin.ProbabilityOfLyeHeavy)], evidence: context.Facts.Evidence);
    }
}
