using static Saponify.Tests.Making.Jugs;

namespace Saponify.Tests.Making;

/// <summary>What a maker meets at the lye jug.</summary>
public class LyeJugTests
{
    [Fact]
    public void BoundWaterOfFlakes_CountsAsWater_AndGivesLessHeat()
    {
        LyeSolution flakes = Jug(Koh(100, 88), Water(200, 20)).Dissolve();
        Assert.Equal(212, flakes.Water.Grams, 9);
        Assert.Equal(88, flakes.PureAlkali.Grams, 9);
        Assert.Equal(12 / 18.015 * 42.97, flakes.HeatOfHydrate.Kilojoules, 3);
        Assert.True(flakes.PeakOfHydrate.Celsius() < flakes.Peak.Celsius() - 15);
        LyeSolution dry = Jug(Naoh(100), Water(200, 20)).Dissolve();
        Assert.Equal(dry.Peak, dry.PeakOfHydrate);
    }

    [Fact]
    public void BoundWater_BeyondTheMonohydrate_IsFree()
    {
        // 50 g of KOH can bind 16 g of water, the rest was never bound
        LyeSolution wet = Jug(Koh(100, 50), Water(200, 20)).Dissolve();
        Assert.Equal(50 / 56.105 * 42.97, wet.HeatOfHydrate.Kilojoules, 3);
    }

    [Fact]
    public void BoughtLye_GivesOnlyItsHeatOfDilution()
    {
        AlkaliPortion bought = Alkali.SodiumHydroxideSolution(Ratio.FromPercent(50)).Weighing(Mass.FromGrams(200));
        LyeSolution lye = Jug(bought, Water(100, 20)).Dissolve();
        Assert.Equal(0, lye.HeatOfDissolving!.Value.Kilojoules, 9);
        // from 50 to 33 % about 14 kJ per mol
        Assert.InRange(lye.HeatOfDiluting!.Value.Kilojoules / (100 / 39.997), 13.5, 14.5);
        Assert.InRange(lye.Peak.Celsius(), 45, 60);
        LyeSolution undiluted = (Jug(bought) with { AlkaliTemperature = C(23) }).Dissolve();
        Assert.Equal(0, undiluted.HeatOfDiluting!.Value.Kilojoules, 9);
        Assert.Equal(23, undiluted.Peak.Celsius(), 9);
    }

    [Fact]
    public void AcidInTheWater_AddsItsHeat()
    {
        AdditivePortion citric = Pantry.Reference.Additive("citric-acid-monohydrate").Weighing(Mass.FromGrams(10)).At(Stage.LyeLiquid);
        LyeJug plain = Jug(Naoh(100), Water(230, 20));
        LyeSolution without = plain.Dissolve(), with = (plain with { Additives = [citric] }).Dissolve();
        // three protons, 57.5 kJ each and what the lye still holds
        Assert.InRange(with.HeatOfNeutralising!.Value.Kilojoules / (10 / 210.138 * 3), 57.5, 64);
        Assert.True(with.Peak.Celsius() > without.Peak.Celsius() + 4);
        Assert.Equal(0, without.HeatOfNeutralising!.Value.Kilojoules);
        // more acid than alkali neutralises no more than the alkali
        AdditivePortion much = citric with { Mass = Mass.FromKilograms(2) };
        Assert.InRange((plain with { Additives = [much] }).Dissolve().HeatOfNeutralising!.Value.Kilojoules / (100 / 39.997), 57.4, 65);
    }

    [Fact]
    public void FatOfCreamInTheJug_AddsItsHeat_AndSugarTakesTheBoundAway()
    {
        Liquid cream = Pantry.Reference.Liquid("heavy-cream");
        LyeSolution lye = Jug(Naoh(100), cream.Weighing(Mass.FromGrams(300)).At(C(5))).Dissolve();
        double moles = 300 * cream.Contents.Fat.DecimalFractions * cream.Contents.FatKind!.Saponification!.Value.MilligramsKohPerGram / 56105;
        Assert.Equal(moles * 75, lye.HeatOfSaponifying!.Value.Kilojoules, 6);
        Assert.True(lye.HasSugar);
        LyeSolution plain = Jug(Naoh(100), Water(300, 5)).Dissolve();
        Assert.Equal(0, plain.HeatOfSaponifying!.Value.Kilojoules);
        Assert.False(plain.HasSugar);
        // fat takes no more lye than there is
        LyeSolution little = Jug(Naoh(1), cream.Weighing(Mass.FromGrams(300)).At(C(5))).Dissolve();
        Assert.InRange(little.HeatOfSaponifying!.Value.Kilojoules, 0, 75 / 39.997);
    }

