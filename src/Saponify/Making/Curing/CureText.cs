using System.Text;
using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>What the weighings of curing bars tell, as text for people with a small plot. Plain characters, invariant.</summary>
internal static class CureText
{
    private const int PlotWidth = 44;

    internal static string Of(ValueList<CureSeries> bars, ReadyWhen? when, Ratio furtherLoss, Mass? declared)
    {
        StringBuilder text = new();
        foreach (CureSeries bar in bars)
        {
            text.Append(text.Length == 0 ? "" : "\n");
            Bar(text, bar, when);
        }
        Net(text, bars, furtherLoss, declared);
        return text.ToString();
    }

    private static void Bar(StringBuilder text, CureSeries bar, ReadyWhen? when)
    {
        BarWeighing first = bar.Weighings[0], last = bar.Weighings[^1];
        MassUnit unit = UnitOf(first);
        text.Append(bar.Name).Append(": ").Append(Text.Number(bar.Weighings.Count)).Append(" weighings, ").Append(Text.Day(first.Date)).Append(" to ").Append(Text.Day(last.Date)).Append('\n');
        text.Append("  from ").Append(Show(first.Grams, unit)).Append(" to ").Append(Show(last.Grams, unit)).Append(": ").Append(Percent(bar.LossSoFar!.Value)).Append(" lost since the first weighing\n");
        Water(text, bar, unit);
        CureFit fit = bar.Fit();
        CureForecast? forecast = when is { } wanted ? fit.Forecast(wanted, Ratio.FromPercent(95)) : null;
        if (!fit.Succeeded)
        {
            text.Append("  ").Append(fit.Verdict).Append("\n  No rate is made up for it. Common practice: four to six weeks (no source).\n");
        }
        else
        {
            Figure<Mass> final = fit.FinalMass!;
            text.Append("  final mass ").Append(Show(final.Value.Grams, unit)).Append(" (95 %: ").Append(final.Low is { } low ? Show(low.Grams, unit) : "open").Append(" to ").Append(final.High is { } high ? Show(high.Grams, unit) : "open").Append(")\n")
                .Append("  the loss to come falls to 37 % in ").Append(Text.Fixed(fit.TimeConstant!.Value.Days, 1)).Append(" days; scatter ").Append(Show(fit.Scatter!.Value.Grams, unit)).Append('\n');
            if (forecast is not null)
                text.Append("  ready (").Append(forecast.When).Append("): ").Append(Day(forecast.Date)).Append(" (95 %: ").Append(Day(forecast.Earliest)).Append(" to ").Append(Day(forecast.Latest)).Append("; estimate)\n");
            else
                text.Append("  Say when a bar is ready for you; a weekly loss below about 1 % is common practice (no source).\n");
        }
        Plot(text, bar, fit, forecast, unit);
    }

    private static void Water(StringBuilder text, CureSeries bar, MassUnit unit)
    {
        if (bar.Moisture is not { } moisture)
            return;
        if (bar.Poured is not { } poured)
            text.Append("  the batter could lose ").Append(Percent(moisture.LargestLoss)).Append(" at the most (mass balance)\n");
        else if (bar.WaterLeft is { } water)
            text.Append("  poured at ").Append(Show(poured.Grams, unit)).Append("; water left ").Append(Percent(water.Low!.Value)).Append(water.Low.Value.Percent < water.High!.Value.Percent - 0.05 ? " to " + Percent(water.High.Value) : "").Append(" (mass balance); it can't fall below ")
                .Append(Show(poured.Grams * (1 - moisture.LargestFraction), unit)).Append('\n');
    }

