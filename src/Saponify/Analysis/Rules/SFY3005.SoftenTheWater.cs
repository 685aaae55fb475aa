namespace Saponify.Analysis.Rules;

internal sealed class SoftenTheWater() : FormulaRule(new("SFY3005", "SoftenTheWater", Severity.Info,
    "The alkali is dissolved in tap water",
    "Calcium and magnesium of hard water turn a little soap into scum and bring the metals that start rancid spots.")
{
    Messages = [new("Hard", "the alkali is dissolved in {liquid} and nothing binds its calcium and magnesium; distilled or softened water was expected")],
    Sources = ["simmons-appleton-1908"],
})
{
    private static bool BindsMetals(AdditivePortion portion) => portion.Additive.Kind == AdditiveKind.Chelator || portion.Additive.Contents.AcidKind?.Id == "citric";

    private static Formula WithSoftWater(Formula formula)
    {
        LyeLiquid lye = formula.Liquids.LyeLiquid;
        LiquidPlan plan = lye.Temperature is not { } temperature ? formula.Liquids.DissolvingIn(Liquid.Water)
            : lye.IsFrozen ? formula.Liquids.DissolvingInFrozen(Liquid.Water, temperature) : formula.Liquids.DissolvingIn(Liquid.Water, temperature);
        return formula with { Liquids = plan };
    }

    public override void Analyze(in RuleContext context)
    {
        Liquid liquid = context.Formula.Liquids.LyeLiquid.Liquid;
        if (liquid.Id != "water-tap")
            return;
        foreach (AdditivePortion portion in context.Formula.Additives)
        {
            if (BindsMetals(portion))
                return;
        }
        context.Report("Hard", FormulaPath.LyeLiquid, [Arg.Of("liquid", liquid.Name)],
            [new("SoftenTheWater.Distilled", "Dissolve in distilled or softened water", FixEffect.KeepsProduct, WithSoftWater)]);
    }
}
