using Saponify.Internals;
using UnitsNet;

namespace Saponify.Analysis;

/// <summary>What rules ask again and again, computed once per analysis. Immutable as seen from outside; made by the engine.</summary>
public sealed class FormulaFacts
{
    private Margin? _margin;
    private bool _marginKnown;
    private double? _sugar;
    private ProcessPlan? _process;
    private BarScores? _scores;
    private MouldFill? _fill;
    private CureFit? _cure;

    internal FormulaFacts(Formula formula, BatchSetup setup)
    {
        Formula = formula;
        Setup = setup;
        Plan = formula.Plan();
    }

    /// <summary>The formula.</summary>
    public Formula Formula { get; }

    /// <summary>The circumstances.</summary>
    public BatchSetup Setup { get; }

    /// <summary>Its plan.</summary>
    public BatchPlan Plan { get; }

    /// <summary>The numbers of its plan.</summary>
    public LyeBalance Balance => Plan.Balance;

    /// <summary>Margin of the superfat, on the scales of the setup if it has some; null for a plan that can't be weighed.</summary>
    public Margin? Margin
    {
        get
        {
            if (!_marginKnown)
                (_margin, _marginKnown) = (Plan.Margin(Setup.Scale, Setup.AlkaliScale, Ratio.FromPercent(95)), true);
            return _margin;
        }
    }

    /// <summary>How warm it gets, step by step; null when no temperatures are given.</summary>
    public ProcessPlan? Process => _process ??= Setup.Process is { } setup ? Plan.Process(setup) : null;

    /// <summary>What bar its fatty acids make.</summary>
    public BarScores Scores => _scores ??= Plan.Scores();

    /// <summary>How it fits one mould; null without a mould, or when its density can't be told.</summary>
    public MouldFill? Fill => _fill ??= Setup.Mould is { } mould ? Plan.Fill(mould, Setup.Pour, Setup.LeftInPot) : null;

    /// <summary>What the weighings of a curing bar tell, with the mass balance of this formula; null without weighings.</summary>
    public CureFit? Cure => _cure ??= Setup.Cure is { } series ? (series.Moisture is null && Balance.CanBeWeighed ? series with { Moisture = Plan.Moisture() } : series).Fit() : null;

    /// <summary>True when a listed fat takes up lye.</summary>
    public bool HasFat => Balance.ListedHydroxide >= LyeBalance.LeastDemand;

    /// <summary>
    /// Why the lye demand can't be told, or null. While a listed fat has no usable value, what it would take up is missing: whatever a rule says of the
    /// superfat would be a second finding of the same fault, and a wrong one.
    /// </summary>
    internal string? WhyNoDemand => Formula.LacksSaponification ? "a fat has no usable saponification value, which another rule says" : null;

    /// <summary>Why there is no superfat of all fat, or null.</summary>
    internal string? WhyNoSuperfat => WhyNoDemand ?? (Balance.OfAllFat is null ? "no fat takes up lye" : null);

    /// <summary>Why there is no superfat of the listed fats, or null.</summary>
    internal string? WhyNoListedSuperfat => WhyNoSuperfat ?? (HasFat ? null : "no listed fat takes up lye");

    /// <summary>Mass of the listed fats, the base of doses.</summary>
    public Mass ListedFats => Formula.ListedFats;

    /// <summary>Sugar from everything, as a share of the listed fats; 0 without fats.</summary>
    public Ratio SugarOfFats
    {
        get
        {
            _sugar ??= Formula.ListedGrams > 0 ? Containing.All(Plan).Sum(c => c.Grams * c.Contents.SugarFraction) / Formula.ListedGrams : 0;
            return Stored.ToRatio(_sugar.Value);
        }
    }

    /// <summary>Weakest evidence of the saponification values that the alkali rests on.</summary>
    public Evidence? Evidence => Plan.Evidence;

    internal double ListedGrams => Formula.ListedGrams;

    internal IEnumerable<Containing> Parts => Containing.All(Plan);
}
