namespace Saponify.Analysis.Rules;

internal sealed class CutBarsFromTheBlock() : FormulaRule(new("SFY6104", "CutBarsFromTheBlock", Severity.Warning,
    "No bar comes of the cutting plan",
    "A block that is shorter than a slice, or cut in a way it can't be, gives no bar.")
{
    Messages =
    [
        new("NoBar", "a block of {along} along the cut gives no slice of {thickness}"),
        new("TooNarrow", "a block of {wide} across gives no bar of {across}"),
        new("CannotCut", "{reason}"),
    ],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.Mould is not { } mould ? "no mould is given" : facts.Setup.Cut is null ? "it is not said how the block is cut" : mould.HasSizes ? null : "the pieces come as they are";

    public override void Analyze(in RuleContext context)
    {
        (Mould mould, CuttingPlan cut) = (context.Setup.Mould!, context.Setup.Cut!);
        if (Moulding.WhyNotCut(mould, cut) is { } why)
            context.Report("CannotCut", FormulaPath.Setup.Member("cut"), [Arg.Of("reason", why)]);
        else if (mould.Cut(cut).Bars == 0)
        {
            (double along, double wide, _) = mould.Block;
            bool isNarrow = cut.AcrossCentimeters > wide;
            context.Report(isNarrow ? "TooNarrow" : "NoBar", FormulaPath.Setup.Member("cut"), [Arg.Of("along", along, "cm"), Arg.Of("wide", wide, "cm"), Arg.Of("thickness", cut.ThicknessCentimeters, "cm"), Arg.Of("across", cut.AcrossCentimeters ?? 0, "cm")]);
        }
    }
}
