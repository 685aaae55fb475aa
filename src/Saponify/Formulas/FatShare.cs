using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>A fat with its share by mass in a <see cref="FatBlend"/>. Immutable; equality by content.</summary>
public sealed record FatShare
{
    internal FatShare(Fat fat, double fraction)
    {
        ArgumentNullException.ThrowIfNull(fat);
        Fat = fat;
        Fraction = fraction;
    }

    internal double Fraction { get; }

    /// <summary>The fat.</summary>
    public Fat Fat { get; }

    /// <summary>Its share of the mass of the blend.</summary>
    public Ratio Share => Stored.ToRatio(Fraction);
}
