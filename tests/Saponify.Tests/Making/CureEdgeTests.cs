using System.Text;

namespace Saponify.Tests.Making;

/// <summary>Single facts of curing bars and net quantity: words, limits, published tables.</summary>
public class CureEdgeTests
{
    private static readonly DateOnly s_first = new(2026, 3, 1);

    private static CureSeries Weekly(params double[] grams) => new("1", [.. grams.Select((g, i) => new BarWeighing(s_first.AddDays(7 * i), Mass.FromGrams(g)))]);

    private static Mass Grams(double grams) => Mass.FromGrams(grams);

    [Fact]
    public void WhatIsNoted_IsInWords()
    {
        Assert.Equal("2026-03-01: 112.4 g", new BarWeighing(s_first, Grams(112.4)).ToString());
        Assert.Equal("weekly loss below 1 %", ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(1)).ToString());
        Assert.Equal("within 0.5 % of the final mass", ReadyWhen.WithinOfFinal(Ratio.FromPercent(0.5)).ToString());
        Assert.Equal("weighing 2: 100.3 g is 0.3 g more than on 2026-03-01; a drying bar does not gain, so check the reading, and the air of the room", Weekly(100, 100.3).Faults.Single().ToString());
    }

    [Fact]
    public void Faults_SayWhatWasFoundAndWhatWouldBeRight()
    {
        CureSeries backwards = new("1", new BarWeighing(s_first, Grams(112)), new BarWeighing(s_first.AddDays(-1), Grams(111)));
        Assert.Equal("2026-02-28 is before 2026-03-01, the date above it; note weighings in the order of time", backwards.Faults.Single().Reason);
        Assert.Equal("11 g stands among weighings near 111 g: was 110 g meant, or another unit?", Weekly(112, 111, 11).Faults.Single().Reason);
        Assert.Equal("11200 g stands among weighings near 112 g: was 112 g meant, or another unit?", Weekly(112, 11_200, 111).Faults.Single().Reason);
        Assert.True(backwards.Faults.Single().PreventsFit);
        Assert.False(Weekly(100, 100.3).Faults.Single().PreventsFit);
        // a lone weighing has no other witness than the poured mass
        Assert.Empty(Weekly(11.2).Faults);
        Assert.Equal("11.2 g stands among weighings near 112 g: was 112 g meant, or another unit?", (Weekly(11.2) with { Poured = Grams(112) }).Faults.Single().Reason);
    }

    [Fact]
    public void ImpossibleLoss_IsToldAgainstThePour_OrAgainstTheFirstWeighing()
    {
        Moisture moisture = MouldTests.Example("all-coconut").Moisture();
        string reason = (Weekly(120, 50) with { Moisture = moisture }).Faults.Single().Reason;
        Assert.StartsWith("50 g is 58.33 % less than at first; the batter had only ", reason, StringComparison.Ordinal);
        Assert.EndsWith(" % to lose", reason, StringComparison.Ordinal);
        reason = (Weekly(120, 50) with { Moisture = moisture, Poured = Grams(125) }).Faults.Single().Reason;
        Assert.StartsWith("50 g is less than the ", reason, StringComparison.Ordinal);
        Assert.Contains(" g that stay when everything that can evaporate has gone (", reason, StringComparison.Ordinal);
        Assert.EndsWith(" % of the batter)", reason, StringComparison.Ordinal);
        // a step of the scale is left to it
        double least = 100 * (1 - moisture.LargestLoss.DecimalFractions);
        Assert.Empty((Weekly(100, least - 0.9) with { Moisture = moisture, Scale = new(Grams(1)) }).Faults);
        Assert.Equal(CureFaultKind.ImpossibleLoss, (Weekly(100, least - 1.1) with { Moisture = moisture, Scale = new(Grams(1)) }).Faults.Single().Kind);
        Assert.Equal(CureFaultKind.ImpossibleLoss, (Weekly(100, least - 0.9) with { Moisture = moisture }).Faults.Single().Kind);
    }

    [Theory]
    [InlineData(100.19, 0, false)]       // damp air: a fifth of a percent
    [InlineData(100.21, 0, true)]
    [InlineData(102, 1, false)]          // two steps of the scale
    [InlineData(102.1, 1, true)]
    public void Gain_IsAFault_BeyondDampAirAndTheScale(double second, double step, bool isFault) =>
        Assert.Equal(isFault, (Weekly(100, second) with { Scale = step > 0 ? new Scale(Grams(step)) : null }).Faults.Count == 1);

    [Theory]
    [InlineData(17, true)]               // log10 0.17 = -0.77: nearer than a quarter to -1
    [InlineData(19, false)]              // -0.72
    [InlineData(6, true)]                // -1.22
    public void Slip_IsNearAPowerOfTen(double third, bool isSlip) =>
        Assert.Equal(isSlip, Weekly(100, 100, third).Faults.Any(f => f.Kind == CureFaultKind.DecimalSlip));

    [Fact]
    public void Verdicts_AreInWords()
    {
        Assert.Equal("Mend the faults of the series first.", Weekly(112, 111, 11).Fit().Verdict);
        Assert.Equal("Too few weighings for a forecast: at least 5 on 4 days are needed.", Weekly(112, 111, 110).Fit().Verdict);
        Assert.Equal("The loss does not stand out from the scatter of the weighings: the bar may be done, or the scale too coarse.", Weekly(110, 110, 110, 110, 110).Fit().Verdict);
        Assert.Equal("No end of the loss is in sight yet, a straight line fits as well: weigh on.", Weekly(120, 119, 118, 117, 116).Fit().Verdict);
        // 8 g that halve each week over 100 g: no error, so five weighings are enough
        CureFit fit = Weekly(108, 104, 102, 101, 100.5).Fit();
        Assert.Equal("The weighings follow an exponential approach to a final mass.", fit.Verdict);
        Assert.Equal(100, fit.FinalMass!.Value.Grams, 1e-4);
        Assert.Equal(7 / Math.Log(2), fit.TimeConstant!.Value.Days, 1e-3);
        Assert.Equal("95 %, fitted to the weighings", fit.FinalMass.Note);
        Assert.Equal(["own"], fit.FinalMass.Sources);
        Assert.True(fit.FinalMass.IsOwn);
        // within 1 % of 100 g on the day of the fourth weighing
        ReadyWhen near = ReadyWhen.WithinOfFinal(Ratio.FromPercent(1.001));
        Assert.Equal(s_first.AddDays(21), fit.Forecast(near, Ratio.FromPercent(50))!.Date);
        Assert.Equal(s_first.AddDays(21), fit.Forecast(near, Ratio.FromPercent(99.9))!.Date);
        Assert.Equal(7.5 / 108 * 100, Weekly(108, 104, 102, 101, 100.5).LossSoFar!.Value.Percent, 1e-9);
    }

    [Fact]
    public void ReadyByTheWeek_FollowsFromTheCurve()
    {
        // the excess halves in a week: a/2 = r (e + a), so a/e = r/(1/2 - r)
        double halving = 7 / Math.Log(2);
        Assert.Equal(0.25, ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(10)).ExcessAtReady(halving), 1e-12);
        Assert.Equal(0.1, ReadyWhen.WithinOfFinal(Ratio.FromPercent(10)).ExcessAtReady(halving), 1e-12);
        // a bar that could not lose half of itself in a week even if all of it went
        Assert.Equal(double.PositiveInfinity, ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(50)).ExcessAtReady(10.2));
    }

    /// <summary>Student's t, two-sided 95 % (NIST/SEMATECH e-Handbook, 1.3.6.7.2, column 0.975), and 90 % (column 0.95); from memory of the usual table.</summary>
    [Theory]
    [InlineData(1, 0.95, 12.706)]
    [InlineData(2, 0.95, 4.303)]
    [InlineData(3, 0.95, 3.182)]
    [InlineData(4, 0.95, 2.776)]
    [InlineData(7, 0.95, 2.365)]
    [InlineData(10, 0.95, 2.228)]
    [InlineData(30, 0.95, 2.042)]
    [InlineData(1, 0.90, 6.314)]
    [InlineData(4, 0.90, 2.132)]
    public void StudentsT_IsThatOfTheTable(int freedom, double probability, double t) => Assert.Equal(t, StudentT.TwoSided(freedom, probability), 0.0006);

    [Fact]
    public void Table_IsRefusedInWords()
    {
        string Reason(string csv) => CureFile.Read(Encoding.UTF8.GetBytes(csv)).Faults.Single().Reason;
        Assert.Equal("there is no weighing in it", Reason("date,mass\n"));
        Assert.Equal("\"1.3.2026\" is no date; write it like 2026-03-01", Reason("date,mass\n1.3.2026,111 g\n"));
        Assert.Equal("\"0 g\" is no mass of a bar: it lies above 0 and up to 1000 kg", Reason("date,mass\n2026-03-01,0 g\n"));
        Assert.Equal("\"1001 kg\" is no mass of a bar: it lies above 0 and up to 1000 kg", Reason("date,mass\n2026-03-01,1001 kg\n"));
        Assert.Equal("the table is not in UTF-8; save it as \"CSV UTF-8\"", CureFile.Read([0xFF, 0xFE]).Faults.Single().Reason);
        Assert.Equal("the table has 1000001 bytes; at most 1000000 are read", CureFile.Read(new byte[1_000_001]).Faults.Single().Reason);
        Assert.DoesNotContain("bytes", CureFile.Read(new byte[1_000_000]).Faults[0].Reason, StringComparison.Ordinal);
        CureSeries bar = CureFile.Read("date,mass\n2026-03-01,1000 kg\n"u8, poured: Grams(1e6)).Series.Single();
        Assert.Equal(("the bar", 1e6), (bar.Name, bar.Weighings[0].Mass.Grams));
    }

    /// <summary>Directive 76/211/EEC, Annex I, point 2.4: just above each step of the table; percentages are rounded up to a tenth of a gram.</summary>
    [Theory]
    [InlineData(50.1, 4.5)]
    [InlineData(100.1, 4.6)]          // 4.5045
    [InlineData(200.1, 9)]
    [InlineData(300.1, 9.1)]          // 9.003
    [InlineData(500.1, 15)]
    [InlineData(1000.1, 15.1)]        // 15.0015
    [InlineData(10_000, 150)]
    public void TolerableNegativeError_AboveEachStep(double declared, double error) => Assert.Equal(error, TolerableNegativeError.Of(Grams(declared))!.Value.Grams, 1e-9);

    [Theory]
    [InlineData(453.5, "Net Wt 15.9 oz (453 g)")]        // 15.997 oz
    [InlineData(999.9, "Net Wt 2.2 lb (999 g)")]         // 2.2044 lb
    [InlineData(1000, "Net Wt 2.2 lb (1 kg)")]           // 2.2046 lb
    [InlineData(1555, "Net Wt 3.42 lb (1.55 kg)")]       // 3.4282 lb
    public void Declaration_ChangesItsUnits(double grams, string text) => Assert.Equal(text, NetQuantity.Declaration(Grams(grams)));

    [Fact]
    public void Sample_HasItsFigures()
    {
        NetQuantity five = new(Grams(200), Grams(201), Grams(202), Grams(203), Grams(204)), one = new(Grams(57.9));
        // squares 4 + 1 + 0 + 1 + 4 over four
        Assert.Equal((5, 202, 200, 204), (five.Count, five.Mean.Grams, five.Smallest.Grams, five.Largest.Grams));
        Assert.Equal(Math.Sqrt(2.5), five.Spread!.Value.Grams, 1e-12);
        Assert.Null(one.Spread);
        // half lost: 28.95 g, cut down
        Assert.Equal(28, one.Suggest(Ratio.FromPercent(50), Grams(1))!.Value.Grams);
        Assert.Equal(55, one.Suggest(Ratio.Zero, Grams(5))!.Value.Grams);
        Assert.Null(new NetQuantity(Grams(0.5)).Suggest(Ratio.Zero, Grams(1)));
        Assert.Null(one.ShareBelow(Grams(4)));
        // 200 g may fall short by 9: at 212 g by 9 too, so 203 is the limit (below it fall 200, 201 and 202)
        Assert.Equal(60, five.ShareBelow(Grams(212))!.Value.Percent, 1e-9);
        Assert.Equal(0, five.ShareBelowTwice(Grams(212))!.Value.Percent);
    }
}
