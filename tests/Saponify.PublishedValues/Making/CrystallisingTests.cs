using static Saponify.PublishedValues.Making.LyeTables;

namespace Saponify.PublishedValues.Making;

/// <summary>When lye drops crystals.</summary>
public class CrystallisingTests
{
    /// <summary>
    /// Source: Wang Y., Cellulose Fiber Dissolution in Sodium Hydroxide Solution at Low Temperature, thesis, Georgia Tech 2008, phase diagram of NaOH and
    /// water, points read off. The curve has a hump near 39 % and a valley near 45.6 %.
    /// </summary>
    [Theory]
    [InlineData(30, 2.2)]
    [InlineData(33.33, 8.5)]
    [InlineData(36, 12.9)]
    [InlineData(38.8, 15.7)]
    [InlineData(40, 15.6)]
    [InlineData(44, 10.4)]
    [InlineData(45.6, 6.0)]
    [InlineData(48, 9.0)]
    [InlineData(50, 11.3)]
    [InlineData(54, 27)]
    [InlineData(60, 50)]
    public void SodiumHydroxideLye_CrystallisesBelow(double percent, double expected) => Given.Near(expected, Naoh(percent).CrystallisesBelow!.Value.DegreesCelsius, 0.01);

    /// <summary>Source: the same. Weaker lye freezes below 0 degrees Celsius: at 28 % at -3.1, at 20 % at -26.6. The library says "at most 0".</summary>
    [Theory]
    [InlineData(28, -3.1)]
    [InlineData(20, -26.6)]
    [InlineData(10, -9.5)]
    public void WeakLye_StaysClearAtZero(double percent, double published)
    {
        Figure<Temperature> limit = Naoh(percent).CrystallisesBelow!;
        Assert.Null(limit.Low);
        Assert.Equal(0, limit.High!.Value.DegreesCelsius);
        Assert.True(published < limit.High.Value.DegreesCelsius);
    }

    /// <summary>Source: The Great Soviet Encyclopedia, 3rd ed.: 52.2 % NaOH is saturated at 20 degrees Celsius. The liquidus gives 17, within 4 degrees.</summary>
    [Fact]
    public void SaturatedSodiumHydroxide_AgreesWithAnEncyclopedia() => Given.Near(20, Naoh(52.2).CrystallisesBelow!.Value.DegreesCelsius, 4);

    /// <summary>
    /// Sources: The Great Soviet Encyclopedia, 3rd ed. (97 g of KOH per 100 g of water at 0 degrees Celsius, 112 at 20); NIOSH Pocket Guide (107 at 59 degrees
    /// Fahrenheit).
    /// </summary>
    [Theory]
    [InlineData(97, 0)]
    [InlineData(107, 15)]
    [InlineData(112, 20)]
    public void PotassiumHydroxideLye_CrystallisesBelow(double gramsPer100GramsOfWater, double expected) =>
        Given.Near(expected, Koh(100 * gramsPer100GramsOfWater / (100 + gramsPer100GramsOfWater)).CrystallisesBelow!.Value.DegreesCelsius, 0.5);
}
