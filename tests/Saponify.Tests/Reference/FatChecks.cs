using System.Globalization;

namespace Saponify.Tests.Reference;

/// <summary>Cross-checks of a fat's figures against each other: what the fatty acids give against what is published.</summary>
public static class FatChecks
{
    /// <summary>A figure that lies where the other figures of the same fat do not put it.</summary>
    public sealed record Outlier(string Fat, string Check, string Computed, string Published);

    public static IEnumerable<Fat> WithWholeProfile => Pantry.Reference.Fats.Where(f => f.Class != FatClass.Wax && f.Profile is { IsPartial: false });

    /// <summary>The saponification value that the scaled middles give, less the unsaponifiable part.</summary>
    public static double Computed(Fat fat) => fat.Class == FatClass.FreeAcid
        ? fat.Profile!.SaponificationAsFreeAcid.MilligramsKohPerGram
        : fat.Profile!.SaponificationAsTriglyceride(fat.Figures.Unsaponifiable?.Value ?? Ratio.Zero).MilligramsKohPerGram;

    public static double Iodine(Fat fat) => (fat.Class == FatClass.FreeAcid ? fat.Profile!.IodineValueAsFreeAcid : fat.Profile!.IodineValueAsTriglyceride).GramsPer100Grams;

    /// <summary>Everything that is off, sorted by fat and check; to a tenth of a unit.</summary>
    public static List<Outlier> Outliers()
    {
        List<Outlier> found = [];
        foreach (Fat fat in WithWholeProfile)
        {
            Outside(found, fat, "SV", Computed(fat), fat.Figures.Saponification?.Low?.MilligramsKohPerGram, fat.Figures.Saponification?.High?.MilligramsKohPerGram);
            Outside(found, fat, "IV", Iodine(fat), fat.Figures.Iodine?.Low?.GramsPer100Grams, fat.Figures.Iodine?.High?.GramsPer100Grams);
            if (fat.Figures.Saponification is { } published && fat.Profile!.PossibleKoh(fat.Class) is { } possible && published.Value.MilligramsKohPerGram > possible.High + 0.05)
                found.Add(new(fat.Id, "SV middle", "at most " + Tenth(possible.High), Tenth(published.Value.MilligramsKohPerGram)));
        }
        return [.. found.OrderBy(o => o.Fat, StringComparer.Ordinal).ThenBy(o => o.Check, StringComparer.Ordinal)];
    }

    /// <summary>
    /// The least saponification value that both the published range and the published acids allow: the greater of the two low ends, never
    /// above the value used. Null when there is no value used.
    /// </summary>
    public static double? LowestByBoth(Fat fat)
    {
        if (fat.Saponification is not { } used)
            return null;
        double low = used.Low!.Value.MilligramsKohPerGram;
        if (fat.Class != FatClass.Wax && fat.Profile is { IsPartial: false } profile)
        {
            double byAcids = profile.PossibleKoh(fat.Class)?.Low ?? profile.Koh(fat.Class);
            low = Math.Max(low, byAcids * (1 - ((fat.Figures.Unsaponifiable?.High ?? fat.Figures.Unsaponifiable?.Value)?.DecimalFractions ?? 0)));
        }
        return Math.Min(low, used.Value.MilligramsKohPerGram);
    }

    public static string Tenth(double value) => value.ToString("F1", CultureInfo.InvariantCulture);

    private static void Outside(List<Outlier> found, Fat fat, string check, double computed, double? low, double? high)
    {
        if (computed < low - 0.05 || computed > high + 0.05)
            found.Add(new(fat.Id, check, Tenth(computed), low is null ? $"at most {Tenth(high!.Value)}" : high is null ? $"at least {Tenth(low.Value)}" : low == high ? Tenth(low.Value) : $"{Tenth(low.Value)} to {Tenth(high.Value)}"));
    }
}
