using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class KeepLyeHeavyUnlikely() : FormulaRule(new(Id, "KeepLyeHeavyUnlikely", Severity.Warning,
    "The soap may turn out lye-heavy",
    "A saponification value is a range, and so may be the purity; a superfat that these can eat up does not cover the batch.")
{
    Messages = [new("Likely", "with the ranges of its figures the soap is lye-heavy with a probability of {probability}; at worst the superfat is {worst}")],
    Sources = ["jcgm-100", "jcgm-101"],
    Options = [Highest],
    Floor = Severity.Warning,
})
{
    internal const string Id = "SFY2002";

    internal static readonly RuleOption Highest = new("highest", "%", 5, 0.01, 50, "Highest probability of a lye-heavy soap that is not reported.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Plan.Balance.CanBeWeighed ? null : "the batch can't be weighed";

    public override void Analyze(in RuleContext context)
    {
        if (context.Facts.Margin is not { } margin || !(margin.NominalFraction >= 0))
            return;
        double limit = context.Option(Highest) / 100;
        if (margin.LyeHeavyProbability <= limit)
            return;
        BatchSetup setup = context.Setup;
        double? enough = LyeFixes.LowestSuperfat(context.Formula, margin.NominalFraction, f => f.Plan().Margin(setup.Scale, setup.AlkaliScale, Ratio.FromPercent(95)) is { } after && after.LyeHeavyProbability <= limit);
        context.Report("Likely", Places.Superfat(context.Formula), [Arg.Of("probability", margin.ProbabilityOfLyeHeavy), Arg.Of("worst", margin.Worst)],
            enough is { } superfat ? LyeFixes.Superfat(context.Formula, "KeepLyeHeavyUnlikely.Raise", superfat) : [], evidence: context.Facts.Evidence);
    }
}
