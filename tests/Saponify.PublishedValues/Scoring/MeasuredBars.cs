namespace Saponify.PublishedValues.Scoring;

/// <summary>
/// Published bars and fats with a number or a stated rank, the source beside each series. A sign of -1 says that a larger figure should go
/// with a lower score. Profiles are those of the library's own tables.
/// </summary>
public static class MeasuredBars
{
    /// <summary>Some bars measured alike, and the score that should put them in order.</summary>
    public sealed record Series(string Name, ScoreKind Score, int Sign, params (FatBlend Blend, double Figure)[] Bars);

    private static FatBlend Of(params (string Fat, double Percent)[] parts) => FatBlend.Of([.. parts.Select(p => (Pantry.Reference.Fat(p.Fat), Ratio.FromPercent(p.Percent)))]);

    private static FatBlend One(string fat) => Of((fat, 100));

    private static (FatBlend, double)[] Ginn(double first, double second, double third) =>
        [(Of(("tallow", 95), ("coconut-oil", 5)), first), (Of(("tallow", 85), ("coconut-oil", 15)), second), (Of(("tallow", 75), ("coconut-oil", 25)), third)];

    private static (FatBlend, double)[] Palm(params (double PalmKernel, double Figure)[] bars) =>
        [.. bars.Select(b => (Of(("palm-kernel-oil", b.PalmKernel), ("palm-oil", 100 - b.PalmKernel)), b.Figure))];

    public static IReadOnlyList<Series> All { get; } =
    [
        // simmons-appleton-1908, pp. 122-123: titre of the mixed acids in degrees Celsius, means of one to fourteen samples; lauric fats are left out,
        // since their titre is low although their soap is hard (gtz-1993, kuntom-1996)
        new("titre", ScoreKind.Hardness, 1,
            (One("tallow"), 43.8), (One("lard"), 37.5), (One("olive-oil"), 21.0), (One("palm-oil"), 44.75), (One("cottonseed-oil"), 34.3), (One("peanut-oil"), 26.3), (One("maize-oil"), 16.1),
            (One("sesame-oil"), 22.8), (One("flaxseed-oil"), 20.0), (One("sunflower-oil"), 17.0), (One("castor-oil"), 2.8), (One("shea-butter"), 53.1), (One("illipe-butter"), 50.8), (One("mowrah-butter"), 42.6)),
        // kuntom-1996, first page: hardness rises with palm kernel acids over eleven blends; five points of that trend, not rows of the paper
        new("kuntom-hardness", ScoreKind.Hardness, 1, Palm((0, 1), (20, 2), (40, 3), (60, 4), (80, 5))),
        // ginn-1968, abstract: ranks over 95:5 to 75:25 tallow and coconut
        new("ginn-solubility", ScoreKind.WearResistance, -1, Ginn(1, 2, 3)),
        new("ginn-erosion", ScoreKind.WearResistance, -1, Ginn(1, 2, 3)),
        new("ginn-slushing", ScoreKind.WearResistance, -1, Ginn(1, 2, 3)),
        new("ginn-panel", ScoreKind.LatherVolume, 1, Ginn(1, 2, 3)),
        // benin-palm-blends, abstract: foam height in cm, and cleaning verdict (1 effective, 2 more, 3 most), undried soaps
        new("benin-foam", ScoreKind.LatherVolume, 1, Palm((100, 7.3), (0, 11.4), (50, 12.6), (70, 9.8), (30, 13.3))),
        new("benin-cleaning", ScoreKind.Cleansing, 1, Palm((100, 2), (0, 1), (50, 2), (70, 2), (30, 3))),
        // eke-2004, abstract: foam of 70:30 shea and palm kernel lasts longer than that of 30:70
        new("eke-foam-stability", ScoreKind.LatherStability, 1, (Of(("shea-butter", 30), ("palm-kernel-oil", 70)), 1), (Of(("shea-butter", 70), ("palm-kernel-oil", 30)), 2)),
        // pairs put together from two books: palm kernel foams quickly, less lastingly (gtz-1993); tallow is inferior in lather (simmons-appleton-1908, ch. V); foam of palmitate and stearate lasts (jce-soap)
        new("palm-kernel-and-tallow", ScoreKind.LatherVolume, 1, (One("palm-kernel-oil"), 2), (One("tallow"), 1)),
        new("palm-kernel-and-stearate", ScoreKind.LatherStability, 1, (One("palm-kernel-oil"), 1), (One("stearic-acid-50"), 2)),
        // blank-1947, first paragraph: clinicians found coconut soap more, olive soap less irritating
        new("blank-irritation", ScoreKind.Conditioning, -1, (One("coconut-oil"), 2), (One("olive-oil"), 1)),
        // antonic-2020 and antonic-2021, abstracts, one laboratory and one method: malondialdehyde in soap, micrograms per g; the share of rapeseed and palm is not in the abstract, half and half assumed
        new("antonic-malondialdehyde", ScoreKind.OxidationRisk, 1, (One("olive-oil"), 1.94), (Of(("canola-oil", 50), ("palm-oil", 50)), 3.43), (One("palm-oil"), 0.94), (One("sunflower-oil"), 6.61)),
        // shurson-2015, Table 2: peroxide value (meq/kg) and TBARS (umol/kg) of the fats themselves after slow oxidation
        new("shurson-peroxide", ScoreKind.OxidationRisk, 1, (One("maize-oil"), 151), (One("canola-oil"), 239), (One("chicken-fat"), 57), (One("tallow"), 29)),
        new("shurson-tbars", ScoreKind.OxidationRisk, 1, (One("maize-oil"), 225), (One("canola-oil"), 968), (One("chicken-fat"), 151), (One("tallow"), 61)),
    ];

    public static Series Named(string name) => All.Single(s => s.Name == name);

    /// <summary>Spearman's rank correlation of a score with the figures, the sign applied; ties share their mean rank.</summary>
    public static double Rho(Series series, Func<FatBlend, double> score)
    {
        double[] one = Ranks([.. series.Bars.Select(b => score(b.Blend))]), two = Ranks([.. series.Bars.Select(b => series.Sign * b.Figure)]);
        double mean = (one.Length - 1) / 2.0;
        double both = 0, first = 0, second = 0;
        for (int i = 0; i < one.Length; i++)
        {
            both += (one[i] - mean) * (two[i] - mean);
            first += (one[i] - mean) * (one[i] - mean);
            second += (two[i] - mean) * (two[i] - mean);
        }
        return both / Math.Sqrt(first * second);
    }

    private static double[] Ranks(double[] values) => [.. values.Select(v => values.Count(o => o < v - 1e-9) + ((values.Count(o => Math.Abs(o - v) <= 1e-9) - 1) / 2.0))];
}
