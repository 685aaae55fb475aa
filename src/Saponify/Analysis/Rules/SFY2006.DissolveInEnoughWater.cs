using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class DissolveInEnoughWater() : FormulaRule(new("SFY2006", "DissolveInEnoughWater", Severity.Error,
    "Too little water to dissolve the alkali",
    "Alkali that does not dissolve stays as grains in the soap and burns skin; the slurry boils where it meets water.")
{
    Messages = [new("TooLittle", "{water} of water while dissolving against {least} that it takes at 20 °C")],
    Sources = ["gse-naoh", "gse-koh"],
    Floor = Severity.Error,
})
{
    /// <summary>True when the jug has too little water to dissolve what is solid.</summary>
    internal static bool IsShort(FormulaFacts facts) => !facts.Formula.Alkali.Mix.IsAllSolution && !(facts.Balance.DissolvingWaterGrams >= Least(facts.Formula, facts.Balance) * (1 - 1e-9));

    private static double Least(Formula formula, LyeBalance balance) => balance.Hydroxide * Solubility.LeastWaterPerMole(formula.Alkali.Mix);

    private static bool Works(Formula formula)
    {
        LyeBalance after = formula.Balance();
        return after.CanBeWeighed && after.DissolvingWaterGrams >= Least(formula, after);
    }

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Formula.Alkali.Mix.IsAllSolution ? "the alkali is dissolved already" : facts.Balance.Hydroxide <= 0 ? "there is no alkali" : facts.Balance.LyeLiquidGrams <= 0 ? "no lye liquid is left, which another rule says" : null;

    public override void Analyze(in RuleContext context)
    {
        if (!IsShort(context.Facts))
            return;
        LyeBalance balance = context.Facts.Balance;
        double least = Least(context.Formula, balance);
        double room = Math.Max(1.02, 1.01 * context.OptionOf(GiveTheLyeRoom.Id, GiveTheLyeRoom.Least) * balance.PureAlkaliGrams / least);
        LiquidPlan? more = context.Facts.Plan.LiquidWindow.LeastToDissolve is { } liquid && liquid.Grams <= Guard.LargestGrams / 2 ? LyeFixes.WithLyeLiquid(context.Formula, (liquid.Grams * room) + 0.1) : null;
        FixOffer[] fixes = more is not null && Works(context.Formula with { Liquids = more })
            ? [new("DissolveInEnoughWater.More", "Allow more water, so that the alkali dissolves with ease", FixEffect.KeepsProduct, f => f with { Liquids = more })]
            : [];
        context.Report("TooLittle", FormulaPath.Liquids, [Arg.Of("water", balance.DissolvingWaterGrams, "g"), Arg.Of("least", least, "g")], fixes);
    }
}
