namespace Saponify.Analysis.Rules;

internal sealed class AskForTheSodaCertificate() : FormulaRule(new("SFY2008", "AskForTheSodaCertificate", Severity.Info,
    "Only a minimum is known of the sodium hydroxide",
    "The plan must reckon with 100 %: with a certificate the superfat comes out as meant.")
{
    Messages = [new("Minimum", "the label of the {alkali} states only a minimum, so the plan reckons with 100 %; if it has only {least}, the superfat is {superfat}")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.CanBeWeighed ? null : "the batch can't be weighed";

    public override void Analyze(in RuleContext context)
    {
        Certificates.Report(context, AlkaliKind.SodiumHydroxide, "Minimum");
    }
}
