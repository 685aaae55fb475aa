namespace Saponify.Analysis.Rules;

internal sealed class KeepLyeOffWarmMilk() : FormulaRule(new("SFY3002", "KeepLyeOffWarmMilk", Severity.Warning,
    "Alkali is dissolved in unfrozen milk or another sweet liquid",
    "Milk sugar browns and breaks down in hot lye, protein curdles, and the soap turns orange and smells of ammonia.")
{
    Messages =
    [
        new("Warm", "{liquid} with {sugar} of sugar takes up the alkali at {temperature}; frozen, or at most {limit}, was expected"),
        new("NotStated", "{liquid} with {sugar} of sugar takes up the alkali, and it is not said how cold it is; frozen, or at most {limit}, was expected"),
    ],
    Sources = ["dow-caustic", "hashemi-2010"],
    Options = [Sugar, Warmest],
})
{
    internal static readonly RuleOption Sugar = new("sugar", "%", 1.5, 0, 100, "Most sugar in a lye liquid that is not remarked on.");

    internal static readonly RuleOption Warmest = new("warmest", "°C", 5, -10, 40, "Warmest that such a liquid may be without being frozen; it is then cooled while the alkali goes in.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Formula.Alkali.Mix.IsAllSolution ? "the alkali is dissolved already" : facts.Balance.LyeLiquidGrams > 0 ? null : "no lye liquid is left, which another rule says";

    public override void Analyze(in RuleContext context)
    {
        LyeLiquid lye = context.Formula.Liquids.LyeLiquid;
        double sugar = lye.Liquid.Contents.SugarFraction * 100, warmest = context.Option(Warmest);
        if (lye.IsFrozen || sugar <= context.Option(Sugar) || lye.StoredTemperature?.Celsius <= warmest)
            return;
        context.Report(lye.StoredTemperature is null ? "NotStated" : "Warm", FormulaPath.LyeLiquid,
            [Arg.Of("liquid", lye.Liquid.Name), Arg.Of("sugar", sugar, "%"), Arg.Of("temperature", lye.StoredTemperature?.Celsius ?? double.NaN, "°C"), Arg.Of("limit", warmest, "°C")],
            [LiquidFixes.Freeze("KeepLyeOffWarmMilk", lye.Liquid), .. LiquidFixes.Split("KeepLyeOffWarmMilk", context.Facts)]);
    }
}
