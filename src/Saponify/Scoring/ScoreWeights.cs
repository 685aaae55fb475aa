using Saponify.Internals;

namespace Saponify;

/// <summary>
/// The weights of the scores, version 1. They were set by judgement within the order that the sources give; each says what it rests on.
/// Acids that are not here have no weight, and a bar with more than 5 % of them is not scored.
/// </summary>
public static class ScoreWeights
{
    internal static readonly int KindCount = Enum.GetValues<WeightKind>().Length;

    private const string NearestKin = "nothing was found on this acid; set like its nearest kin";

    /// <summary>One row an acid: hardness, wear, cleansing, irritation, emollient, quick, film, lasting, oxidation.</summary>
    private static readonly (string[] Acids, double[] Values)[] s_rows =
    [
        (["C4:0", "C6:0", "C8:0"], [0, 0, 0.20, 0.20, 1, 0.05, 0, 0, 0]),
        (["C10:0"], [0.15, 0, 0.60, 0.85, 1, 0.30, 0, 0.05, 0]),
        (["C12:0"], [0.70, 0.20, 1, 1, 0.30, 1, 0, 0.20, 0]),
        (["C14:0"], [0.95, 0.70, 0.75, 0.25, 0, 0.80, 0.40, 0.55, 0]),
        (["C16:0"], [1, 0.95, 0.30, 0.05, 0, 0, 1, 1, 0]),
        (["C16:1"], [0.10, 0, 0.55, 0.25, 1, 0.10, 1, 0.40, 1]),
        (["C18:0"], [1, 1, 0.15, 0, 0, 0, 1, 0.90, 0]),
        (["C18:1"], [0.20, 0.05, 0.55, 0.25, 1, 0.10, 1, 0.50, 1]),
        (["C18:1-OH"], [0.05, 0, 0.40, 0.25, 1, 0.10, 1, 0.55, 1]),
        (["C18:2"], [0.05, 0, 0.55, 0.30, 1, 0.10, 1, 0.35, 10.3]),
        (["C18:3"], [0, 0, 0.50, 0.30, 1, 0.10, 0.80, 0.25, 21.6]),
        (["C20:0", "C22:0", "C24:0"], [1, 1, 0.10, 0, 0, 0, 1, 0.60, 0]),
        (["C20:1"], [0.65, 0.15, 0.30, 0.15, 1, 0.05, 1, 0.50, 1]),
        (["C22:1"], [0.85, 0.40, 0.20, 0.10, 1, 0, 1, 0.50, 1]),
    ];

    /// <summary>What each kind of weight rests on, in the order of <see cref="WeightKind"/>.</summary>
    private static readonly (WeightBasis Basis, string[] Sources, string Why)[] s_grounds =
    [
        (WeightBasis.Memory, ["hill-2016", "jce-soap", "mcbain-sierichs-1948", "memory"],
            "crystalline share at 20 °C, 1/(1 + exp(-(T - 20)/8)) rounded to 0.05, with the Krafft temperature T of the soda soap from memory; only its order is from the sources"),
        (WeightBasis.Memory, ["fischer-1921", "hill-2016", "jce-soap", "mcbain-sierichs-1948", "memory"],
            "crystalline share at 38 °C, 1/(1 + exp(-(T - 38)/8)) rounded to 0.05, with the Krafft temperature T of the soda soap from memory; only its order is from the sources"),
        (WeightBasis.Order, ["fischer-1921", "gtz-1993", "kubota-2020"],
            "degreasing is strongest at C12; oleate and linoleate emulsify best at room temperature, palmitate and stearate only when hot"),
        (WeightBasis.Order, ["jscc-1973", "kubota-2020"],
            "single soaps on skin: laurate worst, then decanoate, then oleate; octanoate and the long saturated ones near water, unsaturated C18 above saturated"),
        (WeightBasis.Order, ["simmons-appleton-1908"], "1 when the acid melts below skin temperature, 0 when far above, by its melting point"),
        (WeightBasis.Order, ["fischer-1921", "jce-soap"],
            "laurate and myristate foam profusely even cold, unsaturated soaps freely, palmitate and stearate little, octanoate hardly"),
        (WeightBasis.Order, ["benin-palm-blends", "ginn-1968"], "foam peaks at blends with long chains, not at pure lauric soap"),
        (WeightBasis.Order, ["gtz-1993", "jce-soap"], "foam of palmitate and stearate lasts, foam of laurate is very transient"),
        (WeightBasis.Memory, ["fatemi-hammond-1980"], "relative rates of oxidation 1 : 10.3 : 21.6 for one, two and three double bonds, from memory; saturated acids 0"),
    ];

