using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;
using static Saponify.Tests.Making.Jugs;

namespace Saponify.Tests.Making;

/// <summary>Laws of heat in the lye jug.</summary>
public class LyeJugLaws
{
    [Law]
    public Property Energy_Closes() => Prop.ForAll(Jugs.Usual.Arbitrary(), Any.Between(0, 0.5).Arbitrary(), (jug, share) =>
    {
        LyeJug iced = jug.WithIce(Ratio.FromDecimalFractions(share), C(-12));
        LyeSolution lye = iced.Dissolve();
        if (lye.IceLeft.Grams > 0)
            return true;
        // every part from where it is to 25 degrees, then the lye from 25 degrees to its peak; published constants typed anew
        double toTabled = 0;
        foreach (LiquidPortion liquid in iced.Liquids)
            toTabled += liquid.Mass.Grams * (liquid.IsFrozen ? (1.958 * 12) + 333.6 + (4.18 * 25) : 4.18 * (25 - liquid.Temperature!.Value.DegreesCelsius));
        foreach (AlkaliPortion alkali in iced.Alkalis)
        {
            double pure = alkali.Mass.Grams * alkali.Alkali.Purity.High.DecimalFractions, water = alkali.Mass.Grams * alkali.Alkali.BoundWater.DecimalFractions;
            double solid = alkali.Alkali.Kind == AlkaliKind.SodiumHydroxide ? 59.5 / 39.997 : 68.9 / 56.105;
            toTabled += ((pure * solid) + (water * 4.18) + ((alkali.Mass.Grams - pure - water) * 0.8)) * (25 - iced.AlkaliTemperature.DegreesCelsius);
        }
        double taken = lye.HeatCapacity!.Value.JoulesPerKelvin * (lye.Peak.Celsius() - 25);
        return Near.Is(lye.HeatReleased!.Value.Joules, toTabled + taken, 1e-9, 1e-6);
    });

    [Law]
    public Property WarmerWater_OrWarmerAlkali_HigherPeak() => Prop.ForAll(Jugs.Usual.Arbitrary(), Any.Between(0.5, 20).Arbitrary(), (jug, more) =>
    {
        double peak = jug.Dissolve().Peak.Celsius();
        double warm = jug.WithLiquidsAt(C(jug.Liquids[0].Temperature!.Value.DegreesCelsius + more)).Dissolve().Peak.Celsius();
        double shelf = (jug with { AlkaliTemperature = C(jug.AlkaliTemperature.DegreesCelsius + more) }).Dissolve().Peak.Celsius();
        return warm > peak && warm < peak + (1.5 * more) && shelf > peak && shelf < warm;
    });

    [Law]
    public Property MoreIce_LowerPeak() => Prop.ForAll(Jugs.Usual.Arbitrary(), Any.Between(0, 1).Arbitrary(), Any.Between(0, 1).Arbitrary(), (jug, one, other) =>
    {
        (double little, double much) = (Math.Min(one, other), Math.Max(one, other));
        double first = jug.WithIce(Ratio.FromDecimalFractions(little), C(-18)).Dissolve().Peak.Celsius(), second = jug.WithIce(Ratio.FromDecimalFractions(much), C(-18)).Dissolve().Peak.Celsius();
        return second <= first + 1e-9 && second >= 0 && (first == 0 || much - little < 1e-6 || second < first);
    });

    [Law]
    public Property Scaling_EveryMass_LeavesThePeak() => Prop.ForAll(Jugs.Usual.Arbitrary(), Any.Between(0.01, 100).Arbitrary(), (jug, factor) =>
    {
        LyeJug scaled = jug.WithLiquidsTimes(factor) with { Alkalis = [.. jug.Alkalis.Select(a => a with { Mass = a.Mass * factor })] };
        return Near.Is(jug.Dissolve().Peak.Celsius(), scaled.Dissolve().Peak.Celsius(), 1e-9)
            && Near.Is(jug.Dissolve().HeatReleased!.Value.Joules * factor, scaled.Dissolve().HeatReleased!.Value.Joules, 1e-9);
    });

    [Law]
    public Property Flakes_NeverPassTheirBound() => Prop.ForAll(Jugs.Usual.Arbitrary(), jug =>
    {
        LyeSolution lye = jug.Dissolve();
        bool isWet = lye.HeatOfHydrate.Joules > 0;
        return isWet ? lye.PeakOfHydrate.Celsius() < lye.Peak.Celsius() : lye.PeakOfHydrate.Celsius() == lye.Peak.Celsius();
    });

    [Law]
    public Property DilutingInTwoSteps_GivesTheHeatOfOne() => Prop.ForAll(Any.Between(20, 49).Arbitrary(), Any.Between(0.1, 3).Arbitrary(), (strength, more) =>
    {
        // dry to weak at once, or dry to strong and then, as bought lye, strong to weak
        double water = 100 - strength, all = water * (1 + more);
        LyeSolution once = Jug(Naoh(strength), Water(all, 25)).Dissolve(), first = Jug(Naoh(strength), Water(water, 25)).Dissolve();
        AlkaliPortion bought = Alkali.SodiumHydroxideSolution(Ratio.FromPercent(strength)).Weighing(Mass.FromGrams(100));
        LyeSolution second = Jug(bought, Water(all - water, 25)).Dissolve();
        return Near.Is(once.HeatReleased!.Value.Joules, first.HeatReleased!.Value.Joules + second.HeatReleased!.Value.Joules, 1e-9, 1e-6);
    });

    [Law]
    public Property Properties_AreContinuousAndOrdered() => Prop.ForAll(Any.Between(0, 49.9).Arbitrary(), Gen.Elements(true, false).Arbitrary(), (percent, isSodium) =>
    {
        LyeProperties Of(double p) => isSodium ? LyeProperties.OfSodiumHydroxide(Ratio.FromPercent(p)) : LyeProperties.OfPotassiumHydroxide(Ratio.FromPercent(p));
        (LyeProperties weak, LyeProperties strong) = (Of(percent), Of(percent + 0.1));
        double heat = weak.HeatOfSolution!.Value.KilojoulesPerMole - strong.HeatOfSolution!.Value.KilojoulesPerMole;
        return strong.BoilingPoint!.Value.DegreesCelsius > weak.BoilingPoint!.Value.DegreesCelsius
            && strong.Density(C(25))!.Value.GramsPerMilliliter > weak.Density(C(25))!.Value.GramsPerMilliliter
            && strong.HeatCapacity(C(60))!.Value.KilojoulesPerKilogramKelvin < weak.HeatCapacity(C(60))!.Value.KilojoulesPerKilogramKelvin + 1e-12
            && (percent < 10 ? Math.Abs(heat) < (percent < 0.5 ? 0.5 : 0.2) : heat is > 0 and < 0.2)     // the table itself is steep in the first half per cent
            && weak.HeatOfSolution.Low!.Value.KilojoulesPerMole <= weak.HeatOfSolution.Value.KilojoulesPerMole;
    });
}
