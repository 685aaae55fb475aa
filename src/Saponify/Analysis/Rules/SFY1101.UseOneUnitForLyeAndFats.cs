using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class UseOneUnitForLyeAndFats() : FormulaRule(new("SFY1101", "UseOneUnitForLyeAndFats", Severity.Error,
    "Lye and fats seem to be in different units",
    "Ounces taken for grams make a lye twenty-eight times too strong, or leave nearly all fat as it was.")
{
    Messages = [new("Unit", "{alkali} of alkali for {fats} of fats fits only if {units} were taken for one another")],
    Sources = ["16-cfr-500"],
})
{
    private static readonly (double Factor, string Units)[] s_mistakes = [(Stored.GramsPerOunce, "grams and ounces"), (Stored.GramsPerPound, "grams and pounds"), (1000, "grams and kilograms")];

    /// <summary>The units that seem to be mixed up, or null: by one of their ratios the alkali comes to 0.7 to 1.5 times the demand of the fats.</summary>
    internal static string? MixedUnits(FormulaFacts facts)
    {
        if (WhyNot(facts) is not null)
            return null;
        double ratio = facts.Balance.Hydroxide / facts.Balance.AllFatHydroxide;
        foreach ((double factor, string units) in s_mistakes)
        {
            if ((ratio * factor) is >= 0.7 and <= 1.5 || (ratio / factor) is >= 0.7 and <= 1.5)
                return units;
        }
        return null;
    }

    private static string? WhyNot(FormulaFacts facts) => facts.Formula.Alkali is not WeighedAlkali ? "the alkali is computed" : facts.WhyNoListedSuperfat;

    public override string? WhyNotApplicable(FormulaFacts facts) => WhyNot(facts);

    public override void Analyze(in RuleContext context)
    {
        if (MixedUnits(context.Facts) is { } units)
            context.Report("Unit", FormulaPath.Alkali, [Arg.Of("alkali", context.Facts.Balance.AlkaliAsWeighed), Arg.Of("fats", context.Facts.ListedFats), Arg.Of("units", units)]);
    }
}
