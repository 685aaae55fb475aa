using Saponify.Internals;
using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class ListEachFatOnce() : FormulaRule(new("SFY1105", "ListEachFatOnce", Severity.Info,
    "A fat stands on two lines",
    "Two lines of one fat in one pot are easily weighed twice, or once.")
{
    Messages = [new("Twice", "{fat} stands on the lines {first} and {second} of the same pot")],
})
{
    private static Formula Merge(Formula formula, int keep, int remove)
    {
        FatPortion first = formula.Fats[keep], second = formula.Fats[remove];
        Mass sum = Mass.From(first.Mass.Value + Stored.GramsIn(second.Grams, first.Mass.Unit), first.Mass.Unit);
        return formula with { Fats = Places.Without([.. formula.Fats.Take(keep), first with { Mass = sum }, .. formula.Fats.Skip(keep + 1)], remove) };
    }

    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                (FatPortion first, FatPortion second) = (context.Formula.Fats[j], context.Formula.Fats[i]);
                if (first.IsLate != second.IsLate || !first.Fat.Equals(second.Fat))
                    continue;
                (int keep, int remove) = (j, i);
                context.Report("Twice", FormulaPath.Fats.Item(i, second.Line), [Arg.Of("fat", second.Fat.Name), Arg.Of("first", first.Line), Arg.Of("second", second.Line)],
                    [new("ListEachFatOnce.Merge", $"Put both lines of {second.Fat.Name} together", FixEffect.KeepsProduct, f => Merge(f, keep, remove))], [FormulaPath.Fats.Item(j, first.Line)]);
                break;
            }
        }
    }
}
