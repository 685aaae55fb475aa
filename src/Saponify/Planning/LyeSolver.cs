using System.Runtime.CompilerServices;
using Saponify.Internals;

namespace Saponify;

/// <summary>
/// The lye computation, in grams and moles. The hydroxide and the lye liquid depend on each other when the lye liquid brings fat or acid:
/// both are linear in the mass L of the lye liquid, so they are solved together in closed form.
/// </summary>
/// <remarks>
/// Hydroxide: N = n0 + n1 L, with n0 the acids and (1 - s) of the fats known beforehand and n1 those of one gram of lye liquid.
/// Water rule: w L + known water + water brought by the alkali = k N + W, with w the water in one gram of lye liquid.
/// Hence L = ((k - brought) n0 + W - known)/(w - (k - brought) n1).
/// </remarks>
internal readonly ref struct LyeSolver
{
    /// <summary>A lye liquid of more than this is no solution: its own fat eats up the alkali that its water is for.</summary>
    private const double MostGrams = 1e12;

    private readonly Formula _formula;
    private readonly AlkaliMix _mix;
    private readonly Liquid _liquid;
    private readonly double _n0;
    private readonly double _n1;
    private readonly double _additiveGrams;
    private readonly double _additiveWater;
    private readonly double _additiveDissolvingWater;
    private readonly double _additiveFat;
    private readonly double _additiveAcid;

    internal LyeSolver(Formula formula)
    {
        _formula = formula;
        LiquidPlan liquids = formula.Liquids;
        _mix = formula.Alkali.Mix;
        _liquid = liquids.LyeLiquid.Liquid;
        (double additives, double additiveWater, double dissolvingWater, double additiveFat, double additiveAcid) = (0, 0, 0, 0, 0);
        foreach (AdditivePortion portion in formula.Additives.AsSpan())
        {
            Additive additive = portion.Additive;
            double grams = portion.GramsFor(formula.ListedGrams);
            double water = grams * additive.WaterPerGram;
            additives += grams;
            additiveWater += water;
            dissolvingWater += portion.Stage == Stage.LyeLiquid ? water : 0;
            additiveFat += grams * additive.FatHydroxidePerGram;
            additiveAcid += grams * additive.AcidHydroxidePerGram;
        }
        (_additiveGrams, _additiveWater, _additiveDissolvingWater, _additiveFat, _additiveAcid) = (additives, additiveWater, dissolvingWater, additiveFat, additiveAcid);

        double acid = liquids.HeldBackAcidHydroxide + _additiveAcid;
        double listed = formula.RecipeHydroxide + formula.LateHydroxide;
        if (formula.Alkali is SuperfatTarget target)
        {
            double part = 1 - target.SuperfatFraction;
            bool allFat = target.Basis == SuperfatBasis.AllFat;
            _n0 = acid + (part * (allFat ? listed + liquids.HeldBackFatHydroxide + _additiveFat : listed));
            _n1 = _liquid.AcidHydroxidePerGram + (allFat ? part * _liquid.FatHydroxidePerGram : 0);
        }
        else
        {
            (_n0, _n1) = (((WeighedAlkali)formula.Alkali).Hydroxide, 0);
        }
    }

    private double KnownWater => _formula.Liquids.HeldBackWater + _additiveWater;

    internal LyeBalance Solve(out bool ruleCanBeMet)
    {
        LiquidPlan plan = _formula.Liquids;
        double liquid = plan.Grams, lack = 0;
        ruleCanBeMet = true;
        if (plan.Rule != WaterRule.WeighedLyeLiquid)
        {
            (double perMole, double fixedWater) = Rule(plan);
            ruleCanBeMet = LiquidFor(perMole, fixedWater, KnownWater, out liquid, out lack);
        }
        return Balance(liquid, lack, ruleCanBeMet && lack <= 0);
    }

    /// <summary>The lye liquid for a lye of this strength over all water; null when none gives it.</summary>
    internal double? LiquidForConcentration(double ofAllWater) =>
        LiquidFor(WaterPerMole(ofAllWater), 0, KnownWater, out double grams, out double lack) && lack <= 0 ? grams : null;

    /// <summary>The least lye liquid in which the alkali dissolves at 20 degrees Celsius; 0 when additives and bound water suffice, null when none does.</summary>
    internal double? LeastToDissolve() =>
        _mix.IsAllSolution ? 0
        : LiquidFor(Solubility.LeastWaterPerMole(_mix), 0, _additiveDissolvingWater, out double grams, out _) ? grams : null;

    private double WaterPerMole(double concentration) => _mix.PurePerMole * (1 - concentration) / concentration;

    /// <summary>The water rule as g of water per mol of hydroxide plus g of water in any case.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (double PerMole, double Fixed) Rule(LiquidPlan plan) => plan.Rule switch
    {
        WaterRule.LyeConcentration => (WaterPerMole(plan.Fraction), 0),
        WaterRule.WaterToAlkali => (_mix.PurePerMole * plan.Fraction, 0),
        WaterRule.WaterToFats => (0, plan.Fraction * _formula.ListedGrams),
        _ => (0, plan.Grams),
    };

    private bool LiquidFor(double waterPerMole, double fixedWater, double knownWater, out double grams, out double lack)
    {
        double perMole = waterPerMole - _mix.WaterPerMole;
        double wanted = (perMole * _n0) + fixedWater - knownWater;
        double perGram = _liquid.WaterPerGram - (perMole * _n1);
        (grams, lack) = (0, 0);
        if (wanted <= 0)
        {
            lack = -wanted;
            return true;
        }
        grams = wanted / perGram;
        if (perGram > 0 && grams <= MostGrams)
            return true;
        grams = 0;
        return false;
    }

    private LyeBalance Balance(double liquid, double lack, bool ruleIsMet)
    {
        LiquidPlan plan = _formula.Liquids;
        double hydroxide = _n0 + (_n1 * liquid);
        double liquidWater = liquid * _liquid.WaterPerGram;
        double alkaliWater = hydroxide * _mix.WaterPerMole;
        double dissolving = liquidWater + alkaliWater + _additiveDissolvingWater;
        double acid = plan.HeldBackAcidHydroxide + _additiveAcid + (liquid * _liquid.AcidHydroxidePerGram);
        double alkali = hydroxide * _mix.WeighedPerMole;
        double liquidFat = plan.HeldBackFatHydroxide + (liquid * _liquid.FatHydroxidePerGram);
        double allFat = _formula.RecipeHydroxide + _formula.LateHydroxide + liquidFat + _additiveFat;
        double batch = _formula.ListedGrams + alkali + liquid + plan.HeldBackGrams + _additiveGrams;
        return new()
        {
            Hydroxide = hydroxide,
            RecipeHydroxide = _formula.RecipeHydroxide,
            LateHydroxide = _formula.LateHydroxide,
            LiquidFatHydroxide = liquidFat,
            AdditiveFatHydroxide = _additiveFat,
            AcidHydroxide = acid,
            LyeLiquidGrams = liquid,
            WaterShortGrams = lack,
            AllWaterGrams = liquidWater + alkaliWater + KnownWater,
            DissolvingWaterGrams = dissolving,
            PureAlkaliGrams = hydroxide * _mix.PurePerMole,
            AlkaliGrams = alkali,
            BatchGrams = batch,
            CanBeWeighed = ruleIsMet && !_formula.LacksSaponification && !Obstacle.IsTooLarge(batch) && !Obstacle.LacksFat(allFat)
                && !Obstacle.LacksWater(_mix, hydroxide, liquid, dissolving) && !Obstacle.AcidExceeds(acid, hydroxide),
        };
    }
}
