using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// One additive line of a formula: a mass, a share of the listed fats, or an amount not known yet. Made by <see cref="Portions"/>.
/// Immutable; equality by content.
/// </summary>
public sealed record AdditivePortion : ILine<AdditivePortion>
{
    private readonly StoredMass? _mass;
    private readonly double? _ofFats;

    internal AdditivePortion(Additive additive)
    {
        ArgumentNullException.ThrowIfNull(additive);
        Additive = additive;
        Line = additive.Id;
        Stage = additive.UsualStage;
    }

    /// <summary>Id of the line, unique in its list: the additive's own id unless you give one; repeats get -2, -3 when the formula is made.</summary>
    /// <exception cref="ArgumentException">Blank, too long, or with brackets, slashes or control characters.</exception>
    public string Line { get; init => field = LineId.Check(value, "The id of a line"); }

    /// <summary>The additive.</summary>
    public Additive Additive { get; }

    /// <summary>When it goes in; the additive's usual stage unless you choose another.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such stage.</exception>
    public Stage Stage { get; init => field = Guard.Known(value, "A stage"); }

    /// <summary>Its mass, from 0 to 1e9 g; null when it is a share of the fats or not known. Setting it replaces the share.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 1e9 g, or not a number.</exception>
    public Mass? Mass
    {
        get => _mass?.Written;
        init => (_mass, _ofFats) = (value is { } mass ? StoredMass.Of(mass, "The mass of an additive") : null, null);
    }

    /// <summary>Its share of the mass of the listed fats, from 0 to 1000 %; null when it is a mass or not known. Setting it replaces the mass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Ratio? OfFats
    {
        get => _ofFats is { } fraction ? Stored.ToRatio(fraction) : null;
        init => (_mass, _ofFats) = (null, value is { } share ? Stored.Fraction(share, 0, 10, "The share of an additive") : null);
    }

    /// <summary>True when the amount is not known: what depends on it can't be told.</summary>
    public bool IsAmountUnknown => _mass is null && _ofFats is null;

    /// <summary>The same portion at another stage.</summary>
    /// <param name="stage">When it goes in.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such stage.</exception>
    public AdditivePortion At(Stage stage) => this with { Stage = stage };

    /// <summary>Grams for so many grams of listed fats; 0 when not known.</summary>
    internal double GramsFor(double listedFats) => _mass?.Grams ?? (_ofFats ?? 0) * listedFats;

    internal double? OfFatsFraction => _ofFats;

    AdditivePortion ILine<AdditivePortion>.WithLine(string line) => this with { Line = line };

    internal AdditivePortion Times(double factor) => _mass is { } mass ? this with { Mass = mass.Times(factor, "A scaled mass").Written } : this;
}
