namespace Saponify.Analysis.Rules;

internal sealed class LimitScent() : FormulaRule(new("SFY5102", "LimitScent", Severity.Warning,
    "Much scent",
    "Scent is no fat: much of it makes the batter seize and the bar soft and weeping, and more of it may irritate skin. Common practice, no source.")
{
    Messages = [new("Much", "scents come to {share} of the fats, more than {limit}")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 6, 0.1, 50, "Most scent in sum, of the mass of the listed fats.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context)
    {
        double share = Doses.Scent(context.Facts) * 100, limit = context.Option(Highest);
        if (!(share <= limit * (1 + 1e-9)))
            context.Report("Much", FormulaPath.Additives, [Arg.Of("share", share, "%"), Arg.Of("limit", limit, "%")],
                [AdditiveFixes.Scale("LimitScent.Less", $"Take {Internals.Text.Number(limit / share)} times as much of every scent", a => a.Kind == AdditiveKind.Fragrance, limit / share)],
                [.. Scents.FirstLines(context.Formula).Select(Line(context.Formula))]);
    }

    private static Func<int, FormulaPath> Line(Formula formula) => i => Places.Additive(formula, i);
}
