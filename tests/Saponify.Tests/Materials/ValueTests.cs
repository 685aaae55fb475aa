using Saponify.Tests.Support;

namespace Saponify.Tests.Materials;

/// <summary>Values that can't be impossible.</summary>
public class ValueTests
{
    public static TheoryData<double> NoNumbers => [double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    [Theory]
    [MemberData(nameof(NoNumbers))]
    [InlineData(-1)]
    [InlineData(1001)]
    public void SaponificationValue_Impossible_CannotBeMade(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SaponificationValue.FromMilligramsKohPerGram(value));

    [Fact]
    public void SaponificationValue_AsSodiumHydroxide_KeepsTheTwoUnitsApart()
    {
        Assert.Equal(0.13545, SaponificationValue.FromMilligramsKohPerGram(190).GramsNaohPerGram, 5);
        Assert.Equal(190, SaponificationValue.FromGramsNaohPerGram(190 * 39.997 / 56.105 / 1000).MilligramsKohPerGram, 6);
        Exception mixUp = Assert.Throws<ArgumentOutOfRangeException>(() => SaponificationValue.FromGramsNaohPerGram(190));
        Assert.Contains("g NaOH per g", mixUp.Message, StringComparison.Ordinal);
        Assert.Equal("192.4 mg KOH/g", SaponificationValue.FromMilligramsKohPerGram(192.37).ToString());
    }

    [Theory]
    [MemberData(nameof(NoNumbers))]
    [InlineData(-0.1)]
    [InlineData(501)]
    public void IodineValue_Impossible_CannotBeMade(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => IodineValue.FromGramsPer100Grams(value));

    [Theory]
    [MemberData(nameof(NoNumbers))]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(100.1)]
    public void Purity_Impossible_CannotBeMade(double percent)
    {
        if (double.IsFinite(percent))
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => Purity.Certified(Ratio.FromPercent(percent)));
            Assert.Throws<ArgumentOutOfRangeException>(() => Purity.AtLeast(Ratio.FromPercent(percent)));
            Assert.Throws<ArgumentOutOfRangeException>(() => Alkali.SodiumHydroxide(Ratio.FromPercent(percent)));
        }
        else
        {
            Assert.ThrowsAny<ArgumentException>(() => Purity.Certified(Ratio.FromPercent(percent)));
        }
    }

    [Fact]
    public void Purity_OfARange_IsDividedByItsTop()
    {
        Purity range = Purity.Between(Ratio.FromPercent(97), Ratio.FromPercent(99)), label = Purity.AtLeast(Ratio.FromPercent(85));
        Assert.Equal(99, range.High.Percent, 12);
        Assert.Equal(100, label.High.Percent);
        Assert.Equal(("97 to 99 %", "at least 85 %", "98 %"), (range.ToString(), label.ToString(), Purity.Certified(Ratio.FromPercent(98)).ToString()));
        Assert.Throws<ArgumentException>(() => Purity.Between(Ratio.FromPercent(99), Ratio.FromPercent(97)));
        EqualityContract.Test(range, Purity.Between(Ratio.FromPercent(97), Ratio.FromPercent(99)), label, Purity.Certified(Ratio.FromPercent(99)));
    }

    [Fact]
    public void Alkali_BoundWater_IsTheRestOfPotashAndSolutions_AndNoneInSoda()
    {
        Assert.Equal(10, Alkali.PotassiumHydroxide(Ratio.FromPercent(90)).BoundWater.Percent, 9);
        Assert.Equal(0, Alkali.SodiumHydroxide(Ratio.FromPercent(90)).BoundWater.Percent);
        Assert.Equal(55, Alkali.SodiumHydroxideSolution(Ratio.FromPercent(45)).BoundWater.Percent, 9);
        Assert.Equal(0, Alkali.PotassiumHydroxide(Purity.AtLeast(Ratio.FromPercent(85))).BoundWater.Percent);
        Assert.Throws<ArgumentOutOfRangeException>(() => Alkali.PotassiumHydroxide(Ratio.FromPercent(90)) with { BoundWater = Ratio.FromPercent(11) });
        Assert.Equal("sodium hydroxide solution, 45 %", Alkali.SodiumHydroxideSolution(Ratio.FromPercent(45)).ToString());
    }

    [Fact]
    public void Mass_Impossible_CannotBeMade()
    {
        Fat fat = Pantry.Reference.Fat("olive-oil");
        Assert.Throws<ArgumentOutOfRangeException>(() => fat.Weighing(Mass.FromGrams(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => fat.Weighing(Mass.FromTonnes(1001)));
        Assert.ThrowsAny<ArgumentException>(() => fat.Weighing(Mass.FromGrams(double.NaN)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Liquid.Water.Weighing(Mass.FromGrams(1)).At(Temperature.FromDegreesCelsius(101)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Liquid.Water.Weighing(Mass.FromGrams(1)).FrozenAt(Temperature.FromDegreesCelsius(1)));
    }

    [Fact]
    public void Mass_OfOneKilogram_EqualsAThousandGrams()
    {
        Fat fat = Pantry.Reference.Fat("olive-oil");
        EqualityContract.Test(fat.Weighing(Mass.FromKilograms(1)), fat.Weighing(Mass.FromGrams(1000)), fat.Weighing(Mass.FromGrams(1001)), fat.Weighing(Mass.FromGrams(1000)).AtTrace());
    }

    [Fact]
    public void ValueList_IsEqualByContent_AndDefaultIsEmpty()
    {
        ValueList<string> empty = default, one = ["a", "b"];
        Assert.Empty(empty);
        Assert.True(empty == (ValueList<string>)[]);
        EqualityContract.Test(one, ["a", "b"], ["b", "a"], ["a"], empty);
        Assert.Equal("b", one[1]);
        Assert.Throws<IndexOutOfRangeException>(() => one[2]);
    }

    [Fact]
    public void Contents_BeyondAHundredPerCent_TakeSugarBackFirst()
    {
        Liquid odd = new("odd", "Odd", new() { Water = Ratio.FromPercent(90), Sugar = Ratio.FromPercent(8), Protein = Ratio.FromPercent(5) });
        Assert.Equal((5.0, 5.0), (Math.Round(odd.Contents.Sugar.Percent, 9), odd.Contents.Protein.Percent));
        Assert.Throws<ArgumentException>(() => new Liquid("odd", "Odd", new() { Water = Ratio.FromPercent(90), Fat = Ratio.FromPercent(20) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Contents { Water = Ratio.FromPercent(101) });
    }

    [Fact]
    public void Acid_WithoutSense_CannotBeMade()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Acid("x", "X", MolarMass.FromGramsPerMole(0), 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Acid("x", "X", MolarMass.FromGramsPerMole(60), -1, 0));
        Assert.Throws<ArgumentException>(() => new Acid(" ", "X", MolarMass.FromGramsPerMole(60), 1, 0));
    }
}
