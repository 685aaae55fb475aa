using System.Text;
using Saponify.Tests.Support;

namespace Saponify.Tests.Making;

/// <summary>Curing bars: fit, forecast, failures, faults, net quantity.</summary>
public partial class CureTests
{
    private const double Final = 104, Excess = 16;

    private static readonly DateOnly s_first = new(2026, 3, 1);

    private static readonly ReadyWhen s_ready = ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(1));

    private static readonly int[] s_days = [0, 3, 7, 11, 15, 20, 26, 33, 40, 48];

    private static CureSeries Series(Func<int, double> grams, params int[] days) => new("1", [.. days.Select(d => new BarWeighing(s_first.AddDays(d), Mass.FromGrams(grams(d))))]);

    private static double Curve(double days, double time) => Final + (Excess * Math.Exp(-days / time));

    /// <summary>A normal deviate by Box and Muller.</summary>
    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    [Theory]
    [InlineData(6)]
    [InlineData(12)]
    [InlineData(25)]
    public void WeighingsWithoutError_GiveTheirCurveBack(double time)
    {
        CureFit fit = Series(d => Curve(d, time), s_days).Fit();
        Assert.True(fit.Succeeded, fit.Verdict);
        Assert.Equal(Final, fit.FinalMass!.Value.Grams, 1e-4);
        Assert.Equal(time, fit.TimeConstant!.Value.Days, 1e-3);
        Assert.Equal(Curve(60, time), fit.MassOn(s_first.AddDays(60))!.Value.Grams, 1e-4);
        // the ready day by stepping along the true curve
        int day = 0;
        while (Curve(day + 7, time) < Curve(day, time) * 0.99)
            day++;
        Assert.Equal(s_first.AddDays(day), fit.Forecast(s_ready, Ratio.FromPercent(95))!.Date);
    }

    [Fact]
    public void SeriesThatCarryNoEnd_AreToldSo()
    {
        Random random = new(20261126);
        int level = 0, straight = 0;
        const int Count = 200;
        for (int i = 0; i < Count; i++)
        {
            CureFit flat = Series(_ => 110 + (0.1 * Normal(random)), s_days).Fit(), line = Series(d => 120 - (0.1 * d) + (0.1 * Normal(random)), s_days).Fit();
            level += flat.Succeeded ? 1 : 0;
            straight += line.Succeeded ? 1 : 0;
        }
        TestContext.Current.TestOutputHelper?.WriteLine($"fitted by chance: flat {level}, straight {straight} of {Count}");
        // chance gives a loss once in a hundred and a bend once in twenty, half of those the wrong way
        Assert.InRange(level, 0, 0.04 * Count);
        Assert.InRange(straight, 0, 0.06 * Count);
    }

    [Fact]
    public void Failures_NameTheirReason()
    {
        Assert.Equal(CureFitFailure.TooFew, Series(d => Curve(d, 12), 0, 7, 14, 21).Fit().Failure);
        Assert.Equal(CureFitFailure.TooFew, Series(d => Curve(d, 12), 0, 0, 7, 7, 14).Fit().Failure);
        Assert.Equal(CureFitFailure.NoLoss, Series(_ => 110, s_days).Fit().Failure);
        Assert.Equal(CureFitFailure.NoPlateau, Series(d => 120 - (0.1 * d), s_days).Fit().Failure);
        CureFit early = (Series(d => Math.Round(Curve(d, 40)), 0, 2, 4, 6, 8) with { Scale = new(Mass.FromGrams(1)) }).Fit();
        Assert.False(early.Succeeded);
        Assert.Null(early.FinalMass);
        Assert.Null(early.Forecast(s_ready, Ratio.FromPercent(95)));
        Assert.Null(early.MassOn(s_first));
    }

    [Fact]
    public void Gains_StayInTheFit_OtherFaultsPreventIt()
    {
        CureSeries damp = Series(d => d == 20 ? Curve(15, 12) + 0.6 : Curve(d, 12), s_days);
        Assert.Equal((5, CureFaultKind.Gain), (damp.Faults.Single().Index, damp.Faults.Single().Kind));
        Assert.NotEqual(CureFitFailure.Faults, damp.Fit().Failure);
        CureSeries slip = Series(d => d == 20 ? Curve(20, 12) / 10 : Curve(d, 12), s_days);
        Assert.Equal((5, CureFaultKind.DecimalSlip), (slip.Faults.Single().Index, slip.Faults.Single().Kind));
        Assert.Equal(CureFitFailure.Faults, slip.Fit().Failure);
        CureSeries backwards = Series(d => Curve(d, 12), 0, 7, 3, 14, 21);
        Assert.Contains(backwards.Faults, f => f is { Index: 2, Kind: CureFaultKind.DateBackwards });
        Assert.Equal(CureFitFailure.Faults, backwards.Fit().Failure);
    }

    [Fact]
    public void MoreLossThanThereIsWater_IsImpossible()
    {
        Moisture moisture = MouldTests.Example("oat-and-cream").Moisture();
        double most = moisture.LargestLoss.DecimalFractions;
        CureSeries series = Series(d => d < 30 ? 120 : 120 * (1 - most) - 0.5, 0, 10, 20, 30) with { Poured = Mass.FromGrams(120), Moisture = moisture };
        Assert.Equal((3, CureFaultKind.ImpossibleLoss), (series.Faults.Single().Index, series.Faults.Single().Kind));
        Assert.Null(series.WaterLeft);
        CureSeries sound = Series(d => 120 - (d * 0.4), 0, 10, 20, 30) with { Poured = Mass.FromGrams(122), Moisture = moisture };
        Assert.Empty(sound.Faults);
        Assert.Equal(((122 * moisture.Water.DecimalFractions) - 14) / 108, sound.WaterLeft!.Value.DecimalFractions, 1e-9);
    }

    [Fact]
    public void Table_TellsEveryFaultWithItsPlace()
    {
        CureFile file = Read("date,mass,bar\n2026-03-01,112,a\n1.3.2026,111 g,a\n2026-03-09,-3 g,a\n2026-03-10,110 ml,\n");
        Assert.Empty(file.Series);
        Assert.Equal([(2, "mass"), (3, "date"), (4, "mass"), (5, "bar"), (5, "mass")], file.Faults.Select(f => (f.Line, f.Column)).Order());
        Assert.Contains("no weighing", Read("date,mass\n").Faults.Single().Reason, StringComparison.Ordinal);
        Assert.Contains("UTF-8", CureFile.Read([0xFF, 0xFE]).Faults.Single().Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_StandAtTheLineTheyComeFrom()
    {
        CureFile file = Read("bar,date,mass\na,2026-03-01,112.4 g\nb,2026-03-01,4 oz\na,2026-03-08,113.4 g\nb,2026-02-08,3.9 oz\na,2026-03-15,11.1 g\n");
        Assert.Empty(file.Faults);
        Assert.Equal(["a", "b"], file.Series.Select(s => s.Name));
        Assert.Equal([(4, "mass"), (5, "date"), (6, "mass")], file.Findings.Select(f => (f.Line, f.Column)));
        Assert.Contains("111 g meant", file.Findings[2].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Suggestion_IsCutDown_AndNoBarFallsShort()
    {
        NetQuantity net = new([.. new[] { 111.2, 109.8, 112.0, 110.4, 101.0 }.Select(g => Mass.FromGrams(g))]);
        Mass declared = net.Suggest(Ratio.FromPercent(2), Mass.FromGrams(1))!.Value;
        Assert.Equal(Math.Floor(declared.Grams), declared.Grams, 1e-9);
        Assert.True(declared <= net.Mean);
        NetQuantity later = new([.. new[] { 111.2, 109.8, 112.0, 110.4, 101.0 }.Select(g => Mass.FromGrams(g * 0.98))]);
        Assert.Equal(0, later.ShareBelow(declared)!.Value.Percent);
        Assert.Equal(57, new NetQuantity(Mass.FromGrams(57.9)).Suggest(Ratio.Zero, Mass.FromGrams(1))!.Value.Grams, 1e-9);
        Assert.Throws<ArgumentException>(() => new NetQuantity());
    }

    private static CureFile Read(string csv) => CureFile.Read(Encoding.UTF8.GetBytes(csv));
}
