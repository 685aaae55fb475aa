using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;
using static Saponify.Tests.Making.Jugs;

namespace Saponify.Tests.Making;

/// <summary>Lye with milk, cream and fats.</summary>
public class MixingTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    private static LyeSolution StrongLye => Jug(Naoh(200), Water(260, 20)).Dissolve();

    private static LiquidPortion Milk(double grams, double celsius) => s_pantry.Liquid("milk-cow-whole").Weighing(Mass.FromGrams(grams)).At(C(celsius));

    [Fact]
    public void ColdMilk_IsKeptCool_ByColderLyeOrByWeakerLye()
    {
        Mixing mixing = new() { Lye = StrongLye, LyeTemperature = C(45), Liquids = [Milk(350, 5)] };
        Assert.True(mixing.MixedTemperature.Celsius() > 45);
        Temperature lye = mixing.LyeTemperatureFor(C(38))!.Value;
        Assert.InRange(lye.DegreesCelsius, 25, 30);
        Assert.Equal(38, (mixing with { LyeTemperature = lye }).MixedTemperature.Celsius(), 9);
        Mass water = mixing.WaterFor(C(40))!.Value;
        Assert.InRange(water.Grams, 20, 400);
        Mixing weaker = mixing with { Lye = Jug(Naoh(200), Water(260 + water.Grams, 20)).Dissolve() };
        Assert.Equal(40, weaker.MixedTemperature.Celsius(), 3);
        Assert.Equal(Mass.Zero, mixing.WaterFor(C(60)));
        Assert.Null(mixing.WaterFor(C(10)));
    }

    [Fact]
    public void FrozenMilk_MeltsFirst_OrIsLeft()
    {
        LiquidPortion frozen = s_pantry.Liquid("milk-cow-whole").Weighing(Mass.FromGrams(350)).FrozenAt(C(-18));
        Mixing mixing = new() { Lye = StrongLye, LyeTemperature = C(45), Liquids = [frozen] };
        Mixing liquid = mixing with { Liquids = [Milk(350, 0)] };
        Assert.Equal(0, mixing.IceLeft.Grams);
        double step = 350 * frozen.Liquid.Contents.Water.DecimalFractions * 333.6 / mixing.HeatCapacity!.Value.JoulesPerKelvin;
        Assert.InRange(liquid.MixedTemperature.Celsius() - mixing.MixedTemperature.Celsius(), step, step + 6);
        Mixing slush = mixing with { Lye = Jug(Naoh(20), Water(26, 20)).Dissolve(), LyeTemperature = C(10) };
        Assert.Equal(0, slush.MixedTemperature.Celsius());
        Assert.InRange(slush.IceLeft.Grams, 100, 310);
    }

    [Fact]
    public void WarmFats_AndTheirInverse()
    {
        FatPortion[] fats = [s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)), s_pantry.Fat("tallow").Weighing(Mass.FromGrams(500))];
        Mixing mixing = new() { Lye = Jug(Naoh(130), Water(270, 20)).Dissolve(), LyeTemperature = C(30), Fats = [.. fats], FatTemperature = C(50) };
        Assert.InRange(mixing.MixedTemperature.Celsius(), 38, 44);
        Assert.Equal(0, mixing.HeatOfDilution!.Value.Joules, 6);
        Assert.Equal(mixing.PlainMean, mixing.MixedTemperature);
        Temperature fat = mixing.FatTemperatureFor(C(45))!.Value;
        Assert.Equal(45, (mixing with { FatTemperature = fat }).MixedTemperature.Celsius(), 9);
        Assert.Throws<InvalidOperationException>(() => (mixing with { FatTemperature = null }).MixedTemperature);
        Assert.Null((mixing with { Fats = [] }).FatTemperatureFor(C(45)));
    }

    [Fact]
    public void FatsThatSet_AreNamed()
    {
        Mixing mixing = new()
        {
            Lye = Jug(Naoh(130), Water(270, 20)).Dissolve(),
            LyeTemperature = C(22),
            Fats = [.. new[] { "coconut-oil", "cocoa-butter", "sheep-tallow", "olive-oil" }.Select(id => s_pantry.Fat(id).Weighing(Mass.FromGrams(250)))],
            FatTemperature = C(41),
        };
        Assert.InRange(mixing.MixedTemperature.Celsius(), 31, 33.5);
        Assert.Equal([FatSettingVerdict.StaysLiquid, FatSettingVerdict.MaySet, FatSettingVerdict.Sets, FatSettingVerdict.NoFigure], mixing.Setting().Select(s => s.Verdict));
        FatHeating heating = new(mixing.Fats);
        Assert.Equal("sheep-tallow", heating.DecidedBy!.Id);
        Assert.Equal(50, heating.ClearFrom.Celsius());
        Assert.Equal("olive-oil", Assert.Single(heating.WithoutFigure).Id);
        // nothing left to melt at 60 degrees but the oil without a figure
        Figure<Energy> heat = heating.HeatFor(C(60), C(70));
        Assert.Equal(1000 * 2.01 * 10, heat.Low!.Value.Joules, 6);
        Assert.Equal((1000 * 2.01 * 10) + (250 * 228), heat.High!.Value.Joules, 6);
        Assert.Throws<ArgumentOutOfRangeException>(() => heating.HeatFor(C(60), C(50)));
    }

    [Fact]
    public void LyeBeyondTheFigures_MixesToNothingKnown()
    {
        Mixing mixing = new() { Lye = Jug(Naoh(60), Water(40, 20)).Dissolve(), LyeTemperature = C(45), Liquids = [Milk(100, 5)] };
        Assert.Null(mixing.MixedTemperature);
        Assert.Null(mixing.LyeTemperatureFor(C(30)));
        Assert.Null(mixing.WaterFor(C(30)));
        Assert.Null(mixing.HeatOfDilution);
        Assert.Null(mixing.HeatCapacity);
    }

    [Law]
    public Property WithoutDilution_TheMixLiesBetweenItsParts() => Prop.ForAll(Jugs.Usual.Arbitrary(), Any.Between(0, 90).Arbitrary(), Any.Between(0, 90).Arbitrary(), (jug, lye, fat) =>
    {
        Mixing mixing = new() { Lye = jug.Dissolve(), LyeTemperature = C(lye), Fats = [s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(700))], FatTemperature = C(fat) };
        double mixed = mixing.MixedTemperature.Celsius();
        return mixed >= Math.Min(lye, fat) - 1e-9 && mixed <= Math.Max(lye, fat) + 1e-9;
    });

    [Law]
    public Property Dilution_OnlyWarms_AndByItsHeat() => Prop.ForAll(Jugs.Usual.Arbitrary(), Any.Between(0, 80).Arbitrary(), Any.Between(10, 800).Arbitrary(), (jug, lye, grams) =>
    {
        Mixing mixing = new() { Lye = jug.Dissolve(), LyeTemperature = C(lye), Liquids = [Milk(grams, 5)] };
        double lifted = mixing.MixedTemperature.Celsius() - mixing.PlainMean.Celsius();
        return mixing.PlainMean.Celsius() >= Math.Min(lye, 5) - 1e-9 && mixing.PlainMean.Celsius() <= Math.Max(lye, 5) + 1e-9
            && lifted > -0.5                                    // very weak lye takes up a trace of heat in the table
            && Near.Is(lifted * mixing.HeatCapacity!.Value.JoulesPerKelvin, mixing.HeatOfDilution!.Value.Joules, 1e-9, 1e-6);
    });

    [Law]
    public Property Inverse_HitsTheTemperatureWanted() => Prop.ForAll(Jugs.Usual.Arbitrary(), Any.Between(20, 60).Arbitrary(), Any.Between(10, 300).Arbitrary(), (jug, wanted, grams) =>
    {
        Mixing mixing = new() { Lye = jug.Dissolve(), LyeTemperature = C(40), Liquids = [Milk(grams, 5)], Fats = [s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(900))], FatTemperature = C(42) };
        double lye = mixing.LyeTemperatureFor(C(wanted)).Celsius(), fat = mixing.FatTemperatureFor(C(wanted)).Celsius();
        return (lye is < -30 or > 200 || Near.Is(wanted, (mixing with { LyeTemperature = C(lye) }).MixedTemperature.Celsius(), 1e-9))
            && (fat is < 0 or > 150 || Near.Is(wanted, (mixing with { FatTemperature = C(fat) }).MixedTemperature.Celsius(), 1e-9));
    });
}
