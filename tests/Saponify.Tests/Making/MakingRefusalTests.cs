using Saponify.Tests.Formulas;
using Saponify.Tests.Support;
using static Saponify.Tests.Making.Jugs;

namespace Saponify.Tests.Making;

/// <summary>What can't be made, poured, cut or cured, and what is said instead.</summary>
public class MakingRefusalTests
{
    private static readonly LyeJug s_jug = Jug(Naoh(130), Water(270, 20));
    private static readonly LyeSolution s_lye = s_jug.Dissolve();
    private static readonly FatPortion s_olive = Pantry.Reference.Fat("olive-oil").Weighing(Mass.FromGrams(500));
    private static readonly Mixing s_mixing = new() { Lye = s_lye, LyeTemperature = C(35) };
    private static readonly VesselMaterial s_plastic = VesselMaterial.Of("polypropylene");
    private static readonly Vessel s_vessel = new(s_plastic, Volume.FromMilliliters(1000), Cm(10), Grams(100));
    private static readonly ReadingError s_exact = ReadingError.Rectangular(TemperatureDelta.FromKelvins(0)), s_half = ReadingError.Rectangular(TemperatureDelta.FromKelvins(0.5));
    private static readonly BatchPlan s_plan = FormulaTests.Plain(s_olive).Plan();
    private static readonly Mould s_loaf = Mould.Box(Cm(25), Cm(9), Cm(7)), s_slab = Mould.Slab(Cm(40), Cm(30), Cm(4)), s_tube = Mould.Cylinder(Cm(7), Cm(10)),
        s_cavities = Mould.Cavities(6, Milliliters(95)), s_odd = Mould.OfVolume(Milliliters(500));
    private static readonly CuttingPlan s_cut = new() { Thickness = Cm(2.5) };
    private static readonly BarOrder s_order = new() { Saleable = 10, CuredMass = Grams(100), Loss = Percent(10) };
    private static readonly DateOnly s_day = new(2026, 3, 1);
    private static readonly CureSeries s_bar = new("1", new BarWeighing(s_day, Grams(120)));
    private static readonly NetQuantity s_net = new(Grams(110), Grams(112));

    private static Mass Grams(double grams) => Mass.FromGrams(grams);

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    private static Length Cm(double centimeters) => Length.FromCentimeters(centimeters);

    private static Volume Milliliters(double milliliters) => Volume.FromMilliliters(milliliters);

    private static Duration Minutes(double minutes) => Duration.FromMinutes(minutes);

    private static Entropy Capacity(double joulesPerKelvin) => Entropy.FromJoulesPerKelvin(joulesPerKelvin);

    private static Area SquareMeters(double area) => Area.FromSquareMeters(area);

    private static HeatTransferCoefficient Transfer(double watts) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(watts);

    private static CoolingReading Read(double celsius, double minutes) => new(C(celsius), Minutes(minutes));

