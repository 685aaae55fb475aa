using Saponify.Tests.Support;

namespace Saponify.Tests.Materials;

/// <summary>Liquids, additives and what is in them.</summary>
public class LiquidTests
{
    private static readonly Fat s_milkFat = Fat.Own("milk-fat", "Milk fat", SaponificationValue.FromMilligramsKohPerGram(224.42), "made up for this test");

    private static readonly Liquid s_milk = new("milk", "Milk", new()
    {
        Water = Ratio.FromPercent(87), Fat = Ratio.FromPercent(4), LeastFat = Ratio.FromPercent(3.5), MostFat = Ratio.FromPercent(4.5), FatKind = s_milkFat,
        Sugar = Ratio.FromPercent(5), Protein = Ratio.FromPercent(3), Acid = Ratio.FromPercent(0.2), LeastAcid = Ratio.FromPercent(0.1), MostAcid = Ratio.FromPercent(0.3),
        AcidKind = new Acid("lactic", "Lactic acid", MolarMass.FromGramsPerMole(90), 1, 0),
    })
    {
        Density = Density.FromGramsPerMilliliter(1.03), Aliases = ["cow's milk"], Allergen = "milk", Origin = "animal", Inci = "Lac", Note = "a note",
    };

    [Fact]
    public void Contents_TakeUpLyeByFatAndAcid_OnlyWhenTheirKindIsKnown()
    {
        // 4 % of a fat of 224.42 mg KOH/g: 0.04 x 0.22442/56.105 = 0.00016 mol a gram; 0.2 % of lactic acid: 0.002/90
        Assert.Equal(0.00016, s_milk.FatHydroxidePerGram, 12);
        Assert.Equal(0.002 / 90, s_milk.AcidHydroxidePerGram, 12);
        Liquid unknown = new("unknown", "Unknown", new() { Water = Ratio.FromPercent(87), Fat = Ratio.FromPercent(4), Acid = Ratio.FromPercent(1) });
        Assert.Equal((0, 0), (unknown.FatHydroxidePerGram, unknown.AcidHydroxidePerGram));
    }

    [Fact]
    public void Label_ReplacesContents_AndKeepsTheKindsOfFatAndAcid()
    {
        Liquid labelled = s_milk.WithLabel("carton", new() { Water = Ratio.FromPercent(88), Fat = Ratio.FromPercent(3.6), Acid = Ratio.FromPercent(0.1) });
        Assert.Equal(("carton", s_milk.Density, s_milk.Aliases, "milk", "animal", "Lac", "a note"),
            (labelled.LabelSource, labelled.Density, labelled.Aliases, labelled.Allergen, labelled.Origin, labelled.Inci, labelled.Note));
        Assert.Equal(["carton"], labelled.Sources);
        Assert.Equal((s_milkFat, s_milk.Contents.AcidKind), (labelled.Contents.FatKind, labelled.Contents.AcidKind));
        // the tables' ranges say nothing about another figure
        Assert.Null(labelled.Contents.LeastFat);
        Assert.Null(labelled.Contents.MostFat);
        Assert.Null(labelled.Contents.LeastAcid);
        Assert.Null(labelled.Contents.MostAcid);
        Assert.Equal(0.9 * s_milk.FatHydroxidePerGram, labelled.FatHydroxidePerGram, 12);
        Assert.Null(s_milk.LabelSource);
    }

    [Fact]
    public void Label_ThatSaysTheSame_KeepsTheRanges()
    {
        Liquid sameFat = s_milk.WithLabel("carton", new() { Water = Ratio.FromPercent(88), Fat = Ratio.FromPercent(4) });
        Assert.Equal((3.5, 4.5), (sameFat.Contents.LeastFat!.Value.Percent, sameFat.Contents.MostFat!.Value.Percent));
        Assert.Null(sameFat.Contents.LeastAcid);
        Liquid sameAcid = s_milk.WithLabel("carton", new() { Water = Ratio.FromPercent(88), Acid = Ratio.FromPercent(0.2) });
        Assert.Equal((0.1, 0.3), (sameAcid.Contents.LeastAcid!.Value.Percent, sameAcid.Contents.MostAcid!.Value.Percent));
        Assert.Null(sameAcid.Contents.LeastFat);
    }

    [Fact]
    public void Label_Impossible_IsRefused()
    {
        ArgumentException fault = Assert.Throws<ArgumentException>(() => s_milk.WithLabel("carton", new() { Water = Ratio.FromPercent(90), Sugar = Ratio.FromPercent(15) }));
        Assert.Contains("Milk add up to 105 %", fault.Message, StringComparison.Ordinal);
        Assert.Equal(10, s_milk.WithLabel("carton", new() { Water = Ratio.FromPercent(90), Sugar = Ratio.FromPercent(10) }).Contents.Sugar.Percent, 9);
        Assert.Throws<ArgumentException>(() => s_milk.WithLabel(" ", Contents.PureWater));
        Assert.Throws<ArgumentNullException>(() => s_milk.WithLabel("carton", null!));
    }

