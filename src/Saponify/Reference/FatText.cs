using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Everything about a fat, as text for people.</summary>
internal static class FatText
{
    /// <summary>One mark of a bar, in percent.</summary>
    private const double PerMark = 2;

    internal static void Write(SheetWriter sheet, Pantry pantry, Fat fat)
    {
        sheet.Title($"{fat.Name} ({fat.Id}){(fat.IsOwn ? ", with figures of your own" : "")}");
        sheet.Row("also", PantryText.Joined(fat.Aliases));
        sheet.Row("kind", $"{Class(fat.Class)}, {PantryText.Origin(fat.Origin, fat.IsVegan)}");
        sheet.Row("allergen", fat.Allergen ?? "none listed");
        sheet.Row("listed names", PantryText.Joined(new[] { fat.Inci, fat.InciSodiumSoap, fat.InciPotassiumSoap }.OfType<string>()));
        if (fat.Lot is { } lot)
            sheet.Row("lot", lot.Name + (lot.Date is { } date ? $", {date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}" : "") + $", {lot.Source}");
        sheet.Row("note", fat.Note);
        Lye(sheet, fat);
        Acids(sheet, fat);
        Figures(sheet, fat);
        PantryText.Sources(sheet, pantry, fat.Provenance.SelectMany(f => f.Sources).Concat(fat.Lot is { } own ? [own.Source] : []));
    }

    internal static string Class(FatClass fatClass) => fatClass switch
    {
        FatClass.FreeAcid => "free acid",
        FatClass.Wax => "wax",
        _ => "triglyceride",
    };

    /// <summary>Points of superfat that are lost when a lot takes up no more than the low end of the range, rounded up; null when there is no value.</summary>
    internal static double? PointsAtLowEnd(Fat fat) =>
        fat.Saponification is { Low: { } low } used && used.Value.MilligramsKohPerGram > 0
            ? Points(low.MilligramsKohPerGram, used.Value.MilligramsKohPerGram)
            : null;

    /// <summary>(used - low)/used in points, rounded up to a tenth.</summary>
    internal static double Points(double low, double used) => Math.Max(0, Math.Ceiling((1 - (low / used)) * 1000 - 1e-9)) / 10;

    private static void Lye(SheetWriter sheet, Fat fat)
    {
        sheet.Title("Lye");
        if (fat.Saponification is not { } used)
        {
            sheet.Row("value used", fat.Figures.NeedsOwnSaponification
                ? "none: published figures are missing or scatter too much; give the lot's own value from its certificate"
                : "none: no saponification value and no whole set of fatty acids on file");
            return;
        }
        sheet.Row("value used", $"{used.Value}, that is {Text.Cut(used.Value.GramsNaohPerGram)} g NaOH per g; {used.Note}");
        if (used.Low != used.High)
            sheet.Row("range", $"{Koh(used.Low)} to {Koh(used.High)} mg KOH/g");
        sheet.Row("evidence", used.IsOwn ? $"your own figure; sources: {string.Join("; ", used.Sources)}" : PantryText.Evidence(used.Evidence));
        if (PointsAtLowEnd(fat) is > 0 and { } points)
            sheet.Row("at the low end", $"the superfat is {Text.Fixed(points, 1)} points lower than planned");
    }

    private static void Acids(SheetWriter sheet, Fat fat)
    {
        if (fat.Profile is not { } profile)
        {
            sheet.Title("Fatty acids");
            sheet.Line("none on file: nothing that rests on them can be computed");
            return;
        }
        sheet.Title($"Fatty acids in %, scaled to 100 (published middles add up to {Text.Number(profile.RawSum.Percent)}{(profile.IsPartial ? ": partial" : profile.IsWide ? ": wide ranges" : "")}), one # for {Text.Number(PerMark)}");
        List<string> traces = [];
        double together = 0;
        foreach ((FattyAcid acid, Ratio low, Ratio high) in profile.Published)
        {
            double share = profile[acid].Percent;
            if (share < 1)
            {
                traces.Add(acid.Shorthand);
                together += share;
                continue;
            }
            string range = low.Percent.Equals(high.Percent) ? Text.Number(high.Percent) : $"{Text.Number(low.Percent)} to {Text.Number(high.Percent)}";
            sheet.Line($"{acid.Shorthand,-11}{acid.Name,-18}{Text.Fixed(share, 1),5}  {range,-16} {new string('#', (int)Math.Round(share / PerMark, MidpointRounding.AwayFromZero))}");
        }
        if (traces.Count > 0)
            sheet.Row("below 1", $"{string.Join(", ", traces)}, together {Text.Fixed(together, 1)}");
        if (profile.IsPartial || fat.Class == FatClass.Wax)
            return;
        bool free = fat.Class == FatClass.FreeAcid;
        Ratio rest = fat.Figures.Unsaponifiable?.Value ?? Ratio.Zero;
        sheet.Row("computed", free
            ? $"acid value {Koh(profile.SaponificationAsFreeAcid)} mg KOH/g, iodine value {Text.Number(profile.IodineValueAsFreeAcid.GramsPer100Grams)}"
            : $"saponification value {Koh(profile.SaponificationAsTriglyceride(rest))} mg KOH/g{(rest > Ratio.Zero ? $" with {Text.Number(rest.Percent)} % unsaponifiable" : "")}, iodine value {Text.Number(profile.IodineValueAsTriglyceride.GramsPer100Grams)}");
    }

    private static void Figures(SheetWriter sheet, Fat fat)
    {
        if (fat.Provenance.Count == 0)
            return;
        sheet.Title("Figures as published");
        foreach (SourcedFigure figure in fat.Provenance.Where(f => !FattyAcid.TryFromShorthand(f.Name, out _)))
            PantryText.Figure(sheet, figure);
        foreach (IGrouping<string, SourcedFigure> group in fat.Provenance.Where(f => FattyAcid.TryFromShorthand(f.Name, out _)).GroupBy(PantryText.Support, StringComparer.Ordinal))
            sheet.Row("fatty acids", string.Join(", ", group.Select(f => f.Name)) + group.Key);
    }

    private static string Koh(SaponificationValue? value) => value is { } known ? Text.Number(known.MilligramsKohPerGram) : "?";
}
