using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class KeepTheBatchPossible() : FormulaRule(new("SFY2024", "KeepTheBatchPossible", Severity.Error,
    "The batch comes to more than a thousand tonnes",
    "A wrong unit somewhere: nothing of this can be weighed.")
{
    Messages = [new("TooLarge", "the batch comes to {batch}: look for a wrong unit")],
})
{
    internal static bool IsTooLarge(FormulaFacts facts) => !(facts.Balance.BatchGrams <= Guard.LargestGrams);

    public override void Analyze(in RuleContext context)
    {
        if (IsTooLarge(context.Facts))
            context.Report("TooLarge", FormulaPath.Root, [Arg.Of("batch", context.Facts.Balance.BatchMass)]);
    }
}
