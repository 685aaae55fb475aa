using Saponify.Internals;

namespace Saponify;

/// <summary>
/// What so many grams of a fat are made of, for the lye that it takes up: n mol of acids of the mean molar mass M, as glyceride
/// n (3 M + 38.049)/3 or as free acid n M; the rest is unsaponifiable and unaccounted. M is that of the profile. Without a profile, or
/// with a lot whose saponification value leaves less than nothing for the rest, M follows from the saponification value.
/// Source: stoichiometry, with molar masses of ciaaw-2021.
/// </summary>
internal readonly record struct FatMakeup
{
    /// <summary>No fatty acid is lighter than acetic acid, 60 g/mol; a lighter mean says that the figures contradict each other.</summary>
    private const double LightestGramsPerMole = 60;

    internal double Grams { get; private init; }

    /// <summary>mol of acids that can take up lye.</summary>
    internal double Moles { get; private init; }

    /// <summary>g of the glycerides or free acids that take up lye; 0 for a wax and for a fat without saponification value.</summary>
    internal double CarrierGrams { get; private init; }

    /// <summary>Mean molar mass of the acids.</summary>
    internal double AcidGramsPerMole { get; private init; }

    /// <summary>The whole profile, or null when there is none or too much of it is missing.</summary>
    internal FattyAcidProfile? Acids { get; private init; }

    internal FatClass Class { get; private init; }

    /// <summary>True when the saponification value contradicts profile or unsaponifiable matter, so that the molar mass follows from it.</summary>
    internal bool Contradicts { get; private init; }

    internal double RestGrams => Grams - CarrierGrams;

    internal double AcidGrams => Moles * AcidGramsPerMole;

    internal static FatMakeup Of(Fat fat, double grams)
    {
        FattyAcidProfile? acids = fat.Profile is { IsPartial: false } whole ? whole : null;
        FatMakeup makeup = new() { Grams = grams, Moles = grams * fat.HydroxidePerGram, Acids = acids, Class = fat.Class };
        if (fat.Class == FatClass.Wax || !(makeup.Moles > 0))
            return makeup;
        double glycerolPart = GlycerolPart(fat.Class);
        double carrier = acids is null ? grams * (1 - Unsaponifiable(fat)) : makeup.Moles * (acids.AcidGramsPerMole + glycerolPart);
        bool contradicts = carrier > grams * (1 + 1e-9) || (carrier / makeup.Moles) - glycerolPart < LightestGramsPerMole;
        carrier = contradicts ? grams : Math.Min(carrier, grams);
        return makeup with { CarrierGrams = carrier, AcidGramsPerMole = (carrier / makeup.Moles) - glycerolPart, Contradicts = contradicts };
    }

    /// <summary>g of acids for shares and scores: where no saponification value is usable, by the profile and the unsaponifiable matter.</summary>
    internal static double AcidGramsToScore(Fat fat, double grams)
    {
        FatMakeup makeup = Of(fat, grams);
        if (makeup.CarrierGrams > 0)
            return makeup.AcidGrams;
        if (fat.Class == FatClass.Wax || fat.Profile is null)
            return grams;
        double acid = fat.Profile.AcidGramsPerMole;
        return grams * (1 - Unsaponifiable(fat)) * acid / (acid + GlycerolPart(fat.Class));
    }

    private static double GlycerolPart(FatClass fatClass) => fatClass == FatClass.FreeAcid ? 0 : Molar.GlycerolLessWater / 3;

    private static double Unsaponifiable(Fat fat) => fat.Figures.Unsaponifiable?.Value.DecimalFractions ?? 0;
}
