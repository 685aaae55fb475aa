using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>An alkali with its share in a plan of several. Made by <see cref="Portions"/>. Immutable; equality by content.</summary>
public sealed record AlkaliShare : ILine<AlkaliShare>
{
    internal AlkaliShare(Alkali alkali, double fraction, AlkaliShareBasis basis)
    {
        ArgumentNullException.ThrowIfNull(alkali);
        Alkali = alkali;
        Line = alkali.Id;
        Fraction = fraction;
        Basis = basis;
    }

    internal double Fraction { get; }

    /// <summary>Id of the line, unique in its list: the alkali's id unless you give one.</summary>
    /// <exception cref="ArgumentException">Blank, too long, or with brackets, slashes or control characters.</exception>
    public string Line { get; init => field = LineId.Check(value, "The id of a line"); }

    /// <summary>The alkali.</summary>
    public Alkali Alkali { get; }

    /// <summary>Its share.</summary>
    public Ratio Share => Stored.ToRatio(Fraction);

    /// <summary>What <see cref="Share"/> is a share of.</summary>
    public AlkaliShareBasis Basis { get; }

    AlkaliShare ILine<AlkaliShare>.WithLine(string line) => this with { Line = line };
}
