namespace Saponify.Analysis.Rules;

internal sealed class GiveLauricSoapMoreSuperfat() : FormulaRule(new("SFY4103", "GiveLauricSoapMoreSuperfat", Severity.Info,
    "Much lauric soap with little superfat",
    "Soap of lauric acid strips and irritates skin more than that of longer acids; free fat tempers it.")
{
    Messages = [new("Drying", "lauric acid makes up {share} of the fats, more than {limit}, with a superfat of {superfat}, less than {least}")],
    Sources = ["blank-1947", "jscc-1973"],
    Options = [Highest, Superfat],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 25, 0, 100, "Highest share of lauric acid, of the listed fats; coconut oil holds about half.");

    internal static readonly RuleOption Superfat = new("superfat", "%", 8, 0, 30, "Least superfat of all fat with so much lauric acid; common practice, no source.");

    public override string? WhyNotApplicable(FormulaFacts facts) => !facts.HasFat ? "no listed fat takes up lye" : facts.Balance.OfAllFat is null ? "no fat takes up lye" : null;

    public override void Analyze(in RuleContext context)
    {
        double share = Blend.Lauric(context.Formula) * 100, superfat = context.Facts.Balance.OfAllFat!.Value * 100, highest = context.Option(Highest), least = context.Option(Superfat);
        if (!(share <= highest) && superfat >= 0 && superfat < least - 1e-9)
            context.Report("Drying", Places.Superfat(context.Formula), [Arg.Of("share", share, "%"), Arg.Of("limit", highest, "%"), Arg.Of("superfat", superfat, "%"), Arg.Of("least", least, "%")],
                LyeFixes.Superfat(context.Formula, "GiveLauricSoapMoreSuperfat.Raise", least / 100));
    }
}
