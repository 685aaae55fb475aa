namespace Saponify.Analysis.Rules;

internal sealed class AllowEnoughWater() : FormulaRule(new("SFY3006", "AllowEnoughWater", Severity.Info,
    "A strong lye over all water",
    "With little water the batter sets fast and hot and leaves no time to blend, colour or pour. Common practice, no source.")
{
    Messages = [new("Strong", "the lye has {strength} over all water, more than the usual {limit}")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 40, 25, 60, "Strongest lye over all water that is not remarked on.");

    public override string? WhyNotApplicable(FormulaFacts facts) => !facts.Balance.CanBeWeighed ? "the batch can't be weighed" : DissolveInEnoughWater.IsShort(facts) ? "the jug itself has too little water, which another rule says" : null;

    public override void Analyze(in RuleContext context)
    {
        double strength = context.Facts.Balance.LyeConcentrationOfAllWater?.DecimalFractions * 100 ?? 0, limit = context.Option(Highest);
        if (!(strength <= limit * (1 + 1e-9)) && !GiveTheLyeRoom.IsTight(in context))
            context.Report("Strong", FormulaPath.Liquids, [Arg.Of("strength", strength, "%"), Arg.Of("limit", limit, "%")], LiquidFixes.Strength("AllowEnoughWater", context.Formula, limit / 100 * 0.998));
    }
}
