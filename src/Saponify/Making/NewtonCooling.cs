using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// Newton's law of cooling: the excess over the surroundings falls by the same share in the same time,
/// T(t) = surroundings + (start - surroundings) exp(-t/time constant). Immutable; equality by content.
/// </summary>
public sealed record NewtonCooling
{
    /// <summary>Time constants in seconds.</summary>
    internal static readonly Limits TimeLimits = new(1e-9, 3.6e6);

    /// <summary>Makes a law of cooling.</summary>
    /// <param name="surroundings">Temperature of room or bath, from -80 to 200 degrees Celsius.</param>
    /// <param name="timeConstant">Time in which the excess falls to 37 %, above 0 and up to 1000 hours.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public NewtonCooling(Temperature surroundings, Duration timeConstant)
    {
        Celsius = Stored.Celsius(surroundings, -80, 200, "The temperature of the surroundings");
        Seconds = Guard.InRange(timeConstant.Seconds, TimeLimits, "The time constant", "s", nameof(timeConstant));
    }

    internal double Celsius { get; }

    internal double Seconds { get; }

    /// <summary>Temperature of room or bath.</summary>
    public Temperature Surroundings => Temperature.FromDegreesCelsius(Celsius);

    /// <summary>Time in which the excess over the surroundings falls to 37 %.</summary>
    public Duration TimeConstant => Duration.FromSeconds(Seconds);

    /// <summary>A body of one temperature throughout: time constant = heat capacity/(heat transfer x area).</summary>
    /// <param name="surroundings">Temperature of room or bath, from -80 to 200 degrees Celsius.</param>
    /// <param name="heatCapacity">Heat capacity of content and vessel, above 0.</param>
    /// <param name="area">Area that gives off heat, above 0.</param>
    /// <param name="transfer">Heat transfer, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure of 0, negative, too large, or not a number.</exception>
    public static NewtonCooling Of(Temperature surroundings, Entropy heatCapacity, Area area, HeatTransferCoefficient transfer) =>
        new(surroundings, Duration.FromSeconds(
            Guard.InRange(heatCapacity.JoulesPerKelvin, 1e-9, 1e12, "The heat capacity", "J/K", nameof(heatCapacity))
            / Guard.InRange(area.SquareMeters, 1e-9, 1e6, "The area", "m2", nameof(area))
            / Guard.InRange(transfer.WattsPerSquareMeterKelvin, 1e-3, 1e5, "The heat transfer", "W/(m2 K)", nameof(transfer))));

    /// <summary>How warm it is after a time.</summary>
    /// <param name="start">How warm it was.</param>
    /// <param name="time">The time, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative time, or not a number.</exception>
    public Temperature After(Temperature start, Duration time) => Temperature.FromDegreesCelsius(
        Celsius + ((start.DegreesCelsius - Celsius) * Math.Exp(-Guard.InRange(time.Seconds, 0, double.MaxValue, "The time", "s", nameof(time)) / Seconds)));

    /// <summary>When it reaches a temperature: zero when it is there already, null when it never does, because the surroundings are no colder.</summary>
    /// <param name="start">How warm it is.</param>
    /// <param name="wanted">The temperature wanted.</param>
    public Duration? TimeTo(Temperature start, Temperature wanted)
    {
        double from = start.DegreesCelsius, to = wanted.DegreesCelsius;
        if (from <= to)
            return Duration.Zero;
        return to > Celsius ? Duration.FromSeconds(Seconds * Math.Log((from - Celsius) / (to - Celsius))) : null;
    }

    /// <summary>The law that fits readings of your own, whatever the vessel.</summary>
    /// <param name="surroundings">Temperature of room or bath, from -80 to 200 degrees Celsius.</param>
    /// <param name="error">How far a reading may be off.</param>
    /// <param name="readings">Two or more, in the order they were taken.</param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException">Fewer than two readings, times that do not rise, a reading that is no warmer than the surroundings, or readings that warm up; the message names the reading.</exception>
    public static CoolingFit Fit(Temperature surroundings, ReadingError error, params CoolingReading[] readings) =>
        new(Stored.Celsius(surroundings, -80, 200, "The temperature of the surroundings"), error, readings ?? throw new ArgumentNullException(nameof(readings)));
}
