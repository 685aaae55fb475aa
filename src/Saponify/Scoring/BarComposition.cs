using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>
/// What a bar is made of, fresh or at a later moisture. Acids take up lye first, then free fatty acids, which free water, then glycerides,
/// which free one glycerol for three hydroxides; what does not react is spread over all glycerides. Acids and fats take cations in the
/// ratio of supply. The parts add up to the mass of the bar. Made by <c>formula.Composition()</c> or <c>plan.Composition()</c>.
/// Immutable, thread-safe.
/// </summary>
/// <remarks>Source: stoichiometry, with molar masses of ciaaw-2021. Reaction is taken as complete; a few weeks bring it there.</remarks>
public sealed class BarComposition
{
    private readonly double[] _grams = new double[Enum.GetValues<PartKind>().Length];
    private readonly double _bar;
    private readonly double _fattyMatter;
    private readonly MassUnit _unit;

    internal BarComposition(string name, MassUnit unit, IReadOnlyList<(PartKind Kind, string Name, double Grams, FattyAcid? Acid, AlkaliKind? Cation)> parts, double fattyMatter, ValueList<string> remarks)
    {
        Name = name;
        Remarks = remarks;
        _unit = unit;
        _fattyMatter = fattyMatter;
        foreach ((PartKind kind, _, double grams, _, _) in parts)
        {
            _grams[(int)kind] += grams;
            _bar += grams;
        }
        Parts = [.. parts.Select(p => new CompositionPart(p.Kind, p.Name, p.Grams, p.Grams / _bar, p.Acid, p.Cation))];
    }

    internal string Name { get; }

    /// <summary>The parts, by kind, then chain length; none has a negative mass.</summary>
    public ValueList<CompositionPart> Parts { get; }

    /// <summary>Mass of all bars of the batch together.</summary>
    public Mass BarMass => Mass.FromGrams(_bar);

    /// <summary>Water as a share of the mass of the bar.</summary>
    public Ratio Moisture => ShareOf(PartKind.Water);

    /// <summary>
    /// Total fatty matter as a share of the mass of the bar: fatty acids of the soap, free fatty acids, glycerides and unsaponifiable
    /// matter, waxes included; scent and milk solids are not in it. Source: iso-685, clause 3, by stoichiometry; the measured figure of
    /// soap with much C4 to C8 reads a little lower, since those acids dissolve in part.
    /// </summary>
    public Ratio TotalFattyMatter => Stored.ToRatio(_fattyMatter / _bar);

    /// <summary>What the figures of this formula do not settle; sentences in English.</summary>
    public ValueList<string> Remarks { get; }

    /// <summary>The unit of mass that the formula was written in, for printing.</summary>
    internal MassUnit Unit => _unit;

    /// <summary>Mass of all parts of a kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <exception cref="ArgumentOutOfRangeException">An unknown kind.</exception>
    public Mass MassOf(PartKind kind) => Mass.FromGrams(GramsOf(kind));

    /// <summary>Share by mass of all parts of a kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <exception cref="ArgumentOutOfRangeException">An unknown kind.</exception>
    public Ratio ShareOf(PartKind kind) => Stored.ToRatio(GramsOf(kind) / _bar);

    /// <summary>The same bar dried to a moisture. Alcohol leaves in the same proportion as the water; everything else stays.</summary>
    /// <param name="moisture">Water as a share of the dried bar, from 0 to the moisture it has now.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number: a bar does not take up water here.</exception>
    public BarComposition AtMoisture(Ratio moisture)
    {
        double now = GramsOf(PartKind.Water) / _bar;
        double wanted = Stored.Fraction(moisture, 0, now * (1 + 1e-12), "The moisture of a dried bar");
        double water = GramsOf(PartKind.Water), volatiles = water + GramsOf(PartKind.Alcohol);
        // with a part t of the volatiles left: t water = wanted (dry + t volatiles)
        double left = water > 0 ? Math.Min(1, wanted * (_bar - volatiles) / (water - (wanted * volatiles))) : 0;
        return new(Name, _unit, [.. Parts.Select(p => (p.Kind, p.Name, p.Kind is PartKind.Water or PartKind.Alcohol ? p.Grams * left : p.Grams, p.Acid, p.Cation))], _fattyMatter, Remarks);
    }

    /// <summary>The composition as text for people, by kind; invariant.</summary>
    public override string ToString() => CompositionText.Of(this);

    internal double GramsOf(PartKind kind) => _grams[(int)Guard.Known(kind, "A kind of part")];
}
