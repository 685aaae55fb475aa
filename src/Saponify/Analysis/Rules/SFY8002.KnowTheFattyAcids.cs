using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class KnowTheFattyAcids() : FormulaRule(new("SFY8002", "KnowTheFattyAcids", Severity.Info,
    "The fatty acids of the fats are known in part only",
    "Scores, composition and the check of a lot's value rest on the fatty acids: what is known in part gives a poor picture.")
{
    Messages = [new("Poor", "the fatty acids of {fats}: {share} of the fats, more than {limit}")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 15, 0, 100, "Highest share of such fats, of the mass of the listed fats.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.HasFat ? null : "no listed fat takes up lye";

    /// <summary>Share of the listed fats whose acids are known in part only.</summary>
    internal static double SharePoorlyKnown(Formula formula) => Blend.Share(formula, f => Fault(f) is null ? 0 : 1);

    private static string? Fault(Fat fat) => fat switch
    {
        { Class: FatClass.Wax } => null,
        { Profile: null } => "are not known",
        { Profile: { IsPartial: true } partial } => $"are known to {Text.Number(partial.RawSumFraction * 100)} % only",
        { Profile: { IsWide: true } wide } => $"vary so much that the middles of their ranges add up to {Text.Number(wide.RawSumFraction * 100)} %",
        _ => null,
    };

    public override void Analyze(in RuleContext context)
    {
        double share = SharePoorlyKnown(context.Formula) * 100, limit = context.Option(Highest);
        if (share <= limit)
            return;
        string fats = Blend.Names(context.Formula.Fats.Where(p => p.Grams > 0 && Fault(p.Fat) is not null).Select(p => $"{p.Fat.Name} {Fault(p.Fat)}"));
        context.Report("Poor", FormulaPath.Fats, [Arg.Of("fats", fats), Arg.Of("share", share, "%"), Arg.Of("limit", limit, "%")], related: Blend.Lines(context.Formula, f => Fault(f) is not null));
    }
}
