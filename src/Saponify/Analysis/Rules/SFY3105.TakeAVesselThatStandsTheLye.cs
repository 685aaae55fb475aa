using UnitsNet.Units;

namespace Saponify.Analysis.Rules;

internal sealed class TakeAVesselThatStandsTheLye() : FormulaRule(new("SFY3105", "TakeAVesselThatStandsTheLye", Severity.Warning,
    "The vessel is too small for the lye, or does not stand its heat",
    "A jug that softens, cracks or runs over spills hot lye.")
{
    Messages =
    [
        new(nameof(VesselFindingKind.TooHot), "{reason}"), new(nameof(VesselFindingKind.Attacked), "{reason}"), new(nameof(VesselFindingKind.ThermalShock), "{reason}"),
        new(nameof(VesselFindingKind.TooSmall), "{reason}"), new(nameof(VesselFindingKind.LittleHeadspace), "{reason}"),
    ],
    Sources = ["dwk-duran", "hmc-pp", "matperf-stainless", "test-house-c149"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.Process is null ? "no temperatures are given"
        : facts.Setup.Process.Vessel is not { } vessel ? "no vessel is given"
        : facts.Setup.Process.Room is null ? "the temperature of the room is not given"
        : vessel.Material.Lye == LyeFitness.Never ? "the vessel is unfit, which another rule says" : Lyes.WhyNoHeat(facts);

    public override void Analyze(in RuleContext context)
    {
        foreach (VesselFinding finding in context.Facts.Process!.VesselFindings)
        {
            // a short peak that a material stands for a short time is no fault
            if (Descriptor.Message(finding.Kind.ToString()) is not null)
                context.Report(finding.Kind.ToString(), FormulaPath.Setup.Member("process").Member("vessel"), [Arg.Of("reason", Places.Clause(finding.ToText(TemperatureUnit.DegreeCelsius)))], Fixes(context.Facts, finding), evidence: finding.Evidence);
        }
    }

    /// <summary>A smaller batch for a small vessel, colder liquid for one that does not stand the heat.</summary>
    private static FixOffer[] Fixes(FormulaFacts facts, VesselFinding finding) => finding.Kind switch
    {
        VesselFindingKind.TooSmall => [Scaling.By("TakeAVesselThatStandsTheLye.Scale", facts, Scaling.Down(finding.Limit / finding.Found * (1 - (facts.Setup.Process!.LeastHeadspace?.DecimalFractions ?? 0))), ", whose lye fits into the vessel")],
        VesselFindingKind.LittleHeadspace => [Scaling.By("TakeAVesselThatStandsTheLye.Scale", facts, Scaling.Down((100 - finding.Limit) / (100 - finding.Found)), ", whose lye leaves that space")],
        VesselFindingKind.TooHot or VesselFindingKind.Attacked => Lyes.Colder("TakeAVesselThatStandsTheLye", facts, finding.Limit - 0.5),
        VesselFindingKind.ThermalShock => Lyes.Colder("TakeAVesselThatStandsTheLye", facts, facts.Setup.Process!.Room!.Value.DegreesCelsius + finding.Limit - 0.5),
        _ => [],
    };
}
