using System.Runtime.InteropServices;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// The numbers of a plan and nothing else: made without allocating, for sweeps over many formulas. Ask <c>formula.Plan()</c> for what to
/// weigh and why. Equality is exact on the stored numbers; <c>default</c> is the balance of nothing at all.
/// </summary>
/// <remarks>
/// With n in mol of hydroxide: superfat = 1 - (n(alkali) - n(acids))/n(fat). The three superfats share n(alkali) and n(acids) and differ
/// in which fat counts. Source: definition of the saponification value (iso-3657) and mass balance.
/// </remarks>
[StructLayout(LayoutKind.Auto)]
public readonly record struct LyeBalance
{
    /// <summary>Below so many mol of demand there is no fat to speak of, and a superfat is null: keeps every figure finite.</summary>
    internal const double LeastDemand = 1e-12;

    internal double Hydroxide { get; init; }

    internal double RecipeHydroxide { get; init; }

    internal double LateHydroxide { get; init; }

    internal double LiquidFatHydroxide { get; init; }

    internal double AdditiveFatHydroxide { get; init; }

    internal double AcidHydroxide { get; init; }

    internal double LyeLiquidGrams { get; init; }

    internal double WaterShortGrams { get; init; }

    internal double AllWaterGrams { get; init; }

    internal double DissolvingWaterGrams { get; init; }

    internal double PureAlkaliGrams { get; init; }

    internal double AlkaliGrams { get; init; }

    internal double BatchGrams { get; init; }

    internal double AllFatHydroxide => RecipeHydroxide + LateHydroxide + LiquidFatHydroxide + AdditiveFatHydroxide;

    internal double ListedHydroxide => RecipeHydroxide + LateHydroxide;

    /// <summary>False when something stands in the way of weighing this batch; <c>formula.Plan().Obstacles</c> says what.</summary>
    public bool CanBeWeighed { get; internal init; }

    /// <summary>Alkali to weigh, all alkalis together, impurity and solution water included.</summary>
    public Mass AlkaliAsWeighed => Mass.FromGrams(AlkaliGrams);

    /// <summary>Pure hydroxide in it.</summary>
    public Mass PureAlkali => Mass.FromGrams(PureAlkaliGrams);

    /// <summary>Hydroxide supplied.</summary>
    public AmountOfSubstance HydroxideSupplied => AmountOfSubstance.FromMoles(Hydroxide);

    /// <summary>Hydroxide that all fat could take up.</summary>
    public AmountOfSubstance FatDemand => AmountOfSubstance.FromMoles(AllFatHydroxide);

    /// <summary>Hydroxide that acids take up.</summary>
    public AmountOfSubstance AcidDemand => AmountOfSubstance.FromMoles(AcidHydroxide);

    /// <summary>Superfat against all fat: recipe fats, late fats and the fat in liquids and additives. A share of demand; null without fat.</summary>
    public Ratio? SuperfatOfAllFat => Ratio(OfAllFat);

    /// <summary>Superfat against the listed fats only, as if liquids and additives had no fat. Below 0 the bar is safe only by fat that nobody weighed as fat; null without listed fat.</summary>
    public Ratio? SuperfatOfListedFats => Ratio(OfListedFats);

    /// <summary>Superfat in the pot before the late fats go in: all counted fat except the late fats; null without such fat.</summary>
    public Ratio? SuperfatBeforeLateFats => Ratio(BeforeLateFats);

    internal double? OfAllFat => Superfat(AllFatHydroxide);

    internal double? OfListedFats => Superfat(ListedHydroxide);

    internal double? BeforeLateFats => Superfat(AllFatHydroxide - LateHydroxide);

    /// <summary>Mass of the liquid that the alkali is dissolved in; 0 when none is left for it.</summary>
    public Mass LyeLiquid => Mass.FromGrams(LyeLiquidGrams);

    /// <summary>By how much other liquids, additives and the alkali bring more water than the water rule asks for; 0 when the rule is met.</summary>
    public Mass WaterShort => Mass.FromGrams(WaterShortGrams);

    /// <summary>All water: of the lye liquid, held-back liquids, additives, a bought solution, bound water of flakes.</summary>
    public Mass AllWater => Mass.FromGrams(AllWaterGrams);

    /// <summary>Pure alkali/(pure alkali + water) in the jug: water of the lye liquid, of additives put there, of a solution or flakes. Null without alkali.</summary>
    public Ratio? LyeConcentrationWhileDissolving => Ratio(Concentration(DissolvingWaterGrams));

    /// <summary>Pure alkali/(pure alkali + all water). Null without alkali.</summary>
    public Ratio? LyeConcentrationOfAllWater => Ratio(Concentration(AllWaterGrams));

    /// <summary>Mass of everything that goes in.</summary>
    public Mass BatchMass => Mass.FromGrams(BatchGrams);

    /// <summary>A superfat that differs from 0 only by the rounding of doubles is 0: a plan for 0 % must not pass for lye-heavy.</summary>
    private double? Superfat(double demand)
    {
        if (!(demand >= LeastDemand))
            return null;
        double superfat = 1 - ((Hydroxide - AcidHydroxide) / demand);
        return Math.Abs(superfat) <= 1e-12 ? 0 : superfat;
    }

    private double? Concentration(double water) => PureAlkaliGrams > 0 ? PureAlkaliGrams / (PureAlkaliGrams + water) : null;

    private static Ratio? Ratio(double? fraction) => fraction is { } value ? Stored.ToRatio(value) : null;
}
