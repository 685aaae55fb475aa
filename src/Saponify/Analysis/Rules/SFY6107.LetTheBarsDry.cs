using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class LetTheBarsDry() : FormulaRule(new("SFY6107", "LetTheBarsDry", Severity.Warning,
    "The bars are sold before they are ready",
    "A bar that still dries loses mass after it is labelled, and goes soft and quickly in use.")
{
    Messages =
    [
        new("TooEarly", "on {date} the bars are not ready by their own weighings ({ready}): {expected} is expected, {latest}"),
        new("MayBeTooEarly", "on {date} the bars may not be ready by their own weighings ({ready}): {expected} is expected, {latest}"),
    ],
    Sources = ["computed"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.SoldFrom is null ? "it is not said when the bars are sold" : Curing.WhyNoForecast(facts);

    public override void Analyze(in RuleContext context)
    {
        DateOnly sold = context.Setup.SoldFrom!.Value;
        ReadyWhen ready = context.Setup.Ready!.Value;
        CureForecast forecast = context.Facts.Cure!.Forecast(ready, Ratio.FromPercent(95))!;
        if (forecast.Latest is { } last && sold >= last)
            return;
        context.Report(forecast.Date is { } day && sold >= day ? "MayBeTooEarly" : "TooEarly", FormulaPath.Setup.Member("soldFrom"),
            [Curing.Day("date", sold), Arg.Of("ready", ready.ToString()), forecast.Date is { } expected ? Curing.Day("expected", expected) : Arg.Of("expected", "no day within ten years"),
            Arg.Of("latest", forecast.Latest is { } latest ? $"and {Internals.Text.Day(latest)} at the latest, with 95 %" : "and the weighings leave the latest day open")]);
    }
}
