using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>What a vessel stands in while it cools: how warm it is, and how well it takes heat. Immutable; equality by content.</summary>
public sealed record Surroundings
{
    internal static readonly Limits TemperatureLimits = new(-80, 100);
    internal static readonly Limits TransferLimits = new(0.1, 1e5);

    /// <summary>Your own figures.</summary>
    /// <param name="temperature">From -80 to 100 degrees Celsius.</param>
    /// <param name="least">The least the heat transfer may be, from 0.1 to 100 000 W/(m2 K).</param>
    /// <param name="most">The most it may be; equal to the least when you know it.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, the most below the least, or not a number.</exception>
    public Surroundings(Temperature temperature, HeatTransferCoefficient least, HeatTransferCoefficient most)
        : this(Stored.Celsius(temperature, TemperatureLimits, "The temperature of the surroundings"),
            Guard.InRange(least.WattsPerSquareMeterKelvin, TransferLimits, "The least heat transfer", "W/(m2 K)", nameof(least)),
            Guard.InRange(most.WattsPerSquareMeterKelvin, least.WattsPerSquareMeterKelvin, TransferLimits.High, "The most heat transfer", "W/(m2 K)", nameof(most)),
            "own figures", Evidence.Measured)
    {
    }

    private Surroundings(double celsius, double least, double most, string name, Evidence evidence) =>
        (Celsius, LeastTransfer, MostTransfer, Name, Evidence) = (celsius, least, most, name, evidence);

    internal double Celsius { get; }

    internal double LeastTransfer { get; }

    internal double MostTransfer { get; }

    /// <summary>What it is, for people.</summary>
    public string Name { get; }

    /// <summary>How well the heat transfer is supported; your own figures count as measured.</summary>
    public Evidence Evidence { get; }

    /// <summary>How warm it is.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(Celsius);

    /// <summary>The least that the heat transfer may be.</summary>
    public HeatTransferCoefficient Least => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(LeastTransfer);

    /// <summary>The most that it may be.</summary>
    public HeatTransferCoefficient Most => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(MostTransfer);

    /// <summary>Still air of a room: 8 to 15 W/(m2 K), radiation included (memory). A free surface loses more while it steams.</summary>
    /// <param name="room">From -80 to 100 degrees Celsius.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static Surroundings StillAir(Temperature room) => new(Stored.Celsius(room, TemperatureLimits, "The temperature of the room"), 8, 15, "still air", Evidence.Memory);

    /// <summary>
    /// A bath of water with ice floating in it, as deep as the content: 0 degrees Celsius, 50 to 200 W/(m2 K) through a wall of plastic or glass
    /// while the lye is stirred now and then (memory).
    /// </summary>
    public static Surroundings IceBath() => new(0, 50, 200, "ice bath", Evidence.Memory);

    /// <summary>Ice that a bath melts to take up so much heat: the least to put in. Source: crc-fusion, 333.6 J/g.</summary>
    /// <param name="heat">Heat to take up, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or not a number.</exception>
    public static Mass IceFor(Energy heat) => Mass.FromGrams(Guard.InRange(heat.Joules, 0, 1e15, "The heat", "J", nameof(heat)) / HeatCapacities.MeltingOfIce);
}
