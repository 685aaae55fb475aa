namespace Saponify.Analysis.Rules;

internal sealed class PutAcidsIntoTheLye() : FormulaRule(new("SFY5004", "PutAcidsIntoTheLye", Severity.Info,
    "An acid goes in after the lye",
    "Acid that meets soap turns it back to free fatty acid in lumps before the lye of the batter reaches it. Common practice, no source.")
{
    Messages = [new("Late", "{acid} goes in {stage}; in the lye liquid it would turn to its salt first")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => KeepAcidsFromUltramarine.HasUltramarine(facts.Formula) ? "there is ultramarine, and another rule speaks of acids" : null;

    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (IsLateAcid(portion))
                context.Report("Late", Places.Additive(context.Formula, i), [Arg.Of("acid", portion.Additive.Name), Arg.Of("stage", AdditiveFixes.Where(portion.Stage))],
                    [AdditiveFixes.Move("PutAcidsIntoTheLye", i, portion, Stage.LyeLiquid)]);
        }
    }

    internal static bool IsLateAcid(AdditivePortion portion) => portion.Additive.Kind == AdditiveKind.Acid && portion.Stage is Stage.Trace or Stage.Top;
}
