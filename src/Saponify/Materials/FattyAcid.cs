using System.Diagnostics.CodeAnalysis;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// A fatty acid as fats contain them, written in the shorthand of the field: C18:2 has 18 carbons and 2 double bonds.
/// Molar masses follow from the formula and the abridged atomic weights (source: ciaaw-2021). One object per acid, immutable.
/// </summary>
public sealed class FattyAcid : IEquatable<FattyAcid>, IComparable<FattyAcid>
{
    private static readonly FattyAcid[] s_all =
    [
        new(0, "C4:0", "butyric", 4, 0), new(1, "C6:0", "caproic", 6, 0), new(2, "C8:0", "caprylic", 8, 0), new(3, "C10:0", "capric", 10, 0),
        new(4, "C12:0", "lauric", 12, 0), new(5, "C14:0", "myristic", 14, 0), new(6, "C14:1", "myristoleic", 14, 1), new(7, "C15:0", "pentadecanoic", 15, 0),
        new(8, "C16:0", "palmitic", 16, 0), new(9, "C16:1", "palmitoleic", 16, 1), new(10, "C17:0", "margaric", 17, 0), new(11, "C17:1", "heptadecenoic", 17, 1),
        new(12, "C18:0", "stearic", 18, 0), new(13, "C18:1", "oleic", 18, 1), new(14, "C18:1-OH", "ricinoleic", 18, 1), new(15, "C18:2", "linoleic", 18, 2),
        new(16, "C18:3", "linolenic", 18, 3), new(17, "C18:3-conj", "eleostearic", 18, 3), new(18, "C18:4", "stearidonic", 18, 4),
        new(19, "C20:0", "arachidic", 20, 0), new(20, "C20:1", "gondoic", 20, 1), new(21, "C20:2", "eicosadienoic", 20, 2), new(22, "C20:4", "arachidonic", 20, 4),
        new(23, "C20:5", "eicosapentaenoic", 20, 5), new(24, "C22:0", "behenic", 22, 0), new(25, "C22:1", "erucic", 22, 1), new(26, "C22:2", "docosadienoic", 22, 2),
        new(27, "C22:5", "docosapentaenoic", 22, 5), new(28, "C22:6", "docosahexaenoic", 22, 6), new(29, "C24:0", "lignoceric", 24, 0), new(30, "C24:1", "nervonic", 24, 1),
    ];

    private static readonly Dictionary<string, FattyAcid> s_byShorthand = s_all.ToDictionary(a => a.Shorthand, StringComparer.OrdinalIgnoreCase);

    private FattyAcid(int index, string shorthand, string name, int carbons, int doubleBonds)
    {
        Index = index;
        Shorthand = shorthand;
        Name = name;
        Carbons = carbons;
        DoubleBonds = doubleBonds;
        IsHydroxy = shorthand.EndsWith("-OH", StringComparison.Ordinal);
        IsConjugated = shorthand.EndsWith("-conj", StringComparison.Ordinal);
        GramsPerMole = (carbons * Molar.C) + (2 * (carbons - doubleBonds) * Molar.H) + ((IsHydroxy ? 3 : 2) * Molar.O);
        TriglycerideGramsPerMole = (3 * GramsPerMole) + Molar.GlycerolLessWater;
        (IodineInTriglyceride, IodineInAcid) = shorthand switch
        {
            // Source: aocs-cd-1c-85, factors as printed
            "C16:1" => (0.950, 0.9976),
            "C18:1" => (0.860, 0.8986),
            "C18:2" => (1.732, 1.810),
            "C18:3" => (2.616, 2.735),
            "C20:1" => (0.785, 0.8175),
            "C22:1" => (0.723, 0.7497),
            // beyond its six: one iodine molecule per double bond
            _ => (3 * doubleBonds * Molar.Iodine / TriglycerideGramsPerMole, doubleBonds * Molar.Iodine / GramsPerMole),
        };
    }

    internal static int Count => s_all.Length;

    internal int Index { get; }

    internal double GramsPerMole { get; }

    internal double TriglycerideGramsPerMole { get; }

    /// <summary>Iodine value of the triglyceride per part of this acid: AOCS Cd 1c-85 where it has a factor, derived otherwise.</summary>
    internal double IodineInTriglyceride { get; }

    internal double IodineInAcid { get; }

    /// <summary>Every acid the library knows, by chain length, then double bonds.</summary>
    public static ValueList<FattyAcid> All { get; } = ValueList.Create<FattyAcid>(s_all);

    /// <summary>The shorthand: <c>C18:2</c>; <c>-OH</c> for a hydroxy acid, <c>-conj</c> for conjugated double bonds.</summary>
    public string Shorthand { get; }