    /// <summary>One line a weighing: a star for the reading, a dot for the fitted curve; then what the curve says of the ready day.</summary>
    private static void Plot(StringBuilder text, CureSeries bar, CureFit fit, CureForecast? forecast, MassUnit unit)
    {
        double low = bar.Weighings.Min(w => w.Grams), high = bar.Weighings.Max(w => w.Grams);
        if (fit.FinalMass is { } final)
            low = Math.Min(low, final.Value.Grams);
        if (!(high > low))
            return;
        text.Append("  (* weighed").Append(fit.Succeeded ? ", . fitted" : "").Append("; from ").Append(Show(low, unit)).Append(" to ").Append(Show(high, unit)).Append(")\n");
        foreach (BarWeighing weighing in bar.Weighings)
            Line(weighing.Date, weighing.Grams, fit.MassOn(weighing.Date)?.Value.Grams, "");
        if (forecast?.Date is { } ready && ready > bar.Weighings[^1].Date)
            Line(ready, null, fit.MassOn(ready)!.Value.Grams, " ready");

        void Line(DateOnly day, double? weighed, double? fitted, string note)
        {
            char[] line = new string(' ', PlotWidth + 1).ToCharArray();
            if (fitted is { } curve)
                line[Column(curve)] = '.';
            if (weighed is { } reading)
                line[Column(reading)] = '*';
            text.Append("  ").Append(Text.Day(day)).Append(' ').Append(Show(weighed ?? fitted!.Value, unit).PadLeft(9)).Append(" |").Append(new string(line).TrimEnd()).Append(note).Append('\n');
        }

        int Column(double grams) => (int)Math.Round(Math.Clamp((grams - low) / (high - low), 0, 1) * PlotWidth);
    }

    private static void Net(StringBuilder text, ValueList<CureSeries> bars, Ratio furtherLoss, Mass? declared)
    {
        if (bars.Count < 2 && declared is null)
            return;
        NetQuantity net = new([.. bars.Select(b => b.Weighings[^1].Mass)]);
        MassUnit unit = UnitOf(bars[0].Weighings[0]);
        text.Append("\nNet quantity, by the last weighing of each bar\n  ").Append(Text.Number(net.Count)).Append(net.Count == 1 ? " bar: mean " : " bars: mean ").Append(Show(net.Mean.Grams, unit));
        if (net.Spread is { } spread)
            text.Append(", spread ").Append(Show(spread.Grams, unit));
        text.Append(", smallest ").Append(Show(net.Smallest.Grams, unit)).Append('\n');
        if (declared is { } mass)
        {
            text.Append("  declared ").Append(Show(mass.Grams, unit)).Append(": ");
            text.Append(net.ShareBelow(mass) is { } below && TolerableNegativeError.Of(mass) is { } error
                ? $"{Percent(below)} fall short by more than {Show(error.Grams, unit)}, {Percent(net.ShareBelowTwice(mass)!.Value)} by more than twice that (Directive 76/211/EEC)\n"
                : "Directive 76/211/EEC has no tolerance for it\n");
        }
        string loss = furtherLoss.DecimalFractions > 0 ? $"with a further loss of {Percent(furtherLoss)}" : "if nothing more is lost";
        if (net.Suggest(furtherLoss, Mass.FromGrams(1)) is { } suggested)
            text.Append("  could be declared, cut down, ").Append(loss).Append(": ").Append(NetQuantity.Declaration(suggested)).Append('\n');
        text.Append("  Which rules hold for goods that dry, local rules decide.\n");
    }

    private static MassUnit UnitOf(BarWeighing weighing) => UnitTable.Name(UnitTable.Mass, weighing.Mass.Unit) is null ? MassUnit.Gram : weighing.Mass.Unit;

    private static string Show(double grams, MassUnit unit)
    {
        double value = Stored.GramsIn(grams, unit);
        return $"{Text.Fixed(value, unit is MassUnit.Gram ? 1 : 2)} {UnitTable.Name(UnitTable.Mass, unit)}";
    }

    private static string Percent(Ratio share) => Text.Fixed(share.Percent, 1) + " %";

    private static string Day(DateOnly? day) => day is { } known ? Text.Day(known) : "open";
}
