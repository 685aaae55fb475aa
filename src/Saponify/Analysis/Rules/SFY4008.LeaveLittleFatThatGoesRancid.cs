namespace Saponify.Analysis.Rules;

internal sealed class LeaveLittleFatThatGoesRancid() : FormulaRule(new("SFY4008", "LeaveLittleFatThatGoesRancid", Severity.Info,
    "Much free fat of a kind that goes rancid",
    "Free fat rich in linoleic and linolenic acid goes rancid first: orange spots and a smell of old oil.")
{
    Messages = [new("Rancid", "linoleic and linolenic acid make up {share} of the fats, more than {limit}, with a superfat of {superfat}, more than {most}, and no antioxidant")],
    Sources = ["antonic-2020", "simmons-appleton-1908"],
    Options = [Highest, Superfat],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 20, 0, 100, "Highest share of linoleic and linolenic acid, of the listed fats.");

    internal static readonly RuleOption Superfat = new("superfat", "%", 8, 0, 100, "Highest superfat of all fat with so much of these acids; common practice, no source.");

    public override string? WhyNotApplicable(FormulaFacts facts) => !facts.HasFat ? "no listed fat takes up lye" : facts.Balance.OfAllFat is null ? "no fat takes up lye" : null;

    public override void Analyze(in RuleContext context)
    {
        double share = Blend.Polyunsaturated(context.Formula) * 100, superfat = context.Facts.Balance.OfAllFat!.Value * 100, highest = context.Option(Highest), most = context.Option(Superfat);
        if (share <= highest + 1e-9 || superfat <= most + 1e-9)
            return;
        foreach (AdditivePortion portion in context.Formula.Additives)
        {
            if (portion.Additive.Kind == AdditiveKind.Antioxidant)
                return;
        }
        context.Report("Rancid", FormulaPath.Fats, [Arg.Of("share", share, "%"), Arg.Of("limit", highest, "%"), Arg.Of("superfat", superfat, "%"), Arg.Of("most", most, "%")],
            related: Blend.Lines(context.Formula, f => Blend.Polyunsaturated(f) > highest / 100));
    }
}
