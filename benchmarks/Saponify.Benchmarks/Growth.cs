using System.Diagnostics;
using UnitsNet;

namespace Saponify.Benchmarks;

/// <summary>How the time grows with the number of fats in a formula and with the number of formulas: the slope of log time over log number.</summary>
internal static class Growth
{
    private const int Rounds = 25;

    /// <summary>Exponents; 1 is linear. With few fats the fixed cost of a plan flatters the slope, so the last decade stands by itself.</summary>
    internal static (string What, double Exponent)[] Exponents(TextWriter log)
    {
        Pantry pantry = Pantry.Reference;
        Formula Of(int fats) => Formulas.SixFatsAndMilk() with { Fats = [.. Enumerable.Range(0, fats).Select(i => pantry.Fats.Where(f => f.Saponification is not null).ElementAt(i % 100).Weighing(Mass.FromGrams(10 + (i % 7))))] };

        // made anew from its portions, planned, every table filled: all that depends on the number of fats
        double[] fats = Exponents(log, "fats", [1, 3, 10, 30, 100, 300, 1000], lastFrom: 100, fats =>
        {
            Formula formula = Of(fats);
            return () => Formulas.Tables((formula with { Fats = [.. formula.Fats] }).Plan());
        });
        double[] formulas = Exponents(log, "formulas", [1, 10, 100, 1000, 10_000], lastFrom: 1000, count =>
        {
            Formula[] all = [.. Enumerable.Range(0, count).Select(i => Formulas.SixFatsAndMilk().ScaledBy(1 + (i % 10)))];
            return () => all.Sum(f => Formulas.Tables(f.Plan()));
        });
        return
        [
            ("of a plan and its tables with the fats, 1 to 1000", fats[0]), ("the same, 100 to 1000", fats[1]),
            ("with the formulas, 1 to 10,000", formulas[0]), ("the same, 1000 to 10,000", formulas[1]),
        ];
    }

    private static double[] Exponents(TextWriter log, string what, int[] sizes, int lastFrom, Func<int, Func<int>> prepare)
    {
        Func<int>[] actions = [.. sizes.Select(prepare)];
        var best = new double[sizes.Length];
        Array.Fill(best, double.MaxValue);
        for (int round = 0; round < Rounds; round++)                     // sizes in turn, so that a slow spell of the machine meets them all
        {
            for (int i = 0; i < sizes.Length; i++)
                best[i] = Math.Min(best[i], Nanoseconds(actions[i], sizes[i]));
        }
        for (int i = 0; i < sizes.Length; i++)
            log.WriteLine(FormattableString.Invariant($"{sizes[i],6} {what}: {best[i],14:N0} ns, {best[i] / sizes[i],8:N0} ns each"));
        double From(int least) => Slope([.. sizes.Where(n => n >= least).Select(n => Math.Log(n))], [.. best.Where((_, i) => sizes[i] >= least).Select(t => Math.Log(t))]);
        return [From(1), From(lastFrom)];
    }

    private static double Nanoseconds(Func<int> action, int size)
    {
        int repeats = Math.Max(1, 20_000 / size);
        long start = Stopwatch.GetTimestamp();
        int sum = 0;
        for (int i = 0; i < repeats; i++)
            sum += action();
        double elapsed = Stopwatch.GetElapsedTime(start).TotalNanoseconds / repeats;
        return sum > 0 ? elapsed : throw new InvalidOperationException("nothing was planned");
    }

    private static double Slope(double[] x, double[] y)
    {
        double meanX = x.Average(), meanY = y.Average();
        return x.Zip(y, (a, b) => (a - meanX) * (b - meanY)).Sum() / x.Sum(a => (a - meanX) * (a - meanX));
    }
}
