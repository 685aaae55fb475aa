using Saponify.Tests.Formulas;
using static Saponify.Tests.Making.Jugs;

namespace Saponify.Tests.Making;

/// <summary>Single facts of lye, vessels and cooling, reckoned by hand.</summary>
public class MakingEdgeTests
{
    private static LyeSolution HotLye => Jug(Naoh(130), Water(270, 22)).Dissolve();

    private static Vessel Of(string material, double milliliters = 1000) => new(VesselMaterial.Of(material), Volume.FromMilliliters(milliliters), Length.FromCentimeters(10), Mass.FromGrams(200));

    private static HeatTransferCoefficient Transfer(double watts) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(watts);

    private static CoolingReading At(double celsius, double minutes) => new(C(celsius), Duration.FromMinutes(minutes));

    [Fact]
    public void WettedArea_IsBaseSurfaceAndWall()
    {
        // 10 cm wide, filled 10 cm high: two discs of 25 pi and a wall of 100 pi
        Vessel jug = Of("polypropylene");
        Assert.Equal(150 * Math.PI, jug.AreaFor(Volume.FromMilliliters(250 * Math.PI)).SquareCentimeters, 9);
        Assert.Equal(50 * Math.PI, jug.AreaFor(Volume.FromMilliliters(-5)).SquareCentimeters, 9);
        // above the brim counts no more: 1000 mL stand 40/pi cm high
        Assert.Equal((50 * Math.PI) + 400, jug.AreaFor(Volume.FromMilliliters(5000)).SquareCentimeters, 9);
    }

    [Fact]
    public void TimeConstant_IsHeatCapacityOfLyeAndVessel_OverWhatTheAreaGivesOff()
    {
        Vessel jug = Of("polypropylene");
        LyeSolution lye = HotLye;
        // 200 g of polypropylene at 1.9 J/(g K)
        double capacity = lye.HeatCapacity!.Value.JoulesPerKelvin + (200 * 1.9), area = jug.AreaFor(lye.VolumeAt(C(21))!.Value).SquareMeters;
        CoolingSpan air = jug.Cooling(lye, Surroundings.StillAir(C(21)))!;
        Assert.Equal(capacity / (area * 15), air.Fastest.TimeConstant.Seconds, 6);
        Assert.Equal(capacity / (area * 8), air.Slowest.TimeConstant.Seconds, 6);
        Assert.Equal(21, air.Slowest.Surroundings.DegreesCelsius);
        Figure<Duration> time = air.TimeTo(C(90), C(40))!;
        Assert.Equal((time.Low!.Value.Seconds + time.High!.Value.Seconds) / 2, time.Value.Seconds, 6);
        Assert.Equal(["memory"], time.Sources);
        Assert.False(time.IsOwn);
        Figure<Duration> own = jug.Cooling(lye, new(C(21), Transfer(10), Transfer(10)))!.TimeTo(C(90), C(40))!;
        Assert.Equal(["own"], own.Sources);
        Assert.True(own.IsOwn);
        Assert.Equal((Evidence.Measured, own.High), (own.Evidence, own.Low));
        // ln(69/19) of the time constant
        Assert.Equal(capacity / (area * 10) * Math.Log(69.0 / 19), own.Value.Seconds, 6);
    }

    [Fact]
    public void VatThatCoolsForMonths_HasNoTime_InsteadOfAFault()
    {
        Vessel vat = new(VesselMaterial.Of("stainless-steel"), Volume.FromLiters(1000), Length.FromCentimeters(100), Mass.FromKilograms(100));
        LyeSolution lye = Jug(Naoh(260_000), Water(540_000, 20)).Dissolve();
        Assert.Null(vat.Cooling(lye, new(C(20), Transfer(0.1), Transfer(10))));
        Assert.NotNull(vat.Cooling(lye, Surroundings.StillAir(C(20))));
    }

    [Fact]
    public void Surroundings_HaveTheirNameAndFigures()
    {
        Surroundings air = Surroundings.StillAir(C(21)), bath = Surroundings.IceBath(), own = new(C(-80), Transfer(0.1), Transfer(1e5));
        Assert.Equal(("still air", 21, 8, 15, Evidence.Memory), (air.Name, air.Temperature.DegreesCelsius, air.Least.WattsPerSquareMeterKelvin, air.Most.WattsPerSquareMeterKelvin, air.Evidence));
        Assert.Equal(("ice bath", 0, 50, 200, Evidence.Memory), (bath.Name, bath.Temperature.DegreesCelsius, bath.Least.WattsPerSquareMeterKelvin, bath.Most.WattsPerSquareMeterKelvin, bath.Evidence));
        Assert.Equal(("own figures", -80, 0.1, 1e5, Evidence.Measured), (own.Name, own.Temperature.DegreesCelsius, own.Least.WattsPerSquareMeterKelvin, own.Most.WattsPerSquareMeterKelvin, own.Evidence));
        Assert.Equal(0, Surroundings.IceFor(Energy.Zero).Grams);
    }

