namespace Saponify.Analysis.Rules;

internal sealed class KeepExcludedMaterialsOut() : FormulaRule(new("SFY6003", "KeepExcludedMaterialsOut", Severity.Error,
    "A material that is excluded by name",
    "The customer named it and gets it all the same.")
{
    Messages = [new("Excluded", "{material} is excluded")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Exclusions.WhyNone(facts);

    public override void Analyze(in RuleContext context)
    {
        foreach (Ingredient ingredient in Ingredient.All(context.Facts))
        {
            if (Exclusions.ByName(context.Setup, ingredient))
                context.Report("Excluded", ingredient.Path, [Arg.Of("material", ingredient.Name)], [ingredient.Without]);
        }
    }
}
