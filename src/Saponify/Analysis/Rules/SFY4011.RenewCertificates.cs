namespace Saponify.Analysis.Rules;

internal sealed class RenewCertificates() : FormulaRule(new("SFY4011", "RenewCertificates", Severity.Info,
    "An old certificate of a lot",
    "Fat ages, and a certificate kept for years is seldom that of the fat in the pot. Common practice, no source.")
{
    Messages =
    [
        new("Old", "the certificate of {fat}, lot {lot}, is {age} old, more than {limit}"),
        new("Future", "the certificate of {fat}, lot {lot}, is dated {date}, after today"),
    ],
    Options = [Oldest],
})
{
    internal static readonly RuleOption Oldest = new("oldest", "months", 24, 1, 240, "Oldest certificate that is not remarked on.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.Today is null ? "no date is given" : null;

    public override void Analyze(in RuleContext context)
    {
        DateOnly today = context.Setup.Today!.Value;
        double limit = context.Option(Oldest);
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            Fat fat = context.Formula.Fats[i].Fat;
            if (fat.Lot is not { Date: { } date } lot)
                continue;
            double months = (today.DayNumber - date.DayNumber) / 30.44;
            if (months < 0)
                context.Report("Future", Places.Fat(context.Formula, i), [Arg.Of("fat", fat.Name), Arg.Of("lot", lot.Name), Arg.Of("date", Internals.Text.Day(date))]);
            else if (months > limit)
                context.Report("Old", Places.Fat(context.Formula, i), [Arg.Of("fat", fat.Name), Arg.Of("lot", lot.Name), Arg.Of("age", Math.Floor(months), "months"), Arg.Of("limit", limit, "months")]);
        }
    }
}
