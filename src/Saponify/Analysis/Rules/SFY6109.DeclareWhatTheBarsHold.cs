using Saponify.Internals;
using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class DeclareWhatTheBarsHold() : FormulaRule(new("SFY6109", "DeclareWhatTheBarsHold", Severity.Warning,
    "The label declares more than the bars hold",
    "Short measure is an offence wherever mass is declared, and bars go on losing mass on the shelf.")
{
    Messages =
    [
        new("Above", "{declared} is declared; {count} bars have a mean of {mean}, the lightest {smallest}: declare {most} at most, and less for what they still lose"),
        new("Nothing", "{declared} is declared; {count} bars have a mean of {mean}, the lightest {smallest}, and spread too far for any declared mass: weigh more bars"),
    ],
    Sources = ["eu-76-211"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.DeclaredMass is null ? "no declared mass is given" : facts.Setup.CuredBars.Count == 0 ? "no cured bars were weighed" : null;

    public override void Analyze(in RuleContext context)
    {
        Mass declared = context.Setup.DeclaredMass!.Value;
        NetQuantity sample = new([.. context.Setup.CuredBars]);
        Mass? most = sample.Suggest(Ratio.Zero, Mass.FromGrams(0.01));
        if (most is { } enough && declared.Grams <= enough.Grams + 1e-9)
            return;
        List<Arg> said = [Arg.Of("declared", declared), Arg.Of("count", sample.Count, null), Arg.Of("mean", sample.Mean), Arg.Of("smallest", sample.Smallest)];
        if (most is { } safe)
            said.Add(Arg.Of("most", $"{Text.Number(Math.Floor((safe.Grams * 10) + 1e-9) / 10)} g"));
        context.Report(most is null ? "Nothing" : "Above", FormulaPath.Setup.Member("declaredMass"), [.. said]);
    }
}
