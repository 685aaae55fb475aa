using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// What a blend of fats is as one fat. Acids are mixed by the mass of acids that each fat brings, saponification and iodine value by the
/// mass of fat. A figure that a fat lacks is null for the blend, never estimated. There is no titre: no published relation was found that
/// gives the titre of a blend from its acids, and lauric fats would break a simple one. Immutable; equality by content.
/// </summary>
public sealed record BlendFigures
{
    private readonly double _saturated;
    private readonly double _known;

    internal BlendFigures(FatBlend blend)
    {
        AcidPool pool = AcidPool.Of(blend);
        ReadOnlySpan<double> grams = pool.GramsOfAcids;
        double known = 0;
        foreach (double g in grams)
            known += g;
        _known = pool.IsEmpty ? 0 : Math.Min(1, known / pool.Grams);
        if (known > 0)
        {
            List<(FattyAcid, Ratio)> shares = [];
            SortedDictionary<int, double> chains = [];
            foreach (FattyAcid acid in FattyAcid.All)
            {
                double share = Math.Min(1, grams[acid.Index] / known);
                if (!(share > 0))
                    continue;
                shares.Add((acid, Stored.ToRatio(share)));
                chains[acid.Carbons] = chains.GetValueOrDefault(acid.Carbons) + share;
                _saturated += acid.IsSaturated ? share : 0;
            }
            Profile = FattyAcidProfile.Of([.. shares]);
            ChainLengths = [.. chains.Select(c => new ChainShare(c.Key, c.Value))];
        }
        MeanAcidMolarMass = MolarMassOf(blend);
        Saponification = SaponificationOf(blend);
        Iodine = IodineOf(blend);
    }

    /// <summary>The acids of the blend; null when no fat has a profile.</summary>
    public FattyAcidProfile? Profile { get; }

    /// <summary>Share by mass of the acids that the profile knows; the rest is in fats that do not say theirs, and in waxes.</summary>
    public Ratio Known => Stored.ToRatio(_known);

    /// <summary>Mean molar mass of the acids that take up lye; null when a fat has neither a saponification value nor a whole profile.</summary>
    public MolarMass? MeanAcidMolarMass { get; }

    /// <summary>
    /// Saponification value that lye would be computed from: the mean of those of the fats by mass, with the range that a lot may have when
    /// all are at one end. Null when a fat has none fit for lye.
    /// </summary>
    public Figure<SaponificationValue>? Saponification { get; }

    /// <summary>
    /// Iodine value: the mean of those of the fats by mass, each from its profile (source: aocs-cd-1c-85) or, without a whole profile, the
    /// middle of its published range. Null when a fat has neither.
    /// </summary>
    public IodineValue? Iodine { get; }

    /// <summary>Share by mass of the saturated acids among the known ones; null when no fat has a profile.</summary>
    public Ratio? Saturated => Profile is null ? null : Stored.ToRatio(Math.Min(1, _saturated));

    /// <summary>The known acids by chain length, shortest first; empty when no fat has a profile.</summary>
    public ValueList<ChainShare> ChainLengths { get; }

    private static MolarMass? MolarMassOf(FatBlend blend)
    {
        (double grams, double moles) = (0, 0);
        foreach (FatShare share in blend.Shares)
        {
            if (share.Fraction == 0 || share.Fat.Class == FatClass.Wax)
                continue;
            FatMakeup makeup = FatMakeup.Of(share.Fat, share.Fraction);
            double acids = FatMakeup.AcidGramsToScore(share.Fat, share.Fraction);
            double molar = makeup.CarrierGrams > 0 ? makeup.AcidGramsPerMole : makeup.Acids?.AcidGramsPerMole ?? 0;
            if (molar == 0)
                return null;
            grams += acids;
            moles += acids / molar;
        }
        return moles > 0 ? MolarMass.FromGramsPerMole(grams / moles) : null;
    }

    private static Figure<SaponificationValue>? SaponificationOf(FatBlend blend)
    {
        (double value, double low, double high, Evidence evidence) = (0, 0, 0, Evidence.Standard);
        List<string> sources = [];
        bool own = false;
        foreach (FatShare share in blend.Shares)
        {
            if (share.Fraction == 0)
                continue;
            if (share.Fat.Saponification is not { } figure)
                return null;
            double used = figure.Value.MilligramsKohPerGram;
            value += share.Fraction * used;
            low += share.Fraction * (figure.Low?.MilligramsKohPerGram ?? used);
            high += share.Fraction * (figure.High?.MilligramsKohPerGram ?? used);
            evidence = figure.Evidence > evidence ? figure.Evidence : evidence;
            sources.AddRange(figure.Sources);
            own |= figure.IsOwn;
        }
        return new(Koh(value), evidence, [.. sources.Distinct(StringComparer.Ordinal)]) { Low = Koh(low), High = Koh(high), IsOwn = own, Note = "mean of the fats by mass" };
    }

    private static IodineValue? IodineOf(FatBlend blend)
    {
        double sum = 0;
        foreach (FatShare share in blend.Shares)
        {
            if (share.Fraction == 0)
                continue;
            Fat fat = share.Fat;
            IodineValue? one = fat.Profile is { IsPartial: false } whole && fat.Class != FatClass.Wax
                ? fat.Class == FatClass.FreeAcid ? whole.IodineValueAsFreeAcid : whole.IodineValueAsTriglyceride
                : fat.Figures.Iodine?.Value;
            if (one is not { } value)
                return null;
            sum += share.Fraction * value.GramsPer100Grams;
        }
        return IodineValue.FromGramsPer100Grams(Math.Min(500, sum));
    }

    private static SaponificationValue Koh(double value) => SaponificationValue.FromMilligramsKohPerGram(Math.Min(1000, value));
}
