namespace Saponify.Analysis.Rules;

internal sealed class KnowWhatRestsOnMemory() : FormulaRule(new("SFY8001", "KnowWhatRestsOnMemory", Severity.Info,
    "The lye rests on figures from memory",
    "A figure that nobody looked up may be wrong, and the lye with it: the lot's own value, or a page, settles it.")
{
    Messages = [new("Memory", "the saponification values of {fats} were written down from memory; {share} of the lye rests on them")],
    Sources = ["memory"],
    Options = [Least],
})
{
    internal static readonly RuleOption Least = new("least", "%", 1, 0, 100, "Least share of the lye demand of all fat that is remarked on.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.OfAllFat is null ? "no fat takes up lye" : null;

    private static bool IsFromMemory(Fat? fat) => fat?.Saponification is { Evidence: Evidence.Memory, IsOwn: false };

    public override void Analyze(in RuleContext context)
    {
        double hydroxide = 0;
        List<string> names = [];
        foreach (FatPortion portion in context.Formula.Fats)
        {
            if (!IsFromMemory(portion.Fat) || portion.Hydroxide <= 0)
                continue;
            hydroxide += portion.Hydroxide;
            names.Add(portion.Fat.Name);
        }
        foreach (Containing part in context.Facts.Parts)
        {
            if (!IsFromMemory(part.Contents.FatKind) || !(part.Grams * part.Contents.FatHydroxidePerGram > 0))
                continue;
            hydroxide += part.Grams * part.Contents.FatHydroxidePerGram;
            names.Add(part.Contents.FatKind!.Name);
        }
        double share = hydroxide / context.Facts.Balance.AllFatHydroxide * 100;
        if (names.Count > 0 && share >= context.Option(Least))
            context.Report("Memory", FormulaPath.Fats, [Arg.Of("fats", Blend.Names(names)), Arg.Of("share", share, "%")], related: Blend.Lines(context.Formula, IsFromMemory));
    }
}
