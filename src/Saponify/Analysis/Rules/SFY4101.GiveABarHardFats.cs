namespace Saponify.Analysis.Rules;

internal sealed class GiveABarHardFats() : FormulaRule(new("SFY4101", "GiveABarHardFats", Severity.Info,
    "A bar of soft fats",
    "Without saturated acids from lauric upwards a bar stays soft for months and goes quickly in use. Common practice, no source.")
{
    Messages = [new("Soft", "saturated acids make up {share} of the fats, less than {limit}, and a bar is to come out")],
    Options = [Lowest],
})
{
    internal static readonly RuleOption Lowest = new("lowest", "%", 20, 0, 100, "Least share of saturated acids from lauric upwards, of the listed fats of a bar.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.Form is null ? "it is not said what is to come out" : facts.Setup.Form != ProductForm.Bar ? "no bar is to come out"
        : facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context)
    {
        // a fat of unknown acids gets the benefit of the doubt
        double share = Blend.Share(context.Formula, f => f.Profile is null ? 1 : Blend.Hard(f)) * 100, limit = context.Option(Lowest);
        if (!(share >= limit))
            context.Report("Soft", FormulaPath.Fats, [Arg.Of("share", share, "%"), Arg.Of("limit", limit, "%")]);
    }
}
