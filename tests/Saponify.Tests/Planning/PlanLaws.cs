using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Planning;

/// <summary>Laws of the lye computation, for sound formulas unless the law holds for all.</summary>
public class PlanLaws
{
    [Law]
    public Property Scaling_AllMasses_ScalesTheAlkaliAndLeavesRatios() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0.01, 100).Arbitrary(), (formula, factor) =>
    {
        (LyeBalance one, LyeBalance many) = (formula.Balance(), formula.ScaledBy(factor).Balance());
        return Near.Is(one.AlkaliAsWeighed.Grams * factor, many.AlkaliAsWeighed.Grams)
            && Near.Is(one.LyeLiquid.Grams * factor, many.LyeLiquid.Grams, 1e-7, 1e-7)
            && Near.Is(one.SuperfatOfAllFat, many.SuperfatOfAllFat)
            && Near.Is(one.SuperfatOfListedFats, many.SuperfatOfListedFats)
            && Near.Is(one.LyeConcentrationOfAllWater, many.LyeConcentrationOfAllWater);
    });

    [Law]
    public Property Order_OfLines_ChangesNoTotal() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        Formula reversed = formula with { Fats = [.. formula.Fats.Reverse()], Additives = [.. formula.Additives.Reverse()] };
        (LyeBalance one, LyeBalance other) = (formula.Balance(), reversed.Balance());
        return Near.Is(one.AlkaliAsWeighed.Grams, other.AlkaliAsWeighed.Grams, 1e-12)
            && Near.Is(one.SuperfatOfAllFat, other.SuperfatOfAllFat, 1e-12)
            && Near.Is(one.BatchMass.Grams, other.BatchMass.Grams, 1e-12);
    });

    [Law]
    public Property MoreSuperfat_LessAlkali() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0.01, 20).Arbitrary(), (formula, more) =>
    {
        var target = (SuperfatTarget)formula.Alkali;
        Formula fatter = formula with { Alkali = target with { Superfat = target.Superfat + Ratio.FromPercent(more) } };
        return fatter.Balance().AlkaliAsWeighed.Grams < formula.Balance().AlkaliAsWeighed.Grams;
    });

    [Law]
    public Property PotassiumToSodiumHydroxide_IsTheRatioOfMolarMasses() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        Formula dry = formula with { Liquids = LiquidPlan.TotalWater(Mass.FromGrams(5000)), Additives = [] };
        Formula soda = dry with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.SodiumHydroxide(Ratio.FromPercent(100))) };
        Formula potash = dry with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.PotassiumHydroxide(Ratio.FromPercent(100))) };
        return Near.Is(potash.Balance().AlkaliAsWeighed.Grams / soda.Balance().AlkaliAsWeighed.Grams, 56.105 / 39.997, 1e-12);
    });

    [Law]
    public Property Splitting_AFatIntoTwoLines_ChangesNothing() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0, 1).Arbitrary(), (formula, part) =>
    {
        FatPortion first = formula.Fats[0];
        double grams = first.Mass.Grams;
        Formula split = formula with
        {
            Fats = [first with { Mass = Mass.FromGrams(grams * part) }, first with { Mass = Mass.FromGrams(grams * (1 - part)) }, .. formula.Fats.Skip(1)],
        };
        (LyeBalance one, LyeBalance two) = (formula.Balance(), split.Balance());
        return Near.Is(one.AlkaliAsWeighed.Grams, two.AlkaliAsWeighed.Grams, 1e-12) && Near.Is(one.SuperfatBeforeLateFats, two.SuperfatBeforeLateFats, 1e-9)
            && split.Fats.Select(f => f.Line).Distinct().Count() == split.Fats.Count;
    });

    [Law]
    public Property MovingAFatToTrace_ChangesOnlyTheSuperfatBeforeTheLateFats() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        FatPortion last = formula.Fats[^1];
        Formula late = formula with { Fats = [.. formula.Fats.Take(formula.Fats.Count - 1), last.AtTrace()] };
        (LyeBalance one, LyeBalance two) = (formula.Balance(), late.Balance());
        bool rest = Near.Is(one.AlkaliAsWeighed.Grams, two.AlkaliAsWeighed.Grams, 1e-12)
            && Near.Is(one.LyeLiquid.Grams, two.LyeLiquid.Grams, 1e-9, 1e-9)
            && Near.Is(one.SuperfatOfAllFat, two.SuperfatOfAllFat, 1e-12)
            && Near.Is(one.SuperfatOfListedFats, two.SuperfatOfListedFats, 1e-12);
        return rest && !(two.SuperfatBeforeLateFats?.DecimalFractions >= one.SuperfatBeforeLateFats?.DecimalFractions);
    });

    [Law]
    public Property FixingTheAlkaliAtThePlannedMass_GivesBackTheSuperfat() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        if (!plan.Balance.CanBeWeighed)
            return true;
        Formula fixedAlkali = formula with { Alkali = AlkaliPlan.Weighed([.. plan.Alkalis]) };
        LyeBalance again = fixedAlkali.Balance();
        return Near.Is(plan.Balance.SuperfatOfAllFat, again.SuperfatOfAllFat) && Near.Is(plan.Balance.LyeLiquid.Grams, again.LyeLiquid.Grams, 1e-7, 1e-7);
    });

    [Law]
    public Property MassIn_IsMassOut() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        if (!plan.Balance.CanBeWeighed)
            return true;
        double sum = formula.Fats.Sum(f => f.Mass.Grams) + plan.Alkalis.Sum(a => a.Mass.Grams) + (plan.LyeLiquid?.Mass.Grams ?? 0)
            + formula.Liquids.HeldBack.Sum(h => h.Mass.Grams) + plan.Additives.Sum(a => a.Mass?.Grams ?? 0);
        return Near.Is(sum, plan.BatchMass.Grams);
    });

    [Law]
    public Property WhoTakesUpLye_AddsUpToTheSupply() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        return Near.Is(plan.LyeUptake.Sum(u => u.Hydroxide.Moles), plan.Balance.HydroxideSupplied.Moles)
            && Near.Is(plan.LyeUptake.Sum(u => u.AsAlkali.Grams), plan.Balance.AlkaliAsWeighed.Grams);
    });

    [Law]
    public Property WaterTable_AddsUpToAllWater() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        double dissolving = plan.Water.Where(w => w.IsWhileDissolving).Sum(w => w.Water.Grams), pure = plan.Balance.PureAlkali.Grams;
        return Near.Is(plan.Water.Sum(w => w.Water.Grams), plan.Balance.AllWater.Grams)
            && Near.Is(plan.Balance.LyeConcentrationWhileDissolving, Ratio.FromDecimalFractions(pure / (pure + dissolving)));
    });

    [Law]
    public Property Purity_Divides() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(50, 100).Arbitrary(), (formula, percent) =>
    {
        Formula water = formula with { Liquids = LiquidPlan.TotalWater(Mass.FromGrams(5000)) };
        double Weighed(double purity) => (water with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.SodiumHydroxide(Ratio.FromPercent(purity))) }).Balance().AlkaliAsWeighed.Grams;
        return Near.Is(Weighed(percent) * percent / 100, Weighed(100), 1e-12);
    });

    [Law]
    public Property TheWaterRule_IsMetExactly_MilkOrNot() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.LiquidPlans(Any.KitchenMass).Arbitrary(), (formula, liquids) =>
    {
        BatchPlan plan = (formula with { Liquids = liquids }).Plan();
        if (!plan.Balance.CanBeWeighed)
            return true;
        double water = plan.Balance.AllWater.Grams, pure = plan.Balance.PureAlkali.Grams;
        return liquids.Rule switch
        {
            WaterRule.LyeConcentration => Near.Is(pure / (pure + water), liquids.Share!.Value.DecimalFractions),
            WaterRule.WaterToAlkali => Near.Is(water / pure, liquids.Share!.Value.DecimalFractions),
            WaterRule.WaterToFats => Near.Is(water / formula.ListedFats.Grams, liquids.Share!.Value.DecimalFractions),
            WaterRule.TotalWater => Near.Is(water, liquids.Mass!.Value.Grams),
            _ => Near.Is(plan.LyeLiquid!.Mass.Grams, liquids.Weighed!.Mass.Grams),
        };
    });

    [Law]
    public Property TheSuperfatAskedFor_ComesOut() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.LiquidPlans(Any.KitchenMass).Arbitrary(), Any.AlkaliPlans(Any.KitchenMass, -10).Arbitrary(), (formula, liquids, alkali) =>
    {
        BatchPlan plan = (formula with { Liquids = liquids, Alkali = alkali }).Plan();
        if (!plan.Balance.CanBeWeighed || alkali is not SuperfatTarget target)
            return true;
        Ratio? got = target.Basis == SuperfatBasis.AllFat ? plan.Balance.SuperfatOfAllFat : plan.Balance.SuperfatOfListedFats;
        return Near.Is(got, target.Superfat, 1e-9);
    });

    [Law]
    public Property TheWindow_GivesTheStrengthItNames() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        LiquidWindow window = formula.Plan().LiquidWindow;
        LyeBalance With(Mass mass) => (formula with
        {
            Liquids = LiquidPlan.WeighedLyeLiquid(formula.Liquids.LyeLiquid.Liquid.Weighing(mass)).HoldingBack([.. formula.Liquids.HeldBack]),
        }).Balance();
        return (window.At25Percent is not { } weak || Near.Is(With(weak).LyeConcentrationOfAllWater, Ratio.FromPercent(25)))
            && (window.At40Percent is not { } strong || Near.Is(With(strong).LyeConcentrationOfAllWater, Ratio.FromPercent(40)));
    });

    [Law]
    public Property PrintedFigures_NeverLowerTheSuperfat() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        if (!plan.Balance.CanBeWeighed)
            return true;
        double printed = new PlanSheet(plan, null).Printed.Balance().OfAllFat!.Value;
        return printed >= plan.Balance.OfAllFat!.Value - 1e-7;
    });

    [Law]
    public Property Plan_OfAnyFormula_IsFiniteAndDoesNotThrow() => Prop.ForAll(Any.Formulas.Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        LyeBalance balance = plan.Balance;
        double?[] numbers =
        [
            balance.AlkaliAsWeighed.Grams, balance.PureAlkali.Grams, balance.HydroxideSupplied.Moles, balance.FatDemand.Moles, balance.AcidDemand.Moles,
            balance.SuperfatOfAllFat?.Percent, balance.SuperfatOfListedFats?.Percent, balance.SuperfatBeforeLateFats?.Percent, balance.LyeLiquid.Grams,
            balance.WaterShort.Grams, balance.AllWater.Grams, balance.LyeConcentrationOfAllWater?.Percent, balance.LyeConcentrationWhileDissolving?.Percent,
            balance.BatchMass.Grams, plan.LiquidWindow.LeastToDissolve?.Grams, plan.LiquidWindow.At25Percent?.Grams, plan.LiquidWindow.At40Percent?.Grams,
            .. plan.LyeUptake.Select(u => (double?)u.AsAlkali.Grams), .. plan.PossibleUptake.Select(u => u.AtMost?.Grams), .. plan.Water.Select(w => (double?)w.Water.Grams),
            .. plan.Alkalis.Select(a => (double?)a.Mass.Grams),
        ];
        bool offered = plan.Alkalis.Count > 0 || plan.LyeLiquid is not null;
        return (numbers.All(n => n is null || double.IsFinite(n.Value))
            && plan.Obstacles.Count == 0 == balance.CanBeWeighed
            && !(offered && plan.Obstacles.Count > 0)
            && plan.ToString().Length > 0 && PlanJson.Write(plan).Length > 0).ToProperty();
    });

    [Law]
    public Property EveryCulture_GivesTheSameText() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Gen.Elements(InCulture.Names).ToArbitrary(), (formula, culture) =>
    {
        string All() => formula.Plan() + Convert.ToHexString(PlanJson.Write(formula.Plan())) + Convert.ToHexString(FormulaFile.Write(formula, Pantry.Reference));
        return All() == InCulture.Run(culture, All);
    });
}
