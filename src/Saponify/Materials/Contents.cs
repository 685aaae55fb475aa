using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// What is in a liquid or an additive, by mass. A part that is not known stays 0 and does not count. Each from 0 to 100 %; the material
/// that takes it checks the sum. Immutable; equality by content.
/// </summary>
public sealed record Contents
{
    internal double WaterFraction { get; init; }

    internal double FatFraction { get; init; }

    internal double SugarFraction { get; init; }

    internal double ProteinFraction { get; init; }

    internal double AcidFraction { get; init; }

    internal double AlcoholFraction { get; init; }

    internal double AshFraction { get; init; }

    /// <summary>Nothing that counts: all parts 0.</summary>
    public static Contents None { get; } = new();

    /// <summary>Water alone.</summary>
    public static Contents PureWater { get; } = new() { WaterFraction = 1 };

    /// <summary>Water, crystal water included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public Ratio Water { get => Stored.ToRatio(WaterFraction); init => WaterFraction = Part(value, "Water"); }

    /// <summary>Fat. It takes up lye if <see cref="FatKind"/> says what it is and has a usable saponification value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public Ratio Fat { get => Stored.ToRatio(FatFraction); init => FatFraction = Part(value, "Fat"); }

    /// <summary>Least fat of the range a table states; null when it states none. With <see cref="MostFat"/> it enters the margin of the superfat.</summary>
    public Ratio? LeastFat { get; init; }

    /// <summary>Most fat of the range a table states; null when it states none.</summary>
    public Ratio? MostFat { get; init; }

    /// <summary>Which fat it is; null when not known: then it counts 0 and the plan says so.</summary>
    public Fat? FatKind { get; init; }

    /// <summary>Sugars, which brown and heat in lye.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public Ratio Sugar { get => Stored.ToRatio(SugarFraction); init => SugarFraction = Part(value, "Sugar"); }

    /// <summary>Protein. It may take up a little lye, which is listed and not counted.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public Ratio Protein { get => Stored.ToRatio(ProteinFraction); init => ProteinFraction = Part(value, "Protein"); }

    /// <summary>Acid. It takes up lye if <see cref="AcidKind"/> says what it is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public Ratio Acid { get => Stored.ToRatio(AcidFraction); init => AcidFraction = Part(value, "Acid"); }

    /// <summary>Least acid of the range a table states; null when it states none. With <see cref="MostAcid"/> it enters the margin of the superfat.</summary>
    public Ratio? LeastAcid { get; init; }

    /// <summary>Most acid of the range a table states; null when it states none.</summary>
    public Ratio? MostAcid { get; init; }

    /// <summary>Which acid it is; null when not known: then it counts 0 and the plan says so.</summary>
    public Acid? AcidKind { get; init; }

    /// <summary>Alcohol.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public Ratio Alcohol { get => Stored.ToRatio(AlcoholFraction); init => AlcoholFraction = Part(value, "Alcohol"); }

    /// <summary>Ash: minerals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public Ratio Ash { get => Stored.ToRatio(AshFraction); init => AshFraction = Part(value, "Ash"); }

    /// <summary>mol of hydroxide that the fat in one gram takes up.</summary>
    internal double FatHydroxidePerGram => FatKind is null ? 0 : FatFraction * FatKind.HydroxidePerGram;

    /// <summary>mol of hydroxide that the acid in one gram takes up for sure.</summary>
    internal double AcidHydroxidePerGram => AcidKind is null ? 0 : AcidFraction * AcidKind.HydroxidePerGram;

    /// <summary>All parts together may exceed 1 by this much, from rounding in the text.</summary>
    internal const double MostInAll = 1 + 1e-9;

    /// <summary>All parts together.</summary>
    internal double Total => WaterFraction + FatFraction + SugarFraction + ProteinFraction + AcidFraction + AlcoholFraction + AshFraction;

    /// <summary>What none of the parts names, never negative.</summary>
    internal double RestFraction => Math.Max(0, 1 - Total);

    /// <summary>The same parts, none of them lost to rounding: when a table's parts exceed 100 %, sugar gives way, then protein, since neither decides the lye.</summary>
    internal Contents Closed(string what, string argument)
    {
        Check(LeastFat, FatFraction, MostFat, "fat", what, argument);
        Check(LeastAcid, AcidFraction, MostAcid, "acid", what, argument);
        if (Total <= MostInAll)
            return this;
        double excess = Total - 1;
        double sugar = Math.Max(0, SugarFraction - excess);
        excess -= SugarFraction - sugar;
        double protein = Math.Max(0, ProteinFraction - excess);
        excess -= ProteinFraction - protein;
        return excess > 1e-9
            ? throw new ArgumentException($"The parts of {what} add up to {Text.Number(Total * 100)} %; more than 100 % can't be in it.", argument)
            : this with { SugarFraction = sugar, ProteinFraction = protein };
    }

    private static void Check(Ratio? least, double value, Ratio? most, string part, string what, string argument)
    {
        if (least?.DecimalFractions > value || most?.DecimalFractions < value)
            throw new ArgumentException($"The {part} of {what} lies outside the range given for it.", argument);
    }

    private static double Part(Ratio share, string what) => Stored.Fraction(share, 0, 1, what);
}
