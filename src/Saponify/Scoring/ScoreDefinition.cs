using Saponify.Internals;

namespace Saponify;

/// <summary>
/// What a score is: its formula, bands, confidence, what it can't see, and what it rests on. The scores describe a soda soap that is well
/// dried (about 15 % water or less), in soft water. They are ranks with a scale, not measurements. One object per kind, immutable.
/// </summary>
public sealed class ScoreDefinition
{
    private ScoreDefinition(ScoreKind kind, ScoreGroup group, string name, ScoreConfidence confidence, string formula, string decomposition, string ground, string blind, ValueList<string> sources, params (double From, string Words)[] bands)
    {
        Kind = kind;
        Group = group;
        Name = name;
        Confidence = confidence;
        Formula = formula;
        Decomposition = decomposition;
        Ground = ground;
        Blind = blind;
        Sources = sources;
        Bands = [.. bands.Select(b => new ScoreBand(b.From, b.Words))];
    }

    /// <summary>What users should know before they read any score.</summary>
    public static ValueList<string> Limits { get; } =
    [
        "The scores are ranks with a scale, not measurements; steps of less than 5 points mean nothing.",
        "They add single acids by mass; crystals of mixed soaps are not additive (weil-1977, demul-2000).",
        "They know nothing of water, cure, salt, sugar, glycerol, milk solids, scent, hard water or process; age alone moves a bar by a band or more (girgis-2003).",
        "Outside the model: more than 30 % potassium, more than 10 % hydroxy acids or acids of C20 and longer, waxes and rosin.",
        "No health claim can be built on them, and no formula is wrong for the band it falls into.",
    ];

