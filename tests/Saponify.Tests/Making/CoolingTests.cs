using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;
using static Saponify.Tests.Making.Jugs;

namespace Saponify.Tests.Making;

/// <summary>Cooling, by vessel and by the maker's own readings.</summary>
public class CoolingTests
{
    private static readonly ReadingError s_exact = ReadingError.Rectangular(TemperatureDelta.FromKelvins(0));

    private static CoolingReading At(double celsius, double minutes) => new(C(celsius), Duration.FromMinutes(minutes));

    private static ReadingError Within(double kelvins) => ReadingError.Rectangular(TemperatureDelta.FromKelvins(kelvins));

    [Fact]
    public void HalfAKilogramOfLye_TakesMoreThanAnHourForTwoThirds()
    {
        // 500 g of 33 % lye, 3.58 J/(g K), 0.045 m2, 10 W/(m2 K): about 4000 s
        NewtonCooling cooling = NewtonCooling.Of(C(20), Entropy.FromJoulesPerKelvin(500 * 3.58), Area.FromSquareMeters(0.045), HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10));
        Assert.Equal(3978, cooling.TimeConstant.Seconds, 0);
        Assert.Equal(20 + (80 / Math.E), cooling.After(C(100), cooling.TimeConstant).DegreesCelsius, 9);
    }

    [Fact]
    public void Vessel_ColderSurroundingsAndMoreTransfer_CoolFaster()
    {
        LyeSolution lye = Jug(Naoh(130), Water(270, 20)).Dissolve();
        Vessel jug = new(VesselMaterial.Of("polypropylene"), Volume.FromLiters(1), Length.FromCentimeters(10), Mass.FromGrams(100));
        Figure<Duration> air = jug.Cooling(lye, Surroundings.StillAir(C(21)))!.TimeTo(C(100), C(35))!, bath = jug.Cooling(lye, Surroundings.IceBath())!.TimeTo(C(100), C(35))!;
        Assert.True(air.Low!.Value.Seconds < air.Value.Seconds && air.Value.Seconds < air.High!.Value.Seconds);
        Assert.InRange(air.Value.Hours, 1, 4);
        Assert.InRange(bath.Value.Minutes, 3, 25);
        Assert.Equal(Evidence.Memory, air.Evidence);
        Assert.Null(jug.Cooling(lye, Surroundings.StillAir(C(21)))!.TimeTo(C(100), C(21)));
        Assert.Null(jug.Cooling(Jug(Naoh(60), Water(40, 20)).Dissolve(), Surroundings.IceBath()));
        Assert.Null(jug.Cooling(Jug(Naoh(600), Water(1400, 20)).Dissolve(), Surroundings.IceBath()));
        Assert.Null(jug.Cooling(Jug(Naoh(0), Water(0, 20)).Dissolve(), Surroundings.IceBath()));
    }

    [Fact]
    public void IceBath_MeltsWhatTheHeatAsks() => Assert.Equal(300, Surroundings.IceFor(Energy.FromKilojoules(300 * 0.3336)).Grams, 9);

    [Fact]
    public void TwoReadings_TellWhenItIsReady()
    {
        // 80 degrees, then 65 after 20 minutes in a room of 20: the excess falls by a quarter each 20 minutes
        CoolingFit fit = NewtonCooling.Fit(C(20), s_exact, At(80, 0), At(65, 20));
        CoolingForecast forecast = fit.ForecastTo(C(20 + (60 * 0.75 * 0.75)));
        Assert.Equal(40, forecast.At!.Value.Minutes, 9);
        Assert.Equal(40, forecast.Earliest!.Value.Minutes, 9);
        Assert.Equal(40, forecast.Latest!.Value.Minutes, 9);
        Assert.Equal(80, fit.Start.DegreesCelsius, 9);
        CoolingForecast never = fit.ForecastTo(C(20));
        Assert.Null(never.At);
        Assert.Null(never.Earliest);
    }

    [Fact]
    public void ReadingError_OpensTheForecast()
    {
        CoolingFit step = NewtonCooling.Fit(C(20), Within(0.5), At(80, 0), At(65, 20));
        CoolingForecast rectangular = step.ForecastTo(C(38));
        // the corners of two readings, by hand: the first high and the second low, and the other way
        double Corner(double first, double second) => 20 * Math.Log(first / 18) / Math.Log(first / second);
        Assert.Equal(Corner(60.5, 44.5), rectangular.Earliest!.Value.Minutes, 6);
        Assert.Equal(Corner(59.5, 45.5), rectangular.Latest!.Value.Minutes, 6);
        CoolingForecast normal = NewtonCooling.Fit(C(20), ReadingError.Normal(TemperatureDelta.FromKelvins(0.5)), At(80, 0), At(65, 20)).ForecastTo(C(38));
        Assert.Equal(rectangular.At, normal.At);
        Assert.Equal(normal.StandardUncertainty!.Value.Seconds / Math.Sqrt(3), rectangular.StandardUncertainty!.Value.Seconds, 6);
        // two standard uncertainties, to first order
        Assert.Equal(2 * normal.StandardUncertainty.Value.Minutes, (normal.Latest!.Value.Minutes - normal.Earliest!.Value.Minutes) / 2, 0.4);
    }

    [Fact]
    public void ReadingsNoFurtherApartThanTheirError_LeaveTheLateEndOpen()
    {
        CoolingForecast forecast = NewtonCooling.Fit(C(20), Within(0.5), At(60, 0), At(59.5, 2)).ForecastTo(C(40));
        Assert.NotNull(forecast.At);
        Assert.NotNull(forecast.Earliest);
        Assert.Null(forecast.Latest);
    }

    [Fact]
    public void WarmingUp_IsRefused_AndTheReadingNamed()
    {
        ArgumentException fault = Assert.Throws<ArgumentException>(() => NewtonCooling.Fit(C(20), Within(0.5), At(60, 0), At(55, 10), At(58, 20)));
        Assert.StartsWith("Reading 3 (58 °C after 20 min) can't be used: it is warmer than reading 2 (55 °C after 10 min)", fault.Message, StringComparison.Ordinal);
        // a rise within the reading error is no warming, as long as the whole cools
        Assert.InRange(NewtonCooling.Fit(C(20), Within(0.5), At(60, 0), At(55, 10), At(55.5, 20)).Cooling.TimeConstant.Minutes, 50, 300);
        Assert.StartsWith("Reading 2 (60.5 °C after 10 min) can't be used: taken together, the readings do not cool",
            Assert.Throws<ArgumentException>(() => NewtonCooling.Fit(C(20), Within(0.5), At(60, 0), At(60.5, 10))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OtherBadReadings_AreRefused_AndNamed()
    {
        Assert.Contains("at least two", Assert.Throws<ArgumentException>(() => NewtonCooling.Fit(C(20), s_exact, At(60, 0))).Message, StringComparison.Ordinal);
        Assert.Contains("Reading 2 (20 °C after 10 min) can't be used: it is no warmer than the surroundings at 20 °C",
            Assert.Throws<ArgumentException>(() => NewtonCooling.Fit(C(20), s_exact, At(60, 0), At(20, 10))).Message, StringComparison.Ordinal);
        Assert.Contains("Reading 2 (50 °C after 0 min) can't be used: its time must be after that of reading 1",
            Assert.Throws<ArgumentException>(() => NewtonCooling.Fit(C(20), s_exact, At(60, 0), At(50, 0))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => At(400, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => At(50, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Within(-0.1));
    }

    [Fact]
    public void ZeroAreaOrCapacity_IsRefused()
    {
        Entropy capacity = Entropy.FromJoulesPerKelvin(1000);
        HeatTransferCoefficient transfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10);
        Assert.Contains("The area", Assert.Throws<ArgumentOutOfRangeException>(() => NewtonCooling.Of(C(20), capacity, Area.Zero, transfer)).Message, StringComparison.Ordinal);
        Assert.Contains("The heat capacity", Assert.Throws<ArgumentOutOfRangeException>(() => NewtonCooling.Of(C(20), Entropy.Zero, Area.FromSquareMeters(1), transfer)).Message, StringComparison.Ordinal);
        Assert.Contains("The heat transfer", Assert.Throws<ArgumentOutOfRangeException>(() => NewtonCooling.Of(C(20), capacity, Area.FromSquareMeters(1), HeatTransferCoefficient.Zero)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new Surroundings(C(20), HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10), HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Surroundings.IceFor(Energy.FromJoules(-1)));
    }

    [Law]
    public Property Cooling_IsMonotone_AndItsTimesAgree() => Prop.ForAll(Any.Between(-5, 30).Arbitrary(), Any.Between(35, 130).Arbitrary(), Any.Between(0.01, 5).Arbitrary(), (room, start, hours) =>
    {
        NewtonCooling cooling = new(C(room), Duration.FromMinutes(70));
        double early = cooling.After(C(start), Duration.FromHours(hours)).DegreesCelsius, late = cooling.After(C(start), Duration.FromHours(hours * 1.5)).DegreesCelsius;
        return early < start && late < early && late > room
            && Near.Is(hours, cooling.TimeTo(C(start), C(early))!.Value.Hours, 1e-9)
            && cooling.TimeTo(C(start), C(start + 1))!.Value.Seconds == 0;
    });

    [Law]
    public Property NoiselessReadings_GiveAnExactForecast() => Prop.ForAll(Any.Between(5, 400).Arbitrary(), Any.Between(45, 120).Arbitrary(), Gen.Choose(2, 7).Arbitrary(), (minutes, start, count) =>
    {
        NewtonCooling truth = new(C(21.5), Duration.FromMinutes(minutes));
        CoolingReading[] readings = [.. Enumerable.Range(0, count).Select(i => new CoolingReading(truth.After(C(start), Duration.FromMinutes(i * i * minutes / 40)), Duration.FromMinutes(i * i * minutes / 40)))];
        CoolingFit fit = NewtonCooling.Fit(C(21.5), Within(0.2), readings);
        CoolingForecast forecast = fit.ForecastTo(C(30));
        return Near.Is(truth.TimeConstant.Seconds, fit.Cooling.TimeConstant.Seconds, 1e-9)
            && Near.Is(start, fit.Start.DegreesCelsius, 1e-9)
            && Near.Is(truth.TimeTo(C(start), C(30))!.Value.Seconds, forecast.At!.Value.Seconds, 1e-8)
            && forecast.Earliest < forecast.At && (forecast.Latest is null || forecast.Latest > forecast.At);
    });

    [Law]
    public Property ReadingsWithinTheirError_HoldTheTruthInTheSpan() => Prop.ForAll(
        Any.Between(30, 200).Arbitrary(), Gen.Choose(2, 5).Arbitrary(), Gen.ListOf(Any.Between(-0.5, 0.5)).Resize(5).Where(l => l.Count == 5).Arbitrary(), (minutes, count, errors) =>
    {
        NewtonCooling truth = new(C(20), Duration.FromMinutes(minutes));
        CoolingReading[] readings = [.. Enumerable.Range(0, count).Select(i => new CoolingReading(C(truth.After(C(95), Duration.FromMinutes(i * 12)).DegreesCelsius + errors[i]), Duration.FromMinutes(i * 12)))];
        CoolingForecast forecast = NewtonCooling.Fit(C(20), Within(0.5), readings).ForecastTo(C(35));
        double real = truth.TimeTo(C(95), C(35))!.Value.Seconds;
        return forecast.Earliest!.Value.Seconds <= real && (forecast.Latest is null || forecast.Latest.Value.Seconds >= real);
    });
}
