using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class DivideByThePurity() : FormulaRule(new("SFY2010", "DivideByThePurity", Severity.Info,
    "The purity may have been forgotten",
    "Alkali weighed as if it were pure leaves more superfat than meant.")
{
    Messages = [new("Forgotten", "the weighed alkali gives a superfat of {superfat}; reckoned as pure it would be {pure}, a round figure: was the purity left out?")],
})
{
    /// <summary>Within two hundredths of a point of a whole per cent.</summary>
    private static bool IsRound(double superfat) => Math.Abs((superfat * 100) - Math.Round(superfat * 100)) < 0.02;

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Formula.Alkali is not WeighedAlkali ? "the alkali is computed" : facts.WhyNoListedSuperfat;

    public override void Analyze(in RuleContext context)
    {
        WeighedAlkali weighed = (WeighedAlkali)context.Formula.Alkali;
        LyeBalance balance = context.Facts.Balance;
        double asPure = 0;
        foreach (AlkaliPortion portion in weighed.Alkalis)
            asPure += portion.Grams / Molar.Hydroxide(portion.Alkali.Kind);
        double superfat = balance.OfAllFat!.Value, pure = 1 - ((asPure - balance.AcidHydroxide) / balance.AllFatHydroxide);
        // the whole per cent decides, so that a mass rounded to the step of a scale does not fall out at either end
        double whole = Math.Round(pure * 100);
        if (superfat >= 0 && whole is >= 0 and <= 20 && IsRound(pure) && !IsRound(superfat) && superfat - pure > 0.004)
            context.Report("Forgotten", FormulaPath.Alkali, [Arg.Of("superfat", Stored.ToRatio(superfat)), Arg.Of("pure", Stored.ToRatio(Math.Abs(whole) / 100))]);
    }
}
