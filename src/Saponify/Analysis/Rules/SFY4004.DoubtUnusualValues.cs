namespace Saponify.Analysis.Rules;

internal sealed class DoubtUnusualValues() : FormulaRule(new("SFY4004", "DoubtUnusualValues", Severity.Warning,
    "An unusual saponification value",
    "Where no table can contradict a value, an unusual one is most often a figure for sodium hydroxide, or one of a wax or a short-chain ester.")
{
    Messages =
    [
        new("Low", "{fat}: {value} is less than nearly every fat has, {limit}; is it a figure for sodium hydroxide?"),
        new("High", "{fat}: {value} is more than nearly every fat has, {limit}"),
    ],
    Sources = ["ciaaw-2021"],
    Options = [Lowest, Highest],
})
{
    internal static readonly RuleOption Lowest = new("lowest", "mg/g", 155, 0, 400, "Least value not remarked on, mg KOH/g; the simple triglyceride of erucic acid has 159.7.");

    internal static readonly RuleOption Highest = new("highest", "mg/g", 360, 0, 700, "Greatest value not remarked on, mg KOH/g; the simple triglyceride of caprylic acid has 357.6.");

    public override void Analyze(in RuleContext context)
    {
        double lowest = context.Option(Lowest), highest = context.Option(Highest);
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            Fat fat = context.Formula.Fats[i].Fat;
            if (LotValues.Own(fat) is not { } own || fat.Class == FatClass.Wax || LotValues.Published(fat) is not null || LotValues.IsImpossible(fat))
                continue;
            if (!(own >= lowest))
                context.Report("Low", Places.Fat(context.Formula, i), [Arg.Of("fat", fat.Name), Arg.Of("value", own, "mg KOH/g"), Arg.Of("limit", lowest, "mg KOH/g")]);
            else if (own > highest)
                context.Report("High", Places.Fat(context.Formula, i), [Arg.Of("fat", fat.Name), Arg.Of("value", own, "mg KOH/g"), Arg.Of("limit", highest, "mg KOH/g")]);
        }
    }
}
