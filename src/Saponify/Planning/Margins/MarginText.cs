using System.Text;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>The margin for people: one line, a small picture, what contributes most.</summary>
internal static class MarginText
{
    private const int Width = 60;

    /// <summary>Causes with a smaller share of the variance are not listed.</summary>
    internal const double LeastShown = 0.01;

    internal static string Of(Margin margin)
    {
        StringBuilder text = new();
        text.Append("Superfat ").Append(Percent(margin.NominalFraction)).Append(" nominal, ").Append(Percent(margin.BestEstimateFraction)).Append(" best estimate; ")
            .Append(Percent(margin.LowFraction)).Append(" to ").Append(Percent(margin.HighFraction)).Append(" with ").Append(Text.Number(margin.CoverageFraction * 100)).Append(" % probability; at worst ")
            .Append(Percent(margin.WorstFraction)).Append(", at best ").Append(Percent(margin.BestFraction)).Append("; lye-heavy with ").Append(Probability(margin.LyeHeavyProbability)).Append(" probability.\n");
        Picture(text, margin);
        foreach (MarginCause cause in margin.Causes)
        {
            if (cause.ShareOfVariance.DecimalFractions >= LeastShown)
                text.Append("  ").Append(Text.Fixed(cause.ShareOfVariance.Percent, 0).PadLeft(3)).Append(" %  +-").Append(Text.Fixed(cause.HalfWidth.Percent, 2)).Append(" points  ").Append(cause.What).Append('\n');
        }
        if (margin.Causes.Count == 0)
            text.Append("  nothing in it is stated to be in doubt\n");
        foreach (string missing in margin.NoData)
            text.Append("  no data  ").Append(missing).Append(": its table states no range\n");
        return text.ToString();
    }

    /// <summary>From the worst to the best case: the interval, the nominal superfat (n), the best estimate (*), and zero (0) where lye-heavy begins.</summary>
    private static void Picture(StringBuilder text, Margin margin)
    {
        double low = Math.Min(margin.WorstFraction, 0), high = Math.Max(margin.BestFraction, 0), span = Math.Max(high - low, 1e-9);
        char[] line = new string(' ', Width + 1).ToCharArray();
        int At(double fraction) => (int)Math.Clamp(Math.Round((fraction - low) / span * Width), 0, Width);
        for (int i = At(margin.WorstFraction); i <= At(margin.BestFraction); i++)
            line[i] = '-';
        for (int i = At(margin.LowFraction); i <= At(margin.HighFraction); i++)
            line[i] = '=';
        line[At(margin.WorstFraction)] = '|';
        line[At(margin.BestFraction)] = '|';
        line[At(0)] = '0';
        line[At(margin.BestEstimateFraction)] = '*';
        line[At(margin.NominalFraction)] = 'n';
        text.Append("  ").Append(Percent(low)).Append(' ').Append(line).Append(' ').Append(Percent(high)).Append('\n')
            .Append("  0 where lye-heavy begins, n nominal, * best estimate, = interval, | worst and best case\n");
    }

    internal static string Percent(double fraction) => Text.Fixed(fraction * 100, 1) + " %";

    internal static string Probability(double fraction) => fraction == 0 ? "no" : fraction < 0.0001 ? "less than 0.01 %" : Text.Number(fraction * 100) + " %";
}
