namespace Saponify.Analysis.Rules;

internal sealed class CountMilkSolidsOnce() : FormulaRule(new("SFY3009", "CountMilkSolidsOnce", Severity.Info,
    "Milk powder and the milk made from it may both be listed",
    "Powder that was stirred into the milk is in the milk already: listed as well, its fat, sugar and acid count twice.")
{
    Messages = [new("Both", "{powder} comes to {share} of the milk, about what milk is made with: is it in the milk already?")],
    Options = [Lowest, Highest],
})
{
    internal static readonly RuleOption Lowest = new("lowest", "%", 7, 0, 100, "Least powder, of the mass of the milk, that looks like the powder the milk was made with.");

    internal static readonly RuleOption Highest = new("highest", "%", 16, 0, 100, "Most powder, of the mass of the milk, that looks like the powder the milk was made with.");

    public override void Analyze(in RuleContext context)
    {
        LiquidPlan liquids = context.Formula.Liquids;
        double milk = liquids.LyeLiquid.Liquid.Allergen == "milk" ? context.Facts.Balance.LyeLiquidGrams : 0;
        foreach (LiquidPortion portion in liquids.HeldBack)
            milk += portion.Liquid.Allergen == "milk" ? portion.Grams : 0;
        if (!(milk > 0))
            return;
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            double share = portion.GramsFor(context.Facts.ListedGrams) / milk * 100;
            if (portion.Additive.Kind == AdditiveKind.MilkSolids && share >= context.Option(Lowest) && share <= context.Option(Highest))
                context.Report("Both", Places.Additive(context.Formula, i), [Arg.Of("powder", portion.Additive.Name), Arg.Of("share", share, "%")], related: [FormulaPath.Liquids]);
        }
    }
}
