namespace Saponify.Analysis.Rules;

internal sealed class KeepAnimalsOut() : FormulaRule(new("SFY6001", "KeepAnimalsOut", Severity.Error,
    "An animal product where none may be",
    "Who orders a vegan soap does not get one.")
{
    Messages = [new("Animal", "{material} comes from {origin}, and animal products are excluded")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Exclusions.ExcludesAnimals(facts.Setup) ? null : "animal products are not excluded";

    public override void Analyze(in RuleContext context)
    {
        foreach (Ingredient ingredient in Ingredient.All(context.Facts))
        {
            if (Exclusions.ByOrigin(context.Setup, ingredient))
                context.Report("Animal", ingredient.Path, [Arg.Of("material", ingredient.Name), Arg.Of("origin", ingredient.Origin == "insect" ? "insects" : "animals")], [ingredient.Without]);
        }
    }
}
