namespace Saponify.Analysis.Rules;

internal sealed class KeepSaltOutOfTightLye() : FormulaRule(new("SFY3010", "KeepSaltOutOfTightLye", Severity.Info,
    "Salt in a jug with little water",
    "Salt takes water that the alkali needs to dissolve: grains of either stay behind. Common practice, no source.")
{
    Messages = [new("Salt", "{salt} shares {water} of water per gram of alkali; at least {limit} was expected")],
    Options = [Least],
})
{
    internal static readonly RuleOption Least = new("least", "g/g", 1.4, 1, 4, "Least water while dissolving, g per g of pure alkali, with salt in the jug.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.PureAlkaliGrams <= 0 ? "there is no alkali" : DissolveInEnoughWater.IsShort(facts) ? "the jug has too little water even without salt, which another rule says" : null;

    public override void Analyze(in RuleContext context)
    {
        double water = context.Facts.Balance.DissolvingWaterGrams / context.Facts.Balance.PureAlkaliGrams, limit = context.Option(Least);
        if (water >= limit * (1 - 1e-9) || GiveTheLyeRoom.IsTight(in context))
            return;
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (portion is { Stage: Stage.LyeLiquid, Additive.Id: "sodium-chloride" or "sea-salt" } && portion.GramsFor(context.Facts.ListedGrams) > 0)
                context.Report("Salt", Places.Additive(context.Formula, i), [Arg.Of("salt", portion.Additive.Name), Arg.Of("water", water, "g"), Arg.Of("limit", limit, "g")],
                    [AdditiveFixes.Move("KeepSaltOutOfTightLye", i, portion, Stage.Trace)]);
        }
    }
}
