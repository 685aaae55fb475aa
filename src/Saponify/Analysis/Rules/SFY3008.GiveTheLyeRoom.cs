using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class GiveTheLyeRoom() : FormulaRule(new(Id, "GiveTheLyeRoom", Severity.Warning,
    "The alkali only just dissolves",
    "Near saturation the last grains dissolve slowly, and a lye that cools a few degrees drops crystals into the soap.")
{
    Messages = [new("Tight", "{water} of water while dissolving for {alkali} of pure alkali; {wanted} was expected")],
    Sources = ["gse-naoh", "gse-koh"],
    Options = [Least],
})
{
    internal const string Id = "SFY3008";

    internal static readonly RuleOption Least = new("least", "g/g", 1, 0.9, 3, "Least water while dissolving, g per g of pure alkali; common practice above the solubility.");

    /// <summary>True when the jug has less water than this rule, as it is set, asks for.</summary>
    internal static bool IsTight(in RuleContext context) =>
        !context.Formula.Alkali.Mix.IsAllSolution && !(context.Facts.Balance.DissolvingWaterGrams >= context.OptionOf(Id, Least) * (1 - 1e-9) * context.Facts.Balance.PureAlkaliGrams);

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Formula.Alkali.Mix.IsAllSolution ? "the alkali is dissolved already" : facts.Balance.CanBeWeighed ? null : "the batch can't be weighed";

    public override void Analyze(in RuleContext context)
    {
        LyeBalance balance = context.Facts.Balance;
        double water = balance.DissolvingWaterGrams, wanted = context.Option(Least) * balance.PureAlkaliGrams;
        if (DissolveInEnoughWater.IsShort(context.Facts) || !IsTight(in context))
            return;
        double liquid = balance.LyeLiquidGrams * ((wanted / water * 1.01) + 0.001);
        FixOffer[] fixes = liquid <= Guard.LargestGrams / 2 && LyeFixes.WithLyeLiquid(context.Formula, liquid) is { } plan
            ? [new("GiveTheLyeRoom.More", "Allow more water, so that the alkali dissolves with ease", FixEffect.KeepsProduct, f => f with { Liquids = plan })]
            : [];
        context.Report("Tight", FormulaPath.Liquids, [Arg.Of("water", water, "g"), Arg.Of("alkali", balance.PureAlkali), Arg.Of("wanted", wanted, "g")], fixes);
    }
}
