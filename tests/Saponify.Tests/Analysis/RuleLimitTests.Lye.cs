using Saponify.Analysis;

namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    private static Formula Weighed(double grams, Alkali? alkali = null) => s_plain with { Alkali = AlkaliPlan.Weighed((alkali ?? Alkali.SodiumHydroxide(Ratio.FromPercent(98))).Weighing(Mass.FromGrams(grams))) };

    private static Formula Potash(double percentOfHydroxide) => s_plain with
    {
        Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), Alkali.SodiumHydroxide(Ratio.FromPercent(98)).ShareOfHydroxide(Ratio.FromPercent(100 - percentOfHydroxide)),
            Alkali.PotassiumHydroxide(Ratio.FromPercent(90)).ShareOfHydroxide(Ratio.FromPercent(percentOfHydroxide))),
    };

    /// <summary>About 100 g of alkali fit these fats; each factor is one of the units that get mixed up (16 CFR 500.19 for ounce and pound).</summary>
    [Theory]
    [InlineData(100 / 28.349523125)]
    [InlineData(100 * 28.349523125)]
    [InlineData(100 / 453.59237)]
    [InlineData(100 / 1000.0)]
    public void SFY1101_MixedUnits_AreOneFinding_WithoutAFix(double grams)
    {
        Assert.Empty(Assert.Single(Find("SFY1101", Weighed(grams))).Fixes);
        Assert.False(Speaks("SFY1101", Weighed(100)));
        Assert.False(Speaks("SFY2015", Weighed(grams)));
    }

    [Fact]
    public void SFY1102_Fractions_OfSuperfatAndPurity()
    {
        Assert.True(Speaks("SFY1102", Superfat(s_plain, 0.2)));
        Assert.False(Speaks("SFY1102", Superfat(s_plain, 0.21)));
        Assert.False(Speaks("SFY1102", Superfat(s_plain, 0)));
        Assert.Equal(Superfat(s_plain, 5), Fixed("SFY1102", Superfat(s_plain, 0.05)));
        Assert.True(Speaks("SFY1102", s_plain with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), Alkali.SodiumHydroxide(Ratio.FromPercent(0.98))) }));
    }

    [Fact]
    public void SFY1106_SizeOfTheBatch()
    {
        Formula Of(double grams) => s_plain.ScaledBy(grams / 700);
        Limit("SFY1106", Of, 101, 99, "least", 90);
        Limit("SFY1106", Of, 49_900, 50_100, "most", 60_000);
    }

    [Fact]
    public void SFY1108_WarmLiquids_InCelsiusOnly()
    {
        Formula At(Temperature temperature) => s_plain with { Liquids = Strength(30).DissolvingIn(Liquid.Water, temperature) };
        Limit("SFY1108", c => At(Temperature.FromDegreesCelsius(c)), 50, 51, "highest", 60);
        Assert.False(Speaks("SFY1108", At(Temperature.FromDegreesFahrenheit(150))));
    }

    [Fact]
    public void SFY2001_StartsBelowZero()
    {
        Assert.False(Speaks("SFY2001", Superfat(s_plain, 0)));
        Assert.True(Speaks("SFY2001", Superfat(s_plain, -0.01)));
    }

    [Fact]
    public void SFY2002_LikelyLyeHeavy_IsRaisedByTheFix_AndSFY2003_SaysTheRest()
    {
        Limit("SFY2002", s => Superfat(s_plain, s), 2, 1, "highest", 20);
        Formula tight = Superfat(s_plain, 1);
        Assert.False(Speaks("SFY2003", tight));
        Assert.True(Speaks("SFY2003", Fixed("SFY2002", tight)));
        Assert.False(Speaks("SFY2003", s_plain));
    }

    /// <summary>52.2 % of sodium hydroxide is saturated at 20 degrees Celsius (gse-naoh); the fix leaves as much room as SFY3008 asks for.</summary>
    [Fact]
    public void SFY2006_Solubility()
    {
        Formula Of(double percent) => s_plain with { Liquids = Strength(percent) };
        Assert.False(Speaks("SFY2006", Of(51)));
        Assert.True(Speaks("SFY2006", Of(53)));
        Assert.False(Speaks("SFY3008", Fixed("SFY2006", Of(60))));
    }

    [Fact]
    public void SFY2009_PurePotash() =>
        Limit("SFY2009", p => Weighed(140, Alkali.PotassiumHydroxide(Ratio.FromPercent(p))), 95, 95.1, "highest", 97);

    [Fact]
    public void SFY2012_PotashInBars_OnlyWhereABarIsToComeOut()
    {
        BatchSetup bar = new() { Form = ProductForm.Bar };
        Assert.Empty(Find("SFY2012", Potash(12), bar));
        Assert.Single(Find("SFY2012", Potash(12.1), bar));
        Assert.Empty(Find("SFY2012", Potash(12.1), bar, ("highest", 15)));
        Assert.Empty(Find("SFY2012", Potash(100), new() { Form = ProductForm.Soft }));
    }

    [Fact]
    public void SFY2013_StepOfTheScale_AgainstTheBatch()
    {
        BatchSetup whole = new() { Scale = new Scale(Mass.FromGrams(1)) };
        Assert.Empty(Find("SFY2013", s_plain, whole));
        Assert.Empty(Find("SFY2013", s_plain.ScaledBy(0.5), whole, ("highest", 2)));
        Formula larger = Fixed("SFY2013", s_plain.ScaledBy(0.5), whole);
        Assert.InRange(larger.Fats.Sum(f => f.Mass.Grams), 660, 700);
    }

    [Fact]
    public void SFY2015_HighSuperfat() => Limit("SFY2015", s => Superfat(s_plain, s), 20, 20.1, "highest", 25);

    /// <summary>Fat of unknown kind from 0.7 g in 700 g of fats, acid from 0.07 g.</summary>
    [Theory]
    [InlineData("SFY2017", "oat-drink", 0.7)]
    [InlineData("SFY2018", "coffee-brewed", 0.07)]
    public void UnknownKinds_AreRemarkedOnFromSomeAmountOn(string id, string liquid, double least)
    {
        Contents contents = s_pantry.Liquid(liquid).Contents;
        double grams = least / (id == "SFY2017" ? contents.Fat : contents.Acid).DecimalFractions;
        Limit(id, g => s_plain with { Liquids = s_plain.Liquids.HoldingBack(Held(liquid, g)) }, grams * 0.99, grams * 1.01, "least", 1);
    }

    [Fact]
    public void SFY2020_And_SFY2022_NoAlkaliForTheFats_IsOneFinding()
    {
        Formula sour = Weighed(100) with { Additives = [s_pantry.Additive("malic-acid").Weighing(Mass.FromGrams(200))] };
        Assert.True(Speaks("SFY2020", sour));
        Assert.False(Speaks("SFY2022", sour));
        Assert.False(Speaks("SFY2020", Weighed(0)));
        Assert.Empty(Assert.Single(Find("SFY2022", Weighed(0))).Fixes);
    }
}