    [Fact]
    public void PeakError_IsThatOfTheHeatOfSolution()
    {
        Assert.InRange(Jug(Naoh(100), Water(200, 20)).Dissolve().PeakError!.Value.Kelvins, 0.5, 1);
        Assert.InRange(Jug(Koh(100), Water(200, 20)).Dissolve().PeakError!.Value.Kelvins, 2, 4);
        Assert.Null(Jug(Koh(100), Water(20, 20)).Dissolve().PeakError);
    }

    [Fact]
    public void BothAlkalis_LieBetweenThePure_AndSaySo()
    {
        LyeProperties both = LyeProperties.OfBoth(Ratio.FromPercent(30), Ratio.FromPercent(40)), soda = LyeProperties.OfSodiumHydroxide(Ratio.FromPercent(30)), potash = LyeProperties.OfPotassiumHydroxide(Ratio.FromPercent(30));
        Assert.True(both.IsEstimate);
        Assert.False(soda.IsEstimate || potash.IsEstimate);
        Assert.Equal((0.4 * soda.BoilingPoint!.Value.DegreesCelsius) + (0.6 * potash.BoilingPoint!.Value.DegreesCelsius), both.BoilingPoint!.Value.DegreesCelsius, 9);
        Assert.True(both.BoilingPoint.Low!.Value.DegreesCelsius <= potash.BoilingPoint.Value.DegreesCelsius && both.BoilingPoint.High!.Value.DegreesCelsius >= soda.BoilingPoint.Value.DegreesCelsius);
        Assert.Contains("estimate", both.BoilingPoint.Note, StringComparison.Ordinal);
        Assert.Equal(soda.CrystallisesBelow, both.CrystallisesBelow);
    }

    [Theory]
    [InlineData(50.5)]
    [InlineData(70)]
    [InlineData(100)]
    public void BeyondTheFigures_NothingIsGuessed(double percent)
    {
        LyeProperties soda = LyeProperties.OfSodiumHydroxide(Ratio.FromPercent(percent)), both = LyeProperties.OfBoth(Ratio.FromPercent(percent), Ratio.FromPercent(50));
        Assert.All(new[] { soda, both }, p =>
        {
            Assert.Null(p.HeatOfSolution);
            Assert.Null(p.BoilingPoint);
            Assert.Null(p.Density(C(20)));
            Assert.Null(p.HeatCapacity(C(20)));
            Assert.Null(p.BoilingPointAt(Pressure.FromKilopascals(90)));
        });
        LyeSolution lye = Jug(Naoh(percent), Water(100 - percent, 20)).Dissolve();
        Assert.Null(lye.Peak);
        Assert.Null(lye.PeakOfHydrate);
        Assert.Null(lye.MayBoil);
        Assert.Null(lye.HeatReleased);
        Assert.Null(lye.HeatCapacity);
        Assert.Null(lye.VolumeAt(C(20)));
        Assert.Equal(percent > 60 ? null : false, lye.IsClearAt(C(10)));
    }

    [Fact]
    public void OutsideTheTemperaturesOfATable_ThereIsNoDensity()
    {
        Assert.Null(LyeProperties.OfSodiumHydroxide(Ratio.FromPercent(30)).Density(C(101)));
        Assert.Null(LyeProperties.OfPotassiumHydroxide(Ratio.FromPercent(30)).Density(C(10)));
        Assert.Null(LyeProperties.OfPotassiumHydroxide(Ratio.FromPercent(30)).HeatCapacity(C(-1)));
        Assert.Contains("extrapolated", LyeProperties.OfPotassiumHydroxide(Ratio.FromPercent(48)).HeatCapacity(C(60))!.Note, StringComparison.Ordinal);
        Assert.Equal("figure for 60 °C", LyeProperties.OfSodiumHydroxide(Ratio.FromPercent(40)).HeatCapacity(C(25))!.Note);
    }

    [Fact]
    public void LyeOf38Percent_CrystallisesWarmerThanOneOf46()
    {
        LyeSolution common = Jug(Naoh(38), Water(62, 20)).Dissolve(), strong = Jug(Naoh(46), Water(54, 20)).Dissolve();
        Assert.False(common.IsClearAt(C(14)));
        Assert.True(strong.IsClearAt(C(14)));
        Assert.True(common.IsClearAt(C(19)));
    }

