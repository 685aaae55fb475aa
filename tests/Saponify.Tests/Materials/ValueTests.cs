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

    [Fact]
    public void SaponificationAndIodineValues_AreOrderedByTheirNumber()
    {
        SaponificationValue low = SaponificationValue.FromMilligramsKohPerGram(189), high = SaponificationValue.FromMilligramsKohPerGram(190), again = SaponificationValue.FromMilligramsKohPerGram(189);
        Assert.Equal([true, false, true, false, true, true], (bool[])[low < high, low > high, low <= high, low >= high, low <= again, low >= again]);
        Assert.Equal([false, false, true], (bool[])[low < again, low > again, high > low]);
        Assert.Equal((-1, 0, 1), (low.CompareTo(high), low.CompareTo(again), high.CompareTo(low)));
        IodineValue dry = IodineValue.FromGramsPer100Grams(10), drying = IodineValue.FromGramsPer100Grams(180), same = IodineValue.FromGramsPer100Grams(10);
        Assert.Equal([true, false, true, false, true, true], (bool[])[dry < drying, dry > drying, dry <= drying, dry >= drying, dry <= same, dry >= same]);
        Assert.Equal([false, false, true], (bool[])[dry < same, dry > same, drying > dry]);
        Assert.Equal((-1, 0, "180 g I2/100 g"), (dry.CompareTo(drying), dry.CompareTo(same), drying.ToString()));
    }

    [Fact]
    public void SaponificationValue_AtItsLimits_IsTaken()
    {
        Assert.Equal((0, 1000), (SaponificationValue.FromMilligramsKohPerGram(0).MilligramsKohPerGram, SaponificationValue.FromMilligramsKohPerGram(1000).MilligramsKohPerGram));
        // 1000 mg KOH/g are 1 x 39.997/56.105 = 0.71290 g NaOH/g
        Assert.InRange(SaponificationValue.FromGramsNaohPerGram(0.7129).MilligramsKohPerGram, 999.9, 1000);
        Assert.Contains("A saponification value must be a number from 0 to 1000 mg KOH per g", Assert.Throws<ArgumentOutOfRangeException>(() => SaponificationValue.FromMilligramsKohPerGram(1001)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Purity_HardlyAboveNothing_IsRefused()
    {
        Assert.Contains("A purity must be above 0 %", Assert.Throws<ArgumentOutOfRangeException>(() => Purity.Certified(Ratio.FromDecimalFractions(0.9e-6))).Message, StringComparison.Ordinal);
        Assert.Equal(1e-6, Purity.Certified(Ratio.FromDecimalFractions(1e-6)).Low.DecimalFractions);
        Assert.Equal(98, Purity.Between(Ratio.FromPercent(98), Ratio.FromPercent(98)).Low.Percent, 9);
        Assert.Contains("from 99 % down to 97 %", Assert.Throws<ArgumentException>(() => Purity.Between(Ratio.FromPercent(99), Ratio.FromPercent(97))).Message, StringComparison.Ordinal);
        Assert.Equal((PurityKind.Certified, PurityKind.Range, PurityKind.LabelMinimum),
            (Purity.Certified(Ratio.FromPercent(98)).Kind, Purity.Between(Ratio.FromPercent(97), Ratio.FromPercent(98)).Kind, Purity.AtLeast(Ratio.FromPercent(98)).Kind));
    }

    [Fact]
    public void Alkalis_AreNamedByWhatTheyAre()
    {
        Ratio half = Ratio.FromPercent(50);
        Alkali[] all = [Alkali.SodiumHydroxide(half), Alkali.PotassiumHydroxide(half), Alkali.SodiumHydroxideSolution(half), Alkali.PotassiumHydroxideSolution(half)];
        Assert.Equal(["sodium-hydroxide", "potassium-hydroxide", "sodium-hydroxide-solution", "potassium-hydroxide-solution"], all.Select(a => a.Id));
        Assert.Equal(["sodium hydroxide, 50 %", "potassium hydroxide, 50 %", "sodium hydroxide solution, 50 %", "potassium hydroxide solution, 50 %"], all.Select(a => a.ToString()));
        Assert.Equal([false, false, true, true], all.Select(a => a.IsSolution));
        Assert.Equal([0.0, 50, 50, 50], all.Select(a => Math.Round(a.BoundWater.Percent, 9)));
        // half a gram of pure hydroxide in each gram
        Assert.Equal(((double[])[0.5 / 39.997, 0.5 / 56.105, 0.5 / 39.997, 0.5 / 56.105]).Select(m => Math.Round(m, 15)), all.Select(a => Math.Round(a.HydroxidePerGram, 15)));
        Assert.All(all, a => Assert.Equal(0.5, a.PurePerGram));
        Assert.Throws<ArgumentException>(() => all[0] with { Certificate = " " });
        Assert.Null((all[0] with { Certificate = null }).Certificate);
        Assert.Throws<ArgumentNullException>(() => Alkali.SodiumHydroxide(null!));
    }

    [Fact]
    public void BoundWater_MayBeAllThatThePurityLeaves()
    {
        Alkali flakes = Alkali.SodiumHydroxide(Ratio.FromPercent(90)) with { BoundWater = Ratio.FromPercent(10) };
        Assert.Equal(10, flakes.BoundWater.Percent, 9);
        Assert.True(flakes.BoundWaterFraction + flakes.PurePerGram <= 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => flakes with { BoundWater = Ratio.FromPercent(10.001) });
        Assert.Throws<ArgumentOutOfRangeException>(() => flakes with { BoundWater = Ratio.FromPercent(-0.1) });
    }

    private static SourcedFigure Sourced(double? low, double? high) => new("iodine", low, high, "g/100 g", "", ["a-standard", "b-book"], "table 1", Evidence.Standard, null);

    [Fact]
    public void SourcedFigure_ShowsItsRangeAndWhereItIsFrom()
    {
        Assert.Equal(["80 to 90 g/100 g", "80 g/100 g", "at most 90 g/100 g", "at least 80 g/100 g"],
            (string[])[Sourced(80, 90).Range, Sourced(80, 80).Range, Sourced(null, 90).Range, Sourced(80, null).Range]);
        Assert.Equal("iodine 80 to 90 g/100 g (standard: a-standard; b-book)", Sourced(80, 90).ToString());
        Assert.Equal([85.0, 90, 45, 80], (double[])[Sourced(80, 90).Middle(), Sourced(null, 90).Middle(), Sourced(null, 90).Middle(halfOfUpperLimit: true), Sourced(80, null).Middle()]);
    }

    [Fact]
    public void ValueList_IsReadInOrder()
    {
        ValueList<string> list = ["a", "b", "c"];
        List<string> seen = [];
        foreach (string item in list)
            seen.Add(item);
        Assert.Equal(["a", "b", "c"], seen);
        Assert.Equal(["a", "b", "c"], list.AsEnumerable());
        Assert.Equal("abc", string.Concat(((System.Collections.IEnumerable)list).Cast<string>()));
        Assert.Equal((3, "c", "abc"), (list.Count, list[2], string.Concat(list.AsSpan().ToArray())));
        ValueList<string> other = ["a", "b"], again = new[] { "a", "b", "c" }.ToValueList();
        Assert.True(list == again && list != other && !(list == other) && !(list != again));
        Assert.NotEqual(list.GetHashCode(), other.GetHashCode());
        Assert.Throws<ArgumentNullException>(() => ((IEnumerable<string>)null!).ToValueList());
    }
}
