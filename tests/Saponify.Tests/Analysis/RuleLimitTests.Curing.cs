namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    private static readonly DateOnly s_firstDay = new(2026, 1, 5);

    private static Mass G(double grams) => Mass.FromGrams(grams);

    /// <summary>A bar weighed once a week.</summary>
    private static CureSeries Weekly(params double[] grams) => new("bar 1", [.. grams.Select((g, i) => new BarWeighing(s_firstDay.AddDays(7 * i), G(g)))]);

    [Fact]
    public void SFY6106_OnlyAWeighingThatCantBeRight_IsNamed()
    {
        // a gain of up to 0.2 % may be damp air
        Assert.Empty(Find("SFY6106", s_plain, new() { Cure = Weekly(140, 130, 130.2) }));
        Assert.Equal("Gain", Assert.Single(Find("SFY6106", s_plain, new() { Cure = Weekly(140, 130, 130.3) })).Template.Name);
        Assert.Contains("was 128 g meant", Assert.Single(Find("SFY6106", s_plain, new() { Cure = Weekly(140, 132, 12.8, 126) })).ToMessage(), StringComparison.Ordinal);
        BarWeighing[] mixed = [new(s_firstDay.AddDays(7), G(130)), new(s_firstDay, G(129))];
        Assert.Equal("DateBackwards", Assert.Single(Find("SFY6106", s_plain, new() { Cure = new("bar 1", mixed) })).Template.Name);
        Assert.Empty(Find("SFY6106", s_plain));
    }

    [Fact]
    public void SFY6106_NoBarDriesBelowItsSolids_AndTheFormulaSaysThem()
    {
        // a lye of 30 % for 700 g of fats holds some 215 g of water in some 1010 g of batter: no bar loses half of itself
        Assert.Empty(Find("SFY6106", s_plain, new() { Cure = Weekly(140, 125, 115) }));
        Assert.Equal("ImpossibleLoss", Assert.Single(Find("SFY6106", s_plain, new() { Cure = Weekly(140, 125, 70) })).Template.Name);
    }

    [Fact]
    public void SFY6107_TheDayOfTheForecastsLateEnd_IsEarlyEnough()
    {
        // m(t) = 120 g + 20 g x 0.5^(t/7 days): the loss of the week ahead is half of what is still to come
        CureSeries exact = Weekly([.. Enumerable.Range(0, 10).Select(i => 120 + (20 * Math.Pow(0.5, i)))]);
        BatchSetup Sold(DateOnly day) => new() { Cure = exact, Ready = ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(1)), SoldFrom = day };
        // half of 20 x 0.5^k is 1 % of 120 + 20 x 0.5^k where 20 x 0.5^k = 1.2/0.49 g: k = log2(20 x 0.49/1.2) = 3.03 weeks, the 22nd day
        Assert.Empty(Find("SFY6107", s_plain, Sold(s_firstDay.AddDays(22))));
        Diagnostic early = Assert.Single(Find("SFY6107", s_plain, Sold(s_firstDay.AddDays(21))));
        Assert.Equal("TooEarly", early.Template.Name);
        Assert.Contains("2026-01-27 is expected", early.ToMessage(), StringComparison.Ordinal);
        CureSeries scattered = Weekly([.. exact.Weighings.Select((w, i) => w.Mass.Grams + (i % 2 == 0 ? 0.2 : -0.2))]);
        CureForecast forecast = scattered.Fit().Forecast(ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(1)), Ratio.FromPercent(95))!;
        Assert.True(forecast.Date < forecast.Latest);
        Assert.Empty(Find("SFY6107", s_plain, Sold(forecast.Latest!.Value) with { Cure = scattered }));
        Assert.Equal("MayBeTooEarly", Assert.Single(Find("SFY6107", s_plain, Sold(forecast.Date!.Value) with { Cure = scattered })).Template.Name);
        Assert.Equal("TooEarly", Assert.Single(Find("SFY6107", s_plain, Sold(forecast.Date!.Value.AddDays(-1)) with { Cure = scattered })).Template.Name);
        // 80 g that get less by 0.2 % of themselves a week lose 0.06 g of 89 g, 0.06 %, after ten years
        CureSeries slow = Weekly([.. Enumerable.Range(0, 10).Select(i => 60 + (80 * Math.Pow(0.998, i)))]);
        BatchSetup never = Sold(s_firstDay.AddDays(60)) with { Cure = slow, Ready = ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(0.01)) };
        Assert.EndsWith(": no day within ten years is expected, and the weighings leave the latest day open", Assert.Single(Find("SFY6107", s_plain, never)).ToMessage(), StringComparison.Ordinal);
        // without a forecast another rule speaks
        Assert.Empty(Find("SFY6107", s_plain, Sold(s_firstDay) with { Cure = Weekly(140, 130) }));
    }

    [Fact]
    public void SFY6108_FourWeeksAreCommonPractice_UnlessTheWeighingsTell()
    {
        BatchSetup After(int days) => new() { PouredOn = s_firstDay, SoldFrom = s_firstDay.AddDays(days) };
        Assert.Empty(Find("SFY6108", s_plain, After(28)));
        Assert.NotEmpty(Find("SFY6108", s_plain, After(27)));
        Assert.Empty(Find("SFY6108", s_plain, After(27), ("weeks", 3)));
        Assert.NotEmpty(Find("SFY6108", s_plain, After(-1)));
        CureSeries dry = Weekly([.. Enumerable.Range(0, 10).Select(i => 120 + (20 * Math.Pow(0.5, i)))]);
        Assert.Empty(Find("SFY6108", s_plain, After(27) with { Cure = dry, Ready = ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(1)) }));
    }

    [Fact]
    public void SFY6109_TheSampleSaysWhatCanBeDeclared()
    {
        BatchSetup Labelled(double declared, params double[] bars) => new() { CuredBars = [.. bars.Select(G)], DeclaredMass = G(declared) };
        // 16 bars, mean 100.5 g, s = 0.5164 g: t(15, 90 % two-sided) = 1.753 (Student's t, from memory), so 100.5 - 1.753 x 0.5164/4 = 100.274 g
        double[] bars = [.. Enumerable.Range(0, 16).Select(i => i % 2 == 0 ? 100.0 : 101.0)];
        Assert.Empty(Find("SFY6109", s_plain, Labelled(100.27, bars)));
        Assert.Contains("declare 100.2 g at most", Assert.Single(Find("SFY6109", s_plain, Labelled(100.28, bars))).ToMessage(), StringComparison.Ordinal);
        // Directive 76/211/EEC, Annex I (eu-76-211): 4.5 % may be missing from 50 to 100 g, so that 95.5 g is the least for 100 g
        double[] one = [.. Enumerable.Repeat(101.0, 40), 95.5];
        Assert.Empty(Find("SFY6109", s_plain, Labelled(100, one)));
        Assert.NotEmpty(Find("SFY6109", s_plain, Labelled(100, [.. one[..40], 95.4])));
        Assert.Empty(Find("SFY6109", s_plain, new() { DeclaredMass = G(100) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Labelled(100, 0));
    }
}
