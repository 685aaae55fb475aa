using BenchmarkDotNet.Attributes;
using Saponify;
using UnitsNet;

namespace Saponify.Benchmarks;

/// <summary>
/// The seven scores of six fats, beside the same formulas written down as straight-line doubles over a dense table of shares and weights,
/// which give seven numbers and nothing else: no bands, no contributions, no word of what is unknown.
/// </summary>
[MemoryDiagnoser]
public class ScoreBenchmarks
{
    private readonly double[] _acidGrams = new double[6];
    private readonly double[][] _shares = new double[6][];
    private readonly double[][] _weights = new double[9][];
    private readonly double[] _pooled = new double[FattyAcid.All.Count];
    private readonly double[] _scores = new double[7];
    private Formula _formula = null!;
    private FatBlend _blend = null!;
    private BatchPlan _plan = null!;

    [GlobalSetup]
    public void SetUp()
    {
        Pantry pantry = Pantry.Reference;
        (string Fat, double Percent)[] parts = [("olive-oil", 41), ("coconut-oil", 23), ("lard", 17), ("cocoa-butter", 9), ("castor-oil", 6), ("hazelnut-oil", 4)];
        _blend = FatBlend.Of([.. parts.Select(p => (pantry.Fat(p.Fat), Ratio.FromPercent(p.Percent)))]);
        _formula = new Formula("Six fats")
        {
            Fats = _blend.Weighing(Mass.FromGrams(970)),
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), Alkali.SodiumHydroxide(Ratio.FromPercent(98))),
            Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(29)),
        };
        _plan = _formula.Plan();
        for (int i = 0; i < parts.Length; i++)
        {
            FattyAcidProfile profile = pantry.Fat(parts[i].Fat).Profile!;
            double moles = parts[i].Percent * pantry.Fat(parts[i].Fat).Saponification!.Value.MilligramsKohPerGram / 56105;
            _acidGrams[i] = moles * profile.MeanAcidMolarMass.GramsPerMole;
            _shares[i] = [.. FattyAcid.All.Select(a => ScoreWeights.Of(a, WeightKind.Hardness) is null ? 0 : profile[a].DecimalFractions)];
        }
        foreach (WeightKind kind in Enum.GetValues<WeightKind>())
            _weights[(int)kind] = [.. FattyAcid.All.Select(a => ScoreWeights.Of(a, kind)?.Value ?? 0)];
        StraightLineDoubles();
        BarScores scores = _blend.Scores(Ratio.FromPercent(6), Ratio.Zero), planned = _plan.Scores();
        for (int i = 0; i < 7; i++)
        {
            if (Math.Abs(scores.All[i].Value - _scores[i]) > 1e-9 || Math.Abs(planned.All[i].Value - _scores[i]) > 1e-9)
                throw new InvalidOperationException("the straight-line arithmetic does not agree with the library");
        }
    }

    [Benchmark(Baseline = true)]
    public double StraightLineDoubles()
    {
        double[] x = _pooled;
        Array.Clear(x);
        double all = 0;
        for (int f = 0; f < _acidGrams.Length; f++)
        {
            double[] shares = _shares[f];
            for (int a = 0; a < x.Length; a++)
            {
                double grams = _acidGrams[f] * shares[a];
                x[a] += grams;
                all += grams;
            }
        }
        double hardness = 0, wear = 0, cleansing = 0, irritation = 0, emollient = 0, quick = 0, film = 0, lasting = 0, oxidation = 0;
        for (int a = 0; a < x.Length; a++)
        {
            double share = x[a] / all;
            hardness += share * _weights[0][a];
            wear += share * _weights[1][a];
            cleansing += share * _weights[2][a];
            irritation += share * _weights[3][a];
            emollient += share * _weights[4][a];
            quick += share * _weights[5][a];
            film += share * _weights[6][a];
            lasting += share * _weights[7][a];
            oxidation += share * _weights[8][a];
        }
        _scores[0] = 100 * hardness;
        _scores[1] = 100 * wear;
        _scores[2] = 100 * quick / (quick + 0.08) * (0.6 + (0.4 * film));
        _scores[3] = 100 * lasting;
        _scores[4] = 100 * cleansing;
        _scores[5] = 100 * ((0.75 * (1 - irritation)) + (0.25 * emollient * 0.06 / 0.08));
        _scores[6] = 100 * oxidation / (oxidation + 2);
        return _scores[0];
    }

    [Benchmark]
    public double ScoresOfABlend() => _blend.Scores(Ratio.FromPercent(6), Ratio.Zero).All[0].Value;

    [Benchmark]
    public double ScoresOfAPlan() => _plan.Scores().All[0].Value;

    [Benchmark]
    public double ScoresOfAFormula() => _formula.Scores().All[0].Value;

    [Benchmark]
    public int ScoresWithAllContributions()
    {
        int count = 0;
        foreach (Score score in _plan.Scores().All)
            count += score.ByFat.Count + score.ByAcid.Count;
        return count;
    }

    [Benchmark]
    public int CompositionOfAPlan() => _plan.Composition()!.Parts.Count;

    [Benchmark]
    public int CurveOf21Shares() => _formula.VaryingShare("coconut-oil", 21).Count;
}
