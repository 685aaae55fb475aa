using Microsoft.DotNet.Interactive.Formatting;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// What bar the fatty acids make: seven scores, each with its band, its confidence and what every fat and every acid brings. There is no
/// score of the whole. Made by <c>formula.Scores()</c>, <c>plan.Scores()</c> or <c>blend.Scores(...)</c>, which never throw on a formula:
/// a bar that can't be scored says why. Immutable, thread-safe.
/// </summary>
[TypeFormatterSource(typeof(NotebookFormatters), PreferredMimeTypes = [NotebookFormatters.Html])]
public sealed class BarScores : IShownAsHtml
{
    /// <summary>Share of acids that may be unknown.</summary>
    private const double MostUnknown = 0.05;

    /// <summary>Share of acids with weights by analogy from which every score is low in confidence.</summary>
    private const double MostAnalogous = 0.10;

    /// <summary>Potassium by moles of the hydroxide from which every score is low in confidence.</summary>
    private const double MostPotassium = 0.30;

    /// <summary>A superfat so little below 0 comes from the arithmetic.</summary>
    private const double Noise = 1e-9;

    private readonly double[] _shares = new double[FattyAcid.Count];
    private readonly double _superfat;
    private readonly double _potassium;
    private readonly double _unknown;
    private readonly double _analogous;
    private readonly Score[] _all = [];

    internal BarScores(AcidPool pool, double superfat, double potassium)
    {
        Pool = pool;
        _superfat = Math.Clamp(superfat, 0, 1);
        IsLyeHeavy = superfat < -Noise;
        _potassium = Math.Clamp(potassium, 0, 1);
        if (pool.IsEmpty)
        {
            WhyNotScored = "there is no fat to score";
            return;
        }
        ReadOnlySpan<double> grams = pool.GramsOfAcids;
        for (int i = 0; i < grams.Length; i++)
            ScoredGrams += ScoreWeights.IsKnown(i) ? grams[i] : 0;
        _unknown = Math.Max(0, 1 - (ScoredGrams / pool.Grams));
        if (_unknown > MostUnknown)
        {
            WhyNotScored = $"{Text.Number(_unknown * 100)} % of the acids can't be counted, more than {Text.Number(MostUnknown * 100)} %";
            return;
        }
        for (int i = 0; i < grams.Length; i++)
        {
            _shares[i] = ScoreWeights.IsKnown(i) ? grams[i] / ScoredGrams : 0;
            _analogous += ScoreWeights.IsAnalogous(i) ? _shares[i] : 0;
        }
        _all = new Score[ScoreDefinition.All.Count];
        for (int i = 0; i < _all.Length; i++)
        {
            double[] points = new double[FattyAcid.Count];
            ScoreMath.Points(ScoreDefinition.All[i].Kind, _shares, _potassium, _superfat, points);
            _all[i] = new(this, ScoreDefinition.All[i], points, _analogous > MostAnalogous || _potassium > MostPotassium);
        }
    }

    internal AcidPool Pool { get; }

    internal bool IsLyeHeavy { get; }

    internal double ScoredGrams { get; }

    internal ReadOnlySpan<double> Shares => _shares;

    /// <summary>True when the acids are known well enough.</summary>
    public bool IsScored => _all.Length > 0;

    /// <summary>Why there are no scores; null when there are.</summary>
    public string? WhyNotScored { get; }

    /// <summary>All seven, in the order in which they are shown; empty when not scored.</summary>
    public IReadOnlyList<Score> All => _all;

    /// <summary>How firm the dried bar is at room temperature; null when not scored.</summary>
    public Score? Hardness => this[ScoreKind.Hardness];

    /// <summary>How slowly it is used up; null when not scored.</summary>
    public Score? WearResistance => this[ScoreKind.WearResistance];

    /// <summary>How much foam, and how soon; null when not scored.</summary>
    public Score? LatherVolume => this[ScoreKind.LatherVolume];

    /// <summary>How long the foam stands; null when not scored.</summary>
    public Score? LatherStability => this[ScoreKind.LatherStability];

    /// <summary>How strongly it lifts skin grease; null when not scored.</summary>
    public Score? Cleansing => this[ScoreKind.Cleansing];

    /// <summary>How kindly it leaves the skin; null when not scored.</summary>
    public Score? Conditioning => this[ScoreKind.Conditioning];

    /// <summary>How readily it oxidises, high is bad; null when not scored.</summary>
    public Score? OxidationRisk => this[ScoreKind.OxidationRisk];

    /// <summary>Superfat of all fat that the conditioning counts with; a superfat below 0 counts as 0, and <see cref="Remarks"/> says so.</summary>
    public Ratio Superfat => Stored.ToRatio(_superfat);

    /// <summary>Potassium as a share of the hydroxide by moles.</summary>
    public Ratio Potassium => Stored.ToRatio(_potassium);

    /// <summary>Share by mass of the acids that can't be counted; up to 5 % the others are scaled to the whole.</summary>
    public Ratio Unknown => Stored.ToRatio(_unknown);

    /// <summary>What can't be counted, with its share.</summary>
    public ValueList<UnscoredPart> Unscored => Pool.IsEmpty ? default : Pool.Unscored().ToValueList();

    /// <summary>Weakest evidence among the profiles; null when no fat has one.</summary>
    public Evidence? Evidence
    {
        get
        {
            Evidence? weakest = null;
            foreach (AcidPool.Entry fat in Pool.Fats)
            {
                if (fat.IsCounted && !(weakest >= fat.Fat!.Figures.ProfileEvidence))
                    weakest = fat.Fat.Figures.ProfileEvidence;
            }
            return weakest;
        }
    }

    /// <summary>What to know before reading these scores: a lye-heavy bar, scored or not, then what makes their confidence low, profiles from memory, wide profiles. Sentences in English.</summary>
    public ValueList<string> Remarks => ScoreRemarks.Of(this, _analogous > MostAnalogous ? _analogous : 0, _potassium > MostPotassium);

    /// <summary>One score; null when not scored.</summary>
    /// <param name="kind">Which score.</param>
    /// <exception cref="ArgumentOutOfRangeException">None of the seven.</exception>
    public Score? this[ScoreKind kind]
    {
        get
        {
            _ = Guard.Known(kind, "A score");
            return IsScored ? _all[(int)kind] : null;
        }
    }

    /// <summary>The scores as text for people, by group, with what each fat brings; invariant.</summary>
    public override string ToString() => ScoresText.Of(this);

    /// <summary>The same as a fragment of HTML with a picture in SVG, without script, every text escaped; notebooks show it by themselves.</summary>
    public string ToHtml() => ScoresHtml.Of(this);
}
