namespace Saponify.PublishedValues;

/// <summary>A fat of a Codex standard with the figures of the standard, typed apart from the pantry's tables.</summary>
/// <param name="Id">Id in the pantry.</param>
/// <param name="Source">Where the figures were read; "memory" where no page was seen.</param>
/// <param name="SaponificationLow">mg KOH per g.</param>
/// <param name="SaponificationHigh">mg KOH per g.</param>
/// <param name="IodineLow">g per 100 g; null without a lower limit.</param>
/// <param name="IodineHigh">g per 100 g; null without an upper limit.</param>
/// <param name="UnsaponifiableHigh">Upper limit, g per 100 g.</param>
internal sealed record CodexFat(
    string Id, string Source, double SaponificationLow, double SaponificationHigh, double? IodineLow, double? IodineHigh, double UnsaponifiableHigh)
{
    /// <summary>Mean molar mass of the fatty acids, from the middles of the standard's table of acids, worked out apart from the library; two decimals.</summary>
    internal double? MeanAcid { get; init; }

    /// <summary>What those middles add up to, per cent; one decimal.</summary>
    internal double? RawSum { get; init; }

    /// <summary>Lower limit of the unsaponifiable matter, g per 100 g.</summary>
    internal double UnsaponifiableLow { get; init; }

    internal double MiddleOfPublished => (SaponificationLow + SaponificationHigh) / 2;

    /// <summary>3 x 56 105/(3 M + 38.049), less the middle of the unsaponifiable matter.</summary>
    internal double? FromMeanAcid =>
        MeanAcid is { } mean ? 3 * 56_105 / ((3 * mean) + 38.049) * (1 - ((UnsaponifiableLow + UnsaponifiableHigh) / 200)) : null;

    internal bool HasSaponification(double value) => value >= SaponificationLow && value <= SaponificationHigh;

    internal bool HasIodine(double value) => !(value < IodineLow) && !(value > IodineHigh);
}
