using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class KeepTheBatterInTheMould() : FormulaRule(new("SFY6101", "KeepTheBatterInTheMould", Severity.Warning,
    "The batter does not fit into the mould",
    "What does not fit stays in the pot, and there is no second chance to pour it well.")
{
    Messages = [new("Overflows", "{volume} of batter at the least for {room} of mould: {share}")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Moulding.WhyNoFill(facts);

    public override void Analyze(in RuleContext context)
    {
        MouldFill fill = context.Facts.Fill!;
        Figure<Ratio> share = fill.ShareOfMould;
        if (!(share.Low!.Value.DecimalFractions > context.Setup.Moulds * (1 + 1e-9)))
            return;
        context.Report("Overflows", FormulaPath.Setup.Member("mould"), [Arg.Of("volume", fill.Volume.Low!.Value.Milliliters, "mL"), Arg.Of("room", context.Setup.Moulds * fill.Mould.Volume.Milliliters, "mL"),
            Arg.Of("share", share.Low!.Value / context.Setup.Moulds)], Moulding.Scale("KeepTheBatterInTheMould", context.Facts), evidence: share.Evidence);
    }
}
