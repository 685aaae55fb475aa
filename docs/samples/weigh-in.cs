#!/usr/bin/env dotnet
#:project ../../src/Saponify/Saponify.csproj
// At the bench: the plan in the steps of the scale, then what the scale really showed, and the lye that those weights ask for.
using Saponify;
using UnitsNet;

Pantry pantry = Pantry.Reference;
Formula formula = new("Cream bar")
{
    Fats =
    [
        pantry.Fat("olive-oil").Weighing(Mass.FromGrams(365)),
        pantry.Fat("coconut-oil").Weighing(Mass.FromGrams(155)),
        pantry.Fat("castor-oil").Weighing(Mass.FromGrams(40)),
    ],
    Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(7), Alkali.SodiumHydroxide(Ratio.FromPercent(98.5))),
    Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(30)).HoldingBack(pantry.Liquid("heavy-cream").Weighing(Mass.FromGrams(50))),
};

Scale kitchen = new(Mass.FromGrams(1)), fine = new(Mass.FromGrams(0.1));
ScalePlan scaled = formula.Plan().OnScale(kitchen, alkaliScale: fine);
Console.WriteLine("To weigh, alkali cut to its scale, the rest rounded up:");
foreach (ScaleLine line in scaled.Lines)
    Console.WriteLine(FormattableString.Invariant($"{line.Mass.Grams,8:F1} g  {line.What}"));

WeighedBatch batch = WeighedBatch.Start(scaled.Plan)
    .Weigh("fats[olive-oil]", Mass.FromGrams(381))          // the bottle slipped
    .Weigh("fats[coconut-oil]", Mass.FromGrams(155))
    .Weigh("fats[castor-oil]", Mass.FromGrams(40));
Console.WriteLine("Off by more than a hundredth:");
foreach (WeighedLine line in batch.Lines.Where(l => Math.Abs(l.Off?.Percent ?? 0) > 1))
    Console.WriteLine(FormattableString.Invariant($"          {line.What}: {line.Weighed!.Value.Grams:F0} g for {line.Planned.Grams:F0} g"));
Console.WriteLine("For these fats weigh now:");
Console.WriteLine("          " + batch.AlkaliToWeigh[0]);
Console.WriteLine("          " + batch.LiquidToWeigh);

batch = batch.Weigh("alkali.alkalis[sodium-hydroxide]", Mass.FromGrams(86.4)).WithAlkaliIn();    // and the display was misread
Console.WriteLine(FormattableString.Invariant($"86.4 g went in: superfat {batch.Superfat!.Value.Percent:F1} % of all fat. What can be done now:"));
foreach (BatchChoice choice in batch.ChoicesOn(kitchen, alkaliScale: fine))
    Console.WriteLine("          " + choice);
