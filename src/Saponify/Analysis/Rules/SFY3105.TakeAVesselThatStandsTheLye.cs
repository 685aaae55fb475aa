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
                context.Report(finding.Kind.ToString(), FormulaPath.Root, [Arg.Of("reason", Places.Clause(finding.ToText(TemperatureUnit.DegreeCelsius)))], evidence: finding.Evidence);
        }
    }
}
