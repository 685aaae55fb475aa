namespace Saponify.Analysis.Rules;

internal sealed class CheckTheSizeOfTheBatch() : FormulaRule(new("SFY1106", "CheckTheSizeOfTheBatch", Severity.Info,
    "An unusual size of batch",
    "A batch of a few grams or of a hundred kilograms is most often a wrong unit.")
{
    Messages =
    [
        new("Small", "the fats come to {fats}, less than {limit}: is the unit right?"),
        new("Large", "the fats come to {fats}, more than {limit}: is the unit right?"),
    ],
    Options = [Least, Most],
})
{
    internal static readonly RuleOption Least = new("least", "g", 100, 0, 1e6, "Smallest mass of fats that is not remarked on.");

    internal static readonly RuleOption Most = new("most", "g", 50_000, 100, 1e9, "Largest mass of fats that is not remarked on.");

    public override string? WhyNotApplicable(FormulaFacts facts) => !facts.HasFat ? "no listed fat takes up lye" : KeepTheBatchPossible.IsTooLarge(facts) ? "the batch is impossibly large, which another rule says" : null;

    public override void Analyze(in RuleContext context)
    {
        double grams = context.Facts.ListedGrams, least = context.Option(Least), most = context.Option(Most);
        if (grams < least)
            context.Report("Small", FormulaPath.Fats, [Arg.Of("fats", context.Facts.ListedFats), Arg.Of("limit", least, "g")]);
        else if (grams > most)
            context.Report("Large", FormulaPath.Fats, [Arg.Of("fats", context.Facts.ListedFats), Arg.Of("limit", most, "g")]);
    }
}
