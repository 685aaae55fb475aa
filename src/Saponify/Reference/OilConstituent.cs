using UnitsNet;

namespace Saponify;

/// <summary>A listed allergen in an essential oil. Immutable; equality by content.</summary>
public sealed record OilConstituent
{
    internal OilConstituent(FragranceAllergen allergen, Ratio low, Ratio high, SourcedFigure figure)
    {
        Allergen = allergen;
        Low = low;
        High = high;
        Figure = figure;
    }

    /// <summary>Which allergen.</summary>
    public FragranceAllergen Allergen { get; }

    /// <summary>Least share of the oil by mass.</summary>
    public Ratio Low { get; }

    /// <summary>Greatest share of the oil by mass; labels reckon with it.</summary>
    public Ratio High { get; }

    /// <summary>The figure as published, with source and place.</summary>
    public SourcedFigure Figure { get; }

    /// <summary>Name and range; invariant.</summary>
    public override string ToString() => $"{Allergen.Name} {Figure.Range}";
}
