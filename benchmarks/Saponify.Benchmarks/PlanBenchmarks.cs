using BenchmarkDotNet.Attributes;
using Saponify;
using UnitsNet;

namespace Saponify.Benchmarks;

/// <summary>One lye computation of a six-fat milk formula, beside the same arithmetic written down as straight-line doubles.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private readonly double[] _grams = [420, 250, 90, 60, 110, 40];
    private readonly double[] _molPerGram = new double[6];
    private Formula _formula = null!;
    private double _milkWater, _milkFat, _milkAcid, _acidPerGram, _acidWater;

    [GlobalSetup]
    public void SetUp()
    {
        Pantry pantry = Pantry.Reference;
        string[] ids = ["olive-oil", "coconut-oil", "castor-oil", "cocoa-butter", "lard", "hazelnut-oil"];
        for (int i = 0; i < ids.Length; i++)
            _molPerGram[i] = pantry.Fat(ids[i]).Saponification!.Value.MilligramsKohPerGram / 56105;
        Liquid milk = pantry.Liquid("milk-goat");
        _milkWater = milk.Contents.Water.DecimalFractions;
        _milkFat = milk.Contents.Fat.DecimalFractions * milk.Contents.FatKind!.Saponification!.Value.MilligramsKohPerGram / 56105;
        _milkAcid = milk.Contents.Acid.DecimalFractions / 90.078;
        Additive citric = pantry.Additive("citric-acid-monohydrate");
        _acidPerGram = citric.Contents.Acid.DecimalFractions * 3 / 192.123;
        _acidWater = citric.Contents.Water.DecimalFractions;
        _formula = new Formula("Six fats and milk")
        {
            Fats = [.. ids.Select((id, i) => i == 5 ? pantry.Fat(id).Weighing(Mass.FromGrams(_grams[i])).AtTrace() : pantry.Fat(id).Weighing(Mass.FromGrams(_grams[i])))],
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), Alkali.SodiumHydroxide(Ratio.FromPercent(98))),
            Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(28)).DissolvingInFrozen(milk, Temperature.FromDegreesCelsius(-18)),
            Additives = [citric.ShareOfFats(Ratio.FromPercent(1))],
        };
        (double alkali, double superfat) = Straight();
        if (Math.Abs(alkali - _formula.Balance().AlkaliAsWeighed.Grams) > 1e-9 || Math.Abs(superfat - _formula.Balance().SuperfatOfListedFats!.Value.DecimalFractions) > 1e-9)
            throw new InvalidOperationException("the straight-line arithmetic does not agree with the library");
    }

    [Benchmark(Baseline = true)]
    public double StraightLineDoubles() => Straight().Alkali;

    [Benchmark]
    public double Balance() => _formula.Balance().AlkaliAsWeighed.Grams;

    [Benchmark]
    public double Plan() => _formula.Plan().Balance.AlkaliAsWeighed.Grams;

    [Benchmark]
    public int PlanWithAllTables()
    {
        BatchPlan plan = _formula.Plan();
        return plan.Alkalis.Count + plan.LyeUptake.Count + plan.PossibleUptake.Count + plan.Water.Count + plan.Additives.Count + (plan.LiquidWindow.At25Percent is null ? 0 : 1);
    }

    private (double Alkali, double SuperfatOfListedFats) Straight()
    {
        double listed = 0, recipe = 0;
        for (int i = 0; i < 5; i++)
        {
            listed += _grams[i];
            recipe += _grams[i] * _molPerGram[i];
        }
        listed += _grams[5];
        double late = _grams[5] * _molPerGram[5];
        double acidGrams = 0.01 * listed, acid = acidGrams * _acidPerGram;
        double n0 = acid + (0.94 * (recipe + late)), n1 = _milkAcid + (0.94 * _milkFat);
        double perMole = 39.997 * 0.72 / 0.28;
        double liquid = ((perMole * n0) - (acidGrams * _acidWater)) / (_milkWater - (perMole * n1));
        double hydroxide = n0 + (n1 * liquid);
        double acids = acid + (liquid * _milkAcid);
        return (hydroxide * 39.997 / 0.98, 1 - ((hydroxide - acids) / (recipe + late)));
    }
}
