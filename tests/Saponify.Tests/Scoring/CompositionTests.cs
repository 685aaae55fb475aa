using Saponify.Tests.Formulas;

namespace Saponify.Tests.Scoring;

/// <summary>Bars whose composition can be followed by hand.</summary>
public class CompositionTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;
    private static readonly Alkali s_soda = Alkali.SodiumHydroxide(Ratio.FromPercent(100));
    private static readonly Alkali s_potash = Alkali.PotassiumHydroxide(Ratio.FromPercent(100));

    /// <summary>885.453 g are one mole; they take three moles of hydroxide.</summary>
    private static readonly Fat s_triolein = AnyBlend.Own("triolein", (FattyAcid.FromShorthand("C18:1"), 1));

    private static readonly Fat s_oleicAcid = new("own-oleic-acid", "Own oleic acid", FatClass.FreeAcid, new()
    {
        Profile = FattyAcidProfile.Of((FattyAcid.FromShorthand("C18:1"), Ratio.FromPercent(100))),
        ProfileSources = ["made up for this test"],
    });

    private static Formula Of(AlkaliPlan alkali, params FatPortion[] fats) =>
        new("Test") { Fats = [.. fats], Alkali = alkali, Liquids = LiquidPlan.TotalWater(Mass.FromGrams(300)) };

    private static AlkaliPlan Moles(double moles) => AlkaliPlan.Weighed(s_soda.Weighing(Mass.FromGrams(moles * 39.997)));

    private static double Grams(BarComposition bar, string name) => bar.Parts.Where(p => p.Name == name).Sum(p => p.Mass.Grams);

    private static BarComposition Bar(Formula formula) => formula.Composition()!;

    [Fact]
    public void OneMoleOfTriolein_WithThreeMolesOfSoda_MakesThreeMolesOfSoapAndOneOfGlycerol()
    {
        BarComposition bar = Bar(Of(Moles(3), s_triolein.Weighing(Mass.FromGrams(885.453))));
        Assert.Equal(3 * 304.450, Grams(bar, "sodium oleate"), 6);
        Assert.Equal(92.094, Grams(bar, "glycerol"), 6);
        Assert.Equal(300, bar.MassOf(PartKind.Water).Grams, 9);
        Assert.Equal(["sodium oleate", "glycerol", "water of the lye liquid"], bar.Parts.Select(p => p.Name));
        // the acids of the soap are all of the fatty matter
        Assert.Equal(3 * 282.468 / (885.453 + (3 * 39.997) + 300), bar.TotalFattyMatter.DecimalFractions, 9);
    }

    [Fact]
    public void HalfTheLye_LeavesHalfTheGlyceride_LateOrNot()
    {
        BarComposition bar = Bar(Of(Moles(3), s_triolein.Weighing(Mass.FromGrams(885.453)), s_triolein.Weighing(Mass.FromGrams(885.453)).AtTrace()));
        Assert.Equal(885.453, Grams(bar, "unreacted glyceride"), 6);
        Assert.Equal(3 * 304.450, Grams(bar, "sodium oleate"), 6);
    }

    [Fact]
    public void FreeAcid_ReactsBeforeGlyceride_AndFreesWaterInsteadOfGlycerol()
    {
        BarComposition bar = Bar(Of(Moles(1), s_triolein.Weighing(Mass.FromGrams(885.453)), s_oleicAcid.Weighing(Mass.FromGrams(282.468))));
        Assert.Equal(304.450, Grams(bar, "sodium oleate"), 6);
        Assert.Equal(18.015, Grams(bar, "water formed"), 6);
        Assert.Equal(885.453, Grams(bar, "unreacted glyceride"), 6);
        Assert.Equal(0, bar.MassOf(PartKind.Glycerol).Grams, 9);
        // with half a mole, half of the acid stays
        Assert.Equal(141.234, Grams(Bar(Of(Moles(0.5), s_oleicAcid.Weighing(Mass.FromGrams(282.468)))), "unreacted fatty acid"), 6);
    }

    [Fact]
    public void Acid_ReactsFirst()
    {
        // a tenth of a mole of citric acid, 19.2123 g, takes 0.3 mol and turns into 25.806 g of trisodium citrate and 5.4045 g of water
        Formula formula = Of(Moles(0.3), s_triolein.Weighing(Mass.FromGrams(885.453)));
        Additive citric = new("own-citric", "Own citric acid", AdditiveKind.Acid, Stage.LyeLiquid, new() { Acid = Ratio.FromPercent(100), AcidKind = new("citric", "Citric acid", MolarMass.FromGramsPerMole(192.123), 3, 0) });
        BarComposition bar = Bar(formula with { Additives = [citric.Weighing(Mass.FromGrams(19.2123))] });
        Assert.Equal(0, bar.MassOf(PartKind.Soap).Grams, 6);
        Assert.Equal(19.2123 + (0.3 * (22.990 - 1.008)), Grams(bar, "Citric acid, sodium salt"), 6);
        Assert.Equal(0.3 * 18.015, Grams(bar, "water formed"), 6);
    }

    [Fact]
    public void LyeHeavyBar_HasAlkaliLeft_AndSaysSo()
    {
        BarComposition bar = Bar(Of(Moles(3.5), s_triolein.Weighing(Mass.FromGrams(885.453))));
        Assert.Equal(0.5 * 39.997, Grams(bar, "sodium hydroxide left"), 6);
        Assert.Equal(0, bar.MassOf(PartKind.UnreactedFat).Grams, 9);
        Assert.Contains(bar.Remarks, r => r.StartsWith("LYE-HEAVY", StringComparison.Ordinal));
        Assert.Contains("LYE-HEAVY", bar.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void TwoAlkalis_GiveTwoSoapsOfEachAcid()
    {
        BarComposition bar = Bar(Of(AlkaliPlan.ForSuperfat(Ratio.Zero, s_soda.ShareOfHydroxide(Ratio.FromPercent(70)), s_potash.ShareOfHydroxide(Ratio.FromPercent(30))), s_triolein.Weighing(Mass.FromGrams(885.453))));
        Assert.Equal(2.1 * 304.450, Grams(bar, "sodium oleate"), 6);
        Assert.Equal(0.9 * (282.468 - 1.008 + 39.098), Grams(bar, "potassium oleate"), 6);
        Assert.All(bar.Parts.Where(p => p.Kind == PartKind.Soap), p => Assert.Equal("C18:1", p.Acid!.Shorthand));
    }

    [Fact]
    public void ImpureAlkali_LeavesItsInertPart_AndFlakesBringWater()
    {
        BarComposition soda = Bar(Of(AlkaliPlan.ForSuperfat(Ratio.Zero, Alkali.SodiumHydroxide(Ratio.FromPercent(96))), s_triolein.Weighing(Mass.FromGrams(885.453))));
        Assert.Equal(3 * 39.997 / 0.96 * 0.04, soda.MassOf(PartKind.InertOfAlkali).Grams, 6);
        BarComposition potash = Bar(Of(AlkaliPlan.ForSuperfat(Ratio.Zero, Alkali.PotassiumHydroxide(Ratio.FromPercent(90))), s_triolein.Weighing(Mass.FromGrams(885.453))));
        Assert.Equal(3 * 56.105 / 0.9 * 0.1, Grams(potash, "water of the alkali"), 6);
        Assert.Equal(300, potash.MassOf(PartKind.Water).Grams, 6);
    }

    [Fact]
    public void Unsaponifiable_StaysOnItsOwn_AndIsFattyMatter()
    {
        Fat half = new("half", "Half triolein", FatClass.Triglyceride, new()
        {
            Profile = FattyAcidProfile.Of((FattyAcid.FromShorthand("C18:1"), Ratio.FromPercent(100))),
            ProfileSources = ["made up for this test"],
            Unsaponifiable = new(Ratio.FromPercent(10), Evidence.Measured, ["made up for this test"]),
        });
        BarComposition bar = Bar(Of(AlkaliPlan.ForSuperfat(Ratio.Zero, s_soda), half.Weighing(Mass.FromGrams(1000))));
        Assert.Equal(100, Grams(bar, "unsaponifiable and unaccounted"), 6);
        Assert.Equal((100 + (900 * 3 * 282.468 / 885.453)) / bar.BarMass.Grams, bar.TotalFattyMatter.DecimalFractions, 9);
    }

    [Fact]
    public void LotThatLeavesLessThanNothing_SetsTheMolarMass_AndIsSaid()
    {
        Fat lot = s_triolein.WithLot(new() { Name = "L-9", Source = "certificate", Saponification = SaponificationValue.FromMilligramsKohPerGram(200) });
        BarComposition bar = Bar(Of(AlkaliPlan.ForSuperfat(Ratio.Zero, s_soda), lot.Weighing(Mass.FromGrams(1000))));
        Assert.Equal(0, bar.MassOf(PartKind.Unsaponifiable).Grams, 9);
        Assert.Equal(1000 * 200 / 56105.0 / 3 * 92.094, Grams(bar, "glycerol"), 6);
        Assert.Contains(bar.Remarks, r => r.Contains("less than nothing", StringComparison.Ordinal));
        // a lot below the profile leaves a rest instead, and nothing to say
        Fat low = s_triolein.WithLot(new() { Name = "L-8", Source = "certificate", Saponification = SaponificationValue.FromMilligramsKohPerGram(171.0) });
        BarComposition rest = Bar(Of(AlkaliPlan.ForSuperfat(Ratio.Zero, s_soda), low.Weighing(Mass.FromGrams(1000))));
        Assert.Equal(1000 - (1000 * 171 / 56105.0 * 885.453 / 3), Grams(rest, "unsaponifiable and unaccounted"), 6);
        Assert.Empty(rest.Remarks);
    }

    [Fact]
    public void FatWithoutProfile_HasOneSoapOfItsOwn()
    {
        Fat unknown = new("unknown", "Unknown fat", FatClass.Triglyceride, new()
        {
            Saponification = new(SaponificationValue.FromMilligramsKohPerGram(195), Evidence.Measured, ["made up for this test"]),
            Unsaponifiable = new(Ratio.FromPercent(2), Evidence.Measured, ["made up for this test"]),
        });
        BarComposition bar = Bar(Of(AlkaliPlan.ForSuperfat(Ratio.FromPercent(10), s_soda), unknown.Weighing(Mass.FromGrams(1000))));
        double moles = 1000 * 195 / 56105.0;
        // glyceride 980 g, nine tenths of it react: soap is glyceride plus soda less glycerol
        Assert.Equal(0.9 * (980 + (moles * 39.997) - (moles / 3 * 92.094)), Grams(bar, "sodium soap of Unknown fat"), 6);
        Assert.Equal(98, Grams(bar, "unreacted glyceride"), 6);
        Assert.Equal(20, Grams(bar, "unsaponifiable and unaccounted"), 6);
        Assert.Contains(bar.Remarks, r => r.StartsWith("The acids of Unknown fat are not known", StringComparison.Ordinal));
    }

    [Fact]
    public void FreeAcidsWithoutProfile_AreAllAcid()
    {
        Fat rosin = s_pantry.Fat("rosin").WithLot(new() { Name = "R", Source = "certificate", Saponification = SaponificationValue.FromMilligramsKohPerGram(165) });
        BarComposition bar = Bar(Of(AlkaliPlan.ForSuperfat(Ratio.Zero, s_soda), rosin.Weighing(Mass.FromGrams(100))));
        double unsaponifiable = rosin.Figures.Unsaponifiable?.Value.DecimalFractions ?? 0, moles = 100 * 165 / 56105.0;
        Assert.Equal((100 * (1 - unsaponifiable)) + (moles * (22.990 - 1.008)), Grams(bar, "sodium soap of Rosin"), 6);
        Assert.Equal(moles * 18.015, Grams(bar, "water formed"), 6);
        // rosin acids are fatty matter by the standard
        Assert.Equal(100 / bar.BarMass.Grams, bar.TotalFattyMatter.DecimalFractions, 9);
    }

    [Fact]
    public void Wax_StaysWhole_WithItsFewCations()
    {
        Fat beeswax = s_pantry.Fat("beeswax");
        BarComposition bar = Bar(Of(AlkaliPlan.ForSuperfat(Ratio.Zero, s_soda), s_triolein.Weighing(Mass.FromGrams(885.453)), beeswax.Weighing(Mass.FromGrams(100))));
        double moles = 100 * beeswax.Saponification!.Value.MilligramsKohPerGram / 56105;
        Assert.True(moles > 0);
        Assert.Equal(100 + (moles * (22.990 - 1.008)), Grams(bar, "Beeswax, with the cations it takes up"), 6);
        Assert.Equal(moles * 18.015, Grams(bar, "water formed"), 6);
        Assert.Equal(3 * 304.450, Grams(bar, "sodium oleate"), 6);
        // potash: K for H instead of Na for H
        BarComposition potash = Bar(Of(AlkaliPlan.ForSuperfat(Ratio.Zero, s_potash), s_triolein.Weighing(Mass.FromGrams(885.453)), beeswax.Weighing(Mass.FromGrams(100))));
        Assert.Equal(100 + (moles * (39.098 - 1.008)), Grams(potash, "Beeswax, with the cations it takes up"), 6);
    }

    [Fact]
    public void Milk_BringsWhatIsInIt_AndAnAdditiveItsRest()
    {
        Liquid milk = s_pantry.Liquid("milk-goat");
        Formula plain = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        BarComposition bar = Bar(plain with
        {
            Liquids = plain.Liquids.HoldingBack(milk.Weighing(Mass.FromGrams(100))),
            Additives = [s_pantry.Additive("kaolin").Weighing(Mass.FromGrams(7)), s_pantry.Additive("honey").Weighing(Mass.FromGrams(10))],
        });
        Additive honey = s_pantry.Additive("honey");
        Assert.Equal(milk.Contents.Sugar.DecimalFractions * 100 + (honey.Contents.Sugar.DecimalFractions * 10), bar.MassOf(PartKind.Sugar).Grams, 9);
        Assert.Equal(milk.Contents.Protein.DecimalFractions * 100 + (honey.Contents.Protein.DecimalFractions * 10), bar.MassOf(PartKind.Protein).Grams, 9);
        Assert.Equal(milk.Contents.Water.DecimalFractions * 100, Grams(bar, "water of held-back liquids"), 9);
        Assert.Equal(honey.Contents.Water.DecimalFractions * 10, Grams(bar, "water of additives"), 9);
        Assert.Equal(7, Grams(bar, "Kaolin clay"), 6);
        Assert.True(Grams(bar, "Lactic acid, sodium salt") > milk.Contents.Acid.DecimalFractions * 100);
        Assert.True(Grams(bar, "ash and other solids") > 0);
        Assert.Contains(bar.Parts, p => p.Name == "sodium caprate");                 // only goat milk fat has it here
    }

    [Fact]
    public void WhatIsNotKnown_IsSaid()
    {
        Formula plain = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        BarComposition bar = Bar(plain with
        {
            Liquids = plain.Liquids.HoldingBack(s_pantry.Liquid("oat-drink").Weighing(Mass.FromGrams(80))),
            Additives = [s_pantry.Additive("kaolin").AmountUnknown()],
        });
        Assert.Equal(80 * s_pantry.Liquid("oat-drink").Contents.Fat.DecimalFractions, Grams(bar, "fat of unknown kind"), 9);
        Assert.Contains(bar.Remarks, r => r.StartsWith("The fat in Oat drink", StringComparison.Ordinal));
        Assert.Contains("The amount of Kaolin clay is not known; it is not in the bar.", bar.Remarks);
    }

    [Fact]
    public void Alcohol_OfBeer_LeavesWithTheWater()
    {
        Formula plain = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        BarComposition fresh = Bar(plain with { Liquids = plain.Liquids.DissolvingIn(s_pantry.Liquid("beer-regular")) });
        Assert.True(fresh.MassOf(PartKind.Alcohol).Grams > 4);
        BarComposition bone = fresh.AtMoisture(Ratio.Zero);
        Assert.Equal(0, bone.MassOf(PartKind.Alcohol).Grams, 9);
        Assert.Equal(0, bone.MassOf(PartKind.Water).Grams, 9);
        Assert.Equal(fresh.BarMass.Grams - fresh.MassOf(PartKind.Water).Grams - fresh.MassOf(PartKind.Alcohol).Grams, bone.BarMass.Grams, 6);
    }

    [Fact]
    public void Moisture_GoesOneWay()
    {
        BarComposition fresh = Bar(FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500))));
        Assert.Equal(fresh.BarMass.Grams, fresh.AtMoisture(fresh.Moisture).BarMass.Grams, 6);
        Assert.Throws<ArgumentOutOfRangeException>(() => fresh.AtMoisture(Ratio.FromPercent(fresh.Moisture.Percent + 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => fresh.AtMoisture(Ratio.FromPercent(-1)));
    }

    [Fact]
    public void WhatCannotBeWeighed_HasNoComposition()
    {
        Assert.Null(FormulaTests.Plain(s_pantry.Fat("shea-butter").Weighing(Mass.FromGrams(100))).Composition());
        Assert.Null(FormulaTests.Plain().Plan().Composition());
        Assert.Throws<ArgumentNullException>(() => ((BatchPlan)null!).Composition());
    }
}
