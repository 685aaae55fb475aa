using System.Globalization;
using Saponify.Internals;
using Saponify.Tests.Support;
using UnitsNet.Units;

namespace Saponify.Tests.Json;

/// <summary>
/// Amounts as people write them, against UnitsNet's own conversions. Those of the yard and pound are exact by agreement
/// (1 lb = 453.59237 g; NIST SP 811, from memory), so that only rounding in the last digits may differ.
/// </summary>
public class AmountTests
{
    [Theory]
    [InlineData("420 g", 420)]
    [InlineData("420g", 420)]
    [InlineData("  420  g ", 420)]
    [InlineData("+420 g", 420)]
    [InlineData("0.42 kg", 420)]
    [InlineData("4.2e2 g", 420)]
    [InlineData(".42 kg", 420)]
    [InlineData("14.5 oz", 14.5 * 28.349523125)]
    [InlineData("1 lb 3 oz", 19 * 28.349523125)]
    [InlineData("1lb3oz", 19 * 28.349523125)]
    [InlineData("2 lbs", 907.18474)]
    [InlineData("500 mg", 0.5)]
    public void AMass_IsReadInItsUnit(string text, double grams)
    {
        Assert.True(AmountReader.TryMass(text, out Mass mass, out string? fault), fault);
        Assert.Equal(grams, Stored.ToGrams(mass), 1e-12 * grams);
    }

    [Theory]
    [InlineData("250 mL", 250)]
    [InlineData("250 ml", 250)]
    [InlineData("0.25 L", 250)]
    [InlineData("8 fl oz", 8 * 29.5735295625)]
    [InlineData("8 US fl oz", 8 * 29.5735295625)]
    [InlineData("8 imp fl oz", 8 * 28.4130625)]
    public void AVolume_IsReadInItsUnit(string text, double millilitres)
    {
        // 1 US gallon = 231 cubic inches = 128 fl oz; 1 imperial gallon = 4.54609 L = 160 fl oz: exact by definition (from memory)
        Assert.True(AmountReader.TryVolume(text, out Volume volume, out string? fault), fault);
        Assert.Equal(millilitres, volume.Milliliters, 1e-9);
    }

    [Theory]
    [InlineData("38 °C", 38)]
    [InlineData("38C", 38)]
    [InlineData("100 F", 340.0 / 9)]
    [InlineData("-4 °F", -20)]
    [InlineData("273.15 K", 0)]
    public void ATemperature_IsReadInItsUnit(string text, double celsius)
    {
        Assert.True(AmountReader.TryTemperature(text, out Temperature temperature, out string? fault), fault);
        Assert.Equal(celsius, temperature.DegreesCelsius, 1e-9);
    }

    [Theory]
    [InlineData("32 %", 0.32)]
    [InlineData("32%", 0.32)]
    [InlineData("6.3 %", 0.063)]
    [InlineData("1e-3 %", 0.00001)]
    public void AShare_IsTheNearestDoubleToItsFraction(string text, double fraction)
    {
        Assert.True(AmountReader.TryPercent(text, out Ratio share, out string? fault), fault);
        Assert.Equal(fraction, share.DecimalFractions);
    }

