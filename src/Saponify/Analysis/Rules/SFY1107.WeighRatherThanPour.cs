using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class WeighRatherThanPour() : FormulaRule(new("SFY1107", "WeighRatherThanPour", Severity.Info,
    "A fat is measured by volume",
    "A jug and a density are both off by a per cent or two, a fluid ounce of oil is not an ounce: superfat is a matter of a few per cent.")
{
    Messages = [new("Poured", "{fat} is poured by volume and converted to {mass} by the density on file")],
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            FatPortion portion = context.Formula.Fats[i];
            if (portion.Poured is null)
                continue;
            int index = i;
            context.Report("Poured", FormulaPath.Fats.Item(i, portion.Line).Member("volume"), [Arg.Of("fat", portion.Fat.Name), Arg.Of("mass", portion.Mass)],
                [new("WeighRatherThanPour.Weigh", $"Weigh {Text.Number(portion.Grams)} g of {portion.Fat.Name} instead", FixEffect.KeepsProduct, f => f with { Fats = [.. f.Fats.Select((p, n) => n == index ? p with { Mass = p.Mass } : p)] })]);
        }
    }
}
