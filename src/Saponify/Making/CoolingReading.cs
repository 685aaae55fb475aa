using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>A temperature that was read, and when. Equality is exact; <c>default</c> is 0 degrees Celsius at the first reading.</summary>
public readonly record struct CoolingReading
{
    /// <summary>Makes a reading.</summary>
    /// <param name="temperature">What the thermometer showed, from -50 to 250 degrees Celsius.</param>
    /// <param name="sinceFirst">Time since the first reading, from 0 to 1000 hours.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public CoolingReading(Temperature temperature, Duration sinceFirst)
    {
        Celsius = Stored.Celsius(temperature, -50, 250, "A reading");
        Seconds = Guard.InRange(sinceFirst.Seconds, 0, 3.6e6, "The time of a reading", "s", nameof(sinceFirst));
    }

    internal double Celsius { get; }

    internal double Seconds { get; }

    /// <summary>What the thermometer showed.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(Celsius);

    /// <summary>Time since the first reading.</summary>
    public Duration SinceFirst => Duration.FromSeconds(Seconds);

    /// <summary>For example <c>62.5 °C after 10 min</c>; invariant.</summary>
    public override string ToString() => $"{Text.Number(Celsius)} °C after {Text.Number(Seconds / 60)} min";
}