    [Fact]
    public void Ice_WarmsAndMeltsFirst()
    {
        LyeSolution lye = Jug(Naoh(100), Water(150, 20), Ice(80, -18)).Dissolve();
        Assert.Equal(80 * (333.6 + (18 * 1.958)) / 1000, lye.HeatTakenByIce.Kilojoules, 9);
        Assert.Equal(0, lye.IceLeft.Grams);
        LyeSolution cold = Jug(Naoh(5), Ice(200, -18)).Dissolve();
        Assert.Equal(0, cold.Peak.Celsius());
        Assert.InRange(cold.IceLeft.Grams, 150, 200);
    }

    [Fact]
    public void Fixes_ReachTheirPeak()
    {
        LyeJug jug = Jug(Naoh(140), Water(280, 30));
        Assert.True(jug.Dissolve().Peak.Celsius() > 105);
        Temperature cool = jug.LiquidTemperatureFor(C(100))!.Value;
        Assert.InRange(cool.DegreesCelsius, 5, 25);
        Assert.Equal(100, jug.WithLiquidsAt(cool).Dissolve().Peak.Celsius(), 6);
        Ratio ice = jug.IceFor(C(60), C(-18))!.Value;
        Assert.Equal(60, jug.WithIce(ice, C(-18)).Dissolve().Peak.Celsius(), 3);
        double more = jug.MoreLiquidFor(C(95))!.Value;
        Assert.InRange(more, 1.05, 2);
        Assert.Equal(95, jug.WithLiquidsTimes(more).Dissolve().Peak.Celsius(), 3);
        // nothing to do
        Assert.Equal(Ratio.Zero.DecimalFractions, jug.IceFor(C(150), C(-18))!.Value.DecimalFractions);
        Assert.Equal(1, jug.MoreLiquidFor(C(150)));
        // out of reach
        Assert.Null(jug.LiquidTemperatureFor(C(60)));
        Assert.Null(jug.IceFor(C(-5), C(-18)));
        Assert.Null(jug.MoreLiquidFor(C(25)));
    }

    [Fact]
    public void Boiling_OfDryPotashInWarmWater_IsSeen()
    {
        Assert.True(Jug(Koh(100), Water(200, 25)).Dissolve().MayBoil);
        Assert.False(Jug(Koh(100), Water(200, 25)).WithIce(Ratio.FromPercent(60), C(-10)).Dissolve().MayBoil);
    }

    [Fact]
    public void ThinAir_LowersTheBoilingPoint()
    {
        LyeProperties lye = LyeProperties.OfSodiumHydroxide(Ratio.FromPercent(33));
        double sea = lye.BoilingPointAt(Pressure.FromKilopascals(101.325))!.Value.DegreesCelsius, high = lye.BoilingPointAt(Pressure.FromKilopascals(75))!.Value.DegreesCelsius;
        Assert.Equal(lye.BoilingPoint!.Value.DegreesCelsius, sea, 3);
        Assert.InRange(sea - high, 7.5, 10);
        Assert.Throws<ArgumentOutOfRangeException>(() => lye.BoilingPointAt(Pressure.FromKilopascals(0)));
    }

    [Fact]
    public void BadInput_IsRefusedWithItsName()
    {
        Assert.Contains("frozen liquid", Assert.Throws<ArgumentOutOfRangeException>(() => Ice(10, 1)).Message, StringComparison.Ordinal);
        ArgumentException unstated = Assert.Throws<ArgumentException>(() => Jug(Naoh(10), Liquid.Water.Weighing(Mass.FromGrams(20))));
        Assert.Contains("The temperature of water is not stated", unstated.Message, StringComparison.Ordinal);
        LyeJug jug = Jug(Naoh(10), Water(20, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => jug.WithIce(Ratio.FromPercent(101), C(-5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => jug.WithIce(Ratio.FromPercent(10), C(5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => jug with { AlkaliTemperature = C(200) });
        Assert.Throws<ArgumentOutOfRangeException>(() => LyeProperties.OfSodiumHydroxide(Ratio.FromPercent(-1)));
    }

    [Fact]
    public void EmptyJug_HasNoPeak()
    {
        LyeSolution nothing = new LyeJug { Alkalis = [], AlkaliTemperature = C(20), Liquids = [] }.Dissolve();
        Assert.Null(nothing.Peak);
        Assert.Equal(0, nothing.Mass.Grams);
        Assert.Equal(20, Jug(Naoh(0), Water(100, 20)).Dissolve().Peak.Celsius(), 0.01);
    }
}
