using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>What a pantry knows under a name, as text for people.</summary>
internal static class PantryText
{
    internal static string? Of(Pantry pantry, string name)
    {
        SheetWriter sheet = new();
        if (pantry.TryGetFat(name, out Fat? fat))
            FatText.Write(sheet, pantry, fat);
        if (pantry.TryGetLiquid(name, out Liquid? liquid))
            Write(sheet, pantry, liquid);
        if (pantry.TryGetAdditive(name, out Additive? additive))
            Write(sheet, pantry, additive);
        if (pantry.TryGetEssentialOil(name, out EssentialOil? oil))
            Write(sheet, pantry, oil);
        if (pantry.TryGetFragranceAllergen(name, out FragranceAllergen? allergen))
            Write(sheet, pantry, allergen);
        if (pantry.AllergenClasses.FirstOrDefault(c => FoldedName.Comparer.Equals(c, name)) is { } allergenClass)
            Write(sheet, pantry, allergenClass);
        return sheet.IsEmpty ? null : sheet.ToString();
    }

    internal static void Sources(SheetWriter sheet, Pantry pantry, IEnumerable<string> keys)
    {
        string[] sorted = [.. keys.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        if (sorted.Length == 0)
            return;
        sheet.Title("Sources");
        foreach (string key in sorted)
        {
            Source? source = pantry.Sources.FirstOrDefault(s => s.Key == key);
            sheet.Row(key, source is null || source.Citation == key ? "own source"
                : source.Citation + (source.Year.Length == 0 ? "" : $", {source.Year}") + (source.Place.Length == 0 ? "" : $". {source.Place}") + $". Evidence: {source.Evidence.ToString().ToLowerInvariant()}.");
        }
    }

    /// <summary>A figure with everything that supports it.</summary>
    internal static void Figure(SheetWriter sheet, SourcedFigure figure) =>
        sheet.Row(figure.Name, figure.Range + (figure.Basis.Length == 0 ? "" : $" ({figure.Basis})") + Support(figure) + (figure.Note is null ? "" : $"; {figure.Note}"));

    internal static string Support(SourcedFigure figure) =>
        $"; {(figure.IsOwn ? "your own figure" : Evidence(figure.Evidence))}"
        + (figure.Sources is [var only] && only is "computed" or "memory" ? "" : $": {string.Join(" and ", figure.Sources)}")
        + (figure.Place.Length == 0 ? "" : ", " + figure.Place);

    internal static string Evidence(Evidence evidence) => EvidenceText.Of(evidence);

    internal static string? Joined(IEnumerable<string> parts) => string.Join("; ", parts) is { Length: > 0 } text ? text : null;

    private static void Write(SheetWriter sheet, Pantry pantry, Liquid liquid)
    {
        sheet.Title($"{liquid.Name} ({liquid.Id})");
        sheet.Row("also", Joined(liquid.Aliases));
        sheet.Row("kind", $"liquid, {Origin(liquid.Origin, liquid.IsVegan)}");
        sheet.Row("allergen", liquid.Allergen ?? "none listed");
        sheet.Row("listed name", liquid.Inci);
        sheet.Row("note", liquid.Note);
        Contents(sheet, liquid.Contents);
        Figures(sheet, liquid.Provenance);
        Sources(sheet, pantry, liquid.Sources);
    }

    private static void Write(SheetWriter sheet, Pantry pantry, Additive additive)
    {
        sheet.Title($"{additive.Name} ({additive.Id})");
        sheet.Row("also", Joined(additive.Aliases));
        sheet.Row("kind", $"additive, {Kind(additive.Kind)}, {Origin(additive.Origin, additive.IsVegan)}; usually goes in {Stage(additive.UsualStage)}");
        sheet.Row("allergen", additive.Allergen ?? "none listed");
        sheet.Row("listed name", additive.Inci);
        sheet.Row("formula", additive.Formula);
        sheet.Row("CAS number", additive.Cas);
        sheet.Row("colour index", additive.ColourIndex);
        sheet.Row("beware", additive.Caution);
        sheet.Row("note", additive.Note);
        Contents(sheet, additive.Contents);
        Figures(sheet, additive.Provenance);
        Sources(sheet, pantry, additive.Sources);
    }

    private static void Write(SheetWriter sheet, Pantry pantry, EssentialOil oil)
    {
        sheet.Title($"{oil.Name} ({oil.Id})");
        sheet.Row("also", Joined(oil.Aliases));
        sheet.Row("kind", "essential oil" + (oil.Tints ? ", tints soap" : ""));
        sheet.Row("listed name", oil.Inci is null ? null : $"{oil.Inci} ({string.Join(" and ", oil.InciSources)})");
        sheet.Row("to be named", oil.AnnexEntry is { } entry ? FormattableString.Invariant($"the oil itself is entry {entry} of Annex III") : null);
        sheet.Row("density", oil.Density is { } density ? $"{Text.Exact(density.Low!.Value.GramsPerMilliliter)} to {Text.Exact(density.High!.Value.GramsPerMilliliter)} g/mL ({density.Note}); {Evidence(density.Evidence)}" : null);
        sheet.Row("flash point", oil.FlashPoint is { } flash ? $"{Text.Number(flash.Value.DegreesCelsius)} °C; {Evidence(flash.Evidence)}" : null);
        sheet.Row("note", oil.Note);
        sheet.Title("Listed allergens in it");
        foreach (OilConstituent part in oil.Constituents)
            Figure(sheet, part.Figure);
        if (oil.Constituents.Count == 0)
            sheet.Line("none on file; that does not mean that there is none");
        Sources(sheet, pantry, oil.Constituents.SelectMany(c => c.Figure.Sources).Concat(oil.InciSources).Concat(oil.Density?.Sources ?? default).Concat(oil.FlashPoint?.Sources ?? default));
    }

    private static void Write(SheetWriter sheet, Pantry pantry, FragranceAllergen allergen)
    {
        sheet.Title($"{allergen.Name} ({allergen.Id})");
        sheet.Row("kind", "fragrance allergen" + (allergen.IsProhibited ? ", BANNED in cosmetics in the European Union" : ", to be named on labels in the European Union"));
        sheet.Row("entry", FormattableString.Invariant($"Annex III, {allergen.AnnexEntry}; {Listed(allergen.Listing)}"));
        sheet.Row("CAS numbers", Joined(allergen.Cas));
        sheet.Row("covers", Joined(allergen.Covers));
        sheet.Row("limits", allergen.Condition);
        sheet.Row("evidence", $"{Evidence(allergen.Evidence)}, {allergen.Place}");
        sheet.Row("note", allergen.Note);
        (EssentialOil Oil, OilConstituent Part)[] oils = [.. pantry.EssentialOils.SelectMany(o => o.Constituents.Where(c => c.Allergen.Id == allergen.Id).Select(c => (o, c)))];
        if (oils.Length > 0)
            sheet.Title("Essential oils that hold it");
        foreach ((EssentialOil oil, OilConstituent part) in oils)
            sheet.Row(oil.Id, part.Figure.Range + Support(part.Figure));
        Sources(sheet, pantry, allergen.Sources.Concat(oils.SelectMany(o => o.Part.Figure.Sources)));
    }

    private static void Write(SheetWriter sheet, Pantry pantry, string allergenClass)
    {
        sheet.Title($"{allergenClass} (allergen class)");
        sheet.Row("fats", Joined(pantry.Fats.Where(f => f.Allergen == allergenClass).Select(f => f.Id)));
        sheet.Row("liquids", Joined(pantry.Liquids.Where(l => l.Allergen == allergenClass).Select(l => l.Id)));
        sheet.Row("additives", Joined(pantry.Additives.Where(a => a.Allergen == allergenClass).Select(a => a.Id)));
        sheet.Row("", "A courtesy to people who must avoid it. Traces and what is not listed are not known.");
    }

    /// <summary>What in it takes up lye.</summary>
    private static void Contents(SheetWriter sheet, Contents contents)
    {
        if (contents.Fat > Ratio.Zero)
        {
            sheet.Row("takes up lye", $"fat, {Text.Number(contents.Fat.Percent)} %: " + (contents.FatKind is not { } kind ? "of unknown kind, counts as nothing"
                : kind.Saponification is { } used ? $"counts as {kind.Name}, {used.Value}" : $"{kind.Name}, which has no value fit for lye: counts as nothing"));
        }
        if (contents.Acid > Ratio.Zero)
        {
            sheet.Row("takes up lye", $"acid, {Text.Number(contents.Acid.Percent)} %: " + (contents.AcidKind is not { } acid ? "of unknown kind, counts as nothing"
                : $"counts as {acid.Name}, {Text.Number(acid.Protons)} hydroxide a molecule" + (acid.ProtonsInDoubt > 0 ? $", {Text.Number(acid.ProtonsInDoubt)} more in doubt and not counted" : "")));
        }
    }

    private static void Figures(SheetWriter sheet, ValueList<SourcedFigure> figures)
    {
        if (figures.Count > 0)
            sheet.Title("Figures");
        foreach (SourcedFigure figure in figures)
            Figure(sheet, figure);
    }

    internal static string Origin(string? origin, bool isVegan) => origin is null ? "origin not stated" : $"{origin}, {(isVegan ? "vegan" : "not vegan")}";

    private static string Kind(AdditiveKind kind) => kind == AdditiveKind.MilkSolids ? "milk solids" : kind.ToString().ToLowerInvariant();

    private static string Stage(Stage stage) => stage switch
    {
        Saponify.Stage.LyeLiquid => "before the lye",
        Saponify.Stage.Fats => "with the fats",
        Saponify.Stage.Trace => "at trace",
        _ => "on top",
    };

    private static string Listed(FragranceListing listing) => listing switch
    {
        FragranceListing.First26 => "one of the first 26",
        FragranceListing.Extended2023 => "to be named since the regulation of 2023, limits before",
        _ => "added in 2023",
    };
}
