namespace Saponify.Analysis.Rules;

internal sealed class PutPetalsOnTop() : FormulaRule(new("SFY5006", "PutPetalsOnTop", Severity.Info,
    "Flowers that brown go into the soap",
    "Inside fresh soap most flowers turn brown and look like crumbs of something else. Common practice, no source.")
{
    Messages = [new("Brown", "{flowers} go in {stage}; on top was expected, where they keep their colour")],
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (portion is { Stage: not Stage.Top, Additive: { Kind: AdditiveKind.Botanical, UsualStage: Stage.Top } })
                context.Report("Brown", Places.Additive(context.Formula, i), [Arg.Of("flowers", portion.Additive.Name), Arg.Of("stage", AdditiveFixes.Where(portion.Stage))],
                    [AdditiveFixes.Move("PutPetalsOnTop", i, portion, Stage.Top)]);
        }
    }
}