    [Fact]
    public void WhatCannotBeMade_IsRefusedWithAReason() => new Refusals()
        .Of(() => LyeProperties.OfSodiumHydroxide(Percent(101)))
        .Of(() => LyeProperties.OfPotassiumHydroxide(Percent(-1)))
        .Of(() => LyeProperties.OfBoth(Percent(30), Percent(101)))
        .Of(() => LyeProperties.OfSodiumHydroxide(Percent(30)).BoilingPointAt(Pressure.FromKilopascals(111)))
        .Of(() => s_jug with { Alkalis = [null!] })
        .Of(() => s_jug with { AlkaliTemperature = C(61) })
        .Of(() => s_jug with { Liquids = [Water(100, 20), null!] })
        .Of(() => s_jug with { Liquids = [Liquid.Water.Weighing(Grams(100))] })
        .Of(() => s_jug with { Additives = [null!] })
        .Of(() => s_jug.WithIce(Percent(101), C(-5)))
        .Of(() => s_jug.WithIce(Percent(0), C(1)))
        .Of(() => s_jug.WithLiquidsAt(C(101)))
        .Of(() => s_jug.WithLiquidsTimes(1001))
        .Of(() => Jug(Naoh(10), Water(1e7, 20)).WithLiquidsTimes(1000))
        .Of(() => s_jug.IceFor(C(60), C(-81)))
        .Of(() => s_mixing with { Lye = null! })
        .Of(() => s_mixing with { LyeTemperature = C(201) })
        .Of(() => s_mixing with { Liquids = [null!] })
        .Of(() => s_mixing with { Liquids = [Liquid.Water.Weighing(Grams(100))] })
        .Of(() => s_mixing with { Fats = [null!] })
        .Of(() => s_mixing with { FatTemperature = C(151) })
        .Of(() => (s_mixing with { Fats = [s_olive] }).MixedTemperature)
        .Of(() => new FatHeating([s_olive]).HeatFor(C(-51), C(20)))
        .Of(() => new FatHeating([s_olive]).HeatFor(C(60), C(50)))
        .Of(() => new FatHeating([s_olive, null!]))
        .Of(() => FatSetting.At(C(20), [null!]))
        .Of(() => new ProcessSetup { Room = C(61) })
        .Of(() => new ProcessSetup { Water = C(101) })
        .Of(() => new ProcessSetup { Alkali = C(-31) })
        .Of(() => new ProcessSetup { HeldBack = C(-11) })
        .Of(() => new ProcessSetup { Fats = C(151) })
        .Of(() => new ProcessSetup { Lye = C(101) })
        .Of(() => new ProcessSetup { Mixed = C(-1) })
        .Of(() => new ProcessSetup { MilkLimit = C(101) })
        .Of(() => new ProcessSetup { IceShare = Percent(101) })
        .Of(() => new ProcessSetup { Ice = C(1) })
        .Of(() => new ProcessSetup { LeastHeadspace = Percent(101) })
        .Of(() => default(BatchPlan)!.Process(ProcessSetup.Unknown))
        .Of(() => s_plan.Process(null!))
        .Of(() => default(Liquid)!.HeatCapacity())
        .Of(() => VesselMaterial.Of(null!))
        .Of(() => VesselMaterial.Of("wood"))
        .Of(() => new Vessel(null!, Milliliters(1000), Cm(10), Grams(100)))
        .Of(() => new Vessel(s_plastic, Milliliters(0), Cm(10), Grams(100)))
        .Of(() => new Vessel(s_plastic, Milliliters(1000), Cm(501), Grams(100)))
        .Of(() => new Vessel(s_plastic, Milliliters(1000), Cm(10), Grams(-1)))
        .Of(() => s_vessel.Cooling(null!, Surroundings.IceBath()))
        .Of(() => s_vessel.Cooling(s_lye, null!))
        .Of(() => s_vessel.Check(null!, C(20)))
        .Of(() => s_vessel.Check(s_lye, C(20), Percent(101)))
        .Of(() => new Surroundings(C(101), Transfer(8), Transfer(15)))
        .Of(() => new Surroundings(C(20), Transfer(0), Transfer(15)))
        .Of(() => new Surroundings(C(20), Transfer(8), Transfer(5)))
        .Of(() => Surroundings.StillAir(C(-81)))
        .Of(() => Surroundings.IceFor(Energy.FromJoules(-1)))
        .Of(() => new NewtonCooling(C(201), Minutes(70)))
        .Of(() => new NewtonCooling(C(20), Minutes(0)))
        .Of(() => NewtonCooling.Of(C(20), Capacity(0), SquareMeters(0.05), Transfer(10)))
        .Of(() => NewtonCooling.Of(C(20), Capacity(1000), SquareMeters(0), Transfer(10)))
        .Of(() => NewtonCooling.Of(C(20), Capacity(1000), SquareMeters(0.05), Transfer(0)))
        .Of(() => NewtonCooling.Of(C(20), Capacity(1e9), SquareMeters(1), Transfer(1)))
        .Of(() => new NewtonCooling(C(20), Minutes(70)).After(C(80), Duration.FromSeconds(-1)))
        .Of(() => new CoolingReading(C(251), Minutes(0)))
        .Of(() => new CoolingReading(C(50), Duration.FromSeconds(-1)))
        .Of(() => ReadingError.Rectangular(TemperatureDelta.FromKelvins(-1)))
        .Of(() => ReadingError.Normal(TemperatureDelta.FromKelvins(51)))
        .Of(() => NewtonCooling.Fit(C(-81), s_exact, Read(80, 0), Read(65, 20)))
        .Of(() => NewtonCooling.Fit(C(20), s_exact, null!))
        .Of(() => NewtonCooling.Fit(C(20), s_exact, Read(80, 0)))
        .Of(() => NewtonCooling.Fit(C(20), s_exact, Read(80, 0), Read(20, 10)))
        .Of(() => NewtonCooling.Fit(C(20), s_exact, Read(80, 10), Read(65, 10)))
        .Of(() => NewtonCooling.Fit(C(20), s_half, Read(80, 0), Read(65, 10), Read(68, 20)))
        .Of(() => NewtonCooling.Fit(C(20), s_half, Read(80, 0), Read(80.5, 10)))
        .Match("making");

