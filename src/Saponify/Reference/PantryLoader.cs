namespace Saponify;

/// <summary>Reads all tables. Every fault of every table is collected before it gives up.</summary>
internal static class PantryLoader
{
    /// <exception cref="InvalidDataException">The tables have faults; the message lists them all.</exception>
    internal static PantryTables Load(string version, Func<string, Stream> open)
    {
        List<TableFault> faults = [];
        T Read<T>(string table, Func<Stream, T> read)
        {
            using Stream stream = open(table);
            return read(stream);
        }
        Dictionary<string, Source> sources = Read("sources.csv", s => SourceTable.Read(s, faults));
        Dictionary<string, List<SourcedFigure>> Figures(string table, string material, FigureShape[] shapes) =>
            Read(table, s => FigureTable.Read(table, s, material, shapes, sources, faults));

        Dictionary<string, Fat> fats = Read("fats.csv", s => FatTable.Read(s, Figures("fat-figures.csv", "fat", FigureTable.OfFats), faults));
        Dictionary<string, Acid> acids = Read("acids.csv", s => AcidTable.Read(s, sources, faults));
        Dictionary<string, Liquid> liquids = Read("liquids.csv", s => LiquidTable.Read(s, Figures("liquid-figures.csv", "liquid", FigureTable.OfContents), fats, acids, faults));
        Dictionary<string, Additive> additives = Read("additives.csv", s => AdditiveTable.Read(s, Figures("additive-figures.csv", "additive", FigureTable.OfContents), fats, acids, faults));
        Dictionary<string, FragranceAllergen> allergens = Read("fragrance-allergens.csv", s => FragranceAllergenTable.Read(s, sources, faults));
        Dictionary<string, List<OilConstituent>> constituents = Read("essential-oil-constituents.csv", s => OilConstituentTable.Read(s, allergens, sources, faults));
        Dictionary<string, EssentialOil> oils = Read("essential-oils.csv", s => EssentialOilTable.Read(s, constituents, sources, faults));
        if (faults.Count > 0)
            throw new InvalidDataException("The tables have faults:\n" + string.Join("\n", faults));
        return new()
        {
            Version = version,
            Sources = sources,
            Fats = fats,
            Acids = acids,
            Liquids = liquids,
            Additives = additives,
            FragranceAllergens = allergens,
            EssentialOils = oils,
        };
    }
}
