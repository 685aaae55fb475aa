using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class KeepPotashOutOfBars() : FormulaRule(new("SFY2012", "KeepPotashOutOfBars", Severity.Warning,
    "Potassium hydroxide in a bar",
    "Potash soap stays soft: a bar with much of it does not set.")
{
    Messages = [new("Potash", "{share} of the hydroxide is potassium hydroxide, and a bar is to come out")],
    Sources = ["simmons-appleton-1908"],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 12, 0, 100, "Highest share of the hydroxide in a bar that may be potassium hydroxide.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.Form is null ? "it is not said what is to come out" : facts.Setup.Form != ProductForm.Bar ? "no bar is to come out" : null;

    public override void Analyze(in RuleContext context)
    {
        double potash = 1 - context.Formula.Alkali.Mix.SodiumShare;
        if (potash * 100 <= context.Option(Highest) + 1e-9)
            return;
        context.Report("Potash", FormulaPath.Alkali, [Arg.Of("share", Stored.ToRatio(potash))]);
    }
}
