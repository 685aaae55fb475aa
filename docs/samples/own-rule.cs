#!/usr/bin/env dotnet
#:project ../../src/Saponify/Saponify.csproj
#:project ../../src/Saponify.Testing/Saponify.Testing.csproj
// A rule of your own beside the built-in ones: checked by the verifier, run by the analyzer, with a fix that gives back a formula.
using Saponify;
using Saponify.Analysis;
using Saponify.Testing;
using UnitsNet;

Pantry pantry = Pantry.Reference;
Formula modest = Bar(Ratio.FromPercent(7)), heavy = Bar(Ratio.FromPercent(15));

RuleVerifier.For(new KeepCastorModest())
    .IsSilentOn(modest)
    .Finds(heavy, "fats[castor-oil].mass")
    .With(KeepCastorModest.Most, 20).IsSilentOn(heavy);
Console.WriteLine("The rule keeps its promises.");

FormulaAnalyzer analyzer = FormulaAnalyzer.Default.With(new KeepCastorModest());
AnalysisReport report = analyzer.Analyze(heavy);
Console.Write(report);
Diagnostic found = report.Diagnostics.First(d => d.Id == "ATELIER1");
foreach (Change change in found.Fixes[0].Changes)
    Console.WriteLine("The fix: " + change);

Formula Bar(Ratio castor) => new("Shampoo bar")
{
    Fats = FatBlend.Of((pantry.Fat("olive-oil"), Ratio.FromPercent(100) - castor), (pantry.Fat("castor-oil"), castor)).Weighing(Mass.FromGrams(600)),
    Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5.5), Alkali.SodiumHydroxide(Ratio.FromPercent(98))),
    Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(31)),
};

internal sealed class KeepCastorModest() : FormulaRule(new("ATELIER1", "KeepCastorModest", Severity.Warning, "Much castor oil", "Our bars with more of it stayed sticky.")
{
    Messages = [new("Much", "castor oil is {share} of the fats, at most {most} is wanted here")],
    Options = [Most],
})
{
    public static readonly RuleOption Most = new("most", "%", 10, 0, 100, "Largest share of castor oil in the fats.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Formula.Fats.Any(f => f.Fat.Id == "castor-oil") ? null : "there is no castor oil";

    public override void Analyze(in RuleContext context)
    {
        Mass most = context.Facts.ListedFats * (context.Option(Most) / 100);
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            FatPortion castor = context.Formula.Fats[i];
            if (castor.Fat.Id != "castor-oil" || castor.Mass.Grams <= most.Grams)
                continue;
            context.Report("Much", FormulaPath.Root.Member("fats").Item(i, castor.Line).Member("mass"),
                [Arg.Of("share", Ratio.FromDecimalFractions(castor.Mass.Grams / context.Facts.ListedFats.Grams)), Arg.Of("most", context.Option(Most), "%")],
                [new FixOffer("less-castor", "Take less castor oil and more of the rest", FixEffect.ChangesProduct, formula => WithLess(formula, castor, most))]);
        }
    }

    // what castor oil gives up is shared among the other fats, so that the total stays
    private static Formula WithLess(Formula formula, FatPortion castor, Mass most)
    {
        double factor = 1 + ((castor.Mass.Grams - most.Grams) / (formula.ListedFats.Grams - castor.Mass.Grams));
        return formula with { Fats = [.. formula.Fats.Select(f => f with { Mass = f.Line == castor.Line ? most : f.Mass * factor })] };
    }
}
