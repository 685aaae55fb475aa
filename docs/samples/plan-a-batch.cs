#!/usr/bin/env dotnet
#:project ../../src/Saponify/Saponify.csproj
// Plans a bar with all its liquid as frozen goat milk, prints what to weigh, and lets the analyzer check it.
using Saponify;
using UnitsNet;

Pantry pantry = Pantry.Reference;
Formula formula = new("Goat milk and babassu")
{
    Fats =
    [
        pantry.Fat("olive-oil").Weighing(Mass.FromGrams(455)),
        pantry.Fat("babassu-oil").Weighing(Mass.FromGrams(235)),
        pantry.Fat("cocoa-butter").Weighing(Mass.FromGrams(90)),
        pantry.Fat("apricot-kernel-oil").Weighing(Mass.FromGrams(45)).AtTrace(),
    ],
    Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6.5), Alkali.SodiumHydroxide(purity: Ratio.FromPercent(98))),
    Liquids = LiquidPlan.LyeConcentration(ofAllWater: Ratio.FromPercent(28)).DissolvingInFrozen(pantry.Liquid("milk-goat"), Temperature.FromDegreesCelsius(-18)),
};

BatchPlan plan = formula.Plan();
Console.WriteLine(plan);

AnalysisReport report = FormulaAnalyzer.Default.Analyze(formula, new() { Scale = new(Mass.FromGrams(5)) });
Console.WriteLine(report.IsSafeToWeigh ? "What the analyzer says (nothing against weighing it):" : "What the analyzer says (don't weigh this):");
Console.Write(report);
