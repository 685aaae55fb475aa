namespace Saponify.Analysis.Rules;

internal sealed class KeepMagnesiumOut() : FormulaRule(new("SFY5008", "KeepMagnesiumOut", Severity.Warning,
    "A magnesium salt in soap",
    "Magnesium turns soap into an insoluble curd, may bind lye besides, and draws moisture: the bar weeps and does not lather.")
{
    Messages = [new("Curds", "{salt} turns soap into magnesium soap, which does not lather")],
    Sources = ["common-practice"],
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (portion.Additive.Contents.AcidKind?.Id == "magnesium")
                context.Report("Curds", Places.Additive(context.Formula, i), [Arg.Of("salt", portion.Additive.Name)], [AdditiveFixes.Remove("KeepMagnesiumOut", i, portion)]);
        }
    }
}
