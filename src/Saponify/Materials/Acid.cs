using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// An acid, or another substance that takes up alkali, inside a liquid or an additive. Fatty acids are fats, never acids.
/// Immutable; equality by content.
/// </summary>
public sealed record Acid : INamed
{
    /// <summary>Makes an acid.</summary>
    /// <param name="id">Short name, for example <c>citric</c>.</param>
    /// <param name="name">Name for people.</param>
    /// <param name="molarMass">Molar mass, from 1 to 10 000 g/mol.</param>
    /// <param name="protons">Protons given up for sure below pH 9, from 0 to 30.</param>
    /// <param name="protonsInDoubt">Protons that it may give up in soap; they are not counted, which means less lye. From 0 to 30.</param>
    /// <exception cref="ArgumentException">A blank text.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    public Acid(string id, string name, MolarMass molarMass, double protons, double protonsInDoubt)
    {
        Id = LineId.Check(id, "The id of an acid");
        Name = Guard.Text(name, "The name of an acid");
        GramsPerMole = Guard.InRange(molarMass.GramsPerMole, 1, 10_000, "A molar mass", "g/mol", nameof(molarMass));
        Protons = Guard.InRange(protons, 0, 30, "The number of protons", "per molecule");
        ProtonsInDoubt = Guard.InRange(protonsInDoubt, 0, 30, "The number of doubtful protons", "per molecule");
    }

    internal double GramsPerMole { get; }

    /// <summary>mol of hydroxide that one gram takes up for sure.</summary>
    internal double HydroxidePerGram => Protons / GramsPerMole;

    internal double HydroxideInDoubtPerGram => ProtonsInDoubt / GramsPerMole;

    /// <summary>Short name.</summary>
    public string Id { get; }

    /// <summary>Name for people.</summary>
    public string Name { get; }

    /// <summary>Molar mass of the species whose share is stated.</summary>
    public MolarMass MolarMass => MolarMass.FromGramsPerMole(GramsPerMole);

    /// <summary>Protons given up for sure below pH 9; they count as lye taken up.</summary>
    public double Protons { get; }

    /// <summary>Protons in doubt; they are listed as possible uptake and not counted.</summary>
    public double ProtonsInDoubt { get; }

    ValueList<string> INamed.Aliases => default;

    IEnumerable<string> INamed.ListedNames => [];

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
