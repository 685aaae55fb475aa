using System.Runtime.CompilerServices;

namespace Saponify.Benchmarks;

/// <summary>
/// The lye computation of one kind of formula (one alkali for a superfat of all fat, a lye concentration, one lye liquid with fat and acid, one
/// acid dosed by the fats) as straight-line doubles. Nothing is folded beforehand but what a formula has folded too: the sums over its fats.
/// </summary>
internal sealed class StraightLine
{
    private readonly Formula _formula;
    private readonly double _listedGrams, _recipe, _late;
    private readonly double _liquidWater, _liquidFat, _liquidAcid;
    private readonly double _additiveShare, _additiveWater, _additiveFat, _additiveAcid;
    private readonly double _superfat, _concentration, _weighedPerMole, _purePerMole, _waterPerMole;
    private readonly bool _usable;

    internal StraightLine(Formula formula)
    {
        _formula = formula;
        foreach (FatPortion portion in formula.Fats)
        {
            double grams = portion.Mass.Grams, hydroxide = grams * portion.Fat.Saponification!.Value.MilligramsKohPerGram / 56105;
            _listedGrams += grams;
            if (portion.Stage == Stage.Trace)
                _late += hydroxide;
            else
                _recipe += hydroxide;
        }
        Contents milk = formula.Liquids.LyeLiquid.Liquid.Contents;
        _liquidWater = milk.Water.DecimalFractions;
        _liquidFat = milk.Fat.DecimalFractions * milk.FatKind!.Saponification!.Value.MilligramsKohPerGram / 56105;
        _liquidAcid = milk.Acid.DecimalFractions / 90.078;               // lactic acid, one proton
        AdditivePortion citric = formula.Additives[0];
        _additiveShare = citric.OfFats!.Value.DecimalFractions;
        _additiveWater = citric.Additive.Contents.Water.DecimalFractions;
        _additiveFat = citric.Additive.FatHydroxidePerGram;
        _additiveAcid = citric.Additive.Contents.Acid.DecimalFractions * 3 / 192.123;
        var target = (SuperfatTarget)formula.Alkali;
        _superfat = target.Superfat.DecimalFractions;
        _concentration = formula.Liquids.Share!.Value.DecimalFractions;
        _purePerMole = 39.997;
        _weighedPerMole = 39.997 / 0.98;
        _waterPerMole = _weighedPerMole * target.Alkalis[0].Alkali.BoundWaterFraction;
        _usable = true;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]                           // else what nobody asks for would not be computed
    internal PlainBalance Balance()
    {
        double additive = _additiveShare * _listedGrams;
        double additiveWater = additive * _additiveWater, additiveFat = additive * _additiveFat, additiveAcid = additive * _additiveAcid;
        double part = 1 - _superfat;
        double n0 = additiveAcid + (part * (_recipe + _late + additiveFat)), n1 = _liquidAcid + (part * _liquidFat);
        double perMole = (_purePerMole * (1 - _concentration) / _concentration) - _waterPerMole;
        double wanted = (perMole * n0) - additiveWater, perGram = _liquidWater - (perMole * n1);
        bool met = true;
        double liquid = 0, lack = 0;
        if (wanted <= 0)
        {
            lack = -wanted;
        }
        else
        {
            liquid = wanted / perGram;
            if (!(perGram > 0 && liquid <= 1e12))
                (liquid, met) = (0, false);
        }
        double hydroxide = n0 + (n1 * liquid);
        double liquidWater = liquid * _liquidWater, alkaliWater = hydroxide * _waterPerMole, dissolving = liquidWater + alkaliWater;
        double liquidFat = liquid * _liquidFat, allFat = _recipe + _late + liquidFat + additiveFat;
        double acid = additiveAcid + (liquid * _liquidAcid);
        double alkali = hydroxide * _weighedPerMole;
        double batch = _listedGrams + alkali + liquid + additive;
        return new()
        {
            Hydroxide = hydroxide,
            RecipeHydroxide = _recipe,
            LateHydroxide = _late,
            LiquidFatHydroxide = liquidFat,
            AdditiveFatHydroxide = additiveFat,
            AcidHydroxide = acid,
            LyeLiquidGrams = liquid,
            WaterShortGrams = lack,
            AllWaterGrams = liquidWater + alkaliWater + additiveWater,
            DissolvingWaterGrams = dissolving,
            PureAlkaliGrams = hydroxide * _purePerMole,
            AlkaliGrams = alkali,
            BatchGrams = batch,
            CanBeWeighed = met && lack <= 0 && _usable && batch <= 1e9 && allFat >= 1e-12 && !(hydroxide > 0 && !(liquid > 0 && dissolving > 0)) && !(acid > hydroxide * (1 + 1e-12)),
        };
    }

    internal PlainPlan Plan() => new() { Formula = _formula, Balance = Balance(), RuleCanBeMet = true };

    /// <summary>Throws unless the library finds the same.</summary>
    internal void MustAgree()
    {
        PlainBalance plain = Balance();
        LyeBalance balance = _formula.Balance();
        if (Math.Abs(plain.AlkaliGrams - balance.AlkaliGrams) > 1e-9 || Math.Abs(plain.BatchGrams - balance.BatchGrams) > 1e-9 || Math.Abs(plain.AllWaterGrams - balance.AllWaterGrams) > 1e-9
            || Math.Abs(plain.AcidHydroxide - balance.AcidHydroxide) > 1e-12 || Math.Abs(plain.LiquidFatHydroxide - balance.LiquidFatHydroxide) > 1e-12 || plain.CanBeWeighed != balance.CanBeWeighed)
            throw new InvalidOperationException("the straight-line arithmetic does not agree with the library");
    }
}
