namespace Saponify.Analysis.Rules;

internal sealed class KeepTheLyeFromBoiling() : FormulaRule(new("SFY3101", "KeepTheLyeFromBoiling", Severity.Warning,
    "The lye may boil while the alkali dissolves",
    "Boiling lye spatters and runs over the rim of the jug.")
{
    Messages = [new("Boils", "the lye of {strength} may reach {peak}, good to {error}, and boils at {boiling}")],
    Sources = ["balej-1985", "olsson-1997"],
})
{
    /// <summary>A strength over all water at which lye seldom boils; common practice, no source.</summary>
    private const double Usual = 0.33;

    public override string? WhyNotApplicable(FormulaFacts facts) => Lyes.WhyNoHeat(facts);

    public override void Analyze(in RuleContext context)
    {
        LyeSolution lye = context.Facts.Process!.Lye!;
        if (lye.MayBoil != true)
            return;
        double boiling = lye.Properties.BoilingPoint!.Value.DegreesCelsius, error = lye.PeakError!.Value.Kelvins;
        context.Report("Boils", FormulaPath.Liquids, [Arg.Of("strength", lye.Properties.Strength), Arg.Of("peak", lye.Peak!.Value.DegreesCelsius, "°C"), Arg.Of("error", error, "K"), Arg.Of("boiling", boiling, "°C")],
            [.. Lyes.Colder("KeepTheLyeFromBoiling", context.Facts, boiling - error - 0.5), .. LiquidFixes.Strength("KeepTheLyeFromBoiling", context.Formula, Usual)], evidence: lye.Properties.HeatOfSolution?.Evidence);
    }
}
