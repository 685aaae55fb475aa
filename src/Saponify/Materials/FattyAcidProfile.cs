using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// The fatty acids of a fat by mass. Built from published ranges: the middles are scaled to 100 %, and what they added up to
/// before is kept in <see cref="RawSum"/>. Immutable; equality by content.
/// </summary>
/// <remarks>
/// Mean molar mass of the acids: M = 1/sum(w/M(acid)), w by mass. Saponification value of the neutral fat:
/// 3 x 56 105 / (3 M + 38.049) x (1 - unsaponifiable). Source: definition of iso-3657 and the stoichiometry of the reaction.
/// </remarks>
public sealed class FattyAcidProfile : IEquatable<FattyAcidProfile>
{
    internal const double PartialBelow = 0.93;
    internal const double WideAbove = 1.05;

    private static readonly FattyAcid[] s_lightestFirst = [.. FattyAcid.All.OrderBy(a => a.GramsPerMole)];
    private static readonly FattyAcid[] s_heaviestFirst = [.. FattyAcid.All.OrderByDescending(a => a.GramsPerMole)];

    private readonly double[] _share = new double[FattyAcid.Count];
    private readonly double[] _low = new double[FattyAcid.Count];
    private readonly double[] _high = new double[FattyAcid.Count];

    internal FattyAcidProfile(ReadOnlySpan<(FattyAcid Acid, double Low, double High)> ranges)
    {
        double sum = 0;
        foreach ((FattyAcid acid, double low, double high) in ranges)
        {
            ArgumentNullException.ThrowIfNull(acid, nameof(ranges));
            if (low > high)
                throw new ArgumentException($"{acid.Shorthand} has a low end of {Text.Number(low * 100)} % above its high end of {Text.Number(high * 100)} %.", nameof(ranges));
            if (_high[acid.Index] != 0)
                throw new ArgumentException($"{acid.Shorthand} is given twice.", nameof(ranges));
            (_low[acid.Index], _high[acid.Index]) = (low, high);
            sum += (low + high) / 2;
        }
        if (sum <= 0)
            throw new ArgumentException("A profile needs at least one acid with a share above 0.", nameof(ranges));

        RawSumFraction = sum;
        double inverse = 0;
        for (int i = 0; i < _share.Length; i++)
        {
            _share[i] = (_low[i] + _high[i]) / 2 / sum;
            inverse += _share[i] / FattyAcid.All[i].GramsPerMole;
        }
        AcidGramsPerMole = 1 / inverse;
    }

    internal double RawSumFraction { get; }

    internal double AcidGramsPerMole { get; }

    internal ReadOnlySpan<double> Shares => _share;

    /// <summary>A profile from one figure per acid, for example an analysis. Figures that don't add up to 100 % are scaled.</summary>
    /// <param name="shares">Each acid once, with its share by mass from 0 to 100 %.</param>
    /// <exception cref="ArgumentException">An acid twice, or no share above 0.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside 0 to 100 %.</exception>
    public static FattyAcidProfile Of(params (FattyAcid Acid, Ratio Share)[] shares)
    {
        ArgumentNullException.ThrowIfNull(shares);
        var ranges = new (FattyAcid, double, double)[shares.Length];
        for (int i = 0; i < shares.Length; i++)
        {
            double share = Share(shares[i].Share);
            ranges[i] = (shares[i].Acid, share, share);
        }
        return new(ranges);
    }

    /// <summary>A profile from published ranges.</summary>
    /// <param name="ranges">Each acid once, with the low and high end of its share by mass, from 0 to 100 %.</param>
    /// <exception cref="ArgumentException">An acid twice, a low end above its high end, or no share above 0.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside 0 to 100 %.</exception>
    public static FattyAcidProfile FromRanges(params (FattyAcid Acid, Ratio Low, Ratio High)[] ranges)
    {
        ArgumentNullException.ThrowIfNull(ranges);
        var checkedRanges = new (FattyAcid, double, double)[ranges.Length];
        for (int i = 0; i < ranges.Length; i++)
            checkedRanges[i] = (ranges[i].Acid, Share(ranges[i].Low), Share(ranges[i].High));
        return new(checkedRanges);
    }

    /// <summary>Share of an acid by mass, scaled so that all acids add up to 100 %; 0 when the profile does not name it.</summary>
    /// <param name="acid">The acid.</param>
    /// <exception cref="ArgumentNullException"><paramref name="acid"/> is null.</exception>
    public Ratio this[FattyAcid acid]
    {
        get
        {
            ArgumentNullException.ThrowIfNull(acid);
            return Ratio.FromDecimalFractions(_share[acid.Index]);
        }
    }

    /// <summary>Share of an acid by mass, scaled so that all acids add up to 100 %; 0 when the profile does not name it.</summary>
    /// <param name="shorthand">For example <c>C18:1</c>.</param>
    /// <exception cref="ArgumentException">The library knows no such acid.</exception>
    public Ratio this[string shorthand] => this[FattyAcid.FromShorthand(shorthand)];

    /// <summary>What the middles of the ranges add up to as published.</summary>
    public Ratio RawSum => Ratio.FromDecimalFractions(RawSumFraction);

