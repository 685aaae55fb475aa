using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class ReadTheUnitOfTheLotValue() : FormulaRule(new("SFY4002", "ReadTheUnitOfTheLotValue", Severity.Error,
    "A lot's saponification value is in another unit",
    "A figure for sodium hydroxide taken for one of potassium hydroxide, or the reverse, puts the lye off by 40 %.")
{
    Messages = [new("Unit", "{fat}: {value} can't be right, {meant} would be: {how}")],
    Sources = ["ciaaw-2021", "iso-3657"],
    Floor = Severity.Error,
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            Fat fat = context.Formula.Fats[i].Fat;
            if (LotValues.Unit(fat) is not var (factor, how))
                continue;
            int index = i;
            double own = LotValues.Own(fat)!.Value, meant = own * factor;
            FixOffer[] fixes = fat.Lot is { } lot
                ? [new("ReadTheUnitOfTheLotValue.Convert", $"Use {Text.Number(meant)} mg KOH/g for {fat.Name}", FixEffect.ChangesProduct,
                    f => LotValues.WithFat(f, index, fat.WithLot(lot with { Saponification = SaponificationValue.FromMilligramsKohPerGram(meant) })))]
                : [];
            context.Report("Unit", Places.Fat(context.Formula, i), [Arg.Of("fat", fat.Name), Arg.Of("value", own, "mg KOH/g"), Arg.Of("meant", meant, "mg KOH/g"), Arg.Of("how", how)], fixes);
        }
    }
}
