namespace Saponify.Analysis.Rules;

internal sealed class WetTheClay() : FormulaRule(new("SFY5012", "WetTheClay", Severity.Info,
    "Clay in a batter with little water",
    "Dry clay drinks the water of the batter: it thickens at once and the bar cracks. Common practice, no source.")
{
    Messages = [new("Dry", "clay comes to {clay} of the fats and the lye has {strength} over all water, more than {limit}: count the water it is wetted with among the liquids")],
    Options = [Least, Highest],
})
{
    internal static readonly RuleOption Least = new("least", "%", 2, 0, 50, "Least clay, of the mass of the listed fats, that is remarked on.");

    internal static readonly RuleOption Highest = new("highest", "%", 34, 20, 60, "Strongest lye over all water with so much clay.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context)
    {
        double clay = Doses.Clay(context.Facts) * 100, strength = (context.Facts.Balance.LyeConcentrationOfAllWater?.DecimalFractions ?? 0) * 100, limit = context.Option(Highest);
        if (clay > 0 && clay >= context.Option(Least) * (1 - 1e-9) && !(strength <= limit * (1 + 1e-9)))
            context.Report("Dry", FormulaPath.Additives, [Arg.Of("clay", clay, "%"), Arg.Of("strength", strength, "%"), Arg.Of("limit", limit, "%")]);
    }
}