    /// <summary>The trivial name of the most common isomer, lower case: <c>linoleic</c>. Other isomers with the same formula count under it.</summary>
    public string Name { get; }

    /// <summary>Carbon atoms in the chain, the carboxyl carbon included.</summary>
    public int Carbons { get; }

    /// <summary>Double bonds in the chain.</summary>
    public int DoubleBonds { get; }

    /// <summary>True for ricinoleic acid.</summary>
    public bool IsHydroxy { get; }

    /// <summary>True for eleostearic acid, whose double bonds are conjugated: measured iodine values read low.</summary>
    public bool IsConjugated { get; }

    /// <summary>True when the chain has no double bond.</summary>
    public bool IsSaturated => DoubleBonds == 0;

    /// <summary>Molar mass of the free acid.</summary>
    public MolarMass MolarMass => MolarMass.FromGramsPerMole(GramsPerMole);

    /// <summary>Molar mass of the simple triglyceride: 3 M + 38.049 g/mol.</summary>
    public MolarMass TriglycerideMolarMass => MolarMass.FromGramsPerMole(TriglycerideGramsPerMole);

    /// <summary>Molar mass of the sodium or potassium soap: the acid with its proton exchanged.</summary>
    /// <param name="kind">Which alkali.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is none of the two.</exception>
    public MolarMass SoapMolarMass(AlkaliKind kind) =>
        MolarMass.FromGramsPerMole(GramsPerMole - Molar.H + (Guard.Known(kind, "An alkali kind") == AlkaliKind.SodiumHydroxide ? Molar.Na : Molar.K));

    /// <summary>Saponification value of the simple triglyceride: 3 x 56 105 / (3 M + 38.049) mg KOH per g.</summary>
    public SaponificationValue SaponificationOfTriglyceride =>
        SaponificationValue.FromMilligramsKohPerGram(3000 * Molar.PotassiumHydroxide / TriglycerideGramsPerMole);

    /// <summary>Acid value of the pure acid, which is also its saponification value: 56 105 / M mg KOH per g.</summary>
    public SaponificationValue SaponificationOfAcid => SaponificationValue.FromMilligramsKohPerGram(1000 * Molar.PotassiumHydroxide / GramsPerMole);

    /// <summary>Iodine value of the simple triglyceride, from the formula: 3 x 253.80 x double bonds / (3 M + 38.049) x 100.</summary>
    public IodineValue IodineValueOfTriglyceride => IodineValue.FromGramsPer100Grams(300 * DoubleBonds * Molar.Iodine / TriglycerideGramsPerMole);

    /// <summary>Iodine value of the pure acid, from the formula: 253.80 x double bonds / M x 100.</summary>
    public IodineValue IodineValueOfAcid => IodineValue.FromGramsPer100Grams(100 * DoubleBonds * Molar.Iodine / GramsPerMole);

    /// <summary>The acid with this shorthand.</summary>
    /// <param name="shorthand">For example <c>C18:2</c>; upper or lower case.</param>
    /// <exception cref="ArgumentNullException"><paramref name="shorthand"/> is null.</exception>
    /// <exception cref="ArgumentException">No acid of the library has it; the message lists them.</exception>
    public static FattyAcid FromShorthand(string shorthand) =>
        TryFromShorthand(shorthand, out FattyAcid? acid)
            ? acid
            : throw new ArgumentException($"\"{shorthand}\" is no fatty acid of the library. Known: {string.Join(", ", s_all.Select(a => a.Shorthand))}.", nameof(shorthand));

    /// <summary>Looks for the acid with this shorthand.</summary>
    /// <param name="shorthand">For example <c>C18:2</c>; upper or lower case.</param>
    /// <param name="acid">The acid, or null when there is none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="shorthand"/> is null.</exception>
    public static bool TryFromShorthand(string shorthand, [NotNullWhen(true)] out FattyAcid? acid)
    {
        ArgumentNullException.ThrowIfNull(shorthand);
        return s_byShorthand.TryGetValue(shorthand, out acid);
    }

    /// <inheritdoc/>
    public bool Equals(FattyAcid? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => ReferenceEquals(this, obj);

    /// <inheritdoc/>
    public override int GetHashCode() => Index;

    /// <summary>By chain length, then double bonds.</summary>
    /// <param name="other">The other acid; null comes first.</param>
    public int CompareTo(FattyAcid? other) => other is null ? 1 : Index.CompareTo(other.Index);

    /// <summary>The shorthand.</summary>
    public override string ToString() => Shorthand;
}
