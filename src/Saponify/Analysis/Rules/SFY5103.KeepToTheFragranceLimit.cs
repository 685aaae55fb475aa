namespace Saponify.Analysis.Rules;

internal sealed class KeepToTheFragranceLimit() : FormulaRule(new("SFY5103", "KeepToTheFragranceLimit", Severity.Error,
    "More scent than its certificate allows",
    "The limit is where its supplier vouches for skin; beyond it a scent may sensitise whoever washes with it, for life.")
{
    Messages = [new("Above", "{scent} makes up {share} of the finished soap, more than the {limit} of {source}")],
    Sources = ["ifra-guidance-2020"],
    Options = [Water],
})
{
    internal static readonly RuleOption Water = new("water", "%", 8, 0, 40, "Water in the finished soap, of its mass; common practice, no source. The drier the bar, the more of a scent is in it.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.FragranceLimits.Count == 0 ? "no limit of a scent is given" : null;

    public override void Analyze(in RuleContext context)
    {
        double product = Scents.ProductGrams(context.Facts, context.Option(Water) / 100);
        foreach (int i in Scents.FirstLines(context.Formula))
        {
            Additive scent = context.Formula.Additives[i].Additive;
            if (Scents.Limit(context.Setup, scent) is not { } limit)
                continue;
            double grams = Scents.Grams(context.Facts, scent.Id), share = grams / product, most = limit.Fraction;
            if (!(grams > 0) || share <= most * (1 + 1e-9))
                continue;
            double factor = most * (product - grams) / ((1 - most) * grams);
            FixOffer[] fixes = factor is > 0 and < 1
                ? [AdditiveFixes.Scale("KeepToTheFragranceLimit.Less", $"Take {Internals.Text.Number(factor)} times as much of {scent.Name}", a => a.Id == scent.Id, factor * 0.999)]
                : [];
            context.Report("Above", Places.Additive(context.Formula, i),
                [Arg.Of("scent", scent.Name), Arg.Of("share", share * 100, "%"), Arg.Of("limit", limit.OfProduct), Arg.Of("source", limit.Source)], fixes);
        }
    }
}
