using UnitsNet;

namespace Saponify;

/// <summary>Part of a batter with its density. Immutable; equality by content.</summary>
public sealed record BatterPart
{
    internal BatterPart(string name, double grams, double low, double high, Evidence evidence, ValueList<string> sources, string note)
    {
        Name = name;
        Grams = grams;
        (Low, High) = (low, high);
        Density = new(UnitsNet.Density.FromGramsPerMilliliter((low + high) / 2), evidence, sources)
        {
            Low = UnitsNet.Density.FromGramsPerMilliliter(low),
            High = UnitsNet.Density.FromGramsPerMilliliter(high),
            Note = note.Length == 0 ? null : note,
        };
    }

    internal double Grams { get; }

    /// <summary>g/mL.</summary>
    internal double Low { get; }

    /// <summary>g/mL.</summary>
    internal double High { get; }

    /// <summary>What it is, for people.</summary>
    public string Name { get; }

    /// <summary>Its mass.</summary>
    public Mass Mass => Mass.FromGrams(Grams);

    /// <summary>Its density at the pour, with range and source; an estimate says so in its note.</summary>
    public Figure<Density> Density { get; }
}