    [Fact]
    public void WhatCannotBePouredOrCut_IsRefusedWithAReason() => new Refusals()
        .Of(() => Mould.Box(Cm(0), Cm(9), Cm(7)))
        .Of(() => Mould.Box(Cm(25), Cm(1001), Cm(7)))
        .Of(() => Mould.Slab(Cm(40), Cm(30), Cm(0)))
        .Of(() => Mould.Cylinder(Cm(0), Cm(10)))
        .Of(() => Mould.Cylinder(Cm(7), Cm(0)))
        .Of(() => Mould.Cavities(0, Milliliters(95)))
        .Of(() => Mould.Cavities(6, Milliliters(0)))
        .Of(() => Mould.OfVolume(Milliliters(0)))
        .Of(() => s_loaf.WithLining(Cm(-1)))
        .Of(() => s_loaf.WithLining(Cm(4.5)))
        .Of(() => s_loaf.FilledTo(Cm(6.75)).WithLining(Cm(0.5)))
        .Of(() => s_cavities.WithLining(Cm(0.5)))
        .Of(() => s_loaf.FilledTo(Cm(0)))
        .Of(() => s_loaf.FilledTo(Cm(8)))
        .Of(() => s_odd.FilledTo(Cm(5)))
        .Of(() => s_loaf.Cut(null!))
        .Of(() => s_cavities.Cut(s_cut))
        .Of(() => s_slab.Cut(s_cut))
        .Of(() => s_tube.Cut(s_cut with { Across = Cm(5) }))
        .Of(() => s_loaf.Unmould(-1))
        .Of(() => s_odd.ThicknessFor(Milliliters(100), null))
        .Of(() => Mould.Slab(Cm(40), Cm(30), Cm(4)).ThicknessFor(Milliliters(100), null))
        .Of(() => Mould.Cylinder(Cm(7), Cm(30)).ThicknessFor(Milliliters(100), Cm(5)))
        .Of(() => s_loaf.ThicknessFor(Milliliters(0), null))
        .Of(() => s_loaf.ThicknessFor(Milliliters(100), Cm(10)))
        .Of(() => s_cut with { Thickness = Cm(0) })
        .Of(() => s_cut with { Across = Cm(1001) })
        .Of(() => s_cut with { Kerf = Cm(6) })
        .Of(() => s_cut with { Ends = Cm(101) })
        .Of(() => s_cut with { Samples = -1 })
        .Of(() => s_loaf.Cut(s_cut).MassWhenCut(Grams(-1)))
        .Of(() => s_order with { Saleable = 0 })
        .Of(() => s_order with { CuredMass = Grams(0) })
        .Of(() => s_order with { Loss = Percent(81) })
        .Of(() => s_order with { Samples = -1 })
        .Of(() => s_order with { Waste = Percent(96) })
        .Of(() => s_order with { LeftInPot = Percent(51) })
        .Of(() => default(BatchPlan)!.Batter(null))
        .Of(() => s_plan.Batter(C(101)))
        .Of(() => FormulaTests.Plain().Plan().Batter(C(101)))
        .Of(() => default(BatchPlan)!.Fill(s_loaf, null, Percent(0)))
        .Of(() => s_plan.Fill(null!, null, Percent(0)))
        .Of(() => s_plan.Fill(s_loaf, C(-1), Percent(0)))
        .Of(() => s_plan.Fill(s_loaf, null, Percent(51)))
        .Of(() => s_plan.Fill(s_loaf, null, Percent(0))!.FactorToFill(0))
        .Of(() => s_plan.Fill(s_loaf, null, Percent(0))!.ScaledToFill(10_001))
        .Of(() => default(Formula)!.ScaledToBatch(Grams(1000)))
        .Of(() => s_plan.Formula.ScaledToBatch(Grams(-1)))
        .Of(() => s_plan.Formula.ScaledToBatch(Grams(0)))
        .Of(() => FormulaTests.Plain().ScaledToBatch(Grams(1000)))
        .Of(() => default(BatchPlan)!.Moisture())
        .Of(() => s_plan.Moisture().LossTo(Percent(100)))
        .Of(() => s_plan.Moisture().WaterLeft(Grams(0), Grams(100)))
        .Of(() => s_plan.Moisture().WaterLeft(Grams(120), Grams(0)))
        .Of(() => default(BatchPlan)!.HeatInMould(s_loaf, C(40), false))
        .Of(() => s_plan.HeatInMould(null, C(101), false))
        .Match("moulds");

    [Fact]
    public void WhatCannotBeCured_IsRefusedWithAReason() => new Refusals()
        .Of(() => new BarWeighing(s_day, Grams(0)))
        .Of(() => new CureSeries(" ", new BarWeighing(s_day, Grams(120))))
        .Of(() => new CureSeries(null!, new BarWeighing(s_day, Grams(120))))
        .Of(() => new CureSeries("1", null!))
        .Of(() => new CureSeries("1", new BarWeighing(s_day, Grams(120)), default))
        .Of(() => s_bar with { Poured = Grams(0) })
        .Of(() => s_bar.Fit().Forecast(ReadyWhen.WeeklyLossBelow(Percent(1)), Percent(100)))
        .Of(() => CureFile.Read("no table"u8, poured: Grams(0)))
        .Of(() => ReadyWhen.WeeklyLossBelow(Percent(0)))
        .Of(() => ReadyWhen.WithinOfFinal(Percent(51)))
        .Of(() => new NetQuantity(null!))
        .Of(() => new NetQuantity())
        .Of(() => new NetQuantity(new Mass[100_001]))
        .Of(() => new NetQuantity(Grams(110), Grams(0)))
        .Of(() => s_net.Suggest(Percent(81), Grams(1)))
        .Of(() => s_net.Suggest(Percent(0), Grams(0)))
        .Of(() => NetQuantity.Declaration(Grams(0)))
        .Match("curing");
}
