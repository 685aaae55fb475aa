namespace Saponify.Analysis.Rules;

internal sealed class AskForTheAllergens() : FormulaRule(new("SFY5106", "AskForTheAllergens", Severity.Warning,
    "A scent of unknown composition is sold in the EU",
    "EU law has fragrance allergens above 0.01 % of a soap named on its label; without the supplier's list nobody can tell which.")
{
    Messages = [new("Unknown", "{scent}: the allergens in it are not known, and those above {limit} of the soap have to be named")],
    Sources = ["eu-1223-2009", "eu-2023-1545"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.Markets.Contains("EU", StringComparer.OrdinalIgnoreCase) ? null : "it is not said that the soap is sold in the EU";

    public override void Analyze(in RuleContext context)
    {
        foreach (int i in Scents.FirstLines(context.Formula))
        {
            AdditivePortion portion = context.Formula.Additives[i];
            // a single substance such as vanillin is its own composition
            if (portion.Additive.Contents.AcidKind is null)
                context.Report("Unknown", Places.Additive(context.Formula, i), [Arg.Of("scent", portion.Additive.Name), Arg.Of("limit", 0.01, "%")]);
        }
    }
}
