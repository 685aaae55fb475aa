using System.Runtime.CompilerServices;
using UnitsNet;

namespace Saponify.Internals;

/// <summary>A temperature as it was written, with its degrees Celsius. Equal when those are equal.</summary>
internal readonly struct StoredTemperature : IEquatable<StoredTemperature>
{
    private StoredTemperature(Temperature written, double celsius) => (Written, Celsius) = (written, celsius);

    internal Temperature Written { get; }

    internal double Celsius { get; }

    internal static StoredTemperature Of(Temperature temperature, double low, double high, string what, [CallerArgumentExpression(nameof(temperature))] string? name = null) =>
        new(temperature, Stored.Celsius(temperature, low, high, what, name));

    public bool Equals(StoredTemperature other) => Celsius.Equals(other.Celsius);

    public override bool Equals(object? obj) => obj is StoredTemperature other && Equals(other);

    public override int GetHashCode() => Celsius.GetHashCode();
}
