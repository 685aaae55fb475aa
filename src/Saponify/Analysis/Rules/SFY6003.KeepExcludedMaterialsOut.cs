namespace Saponify.Analysis.Rules;

internal sealed class KeepExcludedMaterialsOut() : FormulaRule(new("SFY6003", "KeepExcludedMaterialsOut", Severity.Error,
    "A material that is excluded by name",
    "The customer named it and gets it all the same.")
{
    Messages = [new("Excluded", "{material} is excluded"), new("Inside", "{material} holds {fat}, which is excluded")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Exclusions.WhyNone(facts);

    public override void Analyze(in RuleContext context)
    {
        foreach (Ingredient ingredient in Ingredient.All(context.Facts))
        {
            if (!Exclusions.ByName(context.Setup, ingredient))
                continue;
            if (context.Setup.Excluded.Any(ingredient.HasName))
                context.Report("Excluded", ingredient.Path, [Arg.Of("material", ingredient.Name)], [ingredient.Without]);
            else
                context.Report("Inside", ingredient.Path, [Arg.Of("material", ingredient.Name), Arg.Of("fat", ingredient.Inside!.Name)], [ingredient.Without]);
        }
    }
}
