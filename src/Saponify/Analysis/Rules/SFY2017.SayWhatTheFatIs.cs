namespace Saponify.Analysis.Rules;

internal sealed class SayWhatTheFatIs() : FormulaRule(new("SFY2017", "SayWhatTheFatIs", Severity.Info,
    "Fat of unknown kind is not counted",
    "Fat that takes up lye unseen raises the superfat; the label of the carton says what it is.")
{
    Messages = [new("Unknown", UnknownKinds.Format)],
    Options = [Least],
})
{
    internal static readonly RuleOption Least = new("least", "%", 0.1, 0, 100, "Least fat of unknown kind in one part, of the listed fats, that is remarked on; common practice, no source.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context) => UnknownKinds.Report(context, "fat in ", c => c.FatFraction, context.Option(Least));
}
