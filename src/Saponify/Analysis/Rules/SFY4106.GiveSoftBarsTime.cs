namespace Saponify.Analysis.Rules;

internal sealed class GiveSoftBarsTime() : FormulaRule(new("SFY4106", "GiveSoftBarsTime", Severity.Info,
    "A bar that is soft, or goes quickly",
    "A soft bar dents when it is unmoulded early, and a bar that dissolves readily is gone soon when it lies wet.")
{
    Messages = [new("Soft", "{scores}; {fat} makes up {share} of the acids")],
    Sources = ["fischer-1921", "hill-2016"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Bars.WhyNoScores(facts);

    public override void Analyze(in RuleContext context)
    {
        Score[] low = [.. new[] { context.Facts.Scores.Hardness!, context.Facts.Scores.WearResistance! }.Where(Bars.IsLowest)];
        // of a bar without hard fats, and of potash in bars, other rules speak
        if (low.Length == 0 || context.Facts.Scores.Potassium.DecimalFractions > 0.1 || !(Blend.Hard(context.Formula) * 100 >= context.OptionOf("SFY4101", GiveABarHardFats.Lowest)))
            return;
        FatPoints largest = Bars.Largest(low[0]);
        context.Report("Soft", FormulaPath.Fats, [Arg.Of("scores", string.Join("; ", low.Select(Bars.Show))), Arg.Of("fat", largest.What), Arg.Of("share", largest.Share)], related: [largest.Path!]);
    }
}
