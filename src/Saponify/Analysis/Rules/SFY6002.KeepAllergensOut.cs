namespace Saponify.Analysis.Rules;

internal sealed class KeepAllergensOut() : FormulaRule(new("SFY6002", "KeepAllergensOut", Severity.Error,
    "An allergen that is excluded",
    "Whoever asked for a soap without it may react to it.")
{
    Messages = [new("Allergen", "{material} belongs to {allergen}, which is excluded")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Exclusions.WhyNone(facts);

    public override void Analyze(in RuleContext context)
    {
        foreach (Ingredient ingredient in Ingredient.All(context.Facts))
        {
            if (Exclusions.ByAllergen(context.Setup, ingredient) is { } allergen)
                context.Report("Allergen", ingredient.Path, [Arg.Of("material", ingredient.Name), Arg.Of("allergen", allergen)], [ingredient.Without]);
        }
    }
}
