using BenchmarkDotNet.Attributes;
using Saponify;
using UnitsNet;

namespace Saponify.Benchmarks;

/// <summary>The margin of a three-fat bar on a scale of 5 g, beside the same law written down as straight-line doubles.</summary>
[MemoryDiagnoser]
public class MarginBenchmarks
{
    private const int Cells = 512;

    private readonly double[] _grams = [420, 250, 130];
    private readonly double[] _low = new double[3], _high = new double[3];
    private readonly double[] _fatWidths = new double[6], _netWidths = new double[2];
    private readonly double[] _fat = new double[Cells + 1], _net = new double[Cells + 1], _next = new double[Cells + 1], _integral = new double[Cells + 1];
    private readonly Scale _scale = new(Mass.FromGrams(5));
    private BatchPlan _plan = null!;
    private double _alkali;

    [GlobalSetup]
    public void SetUp()
    {
        string[] ids = ["olive-oil", "coconut-oil", "cocoa-butter"];
        Fat[] fats = [.. ids.Select(Pantry.Reference.Fat)];
        for (int i = 0; i < fats.Length; i++)
            (_low[i], _high[i]) = (fats[i].Saponification!.Low!.Value.MilligramsKohPerGram / 56105, fats[i].Saponification!.High!.Value.MilligramsKohPerGram / 56105);
        _plan = new Formula("Three fats")
        {
            Fats = [.. fats.Select((fat, i) => fat.Weighing(Mass.FromGrams(_grams[i])))],
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.SodiumHydroxide(Purity.Between(Ratio.FromPercent(97), Ratio.FromPercent(100)))),
            Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(30)),
        }.Plan();
        _alkali = _plan.Balance.AlkaliAsWeighed.Grams;
        Margin margin = _plan.Margin(_scale)!;
        (double low, double high, double heavy) = Straight();
        if (Math.Abs(low - margin.Low.DecimalFractions) > 1e-6 || Math.Abs(high - margin.High.DecimalFractions) > 1e-6 || Math.Abs(heavy - margin.ProbabilityOfLyeHeavy.DecimalFractions) > 1e-6)
            throw new InvalidOperationException("the straight-line arithmetic does not agree with the library");
    }

    [Benchmark(Baseline = true)]
    public double StraightLineDoubles() => Straight().Low;

    [Benchmark]
    public double Margin() => _plan.Margin(_scale)!.Low.DecimalFractions;

    private (double Low, double High, double Heavy) Straight()
    {
        const double error = 2.5, purityLow = 0.97, purityHigh = 1.00;
        double fatLow = 0, fatMiddle = 0, fatHigh = 0;
        for (int i = 0; i < 3; i++)
        {
            double middle = (_low[i] + _high[i]) / 2;
            fatLow += (_grams[i] - error) * _low[i];
            fatMiddle += _grams[i] * middle;
            fatHigh += (_grams[i] + error) * _high[i];
            _fatWidths[2 * i] = error * middle;
            _fatWidths[(2 * i) + 1] = _grams[i] * (_high[i] - _low[i]) / 2;
        }
        double purity = (purityLow + purityHigh) / 2, netMiddle = _alkali * purity / 39.997;
        _netWidths[0] = _alkali * (purityHigh - purityLow) / 2 / 39.997;
        _netWidths[1] = error * purity / 39.997;
        double worst = 1 - ((_alkali + error) * purityHigh / 39.997 / fatLow), best = 1 - ((_alkali - error) * purityLow / 39.997 / fatHigh);
        double fatHalf = Function(_fatWidths, _fat), netHalf = Function(_netWidths, _net);
        return (Quantile(0.025), Quantile(0.975), worst >= 0 ? 0 : Below(0));

        double Quantile(double probability)
        {
            double low = worst, high = best, below = -probability, above = 1 - probability;
            for (int i = 0; i < 60 && high - low > 1e-7; i++)
            {
                double middle = i % 3 == 2 || above - below <= 0 ? (low + high) / 2 : low + ((high - low) * (-below / (above - below)));
                double at = Below(middle) - probability;
                if (at < 0)
                    (low, below) = (middle, at);
                else
                    (high, above) = (middle, at);
            }
            return (low + high) / 2;
        }

        double Below(double superfat)
        {
            double sum = 0, step = 2 * fatHalf / Cells, netStep = 2 * netHalf / Cells;
            for (int i = 0; i < Cells; i++)
            {
                double deviation = -fatHalf + ((i + 0.5) * step);
                double place = (((1 - superfat) * (fatMiddle + deviation)) - netMiddle + netHalf) / netStep;
                double at = place <= 0 ? 0 : place >= Cells ? 1 : _net[(int)place] + ((place - (int)place) * (_net[(int)place + 1] - _net[(int)place]));
                sum += (_fat[i + 1] - _fat[i]) * (1 - at);
            }
            return Math.Clamp(sum, 0, 1);
        }
    }

    private double Function(double[] widths, double[] function)
    {
        double half = 0, largest = 0;
        foreach (double width in widths)
        {
            half += width;
            largest = Math.Max(largest, width);
        }
        double step = 2 * half / Cells;
        for (int i = 0; i <= Cells; i++)
            function[i] = Math.Clamp((-half + (i * step) + largest) / (2 * largest), 0, 1);
        bool passed = false;
        foreach (double width in widths)
        {
            if (width == largest && !passed)
            {
                passed = true;
                continue;
            }
            _integral[0] = 0;
            for (int i = 1; i <= Cells; i++)
                _integral[i] = _integral[i - 1] + ((function[i - 1] + function[i]) / 2 * step);
            for (int i = 0; i <= Cells; i++)
                _next[i] = Math.Clamp((Integral((i * step) + width) - Integral((i * step) - width)) / (2 * width), 0, 1);
            Array.Copy(_next, function, Cells + 1);
        }
        return half;

        double Integral(double fromLow)
        {
            double place = fromLow / step;
            if (place <= 0)
                return 0;
            if (place >= Cells)
                return _integral[Cells] + ((place - Cells) * step);
            int cell = (int)place;
            double part = place - cell;
            return _integral[cell] + (step * part * (function[cell] + (part * (function[cell + 1] - function[cell]) / 2)));
        }
    }
}
