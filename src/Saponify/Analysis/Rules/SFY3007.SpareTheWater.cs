namespace Saponify.Analysis.Rules;

internal sealed class SpareTheWater() : FormulaRule(new("SFY3007", "SpareTheWater", Severity.Info,
    "A weak lye over all water",
    "A bar with much water stays soft for long, dries for months, shrinks and warps. Common practice, no source.")
{
    Messages = [new("Weak", "the lye has {strength} over all water, less than the usual {limit}")],
    Options = [Lowest],
})
{
    internal static readonly RuleOption Lowest = new("lowest", "%", 25, 5, 40, "Weakest lye over all water that is not remarked on.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.Form == ProductForm.Soft ? "a soft soap is to come out"
        : facts.Formula.Alkali.Mix.SodiumShare < 0.5 ? "potash soap holds much water" : facts.Balance.CanBeWeighed ? null : "the batch can't be weighed";

    public override void Analyze(in RuleContext context)
    {
        double strength = context.Facts.Balance.LyeConcentrationOfAllWater?.DecimalFractions * 100 ?? double.PositiveInfinity, limit = context.Option(Lowest);
        if (!(strength >= limit * (1 - 1e-9)))
            context.Report("Weak", FormulaPath.Liquids, [Arg.Of("strength", strength, "%"), Arg.Of("limit", limit, "%")], LiquidFixes.Strength("SpareTheWater", context.Formula, limit / 100 * 1.02));
    }
}
