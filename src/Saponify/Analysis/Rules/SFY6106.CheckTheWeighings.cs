namespace Saponify.Analysis.Rules;

internal sealed class CheckTheWeighings() : FormulaRule(new("SFY6106", "CheckTheWeighings", Severity.Warning,
    "A weighing of the cure can't be right",
    "A reading that slipped moves the ready date by weeks, or makes a bar look dry that is not.")
{
    Messages =
    [
        new(nameof(CureFaultKind.DateBackwards), "{bar}, weighing {number}: {reason}"), new(nameof(CureFaultKind.DecimalSlip), "{bar}, weighing {number}: {reason}"),
        new(nameof(CureFaultKind.ImpossibleLoss), "{bar}, weighing {number}: {reason}"), new(nameof(CureFaultKind.Gain), "{bar}, weighing {number}: {reason}"),
    ],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Cure is null ? "no weighings are given" : null;

    public override void Analyze(in RuleContext context)
    {
        CureSeries series = context.Facts.Cure!.Series;
        foreach (CureFault fault in series.Faults)
            context.Report(fault.Kind.ToString(), FormulaPath.Setup.Member("cure").Member("weighings").Item(fault.Index, Internals.Text.Number(fault.Index + 1)), [Arg.Of("bar", series.Name), Arg.Of("number", fault.Index + 1, null), Arg.Of("reason", fault.Reason)]);
    }
}
