namespace Saponify.Analysis.Rules;

internal sealed class GiveTheBarsWeeks() : FormulaRule(new("SFY6108", "GiveTheBarsWeeks", Severity.Info,
    "The bars are sold after few weeks",
    "Without weighings no one knows when a bar is dry; what is sold after a few days is soft and loses mass at the buyer's. Common practice, no source.")
{
    Messages = [new("Few", "from {poured} to {sold} are {days} days, less than {weeks} weeks; weigh some bars every few days, and the ready date is told by them")],
    Options = [Weeks],
    Sources = ["common-practice"],
})
{
    internal static readonly RuleOption Weeks = new("weeks", "weeks", 4, 0, 520, "How long bars shall dry at least when there are no weighings; common practice, no source.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.SoldFrom is null ? "it is not said when the bars are sold" : facts.Setup.PouredOn is null ? "it is not said when they were poured"
        : Curing.WhyNoForecast(facts) is null ? "the weighings of the bars tell, as another rule says" : null;

    public override void Analyze(in RuleContext context)
    {
        (DateOnly poured, DateOnly sold) = (context.Setup.PouredOn!.Value, context.Setup.SoldFrom!.Value);
        double weeks = context.Option(Weeks);
        int days = sold.DayNumber - poured.DayNumber;
        if (days < weeks * 7)
            context.Report("Few", FormulaPath.Setup.Member("soldFrom"), [Curing.Day("poured", poured), Curing.Day("sold", sold), Arg.Of("days", days, null), Arg.Of("weeks", weeks, null)]);
    }
}
