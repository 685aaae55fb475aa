namespace Saponify.Tests.Making;

public partial class CureTests
{
    [Fact]
    public void Intervals_CoverWhatTheyPromise()
    {
        const int Count = 400;
        const double Time = 13;
        Random random = new(20261125);
        double whole = s_ready.ExcessAtReady(Time), trueDay = Time * Math.Log(Excess / (Final * whole));
        DateOnly trueDate = s_first.AddDays((int)Math.Ceiling(trueDay));
        int fitted = 0, final = 0, ready = 0, later = 0;
        for (int i = 0; i < Count; i++)
        {
            CureFit fit = Series(d => Curve(d, Time) + (0.25 * Normal(random)), s_days).Fit();
            if (!fit.Succeeded)
                continue;
            fitted++;
            bool Holds(Figure<Mass> figure, double truth) => (figure.Low?.Grams ?? 0) <= truth && truth <= (figure.High?.Grams ?? double.MaxValue);
            final += Holds(fit.FinalMass!, Final) ? 1 : 0;
            later += Holds(fit.MassOn(s_first.AddDays(60))!, Curve(60, Time)) ? 1 : 0;
            CureForecast forecast = fit.Forecast(s_ready, Ratio.FromPercent(95))!;
            ready += forecast.Earliest <= trueDate && (forecast.Latest is null || trueDate <= forecast.Latest) ? 1 : 0;
        }
        TestContext.Current.TestOutputHelper?.WriteLine($"{fitted} of {Count} fitted; final {final}, mass at day 60 {later}, ready {ready}");
        // 95 % promised; 400 series tell it to 2 points (two standard errors)
        Assert.True(fitted >= 0.98 * Count, $"{fitted} fitted");
        Assert.InRange(final / (double)fitted, 0.925, 0.98);
        Assert.InRange(later / (double)fitted, 0.925, 0.98);
        // whole days widen it a little
        Assert.InRange(ready / (double)fitted, 0.925, 1);
    }
}
