namespace Saponify.Analysis.Rules;

internal sealed class DoubtImpossibleValues() : FormulaRule(new("SFY4003", "DoubtImpossibleValues", Severity.Error,
    "A saponification value that no fat can have",
    "Fat of the shortest acids takes up less lye than that: the alkali computed from it is sure to burn.")
{
    Messages = [new("Impossible", "{fat}: no fat takes up {value}; the most that its class can is {limit}")],
    Sources = ["ciaaw-2021", "iso-3657"],
    Floor = Severity.Error,
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            Fat fat = context.Formula.Fats[i].Fat;
            if (LotValues.IsImpossible(fat))
                context.Report("Impossible", Places.Fat(context.Formula, i), [Arg.Of("fat", fat.Name), Arg.Of("value", LotValues.Own(fat)!.Value, "mg KOH/g"), Arg.Of("limit", LotValues.Most(fat), "mg KOH/g")],
                    LotValues.UseTheTable("DoubtImpossibleValues", context.Formula, i));
        }
    }
}
