namespace Saponify.Analysis.Rules;

internal sealed class GiveEveryFatAUsableValue() : FormulaRule(new("SFY2004", "GiveEveryFatAUsableValue", Severity.Error,
    "A fat has no saponification value fit for lye",
    "Published figures of some fats scatter so much that lye computed from them may burn; only the value of the lot in hand will do.")
{
    Messages = [new("None", "{fat} has no saponification value fit for computing lye; give the lot's own value from its certificate")],
    Sources = ["iso-3657"],
    Floor = Severity.Error,
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            FatPortion portion = context.Formula.Fats[i];
            if (portion.Fat.Saponification is null)
                context.Report("None", FormulaPath.Fats.Item(i, portion.Line), [Arg.Of("fat", portion.Fat.Name)]);
        }
    }
}
