namespace Saponify.Analysis.Rules;

internal sealed class AskForTheOrigin() : FormulaRule(new("SFY6004", "AskForTheOrigin", Severity.Info,
    "The origin of a material is not known",
    "Fatty acids and glycerin are made from plant or animal fat, and a material of one's own says nothing of itself: only its supplier can tell.")
{
    Messages =
    [
        new("Either", "{material} is made from plant or animal fat, and animal products are excluded: ask its supplier"),
        new("NotStated", "{material}: its origin is not stated, and animal products are excluded: ask its supplier"),
    ],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Exclusions.ExcludesAnimals(facts.Setup) ? null : "animal products are not excluded";

    public override void Analyze(in RuleContext context)
    {
        foreach (Ingredient ingredient in Ingredient.All(context.Facts))
        {
            if (ingredient.IsOfEitherOrigin)
                context.Report("Either", ingredient.Path, [Arg.Of("material", ingredient.Name)]);
            else if (ingredient is { Origin: null, IsAnimal: false })
                context.Report("NotStated", ingredient.Path, [Arg.Of("material", ingredient.Name)]);
        }
    }
}
