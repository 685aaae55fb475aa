#!/usr/bin/env dotnet
#:project ../../src/Saponify/Saponify.csproj
// An exercise sheet with its key: the question, the long way by hand, the library's answer, and what the usual slips would give.
using Saponify;
using UnitsNet;

Pantry pantry = Pantry.Reference;
(string Fat, double Grams, double Superfat, double Purity)[] exercises = [("olive-oil", 640, 5.5, 98), ("coconut-oil", 375, 12, 97), ("lard", 810, 6, 99)];

foreach ((string id, double grams, double superfat, double purity) in exercises)
{
    Fat fat = pantry.Fat(id);
    double sv = fat.Saponification!.Value.MilligramsKohPerGram;
    Console.WriteLine(FormattableString.Invariant($"{fat.Name}, {grams:0} g, saponification value {sv:0.00} mg KOH/g. How much sodium hydroxide of {purity:0} % for a superfat of {superfat:0.#} %?"));

    double koh = grams * sv / 1000, naoh = koh * 39.997 / 56.105, less = naoh * (1 - (superfat / 100)), weighed = less / (purity / 100);
    Console.WriteLine(FormattableString.Invariant($"  KOH for all of it   {grams:0} g x {sv:0.00} / 1000     = {koh:0.00} g"));
    Console.WriteLine(FormattableString.Invariant($"  as NaOH             x 39.997 / 56.105      = {naoh:0.00} g"));
    Console.WriteLine(FormattableString.Invariant($"  less the superfat   x (1 - {superfat / 100:0.000})            = {less:0.00} g"));
    Console.WriteLine(FormattableString.Invariant($"  as weighed          / {purity / 100:0.00}                 = {weighed:0.00} g"));

    Formula formula = new(fat.Name)
    {
        Fats = [fat.Weighing(Mass.FromGrams(grams))],
        Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(superfat), Alkali.SodiumHydroxide(Ratio.FromPercent(purity))),
        Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(30)),
    };
    double planned = formula.Balance().AlkaliAsWeighed.Grams;
    Console.WriteLine(FormattableString.Invariant($"  the library says {planned:0.00} g: {(Math.Abs(planned - weighed) < 0.005 ? "the same" : "NOT the same")}"));

    (string Slip, double Grams)[] slips = [("purity forgotten", less), ("superfat forgotten", naoh / (purity / 100)), ("KOH not turned into NaOH", koh * (1 - (superfat / 100)) / (purity / 100))];
    foreach ((string slip, double wrong) in slips)
    {
        double bar = 100 * (formula with { Alkali = AlkaliPlan.Weighed(Alkali.SodiumHydroxide(Ratio.FromPercent(purity)).Weighing(Mass.FromGrams(wrong))) }).Balance().SuperfatOfAllFat!.Value.DecimalFractions;
        Console.WriteLine(FormattableString.Invariant($"  {slip,-26}{wrong,7:0.00} g, superfat {Math.Round(bar, 1) + 0.0:0.0} %{(bar < -0.05 ? ": LYE-HEAVY, it would burn skin" : "")}"));
    }
}
