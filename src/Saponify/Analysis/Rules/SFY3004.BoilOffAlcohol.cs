namespace Saponify.Analysis.Rules;

internal sealed class BoilOffAlcohol() : FormulaRule(new("SFY3004", "BoilOffAlcohol", Severity.Warning,
    "Alcohol in a liquid",
    "Alcohol boils out of hot lye and foams over, and it speeds trace; so does the gas of beer. Common practice, no source.")
{
    Messages =
    [
        new("Alcohol", "{liquid} holds {alcohol} of alcohol, more than {limit}"),
        new("AlcoholAndGas", "{liquid} holds {alcohol} of alcohol, more than {limit}, and gas until it has gone flat"),
    ],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 1, 0, 100, "Most alcohol in a liquid that is not remarked on.");

    private static void Check(in RuleContext context, FormulaPath path, Liquid liquid, double limit)
    {
        double alcohol = liquid.Contents.AlcoholFraction * 100;
        if (!(alcohol <= limit))
            context.Report(liquid.Id.StartsWith("beer", StringComparison.Ordinal) ? "AlcoholAndGas" : "Alcohol", path, [Arg.Of("liquid", liquid.Name), Arg.Of("alcohol", alcohol, "%"), Arg.Of("limit", limit, "%")]);
    }

    public override void Analyze(in RuleContext context)
    {
        double limit = context.Option(Highest);
        if (context.Facts.Balance.LyeLiquidGrams > 0)
            Check(context, FormulaPath.LyeLiquid, context.Formula.Liquids.LyeLiquid.Liquid, limit);
        for (int i = 0; i < context.Formula.Liquids.HeldBack.Count; i++)
            Check(context, Places.HeldBack(context.Formula, i), context.Formula.Liquids.HeldBack[i].Liquid, limit);
    }
}
