namespace Saponify.Analysis.Rules;

internal sealed class CheckTheLotValue() : FormulaRule(new("SFY4001", "CheckTheLotValue", Severity.Warning,
    "A lot's saponification value is not that of its fat",
    "A certificate of another fat, or a slip of the pen: the lye follows the value, and one that is too high burns.")
{
    Messages = [new("Outside", "{fat}: the lot's {value} lies outside {low} to {high} of the table")],
    Sources = ["iso-3657"],
    Options = [Near],
})
{
    internal static readonly RuleOption Near = new("near", "%", 3, 0, 20, "How far a lot may lie from the middle of a published range that is narrower than that.");

    public override void Analyze(in RuleContext context)
    {
        double near = context.Option(Near) / 100;
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            Fat fat = context.Formula.Fats[i].Fat;
            if (LotValues.Own(fat) is not { } own || LotValues.Published(fat) is not var (low, high) || LotValues.IsNear(own, low, high, near) || LotValues.Unit(fat) is not null || LotValues.IsImpossible(fat))
                continue;
            context.Report("Outside", Places.Fat(context.Formula, i),
                [Arg.Of("fat", fat.Name), Arg.Of("value", own, "mg KOH/g"), Arg.Of("low", low, null), double.IsFinite(high) ? Arg.Of("high", high, "mg KOH/g") : Arg.Of("high", "more")],
                LotValues.UseTheTable("CheckTheLotValue", context.Formula, i));
        }
    }
}
