using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>What the scale showed for one line. Immutable; equality by content.</summary>
public sealed record Weight
{
    private readonly StoredMass _mass;

    internal Weight(string line, Mass mass)
    {
        Line = line;
        _mass = StoredMass.Of(mass, "A weighed mass");
    }

    internal double Grams => _mass.Grams;

    /// <summary>The line by its stable path, for example <c>fats[olive-oil]</c> or <c>liquids.lyeLiquid</c>.</summary>
    public string Line { get; }

    /// <summary>What the scale showed.</summary>
    public Mass Mass => _mass.Written;
}
