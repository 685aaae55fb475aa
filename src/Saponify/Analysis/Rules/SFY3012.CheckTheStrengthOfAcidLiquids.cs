namespace Saponify.Analysis.Rules;

internal sealed class CheckTheStrengthOfAcidLiquids() : FormulaRule(new("SFY3012", "CheckTheStrengthOfAcidLiquids", Severity.Warning,
    "A sour liquid takes up much of the alkali",
    "Alkali meant for the acid of vinegar or juice is left over when the bottle is weaker than the table; and the acid heats the lye further.")
{
    Messages = [new("Sour", "the acid of {liquid} takes up {share} of the alkali, more than {limit}: if it has a tenth less acid, the superfat is {superfat}")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 3, 0, 100, "Most of the alkali that the acid of one liquid may take up.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.OfAllFat is null ? "no fat takes up lye" : facts.Balance.Hydroxide > 0 ? null : "there is no alkali";

    private static void Check(in RuleContext context, FormulaPath path, Liquid liquid, double grams)
    {
        LyeBalance balance = context.Facts.Balance;
        double acid = grams * liquid.AcidHydroxidePerGram, share = acid / balance.Hydroxide * 100, limit = context.Option(Highest);
        if (share <= limit)
            return;
        double superfat = balance.OfAllFat!.Value - (0.1 * acid / balance.AllFatHydroxide);
        context.Report("Sour", path, [Arg.Of("liquid", liquid.Name), Arg.Of("share", share, "%"), Arg.Of("limit", limit, "%"), Arg.Of("superfat", superfat * 100, "%")]);
    }

    public override void Analyze(in RuleContext context)
    {
        Check(context, FormulaPath.LyeLiquid, context.Formula.Liquids.LyeLiquid.Liquid, context.Facts.Balance.LyeLiquidGrams);
        for (int i = 0; i < context.Formula.Liquids.HeldBack.Count; i++)
            Check(context, Places.HeldBack(context.Formula, i), context.Formula.Liquids.HeldBack[i].Liquid, context.Formula.Liquids.HeldBack[i].Grams);
    }
}
