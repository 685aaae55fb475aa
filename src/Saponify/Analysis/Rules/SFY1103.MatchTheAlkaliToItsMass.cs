using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class MatchTheAlkaliToItsMass() : FormulaRule(new("SFY1103", "MatchTheAlkaliToItsMass", Severity.Warning,
    "The mass fits the other alkali",
    "Potassium hydroxide weighs 1.40 times as much as sodium hydroxide for the same soap: taken for one another, the soap is lye-heavy or unfinished.")
{
    Messages = [new("Other", "{alkali} of {given} gives a superfat of {superfat}; of {other} it would give {meant}: was that meant?")],
    Sources = ["ciaaw-2021"],
})
{
    /// <summary>
    /// The superfat that the mass would give as the other alkali, of the same purity, if that is one that makers plan for; else null. Then the superfat of
    /// the alkali given is one that nobody plans for: below -12 % or above 28 %.
    /// </summary>
    internal static double? SuperfatOfTheOther(FormulaFacts facts)
    {
        if (WhyNot(facts) is not null)
            return null;
        AlkaliKind given = Given(facts.Formula);
        LyeBalance balance = facts.Balance;
        double superfat = 1 - (((balance.Hydroxide * Molar.Hydroxide(given) / Molar.Hydroxide(Other(given))) - balance.AcidHydroxide) / balance.AllFatHydroxide);
        return superfat is >= -0.005 and <= 0.2 ? superfat : null;
    }

    private static AlkaliKind Given(Formula formula) => ((WeighedAlkali)formula.Alkali).Alkalis[0].Alkali.Kind;

    private static AlkaliKind Other(AlkaliKind kind) => kind == AlkaliKind.SodiumHydroxide ? AlkaliKind.PotassiumHydroxide : AlkaliKind.SodiumHydroxide;

    private static string? WhyNot(FormulaFacts facts) => facts.Formula.Alkali is not WeighedAlkali { Alkalis.Count: 1 } ? "the alkali is computed, or there are several" : facts.WhyNoListedSuperfat;

    public override string? WhyNotApplicable(FormulaFacts facts) => WhyNot(facts);

    public override void Analyze(in RuleContext context)
    {
        if (SuperfatOfTheOther(context.Facts) is not { } meant)
            return;
        AlkaliKind given = Given(context.Formula);
        context.Report("Other", FormulaPath.Alkali,
            [Arg.Of("alkali", context.Facts.Balance.AlkaliAsWeighed), Arg.Of("given", Places.Name(given)), Arg.Of("superfat", Stored.ToRatio(context.Facts.Balance.OfAllFat!.Value)), Arg.Of("other", Places.Name(Other(given))), Arg.Of("meant", Stored.ToRatio(meant))]);
    }
}
