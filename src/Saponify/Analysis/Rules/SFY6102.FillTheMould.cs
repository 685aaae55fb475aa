using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class FillTheMould() : FormulaRule(new("SFY6102", "FillTheMould", Severity.Info,
    "The mould is far from full",
    "A low block gives thin bars of another mass than those planned for, and cools faster.")
{
    Messages = [new("Low", "{volume} of batter at the most for {room} of mould: {share}, less than {limit}")],
    Options = [Least],
})
{
    internal static readonly RuleOption Least = new("least", "%", 85, 1, 100, "How full the moulds shall be at least; common practice, no source.");

    public override string? WhyNotApplicable(FormulaFacts facts) => Moulding.WhyNoFill(facts);

    public override void Analyze(in RuleContext context)
    {
        MouldFill fill = context.Facts.Fill!;
        Figure<Ratio> share = fill.ShareOfMould;
        if (share.High!.Value.DecimalFractions >= context.Setup.Moulds * context.Option(Least) / 100)
            return;
        context.Report("Low", FormulaPath.Setup.Member("mould"), [Arg.Of("volume", fill.Volume.High!.Value.Milliliters, "mL"), Arg.Of("room", context.Setup.Moulds * fill.Mould.Volume.Milliliters, "mL"),
            Arg.Of("share", share.High!.Value / context.Setup.Moulds), Arg.Of("limit", context.Option(Least), "%")], Moulding.Scale("FillTheMould", context.Facts), evidence: share.Evidence);
    }
}
