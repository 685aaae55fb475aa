namespace Saponify.Analysis.Rules;

internal sealed class ReadTheLabelOfFattyLiquids() : FormulaRule(new("SFY3013", "ReadTheLabelOfFattyLiquids", Severity.Info,
    "The fat of a liquid takes up much of the alkali",
    "The fat of cream, and of coconut milk above all, differs from carton to carton, up to threefold: the superfat follows it.")
{
    Messages = [new("Fatty", "the fat of {liquid}, {fat} by the table, takes up {share} of what all fat can, more than {limit}: does the label say the same?")],
    Sources = ["ciqual-2020", "usda-sr28"],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 3, 0, 100, "Most of the lye demand of all fat that the fat of one liquid may have.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.OfAllFat is null ? "no fat takes up lye" : null;

    private static void Check(in RuleContext context, FormulaPath path, Liquid liquid, double grams)
    {
        double share = grams * liquid.FatHydroxidePerGram / context.Facts.Balance.AllFatHydroxide * 100, limit = context.Option(Highest);
        if (!(share <= limit) && liquid.Contents.LeastFat is null && liquid.Sources.Count > 0)
            context.Report("Fatty", path, [Arg.Of("liquid", liquid.Name), Arg.Of("fat", liquid.Contents.Fat), Arg.Of("share", share, "%"), Arg.Of("limit", limit, "%")]);
    }

    public override void Analyze(in RuleContext context)
    {
        Check(context, FormulaPath.LyeLiquid, context.Formula.Liquids.LyeLiquid.Liquid, context.Facts.Balance.LyeLiquidGrams);
        for (int i = 0; i < context.Formula.Liquids.HeldBack.Count; i++)
            Check(context, Places.HeldBack(context.Formula, i), context.Formula.Liquids.HeldBack[i].Liquid, context.Formula.Liquids.HeldBack[i].Grams);
    }
}
