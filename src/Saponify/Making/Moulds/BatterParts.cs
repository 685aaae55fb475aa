using System.Globalization;
using UnitsNet;

namespace Saponify;

/// <summary>The parts of a batter with their densities in g/mL, at the pour.</summary>
internal static class BatterParts
{
    /// <summary>Share of its volume by which an oil grows per degree. From memory: edible oils 0.0006 to 0.0008.</summary>
    private const double LeastGrowth = 0.0006, MostGrowth = 0.0008;

    /// <summary>Share of its density that a fat may lose when it melts. From memory: up to a tenth.</summary>
    private const double MeltingGrowth = 0.1;

    /// <summary>An oil without a figure at 20 degrees: the span of the oils of codex-cxs210, Table 2, that are liquid there.</summary>
    private const double LeastOil = 0.90, MostOil = 0.93;

    /// <summary>The low end for molten fatty acids and waxes without a figure. From memory.</summary>
    private const double LeastAcid = 0.85;

    /// <summary>Impurity of an alkali, mostly carbonate and chloride. From memory.</summary>
    private const double LeastInert = 2.0, MostInert = 2.6;

    /// <summary>What is dissolved or solid beside water: protein, carbohydrate, ash at 20 degrees. From memory (Choi and Okos 1986), within 5 %.</summary>
    private const double Protein = 1.32, Carbohydrate = 1.59, Ash = 2.42, Fat = 0.92, Alcohol = 0.79, Acid = 1.5, Error = 0.05;

    private static readonly ValueList<string> s_memory = ["memory"];

    /// <summary>The parts; null when the lye is stronger than figures reach.</summary>
    internal static List<BatterPart>? Of(BatchPlan plan, double coldest, double warmest)
    {
        List<BatterPart> parts = [];
        foreach (FatPortion portion in plan.Formula.Fats)
        {
            if (portion.Grams > 0)
                parts.Add(OfFat(portion.Fat, portion.Grams, coldest, warmest));
        }
        if (Lye(plan, coldest, warmest) is not { } lye)
            return null;
        if (lye.Grams > 0)
            parts.Add(lye);
        LyeBalance balance = plan.Balance;
        double inert = balance.AlkaliGrams - balance.PureAlkaliGrams - (balance.Hydroxide * plan.Formula.Alkali.Mix.WaterPerMole);
        if (inert > 1e-9 * balance.BatchGrams)
            parts.Add(new("impurity of the alkali", inert, LeastInert, MostInert, Evidence.Memory, s_memory, "estimate"));
        foreach (Containing part in Containing.All(plan))
        {
            double grams = part.Grams * (1 - part.Contents.WaterFraction);
            if (grams > 1e-12 * balance.BatchGrams)
                parts.Add(BesideWater(plan, part, grams));
        }
        return parts;
    }

    private static BatterPart? Lye(BatchPlan plan, double coldest, double warmest)
    {
        LyeBalance balance = plan.Balance;
        double grams = balance.PureAlkaliGrams + balance.AllWaterGrams, strength = grams > 0 ? balance.PureAlkaliGrams / grams : 0;
        AlkaliMix mix = plan.Formula.Alkali.Mix;
        double sodium = mix.SodiumShare * Internals.Molar.SodiumHydroxide / mix.PurePerMole;
        LyeProperties lye = new(strength, double.IsFinite(sodium) ? Math.Clamp(sodium, 0, 1) : 1);
        // potassium hydroxide has figures from 15 to 80 degrees
        Figure<Density>? cold = lye.Density(Temperature.FromDegreesCelsius(Math.Max(15, coldest))), warm = lye.Density(Temperature.FromDegreesCelsius(Math.Min(80, warmest)));
        return cold is null || warm is null ? null
            : new("alkali and all water", grams, warm.Low!.Value.GramsPerMilliliter, cold.High!.Value.GramsPerMilliliter, cold.Evidence, cold.Sources, "as one lye");
    }

    private static BatterPart OfFat(Fat fat, double grams, double coldest, double warmest)
    {
        Figure<Density>? figure = fat.Figures.Density;
        (double low, double high) = figure is null ? (fat.Class == FatClass.Triglyceride ? LeastOil : LeastAcid, MostOil)
            : ((figure.Low ?? figure.Value).GramsPerMilliliter, (figure.High ?? figure.Value).GramsPerMilliliter);
        double? stated = figure is null ? 20 : Stated(figure.Note);
        (double from, double to) = stated is { } at ? (at, at) : (15, 25);
        double warming = warmest - from, cooling = to - coldest;
        double growth = warming > 0 ? MostGrowth * warming : LeastGrowth * warming, shrink = cooling > 0 ? MostGrowth * cooling : LeastGrowth * cooling;
        bool isSolid = figure is not null && fat.Figures.Melting is { } melting && (melting.Low ?? melting.Value).DegreesCelsius > to;
        double leastDensity = low * (1 - growth) * (isSolid ? 1 - MeltingGrowth : 1), mostDensity = high * (1 + shrink);
        string note = figure is null ? "estimate: no figure on file"
            : isSolid ? "the figure may be of the solid fat, so the range goes down by a tenth"
            : stated is null ? "temperature of the figure not stated, taken as 15 to 25 °C" : "";
        return new(fat.Name, grams, leastDensity, Math.Max(leastDensity, mostDensity), Evidence.Memory, figure is null ? s_memory : [.. figure.Sources.Append("memory").Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)], note);
    }

    /// <summary>The temperature that the note of a density begins with, as in <c>40 degC/water 20 degC</c>; null when it states none.</summary>
    private static double? Stated(string? note)
    {
        int end = note?.IndexOf(" degC", StringComparison.Ordinal) ?? -1;
        return end > 0 && double.TryParse(note.AsSpan(0, end), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double celsius) ? celsius : null;
    }

    private static BatterPart BesideWater(BatchPlan plan, Containing part, double grams)
    {
        Contents c = part.Contents;
        double named = c.FatFraction + c.SugarFraction + c.ProteinFraction + c.AcidFraction + c.AlcoholFraction + c.AshFraction, rest = Math.Max(0, 1 - c.WaterFraction - named);
        (double restLow, double restHigh) = (Carbohydrate * (1 - Error), Carbohydrate * (1 + Error));
        foreach (AdditivePortion portion in plan.Formula.Additives)
        {
            // scent floats, clay sinks: of an additive's unnamed rest little is known
            if (portion.Additive.Name == part.Name && ReferenceEquals(portion.Additive.Contents, c))
                (restLow, restHigh) = portion.Additive.Kind == AdditiveKind.Fragrance ? (0.84, 1.10) : (1.0, 2.7);
        }
        double known = (c.FatFraction / Fat) + (c.SugarFraction / Carbohydrate) + (c.ProteinFraction / Protein) + (c.AcidFraction / Acid) + (c.AlcoholFraction / Alcohol) + (c.AshFraction / Ash);
        double mass = named + rest, largest = (known * (1 + Error)) + (rest / restLow), smallest = (known * (1 - Error)) + (rest / restHigh);
        return new(c.WaterFraction > 0 ? part.Name + ", beside its water" : part.Name, grams, mass / largest, mass / smallest, Evidence.Memory, s_memory, "estimate from what is in it");
    }
}
