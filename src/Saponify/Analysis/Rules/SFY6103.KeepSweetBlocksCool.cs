using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class KeepSweetBlocksCool() : FormulaRule(new("SFY6103", "KeepSweetBlocksCool", Severity.Warning,
    "A sweet batter in a block that keeps its heat",
    "Milk and honey heat a block from within: it browns, cracks or rises over the rim.")
{
    Messages = [new("Scorches", "poured at {pour} the block may reach {peak} if no heat is lost, {kelvins} of it by {sugar} of sugar, and it keeps its heat")],
    Sources = ["computed", "crc-thermodynamics", "memory"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.Mould is null ? "no mould is given" : facts.Setup.Pour is null ? "the temperature at the pour is not given" : Moulding.WhyNoFill(facts);

    public override void Analyze(in RuleContext context)
    {
        Temperature pour = context.Setup.Pour!.Value;
        if (context.Facts.Plan.HeatInMould(context.Setup.Mould, pour, context.Setup.IsInsulated) is not { MayScorch: true } heat)
            return;
        context.Report("Scorches", FormulaPath.Setup.Member("pour"), [Arg.Of("pour", pour.DegreesCelsius, "°C"), Arg.Of("peak", heat.Peak.High!.Value.DegreesCelsius, "°C"),
            Arg.Of("kelvins", heat.RiseBySugar.Kelvins, "K"), Arg.Of("sugar", heat.SugarInBatch)], evidence: heat.Peak.Evidence);
    }
}
