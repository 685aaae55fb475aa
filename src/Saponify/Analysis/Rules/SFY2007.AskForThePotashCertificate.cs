namespace Saponify.Analysis.Rules;

internal sealed class AskForThePotashCertificate() : FormulaRule(new("SFY2007", "AskForThePotashCertificate", Severity.Warning,
    "Only a minimum is known of the potassium hydroxide",
    "Potassium hydroxide is sold with 85 to 92 %, and without a certificate the plan must reckon with 100 %: the soap gets much more superfat than meant. Common practice, no source.")
{
    Messages = [new("Minimum", "the label of the {alkali} states only a minimum, so the plan reckons with 100 %; if it has only {least}, the superfat is {superfat}")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.CanBeWeighed ? null : "the batch can't be weighed";

    public override void Analyze(in RuleContext context)
    {
        Certificates.Report(context, AlkaliKind.PotassiumHydroxide, "Minimum");
    }
}
