using Saponify.Internals;

namespace Saponify;

/// <summary>
/// The rule for the saponification value used: the lower of the middle of the published range and the value from the fatty acids,
/// not lifted to the published low end. Doubt always means less lye.
/// </summary>
internal static class UsedSaponification
{
    /// <summary>
    /// A part of a fat below 1 % does not decide the evidence of the value: it moves it by less than 1 %, and a remembered limit that only
    /// lowers it shall not cry wolf over an oil whose main figures were read.
    /// </summary>
    internal const double Trace = 0.01;

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
        if (profile is not null && unsaponifiable >= Trace)
            evidence = Weaker(evidence, figures.Unsaponifiable!.Evidence);
        if (fromProfile < fromRange)
            evidence = Weaker(evidence, Evidence.Computed);

        bool isOwn = published is { IsOwn: true } || (profile is not null && figures.IsProfileOwn);
        return new(Value(used), evidence, profile is null ? published!.Sources : Sources(figures))
        {
            Low = Value(Math.Min(low, used)),
            High = Value(Math.Max(high, used)),
            IsOwn = isOwn,
            Note = fromProfile < fromRange ? (isOwn ? "own figure, " : "") + "from the fatty acids" : Note(published!),
        };
    }

    private static string Note(Figure<SaponificationValue> given) => (given.IsOwn, given.Low == given.High) switch
    {
        (true, true) => "own figure",
        (true, false) => "own figure, middle of the range given",
        (false, true) => "the published value",
        (false, false) => "middle of the published range",
    };

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

    private static ValueList<string> Sources(FatFigures figures)
    {
        List<string> keys = [];
        foreach (ValueList<string> of in (ReadOnlySpan<ValueList<string>>)[figures.Saponification?.Sources ?? default, figures.ProfileSources, figures.Unsaponifiable?.Sources ?? default])
        {
            foreach (string key in of)
            {
                if (!keys.Contains(key))
                    keys.Add(key);
            }
        }
        return [.. keys];
    }
}
