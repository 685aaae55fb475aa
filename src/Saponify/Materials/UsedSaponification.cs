using Saponify.Internals;

namespace Saponify;

/// <summary>
/// The rule for the saponification value used: the lower of the middle of the published range and the value from the fatty acids,
/// not lifted to the published low end. Doubt always means less lye.
/// </summary>
internal static class UsedSaponification
{
    internal static Figure<SaponificationValue>? Of(FatClass fatClass, FatFigures figures, Lot? lot)
    {
        if (lot?.Saponification is SaponificationValue own)
            return new(own, Evidence.Measured, [lot.Source]) { Low = own, High = own, IsOwn = true, Note = $"lot {lot.Name}" };
        if (figures.NeedsOwnSaponification)
            return null;
        return fatClass == FatClass.Wax ? OfWax(figures) : OfFat(fatClass, figures);
    }

    private static Figure<SaponificationValue> OfWax(FatFigures figures)
    {
        if (figures.AcidValue is not { } acid)
            return new(default, Evidence.Computed, ["computed"]) { Low = default(SaponificationValue), High = default(SaponificationValue), Note = "no acid value on file: counted as 0" };
        SaponificationValue low = acid.Low ?? default;
        return new(low, acid.Evidence, acid.Sources) { Low = low, High = acid.High, IsOwn = acid.IsOwn, Note = "a wax counts by the low end of its acid value" };
    }

    private static Figure<SaponificationValue>? OfFat(FatClass fatClass, FatFigures figures)
    {
        Figure<SaponificationValue>? published = figures.Saponification;
        FattyAcidProfile? profile = figures.Profile is { IsPartial: false } whole ? whole : null;
        if (published is null && profile is null)
            return null;

        double unsaponifiable = figures.Unsaponifiable?.Value.DecimalFractions ?? 0;
        double fromProfile = profile is null ? double.PositiveInfinity : profile.Koh(fatClass) * (1 - unsaponifiable);
        double fromRange = published?.Value.MilligramsKohPerGram ?? double.PositiveInfinity;
        double used = Math.Min(fromRange, fromProfile);

        (double low, double high) = published is not null
            ? (published.Low?.MilligramsKohPerGram ?? used, published.High?.MilligramsKohPerGram ?? used)
            : Possible(fatClass, profile!, figures);

        Evidence evidence = published?.Evidence ?? Evidence.Standard;
        if (profile is not null)
            evidence = Weaker(evidence, figures.ProfileEvidence);
        if (fromProfile < fromRange)
            evidence = Weaker(evidence, Evidence.Computed);

        return new(Value(used), evidence, Sources(published, profile is null ? default : figures.ProfileSources))
        {
            Low = Value(Math.Min(low, used)),
            High = Value(Math.Max(high, used)),
            IsOwn = published?.IsOwn ?? false,
            Note = fromProfile < fromRange ? "from the fatty acids" : "middle of the published range",
        };
    }

    /// <summary>Without a published range: what profiles inside the ranges of the acids can have, the low end less the whole unsaponifiable limit.</summary>
    private static (double Low, double High) Possible(FatClass fatClass, FattyAcidProfile profile, FatFigures figures)
    {
        double most = figures.Unsaponifiable is { } u ? (u.High ?? u.Value).DecimalFractions : 0;
        double least = figures.Unsaponifiable?.Low?.DecimalFractions ?? 0;
        (double low, double high) = profile.PossibleKoh(fatClass) ?? (profile.Koh(fatClass), profile.Koh(fatClass));
        return (low * (1 - most), high * (1 - least));
    }

    private static SaponificationValue Value(double koh) => SaponificationValue.FromMilligramsKohPerGram(koh);

    private static Evidence Weaker(Evidence one, Evidence other) => one > other ? one : other;

    private static ValueList<string> Sources(Figure<SaponificationValue>? published, ValueList<string> profileSources) =>
        [.. (published?.Sources ?? default).Concat(profileSources).Distinct(StringComparer.Ordinal)];
}