    /// <summary>Weights whose ground differs from that of their kind.</summary>
    private static readonly Dictionary<(string, WeightKind), (WeightBasis Basis, string[] Sources, string Why)> s_exceptions = new()
    {
        [("C8:0", WeightKind.Cleansing)] = (WeightBasis.Memory, ["memory"], "it hardly forms micelles: critical concentration about 390 mmol/L, from memory"),
        [("C12:0", WeightKind.Hardness)] = (WeightBasis.Memory, ["gtz-1993", "kuntom-1996", "memory", "simmons-appleton-1908"],
            "as the others, and above 0.5 because bars get harder with more palm-kernel acids although their titre falls"),
        [("C14:0", WeightKind.Irritation)] = (WeightBasis.Order, ["jscc-1973"], "near water in the source; set higher on purpose, since the numbers of its scan are unclear"),
    };

    private static readonly string[] s_byAnalogy = ["C4:0", "C6:0", "C18:1-OH", "C20:0", "C20:1", "C22:0", "C22:1", "C24:0"];

    private static readonly ScoreWeight?[,] s_table = Table();
    private static readonly double[][] s_values = [.. Enumerable.Range(0, KindCount).Select(k => Enumerable.Range(0, FattyAcid.Count).Select(a => s_table[k, a]?.Value ?? 0).ToArray())];
    private static readonly bool[] s_known = [.. Enumerable.Range(0, FattyAcid.Count).Select(a => s_table[0, a] is not null)];
    private static readonly bool[] s_analogous = [.. FattyAcid.All.Select(a => s_byAnalogy.Contains(a.Shorthand) && a.Carbons > 6)];

    /// <summary>Version of the weights; a changed weight is a new version.</summary>
    public static int Version => 1;

    /// <summary>Every weight, by acid, then kind.</summary>
    public static ValueList<ScoreWeight> All { get; } =
        [.. FattyAcid.All.SelectMany(acid => Enumerable.Range(0, KindCount).Select(kind => s_table[kind, acid.Index])).OfType<ScoreWeight>()];

    /// <summary>The weight of an acid, or null when it has none.</summary>
    /// <param name="acid">The acid.</param>
    /// <param name="kind">What it weighs for.</param>
    /// <exception cref="ArgumentNullException"><paramref name="acid"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An unknown kind.</exception>
    public static ScoreWeight? Of(FattyAcid acid, WeightKind kind)
    {
        ArgumentNullException.ThrowIfNull(acid);
        return s_table[(int)Guard.Known(kind, "A kind of weight"), acid.Index];
    }

    /// <summary>The weights of one kind by the index of the acid; 0 where there is none.</summary>
    internal static ReadOnlySpan<double> Values(WeightKind kind) => s_values[(int)kind];

    internal static bool IsKnown(int acid) => s_known[acid];

    /// <summary>True for hydroxy acids and C20 and longer, whose weights are set by analogy.</summary>
    internal static bool IsAnalogous(int acid) => s_analogous[acid];

    private static ScoreWeight?[,] Table()
    {
        ScoreWeight?[,] table = new ScoreWeight?[KindCount, FattyAcid.Count];
        foreach ((string[] acids, double[] values) in s_rows)
        {
            foreach (FattyAcid acid in acids.Select(FattyAcid.FromShorthand))
            {
                for (int kind = 0; kind < KindCount; kind++)
                {
                    (WeightBasis basis, string[] sources, string why) = Ground(acid.Shorthand, (WeightKind)kind);
                    table[kind, acid.Index] = new(acid, (WeightKind)kind, values[kind], basis, [.. sources], why);
                }
            }
        }
        return table;
    }

    private static (WeightBasis Basis, string[] Sources, string Why) Ground(string acid, WeightKind kind) =>
        s_exceptions.TryGetValue((acid, kind), out (WeightBasis, string[], string) own) ? own
        : s_byAnalogy.Contains(acid) ? (WeightBasis.Analogy, s_grounds[(int)kind].Sources, NearestKin)
        : s_grounds[(int)kind];
}
