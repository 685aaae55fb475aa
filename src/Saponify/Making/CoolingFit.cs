using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// Newton's law through the readings of a maker. The logarithm of the excess over the surroundings falls in a straight line; the line is fitted
/// with the squared excess as weight, so that each reading counts by its own error. Exact for readings without error. Immutable, thread-safe.
/// </summary>
public sealed class CoolingFit
{
    /// <summary>Coverage factor for a normal reading error.</summary>
    private const double Coverage = 2;

    private readonly double _surroundings, _start, _perSecond;
    private readonly double[] _celsius, _seconds;

    internal CoolingFit(double surroundings, ReadingError error, CoolingReading[] readings)
    {
        Check(surroundings, error, readings);
        _surroundings = surroundings;
        Error = error;
        Readings = ValueList.Create<CoolingReading>(readings);
        _celsius = [.. readings.Select(r => r.Celsius)];
        _seconds = [.. readings.Select(r => r.Seconds)];
        (_start, _perSecond, _, _) = Line(_celsius);
        if (!(_perSecond < 0))
            throw new ArgumentException(Refusal(readings.Length, readings[^1], "taken together, the readings do not cool"), nameof(readings));
        Cooling = new(Temperature.FromDegreesCelsius(surroundings), Duration.FromSeconds(Math.Min(3.6e6, -1 / _perSecond)));
    }

    /// <summary>The law.</summary>
    public NewtonCooling Cooling { get; }

    /// <summary>The temperature of the law at the first reading.</summary>
    public Temperature Start => Temperature.FromDegreesCelsius(_surroundings + Math.Exp(_start));

    /// <summary>The readings.</summary>
    public ValueList<CoolingReading> Readings { get; }

    /// <summary>How far a reading may be off.</summary>
    public ReadingError Error { get; }

    /// <summary>
    /// When a temperature will be reached, with the span that the error of the readings leaves. The error of the temperature of the surroundings
    /// and departures from Newton's law, such as steam at first or a change of the bath, are not in it.
    /// </summary>
    /// <param name="wanted">The temperature wanted.</param>
    public CoolingForecast ForecastTo(Temperature wanted)
    {
        double excess = wanted.DegreesCelsius - _surroundings;
        if (!(excess > 0))
            return new(wanted, null, null, null, null);
        double target = Math.Log(excess);
        (double start, double slope, double[] toStart, double[] toSlope) = Line(_celsius);
        double at = (target - start) / slope;

        // how the time moves with each reading: d(at) = -(d(start) + at d(slope))/slope, and d(log excess) = d(reading)/excess
        double[] moves = new double[_celsius.Length];
        double square = 0;
        for (int i = 0; i < moves.Length; i++)
        {
            moves[i] = -(toStart[i] + (at * toSlope[i])) / slope / (_celsius[i] - _surroundings);
            square += moves[i] * moves[i];
        }
        double norm = Math.Sqrt(square);
        double uncertainty = norm * Error.Kelvins / (Error.IsNormal ? 1 : Math.Sqrt(3));
        double? Shifted(int sign)
        {
            double[] shifted = new double[moves.Length];
            for (int i = 0; i < shifted.Length; i++)
                shifted[i] = _celsius[i] + (sign * Error.Kelvins * (Error.IsNormal ? (norm > 0 ? Coverage * moves[i] / norm : 0) : Math.Sign(moves[i])));
            if (shifted.Any(c => c <= _surroundings))
                return null;
            (double from, double fall, _, _) = Line(shifted);
            return fall < 0 ? (target - from) / fall : null;
        }
        // readings that are off the other way tell an earlier time; when they cool too little to tell a time, it is open
        return new(wanted, at, Shifted(-1), Shifted(1), uncertainty);
    }

    /// <summary>Intercept and slope of the line through the logarithms, and how each moves with each logarithm.</summary>
    private (double Start, double Slope, double[] ToStart, double[] ToSlope) Line(double[] celsius)
    {
        int n = celsius.Length;
        double[] weights = [.. celsius.Select(c => (c - _surroundings) * (c - _surroundings))];
        double sum = 0, times = 0, squares = 0;
        for (int i = 0; i < n; i++)
        {
            sum += weights[i];
            times += weights[i] * _seconds[i];
        }
        double middle = times / sum;
        for (int i = 0; i < n; i++)
            squares += weights[i] * (_seconds[i] - middle) * (_seconds[i] - middle);
        double start = 0, slope = 0;
        double[] toStart = new double[n], toSlope = new double[n];
        for (int i = 0; i < n; i++)
        {
            toSlope[i] = weights[i] * (_seconds[i] - middle) / squares;
            toStart[i] = (weights[i] / sum) - (middle * toSlope[i]);
            double log = Math.Log(celsius[i] - _surroundings);
            start += toStart[i] * log;
            slope += toSlope[i] * log;
        }
        return (start, slope, toStart, toSlope);
    }

    private static void Check(double surroundings, ReadingError error, CoolingReading[] readings)
    {
        if (readings.Length < 2)
            throw new ArgumentException($"A fit needs at least two readings, but was given {Text.Number(readings.Length)}.", nameof(readings));
        double tolerated = (error.IsNormal ? 2 * Coverage : 2) * error.Kelvins;
        for (int i = 0; i < readings.Length; i++)
        {
            if (!(readings[i].Celsius > surroundings))
                throw new ArgumentException(Refusal(i + 1, readings[i], $"it is no warmer than the surroundings at {Text.Number(surroundings)} °C"), nameof(readings));
            if (i > 0 && !(readings[i].Seconds > readings[i - 1].Seconds))
                throw new ArgumentException(Refusal(i + 1, readings[i], $"its time must be after that of reading {Text.Number(i)}"), nameof(readings));
            if (i > 0 && readings[i].Celsius - readings[i - 1].Celsius > tolerated)
                throw new ArgumentException(Refusal(i + 1, readings[i], $"it is warmer than reading {Text.Number(i)} ({readings[i - 1]}) by more than the reading error explains; cooling lye does not warm up"), nameof(readings));
        }
    }

    private static string Refusal(int number, CoolingReading reading, string why) => $"Reading {Text.Number(number)} ({reading}) can't be used: {why}.";
}