    [Theory]
    [InlineData("1,5 kg", "is ambiguous")]
    [InlineData("1,500 g", "is ambiguous")]
    [InlineData("1.500,5 g", "is ambiguous")]
    [InlineData("1 500 g", "is ambiguous")]
    [InlineData("1'500 g", "is ambiguous")]
    [InlineData("", "it is empty")]
    [InlineData("g", "does not begin with a number")]
    [InlineData("NaN g", "does not begin with a number")]
    [InlineData("∞ g", "does not begin with a number")]
    [InlineData("- 5 g", "does not begin with a number")]
    [InlineData("٣ g", "does not begin with a number")]
    [InlineData("1e999 g", "is not a number that can be computed with")]
    [InlineData("1e99999999999999999999 g", "is not a number that can be computed with")]
    [InlineData("420", "the unit is missing")]
    [InlineData("420 µg", "is no unit here")]
    [InlineData("0x10 g", "is no unit here")]
    [InlineData("420 ml", "a volume is not a mass")]
    [InlineData("8 fl oz", "a volume is not a mass")]
    [InlineData("1 kg 3 oz", "only pounds and ounces go together")]
    [InlineData("1 lb 3 g", "only pounds and ounces go together")]
    [InlineData("1 lb 16 oz", "the ounces go from 0 to below 16")]
    [InlineData("1 lb -3 oz", "the ounces go from 0 to below 16")]
    [InlineData("1 lb 3 oz 2 oz", "only pounds and ounces go together")]
    public void NoMass_IsRefusedInWordsThatHelp(string text, string words)
    {
        Assert.False(AmountReader.TryMass(text, out _, out string? fault));
        Assert.Contains(words, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void AShareWithoutItsSign_IsAskedBack()
    {
        Assert.False(AmountReader.TryPercent("0.32", out _, out string? fault));
        Assert.Equal("a share needs the sign %: is 0.32 % meant, or 32 %?", fault);
    }

    [Fact]
    public void AHostileText_IsShownShortAndWithoutControlCharacters()
    {
        Assert.False(AmountReader.TryMass("1 " + new string('\u0007', 100_000), out _, out string? fault));
        Assert.InRange(fault!.Length, 1, 200);
        Assert.DoesNotContain(fault, char.IsControl);
    }

    [Fact]
    public void EverySpelling_MeansWhatUnitsNetSays()
    {
        Random random = new(3);
        for (int i = 0; i < 1000; i++)
        {
            double number = Math.Round(random.NextDouble() * Math.Pow(10, random.Next(-3, 5)), 6);
            string digits = number.ToString(CultureInfo.InvariantCulture);
            foreach ((string spelling, MassUnit unit) in UnitTable.Mass)
            {
                Assert.True(AmountReader.TryMass($"{digits} {spelling}", out Mass mass, out _));
                Assert.True(Near.Is(Mass.From(number, unit).Grams, Stored.ToGrams(mass), 1e-15), spelling);
            }
            foreach ((string spelling, VolumeUnit unit) in UnitTable.Volume)
            {
                Assert.True(AmountReader.TryVolume(digits + spelling, out Volume volume, out _));
                Assert.Equal(Volume.From(number, unit).Milliliters, volume.Milliliters);
            }
            foreach ((string spelling, TemperatureUnit unit) in UnitTable.Temperature)
            {
                Assert.True(AmountReader.TryTemperature($"{digits} {spelling}", out Temperature temperature, out _));
                Assert.Equal(Temperature.From(number, unit).DegreesCelsius, temperature.DegreesCelsius);
            }
            Assert.True(AmountReader.TryPercent(digits + " %", out Ratio share, out _));
            Assert.True(Near.Is(Ratio.FromPercent(number).DecimalFractions, share.DecimalFractions, 1e-15, 0));
        }
    }

    [Fact]
    public void TwoHundredThousandMasses_InEveryUnit_ReadBackToTheSameDouble()
    {
        Parallel.ForEach(Mass.Units, unit =>
        {
            bool isWritten = UnitTable.Name(UnitTable.Mass, unit) is not null;
            Random random = new((int)unit);
            for (int i = 0; i < 200_000; i++)
            {
                Mass mass = Mass.From(Mass.FromGrams(Math.Pow(10, (random.NextDouble() * 14) - 6)).As(unit), unit);
                StoredMass stored = StoredMass.Of(mass, "A mass");
                bool read = AmountReader.TryMass(AmountWriter.Write(mass), out Mass again, out string? fault);
                if (!read || StoredMass.Of(again, "A mass").Grams != stored.Grams || (isWritten && (again.Value != mass.Value || again.Unit != unit)))
                    Assert.Fail($"{mass.Value:R} {unit}: {fault}");
            }
        });
    }

    [Fact]
    public void VolumesAndTemperatures_InEveryUnit_ReadBackToTheSameDouble()
    {
        Random random = new(7);
        foreach (VolumeUnit unit in Volume.Units)
        {
            for (int i = 0; i < 2000; i++)
            {
                Volume volume = Volume.From(Volume.FromMilliliters(Math.Pow(10, (random.NextDouble() * 10) - 4)).As(unit), unit);
                Assert.True(AmountReader.TryVolume(AmountWriter.Write(volume), out Volume again, out string? fault), fault);
                Assert.Equal(StoredVolume.Of(volume).Millilitres, StoredVolume.Of(again).Millilitres);
            }
        }
        foreach (TemperatureUnit unit in Temperature.Units)
        {
            for (int i = 0; i < 2000; i++)
            {
                Temperature temperature = Temperature.From(Temperature.FromDegreesCelsius((random.NextDouble() * 179) - 79.5).As(unit), unit);
                Assert.True(AmountReader.TryTemperature(AmountWriter.Write(temperature), out Temperature again, out string? fault), fault);
                Assert.Equal(Celsius(temperature), Celsius(again));
            }
        }
        static double Celsius(Temperature temperature) => StoredTemperature.Of(temperature, -80, 100, "A temperature").Celsius;
    }

    [Fact]
    public void ReadingAnAmount_AllocatesNothing()
    {
        Assert.Equal(0, Allocated(() => AmountReader.TryMass("1 lb 3.25 oz", out _, out _) && AmountReader.TryMass("420 g", out _, out _) && AmountReader.TryMass("0.42kg", out _, out _)));
        Assert.Equal(0, Allocated(() => AmountReader.TryVolume("8 imp fl oz", out _, out _)));
        Assert.Equal(0, Allocated(() => AmountReader.TryTemperature("38.5 °C", out _, out _)));
        Assert.Equal(0, Allocated(() => AmountReader.TryPercent("32.75 %", out _, out _)));
        Assert.Equal(0, Allocated(() => SpecialAmounts.TryParts("2.2 : 1", out _, out _)));
        Assert.Equal(0, Allocated(() => SpecialAmounts.TrySaponification("192.4 mg KOH/g", out _, out _)));
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("de-DE")]
    public void EveryCulture_ReadsAndWritesAlike(string culture) => InCulture.Run(culture, () =>
    {
        Assert.True(AmountReader.TryMass("-1234.5 g", out Mass mass, out _));
        Assert.Equal("-1234.5 g", AmountWriter.Write(mass));
        Assert.True(AmountReader.TryPercent("-6.25 %", out Ratio share, out _));
        Assert.Equal("-6.25 %", AmountWriter.Percent(share.DecimalFractions));
        return 0;
    });

    private static long Allocated(Func<bool> read)
    {
        Assert.True(read());
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
            read();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
