namespace Saponify.Analysis.Rules;

internal sealed class AddUpTheFragranceLimits() : FormulaRule(new("SFY5104", "AddUpTheFragranceLimits", Severity.Warning,
    "Scents together use up more than their limits allow",
    "Scents share sensitisers: two that stay each within their limit may hold twice as much of one of them as either was judged with. Common practice, no source.")
{
    Messages = [new("Sum", "each scent is within its limit, but together they use {share} of what the limits allow; at most 100 % was expected")],
    Options = [Water],
})
{
    internal static readonly RuleOption Water = new("water", "%", 8, 0, 40, "Water in the finished soap, of its mass; common practice, no source.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.FragranceLimits.Count < 2 ? "no two limits of scents are given" : null;

    public override void Analyze(in RuleContext context)
    {
        double product = Scents.ProductGrams(context.Facts, context.Option(Water) / 100), used = 0, scents = 0;
        foreach (int i in Scents.FirstLines(context.Formula))
        {
            Additive scent = context.Formula.Additives[i].Additive;
            double grams = Scents.Grams(context.Facts, scent.Id);
            scents += grams;
            if (!(grams > 0) || Scents.Limit(context.Setup, scent) is not { } limit)
                continue;
            if (!(grams / product <= limit.Fraction * (1 + 1e-9)))
                return;
            used += grams / limit.Fraction;
        }
        if (used <= product * (1 + 1e-9))
            return;
        // of t times every scent, t * used = product - scents + t * scents
        double factor = (product - scents) / (used - scents);
        context.Report("Sum", FormulaPath.Additives, [Arg.Of("share", used / product * 100, "%")],
            [AdditiveFixes.Scale("AddUpTheFragranceLimits.Less", $"Take {Internals.Text.Number(factor)} times as much of every scent", a => a.Kind == AdditiveKind.Fragrance, factor * 0.999)]);
    }
}
