namespace Saponify.Analysis.Rules;

internal sealed class KeepLyeOutOfUnfitVessels() : FormulaRule(new("SFY3104", "KeepLyeOutOfUnfitVessels", Severity.Error,
    "The vessel must never hold lye",
    "Lye dissolves aluminium, zinc and tin, gives off hydrogen that burns, and runs out of what falls apart.")
{
    Messages = [new("Never", "lye must never be in {material}: {note}")],
    Sources = ["cameo-chemicals-naoh", "dow-caustic"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.Process?.Vessel is null ? "no vessel is given" : null;

    public override void Analyze(in RuleContext context)
    {
        VesselMaterial material = context.Setup.Process!.Vessel!.Material;
        if (material.Lye == LyeFitness.Never)
            context.Report("Never", FormulaPath.Setup.Member("process").Member("vessel"), [Arg.Of("material", material.Name), Arg.Of("note", Places.Clause(material.Note))], evidence: material.Evidence);
    }
}