    [Fact]
    public void TimeTo_IsZeroThereAlready_AndNeverAtTheSurroundings()
    {
        NewtonCooling cooling = new(C(20), Duration.FromMinutes(60));
        Assert.Equal(0, cooling.TimeTo(C(40), C(40))!.Value.Seconds);
        Assert.Equal(0, cooling.TimeTo(C(15), C(18))!.Value.Seconds);
        Assert.Null(cooling.TimeTo(C(40), C(20)));
        Assert.Null(cooling.TimeTo(C(40), C(19)));
        // half of the excess: ln 2 of an hour
        Assert.Equal(60 * Math.Log(2), cooling.TimeTo(C(60), C(40))!.Value.Minutes, 9);
        Assert.Equal(40, cooling.After(C(60), Duration.FromMinutes(60 * Math.Log(2))).DegreesCelsius, 9);
        Assert.Equal(60, cooling.After(C(60), Duration.Zero).DegreesCelsius);
    }

    [Theory]
    [InlineData(false, 56, true)]          // both readings off by half a degree the other way
    [InlineData(false, 56.1, false)]
    [InlineData(true, 57, true)]           // two standard uncertainties of each
    [InlineData(true, 57.1, false)]
    public void RiseThatTheReadingErrorExplains_IsTaken(bool isNormal, double second, bool isTaken)
    {
        TemperatureDelta half = TemperatureDelta.FromKelvins(0.5);
        ReadingError error = isNormal ? ReadingError.Normal(half) : ReadingError.Rectangular(half);
        Assert.Equal((isNormal, 0.5), (error.IsNormal, error.Size.Kelvins));
        Exception? fault = Record.Exception(() => NewtonCooling.Fit(C(20), error, At(60, 0), At(55, 10), At(second, 20)));
        Assert.Equal(isTaken, fault is null);
    }

    [Fact]
    public void Reading_AndFindings_AreInWords()
    {
        Assert.Equal("62.5 °C after 10 min", At(62.5, 10).ToString());
        Assert.Equal("Aluminium must NEVER hold lye. Dissolves and gives hydrogen: 1 g gives 1.4 L of gas.", Of("aluminium").Check(HotLye, C(22))[0].ToString());
        Assert.Equal("The lye may reach 109 °C; Polypropylene stands more than 100 °C for a short time only (memory).", Of("polypropylene").Check(HotLye, C(22))[0].ToString());
        ValueList<VesselFinding> glass = Of("soda-lime-glass").Check(HotLye, C(22));
        Assert.Equal("The lye may reach 109 °C; from 100 °C on it takes the surface off Soda-lime glass, jars and drinking glasses.", glass[0].ToString());
        Assert.Equal("A step of up to 87 K may crack Soda-lime glass, jars and drinking glasses, which stands 40 K when new and unscratched.", glass[1].ToString());
        Assert.EndsWith(" mL does NOT fit into 250 mL.", Of("polypropylene", 250).Check(HotLye, C(22))[1].ToString(), StringComparison.Ordinal);
        Assert.Matches("^Only 3[0-9] % of the vessel stays free; 50 % is asked for\\.$", Of("polypropylene", 500).Check(HotLye, C(22), Ratio.FromPercent(50))[1].ToString());
        Assert.Equal("A lye of 60 % is stronger than the 50 % that figures reach: its heat can't be told.",
            Of("polypropylene").Check(Jug(Naoh(60), Water(40, 20)).Dissolve(), C(20))[0].ToString());
    }

    [Fact]
    public void GlassAtItsStep_IsSpared_AndBeyondItNot()
    {
        Assert.Null(Of("soda-lime-glass").CheckBath(C(60), C(20)));
        Assert.NotNull(Of("soda-lime-glass").CheckBath(C(60.5), C(20)));
        // from cold to warm it cracks as well
        Assert.NotNull(Of("soda-lime-glass").CheckBath(C(20), C(60.5)));
    }

    [Fact]
    public void PartOfEachLiquid_GoesInAsIce()
    {
        LyeJug jug = Jug(Naoh(130), Water(200, 20), Ice(70, -5));
        LyeJug iced = jug.WithIce(Ratio.FromPercent(40), C(-18));
        Assert.Equal([(120, false, 20), (80, true, -18), (70, true, -5)], iced.Liquids.Select(l => (Math.Round(l.Mass.Grams, 9), l.IsFrozen, l.Temperature!.Value.DegreesCelsius)));
        Assert.Equal(jug, jug.WithIce(Ratio.Zero, C(-18)));
        Assert.Equal([(200, true), (70, true)], jug.WithIce(Ratio.FromPercent(100), C(-18)).Liquids.Select(l => (l.Mass.Grams, l.IsFrozen)));
        Assert.Equal([(40, false), (-5, true)], jug.WithLiquidsAt(C(40)).Liquids.Select(l => (l.Temperature!.Value.DegreesCelsius, l.IsFrozen)));
        Assert.Equal([400, 140], jug.WithLiquidsTimes(2).Liquids.Select(l => l.Mass.Grams));
    }

