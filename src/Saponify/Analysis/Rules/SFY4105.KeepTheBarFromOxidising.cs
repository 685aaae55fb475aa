namespace Saponify.Analysis.Rules;

internal sealed class KeepTheBarFromOxidising() : FormulaRule(new("SFY4105", "KeepTheBarFromOxidising", Severity.Info,
    "A bar that oxidises readily",
    "Acids with two and three double bonds take up oxygen many times as fast as oleic acid: a bar full of them gets spots and smells of old oil.")
{
    Messages = [new("High", "{score}: {fat} brings {points} of the points; no antioxidant is listed")],
    Sources = ["antonic-2020", "fatemi-hammond-1980"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Bars.WhyNoScores(facts)
        ?? (facts.Formula.Additives.Any(a => a.Additive.Kind == AdditiveKind.Antioxidant) ? "an antioxidant is listed, which scores can't see" : null);

    public override void Analyze(in RuleContext context)
    {
        Score score = context.Facts.Scores.OxidationRisk!;
        // of free fat that goes rancid another rule speaks
        bool isSaid = Blend.Polyunsaturated(context.Formula) * 100 > context.OptionOf("SFY4008", LeaveLittleFatThatGoesRancid.Highest) + 1e-9
            && context.Facts.Balance.OfAllFat * 100 > context.OptionOf("SFY4008", LeaveLittleFatThatGoesRancid.Superfat) + 1e-9;
        if (isSaid || score.Band != score.Definition.Bands[^1])
            return;
        FatPoints most = Bars.Most(score);
        context.Report("High", FormulaPath.Fats, [Arg.Of("score", Bars.Show(score)), Arg.Of("fat", most.What), Arg.Of("points", Math.Round(most.Points), null)], related: [most.Path!]);
    }
}
