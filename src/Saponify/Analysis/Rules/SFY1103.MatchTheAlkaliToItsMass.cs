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
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Formula.Alkali is not WeighedAlkali { Alkalis.Count: 1 } ? "the alkali is computed, or there are several" : facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context)
    {
        WeighedAlkali weighed = (WeighedAlkali)context.Formula.Alkali;
        LyeBalance balance = context.Facts.Balance;
        AlkaliKind given = weighed.Alkalis[0].Alkali.Kind, other = given == AlkaliKind.SodiumHydroxide ? AlkaliKind.PotassiumHydroxide : AlkaliKind.SodiumHydroxide;
        double superfat = balance.OfAllFat!.Value, meant = 1 - (((balance.Hydroxide * Molar.Hydroxide(given) / Molar.Hydroxide(other)) - balance.AcidHydroxide) / balance.AllFatHydroxide);
        bool off = given == AlkaliKind.SodiumHydroxide ? superfat < -0.1 : superfat > 0.22;
        if (off && meant is >= -0.005 and <= 0.2)
        {
            context.Report("Other", FormulaPath.Alkali,
                [Arg.Of("alkali", balance.AlkaliAsWeighed), Arg.Of("given", Places.Name(given)), Arg.Of("superfat", Stored.ToRatio(superfat)), Arg.Of("other", Places.Name(other)), Arg.Of("meant", Stored.ToRatio(meant))]);
        }
    }
}