    [Fact]
    public void WarmestLiquid_IsNeverAboveTheBoilingPointOfWater() =>
        Assert.Equal(100, Jug(Naoh(10), Water(1000, 20)).LiquidTemperatureFor(C(150))!.Value.DegreesCelsius);

    /// <summary>Water 4.18, ice 1.958 and 333.6 J/g (the figures of the heat balance); 4.185 J/(g K) is lye of no strength at 60 degrees.</summary>
    [Fact]
    public void IceThatDoesNotMelt_IsReckonedByHand()
    {
        LyeSolution water = Jug(Naoh(0), Water(100, 20)).Dissolve();
        Mixing warm = new() { Lye = water, LyeTemperature = C(60), Liquids = [Water(100, 20)] };
        Assert.Equal(((418.5 * 60) + (418 * 20)) / 836.5, warm.MixedTemperature.Celsius(), 9);
        Assert.Equal(warm.MixedTemperature, warm.PlainMean);
        Assert.Equal(836.5, warm.HeatCapacity!.Value.JoulesPerKelvin, 9);
        // 4185 J from 100 g at 10 degrees: 1958 warm the ice, the rest melts some of it
        Mixing slush = new() { Lye = water, LyeTemperature = C(10), Liquids = [Ice(100, -10)] };
        Assert.Equal(0, slush.MixedTemperature.Celsius());
        Assert.Equal(100 - ((4185 - 1958) / 333.6), slush.IceLeft.Grams, 9);
        Assert.Null(slush.LyeTemperatureFor(C(-1)));
        // the same in the jug, 25 degrees being where heats are tabled: 837 J/K of water as lye, heat contents by 4.18
        LyeSolution jug = Jug(Naoh(0), Water(100, 10), Ice(100, -10)).Dissolve();
        double content = (100 * 4.18 * (10 - 25)) - 1958 - 33360 - (100 * 4.18 * 25);
        Assert.Equal(0, jug.Peak.Celsius());
        Assert.Equal((-content - (25 * 837)) / 333.6, jug.IceLeft.Grams, 9);
        // 1.958 kJ to warm the ice, 333.6 J for each gram that melts
        Assert.Equal(1.958 + ((100 - jug.IceLeft.Grams) * 0.3336), jug.HeatTakenByIce.Kilojoules, 9);
    }

    /// <summary>IAPWS-95 (wagner-pruss), saturation pressures of the steam tables, from memory: 2.339 kPa at 20, 12.35 at 50, 101.42 at 100 degrees Celsius.</summary>
    [Theory]
    [InlineData(20, 2.339)]
    [InlineData(50, 12.352)]
    [InlineData(100, 101.42)]
    public void VapourPressure_IsThatOfTheSteamTables(double celsius, double kilopascals) => Assert.Equal(1, WaterVapour.Pressure(celsius) / kilopascals, 0.001);

    [Fact]
    public void StraightCurve_TakesErrorAndEvidenceOfTheWeakerNeighbour()
    {
        SourcedCurve curve = new([new(10, 4, 6, ["b"], Evidence.Handbook, null), new(0, 1, 1, ["a"], Evidence.Memory, null), new(20, 9, 9, ["b"], Evidence.Handbook, null)], smooth: false);
        Assert.Equal((0, 20), (curve.Least, curve.Most));
        Assert.Equal(2, curve.Value(2.5), 12);
        Assert.Equal(7, curve.Value(15), 12);
        CurvePoint weak = curve.At(2.5)!, strong = curve.At(15)!;
        Assert.Equal((1, 3, Evidence.Memory), (weak.Low, weak.High, weak.Evidence));
        Assert.Equal(["a", "b"], weak.Sources);
        Assert.Equal((6, 8, Evidence.Handbook), (strong.Low, strong.High, strong.Evidence));
        Assert.Equal(["b"], strong.Sources);
        // rounding at an end is no departure from the table
        Assert.Equal(1, curve.Value(-1e-10), 12);
        Assert.Equal(9, curve.Value(20 + 1e-10), 12);
        Assert.True(double.IsNaN(curve.Value(-1e-8)) && double.IsNaN(curve.Value(20 + 1e-8)));
    }

    [Fact]
    public void Questions_SayWhatForTheyAre()
    {
        Formula formula = FormulaTests.Plain(Pantry.Reference.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        string water = formula.Plan().LyeLiquid!.Liquid.Name;
        Assert.Equal(
        [
            "the temperature of the room, for the alkali and for the time to cool",
            $"the temperature of {water}, for the peak of the lye",
            "the temperature of the fat pot, for the temperature in the pot and for which fats set",
            "what the lye is cooled to, or the temperature wanted in the pot",
            "the vessel, for the time to cool and for whether it stands the heat",
        ], formula.Plan().Process(ProcessSetup.Unknown).Questions.Select(q => q.Text));
        ProcessSetup iced = new() { Room = C(20), Water = C(20), Fats = C(40), Lye = C(35), IceShare = Ratio.FromPercent(20), Vessel = Of("polypropylene") };
        Assert.Equal(["how cold the ice is"], formula.Plan().Process(iced).Questions.Select(q => q.Text));
    }
}
