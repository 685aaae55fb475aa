namespace Saponify.Analysis.Rules;

internal sealed class AskForTheSodaCertificate() : FormulaRule(new("SFY2008", "AskForTheSodaCertificate", Severity.Info,
    "Only a minimum is known of the sodium hydroxide",
    "The plan must reckon with 100 %: with a certificate the superfat comes out as meant.")
{
    Messages = [new("Minimum", "{alkali} states only a minimum; the plan reckons with 100 %, and if it has {least} the superfat is {superfat}")],
})
{
    public override void Analyze(in RuleContext context)
    {
        Certificates.Report(context, AlkaliKind.SodiumHydroxide, "Minimum");
    }
}
