#!/usr/bin/env dotnet
#:project ../../src/Saponify/Saponify.csproj
// Two blends for the same mould, side by side: the lye they take, their figures, and what bar they make.
using Saponify;
using UnitsNet;

Pantry pantry = Pantry.Reference;
Formula tallow = Of("tallow, coconut, canola", ("tallow", 58), ("coconut-oil", 24), ("canola-oil", 18));
Formula vegan = Of("vegan, without palm", ("olive-oil", 41), ("babassu-oil", 28), ("cocoa-butter", 17), ("sunflower-oil-high-oleic", 14));

foreach (Formula formula in new[] { tallow, vegan })
    Console.WriteLine($"{formula.Plan().Alkalis[0]} for {formula.Name}");
Console.WriteLine();
Console.Write(BarComparison.Of(tallow, vegan));

Formula Of(string name, params (string Id, double Percent)[] parts) => new(name)
{
    Fats = FatBlend.Of([.. parts.Select(p => (pantry.Fat(p.Id), Ratio.FromPercent(p.Percent)))]).Weighing(Mass.FromGrams(900)),
    Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6.5), Alkali.SodiumHydroxide(Ratio.FromPercent(98))),
    Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(29)),
};