    /// <summary>True when the published middles add up to less than 93 %: too much is missing to compute a saponification value from it.</summary>
    public bool IsPartial => RawSumFraction < PartialBelow;

    /// <summary>True when the published middles add up to more than 105 %: the ranges are wide, and the scaled profile is a poor picture of any one lot.</summary>
    public bool IsWide => RawSumFraction > WideAbove;

    /// <summary>Mean molar mass of the acids: 1/sum(w/M), w by mass.</summary>
    public MolarMass MeanAcidMolarMass => MolarMass.FromGramsPerMole(AcidGramsPerMole);

    /// <summary>The acids of the profile with their shares as published, by chain length.</summary>
    public IEnumerable<(FattyAcid Acid, Ratio Low, Ratio High)> Published
    {
        get
        {
            foreach (FattyAcid acid in FattyAcid.All)
            {
                if (_high[acid.Index] > 0)
                    yield return (acid, Ratio.FromDecimalFractions(_low[acid.Index]), Ratio.FromDecimalFractions(_high[acid.Index]));
            }
        }
    }

    /// <summary>Saponification value of a neutral fat with these acids.</summary>
    /// <param name="unsaponifiable">Share of the fat that takes up no lye, from 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public SaponificationValue SaponificationAsTriglyceride(Ratio unsaponifiable) =>
        SaponificationValue.FromMilligramsKohPerGram(TriglycerideKoh(AcidGramsPerMole) * (1 - Stored.Fraction(unsaponifiable, 0, 1, "An unsaponifiable share")));

    /// <summary>Saponification value of the free acids, which is their acid value: 56 105 / M.</summary>
    public SaponificationValue SaponificationAsFreeAcid => SaponificationValue.FromMilligramsKohPerGram(FreeAcidKoh(AcidGramsPerMole));

    /// <summary>Iodine value of the triglycerides by AOCS Cd 1c-85, with factors derived the same way for acids the practice does not name.</summary>
    public IodineValue IodineValueAsTriglyceride => Iodine(a => a.IodineInTriglyceride);

    /// <summary>Iodine value of the free acids, by the free-acid factors of AOCS Cd 1c-85.</summary>
    public IodineValue IodineValueAsFreeAcid => Iodine(a => a.IodineInAcid);

    /// <summary>mg KOH per g of the pure triglyceride or free acid, as published ranges allow it at its least and greatest; null when they can't add up to 100 %.</summary>
    internal (double Low, double High)? PossibleKoh(FatClass fatClass)
    {
        if (ExtremeAcid(lightest: true) is not double light || ExtremeAcid(lightest: false) is not double heavy)
            return null;
        return fatClass == FatClass.FreeAcid ? (FreeAcidKoh(heavy), FreeAcidKoh(light)) : (TriglycerideKoh(heavy), TriglycerideKoh(light));
    }

    internal double Koh(FatClass fatClass) => fatClass == FatClass.FreeAcid ? FreeAcidKoh(AcidGramsPerMole) : TriglycerideKoh(AcidGramsPerMole);

    /// <summary>True when all acids have equal ranges.</summary>
    /// <param name="other">The other profile.</param>
    public bool Equals(FattyAcidProfile? other) =>
        other is not null && (ReferenceEquals(this, other) || (_low.AsSpan().SequenceEqual(other._low) && _high.AsSpan().SequenceEqual(other._high)));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FattyAcidProfile);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(RawSumFraction, AcidGramsPerMole);

    private static double TriglycerideKoh(double acidGramsPerMole) => 3000 * Molar.PotassiumHydroxide / ((3 * acidGramsPerMole) + Molar.GlycerolLessWater);

    private static double FreeAcidKoh(double acidGramsPerMole) => 1000 * Molar.PotassiumHydroxide / acidGramsPerMole;

    private static double Share(Ratio ratio) => Stored.Fraction(ratio, 0, 1, "The share of a fatty acid");

    /// <summary>
    /// Mean molar mass of the extreme mixture inside the ranges: every acid at its low end, then filled up to 100 % in the order of
    /// molar mass. The sum w/M is linear in w, so this greedy filling reaches its extreme.
    /// </summary>
    private double? ExtremeAcid(bool lightest)
    {
        double left = 1, inverse = 0;
        for (int i = 0; i < _low.Length; i++)
        {
            left -= _low[i];
            inverse += _low[i] / FattyAcid.All[i].GramsPerMole;
        }
        if (left < -1e-9)
            return null;
        foreach (FattyAcid acid in lightest ? s_lightestFirst : s_heaviestFirst)
        {
            double more = Math.Clamp(_high[acid.Index] - _low[acid.Index], 0, Math.Max(left, 0));
            left -= more;
            inverse += more / acid.GramsPerMole;
        }
        return left > 1e-9 ? null : 1 / inverse;
    }

    private IodineValue Iodine(Func<FattyAcid, double> factor)
    {
        double sum = 0;
        foreach (FattyAcid acid in FattyAcid.All)
            sum += _share[acid.Index] * factor(acid);
        return IodineValue.FromGramsPer100Grams(100 * sum);
    }
}
