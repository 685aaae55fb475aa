namespace Saponify.Analysis.Rules;

internal sealed class SayWhatTheAcidIs() : FormulaRule(new("SFY2018", "SayWhatTheAcidIs", Severity.Info,
    "Acid of unknown kind is not counted",
    "Acid takes up lye before the fats do: the superfat may be higher than planned.")
{
    Messages = [new("Unknown", UnknownKinds.Format)],
    Options = [Least],
})
{
    internal static readonly RuleOption Least = new("least", "%", 0.01, 0, 100, "Least acid of unknown kind in one part, of the listed fats, that is remarked on; common practice, no source.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context) => UnknownKinds.Report(context, "acid in ", c => c.AcidFraction, context.Option(Least));
}
