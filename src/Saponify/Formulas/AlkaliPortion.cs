using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>An alkali with the mass of it, as weighed. Made by <see cref="Portions"/>. Immutable; equality by content.</summary>
public sealed record AlkaliPortion : ILine<AlkaliPortion>
{
    private readonly StoredMass _mass;

    internal AlkaliPortion(Alkali alkali, Mass mass)
    {
        ArgumentNullException.ThrowIfNull(alkali);
        Alkali = alkali;
        Line = alkali.Id;
        Mass = mass;
    }

    internal double Grams => _mass.Grams;

    /// <summary>Id of the line, unique in its list: the alkali's id unless you give one.</summary>
    /// <exception cref="ArgumentException">Blank, too long, or with brackets, slashes or control characters.</exception>
    public string Line { get; init => field = LineId.Check(value, "The id of a line"); }

    /// <summary>The alkali.</summary>
    public Alkali Alkali { get; }

    /// <summary>Mass as weighed, impurity or solution water included, from 0 to 1e9 g.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 1e9 g, or not a number.</exception>
    public Mass Mass { get => _mass.Written; init => _mass = StoredMass.Of(value, "The mass of an alkali", "mass"); }

    /// <summary>For people, for example <c>101.6 g sodium hydroxide, 98 %</c>: in the unit it was given in, cut and never rounded up; invariant.</summary>
    public override string ToString() => $"{Text.Cut(Mass.Value)} {AmountWriter.Unit(Mass)} {Alkali}";

    AlkaliPortion ILine<AlkaliPortion>.WithLine(string line) => this with { Line = line };

    internal AlkaliPortion Times(double factor) => this with { Mass = _mass.Times(factor, "A scaled mass").Written };
}
