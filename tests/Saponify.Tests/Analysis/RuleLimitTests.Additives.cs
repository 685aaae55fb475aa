namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    private static Formula Adding(params AdditivePortion[] additives) => s_plain with { Additives = [.. additives] };

    [Fact]
    public void SFY5001_Doses_OfAllLinesTogether()
    {
        Limit("SFY5001", d => Adding(Dose("sodium-lactate-60", d)), 3, 3.01, "times", 1.5);
        Assert.Equal("additives[kaolin]", Assert.Single(Find("SFY5001", Adding(Dose("kaolin", 2), Dose("kaolin", 2)))).Path.ToString());
        Assert.False(Speaks("SFY5001", Adding(s_pantry.Additive("kaolin").AmountUnknown())));
    }

    [Theory]
    [InlineData("honey", 6, "SFY3003", "highest")]
    [InlineData("fragrance-oil", 7, "SFY5102", "highest")]
    [InlineData("kaolin", 21, "SFY5010", "highest")]
    [InlineData("sodium-chloride", 6, "SFY5011", null)]
    public void SFY5001_LeavesToOtherRulesWhatTheySay_UnlessTheyAreToldNotTo(string additive, double dose, string other, string? option)
    {
        Formula formula = Adding(Dose(additive, dose));
        Assert.False(Speaks("SFY5001", formula));
        Assert.True(Speaks(other, formula));
        if (option is not null)
            Assert.Equal(["SFY5001"], SpeaksWith(other, option, 30, formula, "SFY5001"));
    }

    /// <summary>At the limit itself, where 0.07 x 100 is a bit more than 7 in doubles.</summary>
    [Fact]
    public void SFY5001_SpeaksAtTheLimitOfTheOtherRule() => Assert.Equal(["SFY5001"], SpeaksWith("SFY5102", "highest", 7, Adding(Dose("fragrance-oil", 7)), "SFY5001"));

    [Theory]
    [InlineData("SFY5002", "honey", Stage.LyeLiquid, Stage.Trace)]
    [InlineData("SFY5002", "milk-powder-goat", Stage.LyeLiquid, Stage.Trace)]
    [InlineData("SFY5003", "zinc-oxide", Stage.LyeLiquid, Stage.Trace)]
    [InlineData("SFY5004", "tartaric-acid", Stage.Trace, Stage.LyeLiquid)]
    [InlineData("SFY5004", "malic-acid", Stage.Top, Stage.LyeLiquid)]
    [InlineData("SFY5006", "rose-petals", Stage.Trace, Stage.Top)]
    [InlineData("SFY5015", "bht", Stage.LyeLiquid, Stage.Fats)]
    [InlineData("SFY5101", "fragrance-oil", Stage.LyeLiquid, Stage.Trace)]
    public void Stage_ThatHarms_IsMovedByTheFix(string id, string additive, Stage faulty, Stage expected)
    {
        AdditivePortion portion = s_pantry.Additive(additive).ShareOfFats(Ratio.FromPercent(0.1));
        Assert.Equal(expected, Fixed(id, Adding(portion.At(faulty))).Additives[0].Stage);
        Assert.False(Speaks(id, Adding(portion.At(expected))));
    }

    [Theory]
    [InlineData("SFY5002", "sucrose", Stage.LyeLiquid)]          // no reducing sugar
    [InlineData("SFY5003", "titanium-dioxide", Stage.LyeLiquid)]
    [InlineData("SFY5004", "citric-acid-monohydrate", Stage.Fats)]
    [InlineData("SFY5006", "calendula-petals", Stage.Trace)]      // keeps its colour
    public void Stage_ThatDoesNoHarm_IsNotRemarkedOn(string id, string additive, Stage stage) => Assert.False(Speaks(id, Adding(Dose(additive, 0.5).At(stage))));

    [Fact]
    public void SFY5005_AcidAfterUltramarine_IsOneFindingOnly()
    {
        Formula formula = Adding(Dose("citric-acid-monohydrate", 0.8).At(Stage.Trace), Dose("ultramarine-violet", 0.5));
        Assert.Empty(Find("SFY5004", formula));
        Assert.Equal(Stage.LyeLiquid, Fixed("SFY5005", formula).Additives[0].Stage);
        Assert.False(Speaks("SFY5005", Adding(Dose("citric-acid-monohydrate", 0.8).At(Stage.Trace))));
    }

    [Theory]
    [InlineData("SFY5008", "magnesium-sulfate")]
    [InlineData("SFY5009", "borax")]
    [InlineData("SFY5009", "boric-acid")]
    [InlineData("SFY5009", "salicylic-acid")]
    public void WhatDoesNotBelongInSoap_IsLeftOutByTheFix(string id, string additive) => Assert.Empty(Fixed(id, Adding(Dose(additive, 0.5))).Additives);

    [Fact]
    public void SFY5007_Colours()
    {
        Assert.True(Find("SFY5007", Adding(Dose("manganese-violet", 0.5)))[0].RestsOnMemory);
        Assert.False(Find("SFY5007", Adding(Dose("turmeric", 0.5)))[0].RestsOnMemory);
        Assert.False(Speaks("SFY5007", Adding(Dose("iron-oxide-red", 0.3))));
    }

    [Fact]
    public void SFY5010_GrainsInSum_WithoutSalt() => Limit("SFY5010", d => Adding(Dose("kaolin", 10), Dose("pumice", d), Dose("sea-salt", 25)), 10, 10.01, "highest", 22);

    [Fact]
    public void SFY5011_SaltAgainstLauricFat()
    {
        Limit("SFY5011", d => Adding(Dose("sodium-chloride", d)), 5, 5.01, "highest", 6);
        Assert.False(Speaks("SFY5011", Adding(Dose("sodium-chloride", 25)), ("lauric", 10)));
        Assert.False(Speaks("SFY5011", Adding(Dose("sodium-chloride", 25)) with { Fats = [Fat("coconut-oil", 600), Fat("olive-oil", 100)] }));
    }

    [Fact]
    public void SFY5012_ClayInAStrongLye()
    {
        Limit("SFY5012", s => Adding(Dose("kaolin", 2)) with { Liquids = Strength(s) }, 34, 34.1, "highest", 35);
        Limit("SFY5012", d => Adding(Dose("kaolin", d)) with { Liquids = Strength(36) }, 1.99, 2, "least", 2.1);
    }

    [Fact]
    public void SFY5013_WhichCitricAcid_SaysTheSuperfatOfTheOther()
    {
        Formula monohydrate = Adding(Dose("citric-acid-monohydrate", 2)), anhydrous = Adding(Dose("citric-acid-anhydrous", 2));
        // the same alkali, and 14 g of the other kind
        double Weighed(Formula planned, string other) =>
            (planned with { Alkali = AlkaliPlan.Weighed([.. planned.Plan().Alkalis]), Additives = [Dose(other, 2)] }).Balance().SuperfatOfAllFat!.Value.Percent;
        Assert.Equal(Weighed(monohydrate, "citric-acid-anhydrous"), Find("SFY5013", monohydrate)[0].Args[2].Number, 0.002);
        Assert.Equal(Weighed(anhydrous, "citric-acid-monohydrate"), Find("SFY5013", anhydrous)[0].Args[2].Number, 0.002);
        Assert.Equal(["anhydrous", "monohydrate"], [Find("SFY5013", monohydrate)[0].Args[1].Text, Find("SFY5013", anhydrous)[0].Args[1].Text]);
        Assert.False(Speaks("SFY5013", Adding(Dose("citric-acid-anhydrous", 0)), ("least", 0)));
        Limit("SFY5013", d => Adding(Dose("citric-acid-monohydrate", d)), 1.3, 1.5, "least", 0.6);
    }

    [Fact]
    public void SFY5014_UnknownAmounts_OfWhatTakesUpNoLye()
    {
        string? What(Additive additive) => Find("SFY5014", Adding(additive.AmountUnknown()))[0].Args[1].Text;
        Assert.Equal(["dose and water", "dose, sugar and water", "dose"], [What(s_pantry.Additive("sodium-lactate-60")), What(s_pantry.Additive("honey")), What(s_pantry.Additive("kaolin"))]);
        Assert.Equal("dose and sugar", What(new Additive("own", "Own", AdditiveKind.Sugar, Stage.Trace, new() { Sugar = Ratio.FromPercent(99) })));
        Formula acid = Adding(s_pantry.Additive("citric-acid-monohydrate").AmountUnknown());
        Assert.False(Speaks("SFY5014", acid));
        Assert.True(Speaks("SFY2019", acid));
    }

    [Fact]
    public void SFY5102_ScentsInSum_AreScaledToTheOption()
    {
        Limit("SFY5102", d => Adding(Dose("fragrance-oil", 3), Dose("essential-oil", d)), 3, 3.01, "highest", 7);
        Assert.Equal([4, 2, 3], Fixed("SFY5102", Adding(Dose("fragrance-oil", 8), Dose("essential-oil", 4), Dose("kaolin", 3))).Additives.Select(a => a.OfFats!.Value.Percent));
        Assert.Equal(28, Fixed("SFY5102", Adding(s_pantry.Additive("fragrance-oil").Weighing(Mass.FromGrams(56)), Dose("essential-oil", 4))).Additives[0].Mass!.Value.Grams, 0.01);
    }

    private static BatchSetup Limits(params (string Additive, double Percent)[] limits) => new() { FragranceLimits = [.. limits.Select(l => new FragranceLimit(l.Additive, Ratio.FromPercent(l.Percent), "certificate"))] };

    [Fact]
    public void SFY5103_LimitCountsTheFinishedSoap_NotTheFats()
    {
        Formula formula = Adding(Dose("fragrance-oil", 3));
        LyeBalance balance = formula.Balance();
        double share = 21 / ((balance.BatchMass.Grams - balance.AllWater.Grams) / 0.92) * 100;
        Assert.InRange(share, 2.2, 2.6);
        Assert.Empty(Find("SFY5103", formula, Limits(("fragrance-oil", share + 0.001))));
        Assert.Equal(share, Assert.Single(Find("SFY5103", formula, Limits(("fragrance-oil", share - 0.001)))).Args[1].Number, 9);
        Assert.Empty(Find("SFY5103", formula, Limits(("fragrance-oil", share - 0.001)), ("water", 12)));
        // alcohol dries out as water does: what stays is the same
        Liquid spirit = new("own", "Own spirit", new() { Water = Ratio.FromPercent(50), Alcohol = Ratio.FromPercent(50) });
        Assert.Equal(share, Assert.Single(Find("SFY5103", Holding(formula, spirit, 40), Limits(("fragrance-oil", share - 0.001)))).Args[1].Number, 9);
        Assert.Single(Find("SFY5103", formula, Limits(("fragrance-oil", 5), ("FRAGRANCE-OIL", 1))));
        Assert.Empty(Find("SFY5103", formula));
    }

    [Fact]
    public void SFY5103_Fix_GoesJustBelowTheLimit()
    {
        Formula mended = Fixed("SFY5103", Adding(Dose("fragrance-oil", 5)), Limits(("fragrance-oil", 2)));
        double percent = mended.Additives[0].OfFats!.Value.Percent;
        Assert.Empty(Find("SFY5103", Adding(Dose("fragrance-oil", percent)), Limits(("fragrance-oil", 2))));
        Assert.Single(Find("SFY5103", Adding(Dose("fragrance-oil", percent + 0.02)), Limits(("fragrance-oil", 2))));
    }

    [Fact]
    public void SFY5103_ALimitOfZero_AllowsNothing() => Assert.Empty(Assert.Single(Find("SFY5103", Adding(Dose("fragrance-oil", 1)), Limits(("fragrance-oil", 0)))).Fixes);

    [Fact]
    public void SFY5104_SharesOfLimits_AddUpToOne()
    {
        BatchSetup limits = Limits(("fragrance-oil", 2), ("essential-oil", 4));
        Formula formula = Adding(Dose("fragrance-oil", 2), Dose("essential-oil", 3));
        Formula mended = Fixed("SFY5104", formula, limits);
        Assert.InRange(mended.Additives[0].OfFats!.Value.Percent / 2, 0.5, 0.9999);
        Formula more = mended with { Additives = [.. mended.Additives.Select(a => a with { OfFats = a.OfFats!.Value + Ratio.FromPercent(0.02) })] };
        Assert.Single(Find("SFY5104", more, limits));
        Assert.Empty(Find("SFY5104", Adding(Dose("fragrance-oil", 4), Dose("essential-oil", 3)), limits));
        Assert.Single(Find("SFY5103", Adding(Dose("fragrance-oil", 4), Dose("essential-oil", 3)), limits));
        Assert.Empty(Find("SFY5104", more, limits, ("water", 12)));
    }

    [Fact]
    public void SFY5105_ScentsWithoutALimit_WhereOthersHaveOne()
    {
        Formula formula = Adding(Dose("fragrance-oil", 1), Dose("essential-oil", 1), Dose("essential-oil", 1), Dose("kaolin", 1));
        Assert.Equal("additives[essential-oil]", Assert.Single(Find("SFY5105", formula, Limits(("fragrance-oil", 3)))).Path.ToString());
        Assert.Empty(Find("SFY5105", formula));
    }

    [Fact]
    public void SFY5106_And_SFY5107_ASingleSubstanceIsItsOwnComposition()
    {
        BatchSetup europe = new() { Markets = ["US", "eu"] };
        Assert.Single(Find("SFY5106", Adding(Dose("essential-oil", 1), Dose("vanillin", 0.2)), europe));
        Assert.Empty(Find("SFY5106", Adding(Dose("essential-oil", 1)), new BatchSetup { Markets = ["US"] }));
        Assert.Equal(2, Find("SFY5107", Adding(Dose("vanillin", 0.2), Dose("ethyl-vanillin", 0.1), Dose("fragrance-oil", 1))).Count);
    }

    [Fact]
    public void FragranceLimit_IsChecked()
    {
        Assert.Throws<ArgumentException>(() => new FragranceLimit(" ", Ratio.FromPercent(1), "s"));
        Assert.Throws<ArgumentException>(() => new FragranceLimit("x", Ratio.FromPercent(1), ""));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FragranceLimit("x", Ratio.FromPercent(101), "s"));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FragranceLimit("x", Ratio.FromPercent(-1), "s"));
        Assert.Equal(new FragranceLimit("x", Ratio.FromPercent(2), "s"), new FragranceLimit("x", Ratio.FromDecimalFractions(0.02), "s"));
        Assert.NotEqual(new BatchSetup { FragranceLimits = [new("x", Ratio.FromPercent(2), "s")] }, BatchSetup.Unknown);
    }
}
