namespace Saponify.Analysis.Rules;

internal sealed class AskForThePotashCertificate() : FormulaRule(new("SFY2007", "AskForThePotashCertificate", Severity.Warning,
    "Only a minimum is known of the potassium hydroxide",
    "Potassium hydroxide is sold with 85 to 92 %, and the plan must reckon with 100 %: the soap gets more superfat than meant, and with a guess it may get none.")
{
    Messages = [new("Minimum", "{alkali} states only a minimum; the plan reckons with 100 %, and if it has {least} the superfat is {superfat}")],
})
{
    public override void Analyze(in RuleContext context)
    {
        Certificates.Report(context, AlkaliKind.PotassiumHydroxide, "Minimum");
    }
}