    /// <summary>All seven, in the order in which they are shown.</summary>
    public static IReadOnlyList<ScoreDefinition> All { get; } =
    [
        new(ScoreKind.Hardness, ScoreGroup.OnTheDish, "hardness", ScoreConfidence.Fair,
            "100 x sum(share x hardness weight) x (1 - 0.8 x potassium)",
            "linear: each acid brings 100 x share x weight x (1 - 0.8 x potassium)",
            "a bar is crystals of the undissolved soaps in a paste of the dissolved ones; potash makes soft soap; the factor 0.8 is judgement",
            "water, age, salt, sugar, glycerol, crystal form, cracking",
            ["hill-2016", "jce-soap", "kuntom-1996", "simmons-appleton-1908"],
            (0, "soft, spreads or dents"), (25, "tender, needs months"), (45, "firm"), (60, "hard"), (75, "very hard, may break when cut")),
        new(ScoreKind.WearResistance, ScoreGroup.OnTheDish, "wear resistance", ScoreConfidence.Fair,
            "100 x sum(share x wear weight) x (1 - 0.5 x potassium)",
            "linear: each acid brings 100 x share x weight x (1 - 0.5 x potassium)",
            "soaps of short chains and oleate dissolve first and are used up fast; the factor 0.5 is judgement",
            "age, which makes soft bars last much longer, the water they stand in, salt",
            ["fischer-1921", "ginn-1968", "hill-2016"],
            (0, "goes quickly, needs a draining dish"), (20, "average"), (35, "slow to go"), (50, "very slow to go")),
        new(ScoreKind.LatherVolume, ScoreGroup.InTheHand, "lather volume", ScoreConfidence.LowToFair,
            "100 x Q/(Q + 0.08) x (0.6 + 0.4 x F), Q = sum(share x quick weight), F = sum(share x film weight)",
            "60 points go by the quick weights, share x weight x 60/(Q + 0.08); 40 by the film weights, share x weight x 40 x Q/(Q + 0.08)",
            "soaps that foam at once need long chains that carry the foam: it peaks at blends; the form of the formula is judgement",
            "hard water, temperature, sugar, free fat beyond the acids, how it is rubbed; castor oil's name for foam found one thesis (mishra-blends) and counts for nothing here",
            ["benin-palm-blends", "ginn-1968", "jce-soap"],
            (0, "sparse"), (35, "modest"), (50, "good"), (62, "plentiful")),
        new(ScoreKind.LatherStability, ScoreGroup.InTheHand, "lather stability", ScoreConfidence.LowToFair,
            "100 x sum(share x lasting weight)",
            "linear: each acid brings 100 x share x weight",
            "foam of palmitate and stearate lasts, foam of laurate does not",
            "hard water, sugar, glycerol, free fat",
            ["eke-2004", "gtz-1993", "jce-soap"],
            (0, "falls fast"), (42, "medium"), (55, "lasting"), (68, "very lasting")),
        new(ScoreKind.Cleansing, ScoreGroup.OnTheSkin, "cleansing", ScoreConfidence.Low,
            "100 x sum(share x cleansing weight)",
            "linear: each acid brings 100 x share x weight",
            "degreasing is strongest at C12; long saturated soaps wash only when hot; the one published series is not reproduced",
            "hard water, temperature, how much soap is rubbed off, free fat",
            ["benin-palm-blends", "fischer-1921", "gtz-1993", "kubota-2020"],
            (0, "gentle"), (35, "everyday"), (50, "thorough"), (60, "strips grease")),
        new(ScoreKind.Conditioning, ScoreGroup.OnTheSkin, "conditioning", ScoreConfidence.Low,
            "100 x (0.75 x (1 - sum(share x irritation weight)) + 0.25 x sum(share x emollient weight) x min(1, superfat/8 %))",
            "linear, since the shares add up to 1: each acid brings 100 x share x (0.75 x (1 - irritation) + 0.25 x emollient x min(1, superfat/8 %))",
            "mostly how little C10 and C12 soap there is, and a little of what the free fat may do; the weight of the free fat is judgement on weak evidence",
            "skin, which differs more than soaps do (vandervalk-1984), glycerol, milk, scent, how often one washes",
            ["benjamin-2019", "blank-1947", "jscc-1973", "kubota-2020", "sni-1994"],
            (0, "drying"), (45, "fair"), (58, "kind"), (68, "very kind")),
        new(ScoreKind.OxidationRisk, ScoreGroup.OnTheShelf, "oxidation risk", ScoreConfidence.Fair,
            "100 x X/(X + 2), X = sum(share x oxidation weight); high is bad",
            "in proportion: each acid brings 100 x share x weight/(X + 2)",
            "acids with two and three double bonds oxidise many times as fast as oleic acid",
            "age and history of the oil, antioxidants, metals, light, warmth; free fat goes first, so superfat adds to it (judgement)",
            ["antonic-2020", "antonic-2021", "fatemi-hammond-1980", "shurson-2015"],
            (0, "low"), (30, "moderate"), (50, "raised, keep cool and dark"), (65, "high")),
    ];

    /// <summary>Which score.</summary>
    public ScoreKind Kind { get; }

    /// <summary>Where it is met.</summary>
    public ScoreGroup Group { get; }

    /// <summary>Its name, lower case.</summary>
    public string Name { get; }

    /// <summary>How far it can be trusted at best; a single result may deserve less.</summary>
    public ScoreConfidence Confidence { get; }

    /// <summary>The formula as text; shares by mass of the scored acids, potassium as a share of the hydroxide.</summary>
    public string Formula { get; }

    /// <summary>How the score is split into what each acid brings; the parts add up to it.</summary>
    public string Decomposition { get; }

    /// <summary>Why it is built like this, with what is judgement.</summary>
    public string Ground { get; }

    /// <summary>What it can't see.</summary>
    public string Blind { get; }

    /// <summary>Keys of the sources it rests on or was held against.</summary>
    public ValueList<string> Sources { get; }

    /// <summary>Its bands, from 0 upwards.</summary>
    public ValueList<ScoreBand> Bands { get; }

    /// <summary>The definition of a score.</summary>
    /// <param name="kind">Which score.</param>
    /// <exception cref="ArgumentOutOfRangeException">None of the seven.</exception>
    public static ScoreDefinition Of(ScoreKind kind) => All[(int)Guard.Known(kind, "A score")];

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    internal ScoreBand BandOf(double value)
    {
        ScoreBand band = Bands[0];
        foreach (ScoreBand next in Bands)
        {
            if (value >= next.From)
                band = next;
        }
        return band;
    }
}
