#!/usr/bin/env dotnet
#:project ../../src/Saponify/Saponify.csproj
// Three blends for the same mould, side by side: lye they take, fatty acids they bring, and how well the figures are supported.
using Saponify;
using UnitsNet;

Pantry pantry = Pantry.Reference;
(string Name, FatBlend Blend)[] blends =
[
    ("olive and coconut", Blend(("olive-oil", 73), ("coconut-oil", 27))),
    ("tallow and coconut", Blend(("tallow", 58), ("coconut-oil", 24), ("canola-oil", 18))),
    ("palm-free and vegan", Blend(("olive-oil", 41), ("babassu-oil", 28), ("cocoa-butter", 17), ("sunflower-oil-high-oleic", 14))),
];

Console.WriteLine("                         NaOH of 98 %   lauric+myristic   palmitic+stearic   oleic   more double bonds   iodine value   evidence");
foreach ((string name, FatBlend blend) in blends)
{
    Formula formula = new(name)
    {
        Fats = blend.Weighing(Mass.FromGrams(900)),
        Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), Alkali.SodiumHydroxide(Ratio.FromPercent(98))),
        Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(29)),
    };
    BatchPlan plan = formula.Plan();
    double iodine = blend.Shares.Sum(s => s.Share.DecimalFractions * s.Fat.Profile!.IodineValueAsTriglyceride.GramsPer100Grams);
    Console.WriteLine(FormattableString.Invariant(
        $"{name,-23}{Math.Floor(10 * plan.Balance.AlkaliAsWeighed.Grams) / 10,12:F1} g{Acids(blend, a => a.Carbons is 12 or 14 && a.IsSaturated),16:F0} %{Acids(blend, a => a.Carbons is 16 or 18 && a.IsSaturated && !a.IsHydroxy),17:F0} %{Acids(blend, a => a.Shorthand == "C18:1"),6:F0} %{Acids(blend, a => a.DoubleBonds > 1),18:F0} %{iodine,15:F0}   {plan.Evidence?.ToString().ToLowerInvariant()}"));
}

FatBlend Blend(params (string Id, double Percent)[] parts) => FatBlend.Of([.. parts.Select(p => (pantry.Fat(p.Id), Ratio.FromPercent(p.Percent)))]);

// share of the blend's fatty acids in percent, from the middles of the published ranges
static double Acids(FatBlend blend, Func<FattyAcid, bool> which) =>
    blend.Shares.Sum(s => s.Share.Percent * FattyAcid.All.Where(which).Sum(a => s.Fat.Profile![a].DecimalFractions));
