using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class UseOneUnitForLyeAndFats() : FormulaRule(new("SFY1101", "UseOneUnitForLyeAndFats", Severity.Error,
    "Lye and fats seem to be in different units",
    "Ounces taken for grams make a lye twenty-eight times too strong.")
{
    Messages = [new("Unit", "{alkali} of alkali for {fats} of fats fits only if one of them was meant in another unit: a factor of {factor}")],
    Sources = ["16-cfr-500"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Formula.Alkali is not WeighedAlkali ? "the alkali is computed" : facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context)
    {
        double alkali = context.Facts.Balance.PureAlkaliGrams, fats = context.Facts.Balance.AllFatHydroxide * Molar.SodiumHydroxide;
        double ratio = alkali / fats;
        if (ratio is >= 0.2 and <= 5)
            return;
        foreach (double factor in (ReadOnlySpan<double>)[Stored.GramsPerOunce, Stored.GramsPerPound, 1000])
        {
            foreach (double meant in (ReadOnlySpan<double>)[ratio * factor, ratio / factor])
            {
                if (meant is < 0.7 or > 1.5)
                    continue;
                context.Report("Unit", FormulaPath.Alkali, [Arg.Of("alkali", context.Facts.Balance.AlkaliAsWeighed), Arg.Of("fats", context.Facts.ListedFats), Arg.Of("factor", factor, null)]);
                return;
            }
        }
    }
}
