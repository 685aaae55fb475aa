namespace Saponify.Analysis.Rules;

internal sealed class KeepAcidsFromUltramarine() : FormulaRule(new("SFY5005", "KeepAcidsFromUltramarine", Severity.Warning,
    "An acid may meet ultramarine",
    "Ultramarine stands alkali, but acid frees hydrogen sulfide from it: a poisonous gas that smells of bad eggs, and the colour is gone.")
{
    Messages = [new("Meets", "{acid} goes in {stage} and {pigment} is in the formula; in the lye liquid the acid would be bound first")],
    Sources = ["memory"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => HasUltramarine(facts.Formula) ? null : "there is no ultramarine";

    internal static bool HasUltramarine(Formula formula) => Pigment(formula) is not null;

    private static Additive? Pigment(Formula formula)
    {
        foreach (AdditivePortion portion in formula.Additives)
        {
            if (portion.Additive.Id.StartsWith("ultramarine", StringComparison.Ordinal))
                return portion.Additive;
        }
        return null;
    }

    public override void Analyze(in RuleContext context)
    {
        string pigment = Pigment(context.Formula)!.Name;
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (PutAcidsIntoTheLye.IsLateAcid(portion))
                context.Report("Meets", Places.Additive(context.Formula, i), [Arg.Of("acid", portion.Additive.Name), Arg.Of("stage", AdditiveFixes.Where(portion.Stage)), Arg.Of("pigment", pigment)],
                    [AdditiveFixes.Move("KeepAcidsFromUltramarine", i, portion, Stage.LyeLiquid)], evidence: Evidence.Memory);
        }
    }
}
