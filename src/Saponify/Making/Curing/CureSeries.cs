using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// The weighings of one bar while it cures, in the order they were noted. Any series can be made; <see cref="Faults"/> says what is wrong with it.
/// Immutable; equality by content.
/// </summary>
public sealed record CureSeries
{
    /// <summary>Name of a bar that has none.</summary>
    internal const string Unnamed = "the bar";

    /// <summary>A gain below this share of the mass may be damp air. Common practice, no source.</summary>
    private const double Damp = 0.002;

    /// <summary>Starts a series.</summary>
    /// <param name="name">Name or number of the bar; not blank.</param>
    /// <param name="weighings">The weighings.</param>
    /// <exception cref="ArgumentNullException"><paramref name="weighings"/> is null.</exception>
    /// <exception cref="ArgumentException">The name is blank, or a weighing is <c>default</c>.</exception>
    public CureSeries(string name, params BarWeighing[] weighings)
    {
        Name = Guard.Text(name, "The name of a bar");
        ArgumentNullException.ThrowIfNull(weighings);
        if (Array.FindIndex(weighings, w => !w.IsWritten) is >= 0 and int blank)
            throw new ArgumentException($"Weighing {Text.Number(blank + 1)} has neither date nor mass: make it with both.", nameof(weighings));
        Weighings = ValueList.Create<BarWeighing>(weighings);
    }

    /// <summary>Name or number of the bar.</summary>
    public string Name { get; }

    /// <summary>The weighings, in the order they were noted.</summary>
    public ValueList<BarWeighing> Weighings { get; }

    /// <summary>The scale; null when it is not known: then the scatter of the readings alone says how sure they are.</summary>
    public Scale? Scale { get; init; }

    /// <summary>What the bar weighed as poured, for the mass balance; null when it is not known. Above 0 up to 1000 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Mass? Poured
    {
        get;
        init
        {
            if (value is { } mass)
                Stored.BarGrams(mass, "The poured mass of a bar", nameof(value));
            field = value;
        }
    }

    /// <summary>What of the batter can evaporate (<c>plan.Moisture()</c>); null when the formula is not known.</summary>
    public Moisture? Moisture { get; init; }

    /// <summary>Everything that is wrong, by the weighing it stands at.</summary>
    public ValueList<CureFault> Faults => [.. FindFaults().OrderBy(f => f.Index)];

    /// <summary>Loss since the first weighing as a share of it; null without weighings.</summary>
    public Ratio? LossSoFar => Weighings.Count == 0 ? null : Stored.ToRatio(1 - (Weighings[^1].Grams / Weighings[0].Grams));

    /// <summary>Water left at the last weighing, by mass balance; null when pour or formula are not known, or more was lost than can be.</summary>
    public Figure<Ratio>? WaterLeft => Poured is { } poured && Moisture is { } moisture && Weighings.Count > 0 ? moisture.WaterLeft(poured, Weighings[^1].Mass) : null;

    /// <summary>An exponential approach to a final mass, fitted to the weighings; it fails rather than guess.</summary>
    public CureFit Fit() => CureFit.Of(this);

    private List<CureFault> FindFaults()
    {
        List<CureFault> faults = [];
        if (Weighings.Count == 0)
            return faults;
        double[] sorted = [.. Weighings.Select(w => w.Grams).Order()];
        double middle = sorted[sorted.Length / 2];
        // the poured mass is another witness to which of the readings slipped
        if (Poured is { } known && Weighings.Count < 3)
            middle = known.Grams;
        BarWeighing? before = null;
        for (int i = 0; i < Weighings.Count; i++)
        {
            BarWeighing at = Weighings[i];
            if (i > 0 && at.Date < Weighings[i - 1].Date)
                faults.Add(new(i, CureFaultKind.DateBackwards, $"{Text.Day(at.Date)} is before {Text.Day(Weighings[i - 1].Date)}, the date above it; note weighings in the order of time"));
            double power = Math.Log10(at.Grams / middle), whole = Math.Round(power);
            if (whole != 0 && Math.Abs(power - whole) < 0.25)
            {
                faults.Add(new(i, CureFaultKind.DecimalSlip, $"{Text.Number(at.Grams)} g stands among weighings near {Text.Number(middle)} g: was {Text.Number(at.Grams / Math.Pow(10, whole))} g meant, or another unit?"));
                continue;
            }
            if (Loss(at) is { } impossible)
                faults.Add(new(i, CureFaultKind.ImpossibleLoss, impossible));
            if (before is { } last && at.Date >= last.Date && at.Grams - last.Grams > Math.Max(2 * (Scale?.StepGrams ?? 0), Damp * last.Grams))
                faults.Add(new(i, CureFaultKind.Gain, $"{Text.Number(at.Grams)} g is {Text.Number(at.Grams - last.Grams)} g more than on {Text.Day(last.Date)}; a drying bar does not gain, so check the reading, and the air of the room"));
            before = at;
        }
        return faults;
    }

    private string? Loss(BarWeighing at)
    {
        if (Moisture is not { } moisture)
            return null;
        double step = Scale?.StepGrams ?? 0;
        if (Poured is { } poured)
        {
            double least = poured.Grams * (1 - moisture.LargestFraction);
            return at.Grams < least - step ? $"{Text.Number(at.Grams)} g is less than the {Text.Number(least)} g that stay when everything that can evaporate has gone ({Text.Number(moisture.LargestFraction * 100)} % of the batter)" : null;
        }
        // without the poured mass the first weighing is what it weighed at least
        double floor = Weighings[0].Grams * (1 - moisture.LargestFraction);
        return at.Grams < floor - step ? $"{Text.Number(at.Grams)} g is {Text.Number((1 - (at.Grams / Weighings[0].Grams)) * 100)} % less than at first; the batter had only {Text.Number(moisture.LargestFraction * 100)} % to lose" : null;
    }
}
