namespace Saponify.PublishedValues;

/// <summary>The fats of the Codex standards that the pantry has.</summary>
internal static class CodexFatTable
{
    /// <summary>FAO/WHO Codex Alimentarius, Standard for Named Vegetable Oils, CXS 210-1999, Tables 1 and 2, as amended to 2022; read in copies.</summary>
    private const string VegetableOils = "CXS 210-1999, Tables 1 and 2";

    /// <summary>Fats whose saponification value was read in a standard of the Codex, or in a copy of one.</summary>
    internal static IReadOnlyList<CodexFat> Read { get; } =
    [
        new("canola-oil", VegetableOils, 182, 193, 105, 126, 2.0) { MeanAcid = 281.76, RawSum = 104.5 },
        new("coconut-oil", VegetableOils, 248, 265, 6.3, 10.6, 1.5) { MeanAcid = 207.90, RawSum = 103.6 },
        new("cottonseed-oil", VegetableOils, 189, 198, 100, 123, 1.5) { MeanAcid = 274.38, RawSum = 100.0 },
        new("flaxseed-oil", VegetableOils, 185, 197, 170, 211, 2.0) { MeanAcid = 278.71, RawSum = 114.3 },
        new("maize-oil", VegetableOils, 187, 195, 103, 135, 2.8) { MeanAcid = 278.13, RawSum = 98.5 },
        new("mustard-seed-oil", VegetableOils, 168, 184, 92, 125, 1.5) { MeanAcid = 303.73, RawSum = 98.8 },
        new("palm-oil", VegetableOils, 190, 209, 50, 55, 1.2) { MeanAcid = 269.71, RawSum = 101.6 },
        new("palm-oil-high-oleic", VegetableOils, 189, 199, 58, 75, 1.2) { MeanAcid = 273.58, RawSum = 102.8 },
        new("pistachio-oil", VegetableOils, 187, 196, 84, 98, 3.0) { MeanAcid = 278.53, RawSum = 95.9 },
        new("rice-bran-oil", VegetableOils, 180, 199, 90, 115, 6.5) { MeanAcid = 276.84, RawSum = 99.6 },
        new("safflower-oil-high-oleic", VegetableOils, 186, 194, 80, 100, 1.0) { MeanAcid = 281.16, RawSum = 100.5 },
        new("sesame-oil", VegetableOils, 186, 195, 104, 120, 2.0) { MeanAcid = 279.33, RawSum = 100.2 },
        // standard for unrefined shea butter; it has no table of acids
        new("shea-butter", "CXS 325R-2017, table of limits", 160, 195, 30, 75, 19) { UnsaponifiableLow = 1 },
        new("soybean-oil", VegetableOils, 189, 195, 124, 139, 1.5) { MeanAcid = 278.55, RawSum = 100.9 },
        // saponification value of the amendment of 2022; iodine value and unsaponifiable matter of CNS 4833, which names CXS 210
        new("sunflower-oil", "CXS 210-1999, amendments of 2022; CNS 4833:2003", 187, 194, 118, 141, 1.5) { MeanAcid = 280.25, RawSum = 101.6 },
        new("sunflower-oil-high-oleic", VegetableOils, 182, 194, 78, 90, 1.5) { MeanAcid = 282.13, RawSum = 103.2 },
        new("walnut-oil", VegetableOils, 189, 198, 132, 162, 2.0) { MeanAcid = 278.89, RawSum = 99.9 },
    ];

    /// <summary>
    /// The other fats of CXS 210-1999, CXS 33-1981 and CXS 211-1999. Their ranges are from memory of the standards or read elsewhere; the
    /// pantry may carry other figures with a better source. Agreement here shows that the figures fit together, not that they are the standard's.
    /// </summary>
    internal static IReadOnlyList<CodexFat> Remembered { get; } =
    [
        new("almond-oil", "CXS 210, memory", 183, 207, 85, 109, 2.0),
        new("babassu-oil", "CXS 210, memory; acids as quoted in Molecules 24 (2019) 4235", 245, 256, 10, 18, 1.2),
        new("grapeseed-oil", "CXS 210, memory; iodine value in a refiner's sheet", 188, 194, 128, 150, 2.0),
        new("hazelnut-oil", "CXS 210, memory", 188, 198, 81, 95, 1.5),
        new("lard", "CXS 211, memory; saponification value in Canada's B.09.013", 192, 203, 55, 65, 1.0),
        new("olive-oil", "CXS 33, memory; equal in a trade sheet", 184, 196, 75, 94, 1.5),
        new("olive-pomace-oil", "CXS 33, memory; a trade sheet has 184 to 196", 182, 193, 75, 92, 3.0),
        new("palm-kernel-oil", "CXS 210, memory; acids as quoted in Nutrients 11 (2019) 2008", 230, 254, 14.1, 21.0, 1.0),
        new("palm-kernel-olein", "CXS 210, memory; acids as quoted in Nutrients 11 (2019) 2008", 231, 244, 20, 28, 1.5),
        new("palm-kernel-stearin", "CXS 210, memory; acids as quoted in Nutrients 11 (2019) 2008", 244, 255, 4, 8.5, 1.5),
        new("palm-olein", "CXS 210, memory; acids as quoted in Nutrients 11 (2019) 2008", 194, 202, 56, null, 1.3),
        new("palm-stearin", "CXS 210, memory; acids as quoted in Nutrients 11 (2019) 2008", 193, 205, null, 48, 0.9),
        new("palm-superolein", "CXS 210, memory; iodine value in its section 2.1", 180, 205, 60, null, 1.3),
        new("peanut-oil", "CXS 210, memory", 187, 196, 86, 107, 1.0),
        new("premier-jus", "CXS 211, memory; saponification value in Malaysia's regulation 181", 190, 200, 36, 47, 1.0),
        new("rapeseed-oil-high-erucic", "CXS 210, memory", 168, 181, 94, 120, 2.0),
        new("rendered-pork-fat", "CXS 211, memory; saponification value in Canada's B.09.013", 192, 203, 60, 72, 1.2),
        new("safflower-oil", "CNS 3049:2003; equal to CXS 210 as remembered", 186, 198, 136, 148, 1.5),
        new("sunflower-oil-mid-oleic", "CXS 210, memory", 190, 191, 94, 122, 1.5),
        new("tallow", "CXS 211, memory", 190, 202, 40, 53, 1.2),
    ];

    internal static CodexFat Of(string id) => Read.Concat(Remembered).Single(fat => fat.Id == id);
}
