using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>One row of an own table of fats, checked, and the fat it makes.</summary>
internal sealed class OwnFatRow(string id, string name, string source, FatClass fatClass, Fat? known)
{
    internal string Id => id;

    internal string Name => name;

    internal string Source => source;

    internal FatClass Class => fatClass;

    internal Fat? Known => known;

    internal Evidence Evidence { get; init; }

    internal string? Lot { get; init; }

    internal DateOnly? Date { get; init; }

    internal string? Origin { get; init; }

    internal string? Allergen { get; init; }

    internal ValueList<string> Aliases { get; init; }

    internal string? Note { get; init; }

    internal double? AcidValue { get; init; }

    internal double? Saponification { get; set; }

    internal double? SaponificationLow { get; set; }

    internal double? SaponificationHigh { get; set; }

    internal double? Iodine { get; set; }

    internal double? Unsaponifiable { get; set; }

    internal double? Density { get; set; }

    internal List<(FattyAcid Acid, double Share)> Acids { get; } = [];

    /// <summary>What the lot takes up lye by: a value as it is, the low end of a specification that comes with a lot, of a wax its acid value.</summary>
    private double? OfLot => fatClass == FatClass.Wax ? AcidValue : Saponification ?? (Lot is null ? null : SaponificationLow);

    /// <exception cref="ArgumentException">The row can't be a fat; the message says why.</exception>
    internal Fat Make()
    {
        List<SourcedFigure> own = Figures();
        bool hasProfile = Acids.Count > 0;
        List<SourcedFigure> kept = [.. (known?.Provenance ?? default).Where(f => !own.Exists(o => o.Name == f.Name) && !(hasProfile && FattyAcid.TryFromShorthand(f.Name, out _)))];
        // a lot's value does not replace the published range: both are shown
        List<SourcedFigure> counted = [.. own.Where(f => OfLot is null || f.Name is not ("SV" or "AV")), .. kept];
        if (OfLot is not null)
            counted.AddRange((known?.Provenance ?? default).Where(f => f.Name is "SV" or "AV" && !counted.Exists(c => c.Name == f.Name)));
        Fat fat = new(id, name, fatClass, FatTable.Figures(counted, known?.Figures.NeedsOwnSaponification ?? false))
        {
            Aliases = [.. (known?.Aliases ?? default).Concat(Aliases).Distinct(StringComparer.Ordinal)],
            Origin = Origin ?? known?.Origin,
            Allergen = Allergen ?? known?.Allergen,
            Inci = known?.Inci,
            InciSodiumSoap = known?.InciSodiumSoap,
            InciPotassiumSoap = known?.InciPotassiumSoap,
            Provenance = [.. own, .. counted.Where(f => !f.IsOwn)],
            Note = Note ?? known?.Note,
        };
        return OfLot is null && Lot is null
            ? fat
            : fat.WithLot(new()
            {
                Name = Lot ?? "not named",
                Source = source,
                Date = Date,
                Saponification = OfLot is { } value ? SaponificationValue.FromMilligramsKohPerGram(value) : null,
            });
    }

    /// <summary>What to check when the row takes more lye than anything on file for the fat; null when it does not.</summary>
    internal string? Excess(Fat made)
    {
        if (made.Saponification is not { } used || known?.Figures is not { } figures)
            return null;
        double most = Math.Max(figures.Saponification?.High?.MilligramsKohPerGram ?? 0, known.Saponification?.High?.MilligramsKohPerGram ?? 0);
        return most > 0 && used.Value.MilligramsKohPerGram > most
            ? $"{Text.Number(used.Value.MilligramsKohPerGram)} is above {Text.Number(most)}, the most on file for {known.Name}, and takes more lye: check fat, lot and unit"
            : null;
    }

    private List<SourcedFigure> Figures()
    {
        List<SourcedFigure> own = [];
        void Add(string figure, double? low, double? high, string unit, string basis = "")
        {
            if (low is not null)
                own.Add(new(figure, low, high, unit, basis, [source], Lot is null ? "" : $"lot {Lot}", Evidence, null) { IsOwn = true });
        }
        Add("SV", Saponification ?? SaponificationLow, Saponification ?? SaponificationHigh, "mg/g");
        Add("AV", AcidValue, AcidValue, "mg/g");
        Add("IV", Iodine, Iodine, "g/100g");
        Add("unsaponifiable", Unsaponifiable, Unsaponifiable, "%");
        Add("density", Density, Density, "g/mL");
        foreach ((FattyAcid acid, double share) in Acids)
            Add(acid.Shorthand, share, share, "%", "of fatty acids");
        return own;
    }
}