    [Theory]
    [InlineData(3, 10, 0, 10)]    // 103 %: three points of sugar go
    [InlineData(5, 8, 2, 8)]      // 103 %: three of five
    [InlineData(3, 12, 0, 10)]    // 105 %: all sugar, two points of protein
    [InlineData(2, 8, 2, 8)]      // 100 %
    public void BeyondAHundredPerCent_SugarGoesFirstThenProtein(double sugar, double protein, double sugarLeft, double proteinLeft)
    {
        Contents contents = new Liquid("odd", "Odd", new() { Water = Ratio.FromPercent(90), Sugar = Ratio.FromPercent(sugar), Protein = Ratio.FromPercent(protein) }).Contents;
        Assert.Equal((sugarLeft, proteinLeft), (Math.Round(contents.Sugar.Percent, 9), Math.Round(contents.Protein.Percent, 9)));
        Assert.Equal(0, contents.RestFraction, 9);
    }

    [Fact]
    public void EveryPart_CountsTowardsTheWhole()
    {
        Ratio part = Ratio.FromPercent(12);
        Contents contents = new() { Water = part, Fat = part, Sugar = part, Protein = part, Acid = part, Alcohol = part, Ash = part };
        Assert.Equal((0.84, 0.16), (Math.Round(contents.Total, 12), Math.Round(contents.RestFraction, 12)));
        ArgumentException fault = Assert.Throws<ArgumentException>(() => new Liquid("odd", "Odd drink", new() { Water = Ratio.FromPercent(90), Alcohol = Ratio.FromPercent(12) }));
        Assert.Contains("Odd drink add up to 102 %", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(4.1, null)]
    [InlineData(null, 3.9)]
    public void AValueOutsideItsOwnRange_IsRefused(double? least, double? most)
    {
        Ratio? Percent(double? value) => value is { } percent ? Ratio.FromPercent(percent) : null;
        Contents fat = new() { Fat = Ratio.FromPercent(4), LeastFat = Percent(least), MostFat = Percent(most) }, acid = new() { Acid = Ratio.FromPercent(4), LeastAcid = Percent(least), MostAcid = Percent(most) };
        Assert.Contains("The fat of Odd lies outside", Assert.Throws<ArgumentException>(() => new Liquid("odd", "Odd", fat)).Message, StringComparison.Ordinal);
        Assert.Contains("The acid of Odd lies outside", Assert.Throws<ArgumentException>(() => new Additive("odd", "Odd", AdditiveKind.Other, Stage.Trace, acid)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AValueAtTheEndOfItsRange_IsTaken() =>
        Assert.Equal(4, new Liquid("odd", "Odd", new() { Fat = Ratio.FromPercent(4), LeastFat = Ratio.FromPercent(4), MostFat = Ratio.FromPercent(4) }).Contents.Fat.Percent, 12);

    /// <summary>Density of water at 20 degrees Celsius: 0.9982 g/mL. Source: water-density-table.</summary>
    [Fact]
    public void PlainWater_IsWaterAndNothingElse()
    {
        Assert.Equal((100, 0, 0), (Liquid.Water.Contents.Water.Percent, Liquid.Water.Contents.Fat.Percent, Liquid.Water.Contents.RestFraction));
        Assert.Equal(0.9982, Liquid.Water.Density!.Value.GramsPerMilliliter, 9);
        Assert.Equal(("water", "Water", "mineral", true), (Liquid.Water.Id, Liquid.Water.ToString(), Liquid.Water.Origin, Liquid.Water.IsVegan));
        Assert.Equal([("water", 100.0)], Liquid.Water.Provenance.Where(f => f.Unit == "%" && f.Low > 0).Select(f => (f.Name, f.High!.Value)));
        Assert.Equal(["acid", "alcohol", "ash", "density", "fat", "fibre", "protein", "sugar", "water"], Liquid.Water.Provenance.Select(f => f.Name));
    }

    [Fact]
    public void Acid_GivesUpItsProtons()
    {
        // citric acid, 192.124 g/mol, three protons for sure
        Acid citric = new("citric", "Citric acid", MolarMass.FromGramsPerMole(192.124), 3, 1);
        Assert.Equal((3 / 192.124, 1 / 192.124), (citric.HydroxidePerGram, citric.HydroxideInDoubtPerGram));
        Assert.Equal((192.124, "Citric acid"), (citric.MolarMass.GramsPerMole, citric.ToString()));
    }

    [Fact]
    public void Listed_NamesAreTheOnesOnFile()
    {
        Additive plain = new("salt", "Salt", AdditiveKind.Salt, Stage.LyeLiquid, Contents.None);
        Assert.Equal(["Sodium Chloride", "7647-14-5"], ((Saponify.Internals.INamed)(plain with { Inci = "Sodium Chloride", Cas = "7647-14-5" })).ListedNames);
        Assert.Empty(((Saponify.Internals.INamed)plain).ListedNames);
        Assert.Equal(["Lac"], ((Saponify.Internals.INamed)s_milk).ListedNames);
        Assert.Equal(("Salt", AdditiveKind.Salt, Stage.LyeLiquid, false), (plain.ToString(), plain.Kind, plain.UsualStage, plain.IsVegan));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Additive("salt", "Salt", (AdditiveKind)99, Stage.LyeLiquid, Contents.None));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Additive("salt", "Salt", AdditiveKind.Salt, (Stage)99, Contents.None));
        Assert.Throws<ArgumentNullException>(() => new Additive("salt", "Salt", AdditiveKind.Salt, Stage.LyeLiquid, null!));
        Assert.Throws<ArgumentNullException>(() => new Liquid("milk", "Milk", null!));
    }
}
