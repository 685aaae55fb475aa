namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    private static Formula WithLot(string fat, double koh) => s_plain with { Fats = [Lot(fat, 500, koh), Fat("coconut-oil", 200)] };

    [Fact]
    public void SFY4001_LotOutsideThePublishedRange()
    {
        // olive oil: 184 to 196 mg KOH/g, wider than 3 % around its middle of 190
        Limit("SFY4001", v => WithLot("olive-oil", v), 184, 183.9, "near", 4);
        Limit("SFY4001", v => WithLot("olive-oil", v), 196, 196.1, "near", 4);
        // kokum butter: one analysis of 187 mg KOH/g, so 3 % around it
        Limit("SFY4001", v => WithLot("kokum-butter", v), 187 * 1.029, 187 * 1.031, "near", 5);
        Assert.False(Speaks("SFY4001", s_plain with { Fats = [Lot("beeswax", 500, 300), Fat("coconut-oil", 200)] }));
    }

    [Fact]
    public void SFY4001_LotOnlyFat_IsHeldAgainstItsPublishedRange_WithoutAFix()
    {
        Assert.False(Speaks("SFY4001", WithLot("shea-butter", 178)));
        Assert.Empty(Assert.Single(Find("SFY4001", WithLot("shea-butter", 210))).Fixes);
    }

    [Fact]
    public void SFY4001_Fix_KeepsTheLotAndTakesTheTablesValue()
    {
        FatPortion late = Lot("olive-oil", 500, 203) with { Line = "my olive oil" };
        Formula mended = Fixed("SFY4001", s_plain with { Fats = [Fat("coconut-oil", 200), late.AtTrace()] });
        FatPortion portion = mended.Fats[1];
        Assert.Equal(("my olive oil", "L-7", true, 190.0), (portion.Line, portion.Fat.Lot!.Name, portion.Stage == Stage.Trace, portion.Fat.Saponification!.Value.MilligramsKohPerGram));
    }

    [Theory]
    [InlineData("olive-oil", 135.4, 189.93)]        // mg NaOH per g
    [InlineData("olive-oil", 0.19, 190)]            // g KOH per g
    [InlineData("olive-oil", 0.1354, 189.93)]       // g NaOH per g
    [InlineData("olive-oil", 266.5, 189.99)]        // a potassium value converted as if it were a sodium value
    [InlineData("coconut-oil", 183, 256.7)]
    public void SFY4002_ValueInAnotherUnit_IsConvertedByTheFix(string fat, double value, double meant)
    {
        Formula formula = WithLot(fat, value);
        Assert.Empty(Find("SFY4001", formula).Concat(Find("SFY4003", formula)).Concat(Find("SFY4004", formula)));
        Assert.Equal(meant, Fixed("SFY4002", formula).Fats[0].Fat.Saponification!.Value.MilligramsKohPerGram, 0.01);
    }

    [Theory]
    [InlineData("olive-oil", 196)]
    [InlineData("olive-oil", 150)]                  // out of range, and no factor explains it
    [InlineData("rosin", 120)]                      // published without an upper limit: no factor is certain
    [InlineData("beeswax", 95)]
    public void SFY4002_IsSilentWhereNoFactorIsCertain(string fat, double value) => Assert.False(Speaks("SFY4002", WithLot(fat, value)));

    [Fact]
    public void SFY4003_AboveTheShortestAcid()
    {
        Assert.Equal(556.7, FattyAcid.FromShorthand("C4:0").SaponificationOfTriglyceride.MilligramsKohPerGram, 0.05);
        Assert.Equal(636.8, FattyAcid.FromShorthand("C4:0").SaponificationOfAcid.MilligramsKohPerGram, 0.05);
        Assert.False(Speaks("SFY4003", WithLot("olive-oil", 560)));
        Assert.True(Speaks("SFY4003", WithLot("olive-oil", 561)));
        Assert.False(Speaks("SFY4003", WithLot("lauric-acid", 640)));
        Assert.True(Speaks("SFY4003", WithLot("lauric-acid", 641)));
        Assert.Empty(Find("SFY4001", WithLot("olive-oil", 900)));
        Formula own = s_plain with { Fats = [Saponify.Fat.Own("mine", "Mine", SaponificationValue.FromMilligramsKohPerGram(600), "label").Weighing(Mass.FromGrams(500))] };
        Assert.Empty(Assert.Single(Find("SFY4003", own)).Fixes);
        Assert.False(Speaks("SFY4004", own));
    }

    [Fact]
    public void SFY4004_ValueThatNoTableCanContradict()
    {
        Formula Own(double koh) => s_plain with { Fats = [Saponify.Fat.Own("mine", "Mine", SaponificationValue.FromMilligramsKohPerGram(koh), "label").Weighing(Mass.FromGrams(500))] };
        Limit("SFY4004", Own, 155, 154.9, "lowest", 150);
        Limit("SFY4004", Own, 360, 360.1, "highest", 380);
        Assert.False(Speaks("SFY4004", WithLot("olive-oil", 100)));
    }

    [Fact]
    public void SFY4005_WaxesCountByTheirAcids()
    {
        // beeswax has an acid value of 17 to 24, wool fat of 0.8 at most, jojoba oil none on file
        Limit("SFY4005", v => s_plain with { Fats = [Fat("olive-oil", 500), Fat("coconut-oil", 200), Lot("beeswax", 20, v)] }, 34, 34.1, "slack", 20);
        Limit("SFY4005", v => s_plain with { Fats = [Fat("olive-oil", 500), Fat("coconut-oil", 200), Lot("lanolin", 20, v)] }, 10.8, 10.9, "slack", 20);
        Limit("SFY4005", v => s_plain with { Fats = [Fat("olive-oil", 500), Fat("coconut-oil", 200), Lot("jojoba-oil", 20, v)] }, 10, 10.1, "slack", 20);
        Assert.Equal(17, Fixed("SFY4005", s_plain with { Fats = [Fat("olive-oil", 500), Fat("coconut-oil", 200), Lot("beeswax", 20, 95)] }).Fats[2].Fat.Saponification!.Value.MilligramsKohPerGram);
    }

    [Fact]
    public void SFY4006_Waxes() => Limit("SFY4006", w => s_plain with { Fats = [Fat("olive-oil", 700 - w), Fat("coconut-oil", 300), Fat("beeswax", w / 2), Fat("lanolin", w / 2)] }, 80, 80.1, "highest", 9);

    [Fact]
    public void SFY4007_FreeAcids_UnlessTheSoapIsCooked()
    {
        Formula With(double acid) => s_plain with { Fats = [Fat("olive-oil", 700 - acid), Fat("coconut-oil", 300), Fat("stearic-acid-50", acid)] };
        Limit("SFY4007", With, 50, 50.1, "highest", 6);
        Assert.Empty(Find("SFY4007", With(300), new BatchSetup { Form = ProductForm.Soft }));
        Assert.False(Speaks("SFY4007", With(300) with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(4), Alkali.PotassiumHydroxide(Ratio.FromPercent(90))) }));
    }

    [Fact]
    public void SFY4008_RancidFat_NeedsBothMuchOfItAndMuchSuperfat()
    {
        Formula rich = s_plain with { Fats = [Fat("soybean-oil", 500), Fat("coconut-oil", 200)] };
        Limit("SFY4008", s => Superfat(rich, s), 8, 8.1, "superfat", 9);
        Assert.False(Speaks("SFY4008", Superfat(s_plain, 12)));
        Assert.True(Speaks("SFY4008", Superfat(s_plain, 12), ("highest", 5)));
        Assert.False(Speaks("SFY4008", Superfat(rich, 12) with { Additives = [Dose("rosemary-oleoresin", 0.1)] }));
        Assert.Equal(["fats[soybean-oil]"], Find("SFY4008", Superfat(rich, 12))[0].Related.Select(p => p.ToString()));
    }

    [Fact]
    public void SFY4009_LateSolidFats_GoToTheFatPotByTheFix()
    {
        // cocoa butter melts at 31 to 34, 32.5 in the middle
        Formula late = s_plain with { Fats = [Fat("olive-oil", 500), Fat("coconut-oil", 200), Fat("cocoa-butter", 30).AtTrace(), Fat("sesame-oil", 20).AtTrace()] };
        Assert.True(Speaks("SFY4009", late, ("highest", 32.4)));
        Assert.False(Speaks("SFY4009", late, ("highest", 32.5)));
        Assert.Equal([Stage.Fats, Stage.Fats, Stage.Fats, Stage.Trace], Fixed("SFY4009", late).Fats.Select(f => f.Stage));
    }

    [Fact]
    public void SFY4010_LaurelBerryOil_OnlyForTheEuropeanMarket()
    {
        Formula laurel = WithLot("laurel-berry-oil", 195);
        Assert.False(Speaks("SFY4010", laurel));
        Assert.Contains(": EU law bans the oil of laurel seeds from cosmetics;", Assert.Single(Find("SFY4010", laurel, new BatchSetup { Markets = ["eu"] })).ToMessage(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("jatropha-oil", 195, "the crude oil is toxic; only detoxified oil belongs on skin")]
    [InlineData("rosin", 165, "rosin is a known skin sensitiser")]
    [InlineData("tung-oil", 192, "a drying oil: what stays free goes rancid and gummy")]
    public void SFY4010_SaysWhatToBewareOf(string fat, double koh, string why) =>
        Assert.EndsWith($": {why} (rests on figures from memory)", Assert.Single(Find("SFY4010", WithLot(fat, koh))).ToMessage(), StringComparison.Ordinal);

    [Fact]
    public void SFY4011_Certificates_AgeAndDate()
    {
        BatchSetup today = new() { Today = new DateOnly(2026, 11, 25) };
        Formula Of(DateOnly date) => s_plain with { Fats = [Lot("olive-oil", 500, 190, date), Fat("coconut-oil", 200)] };
        Assert.Empty(Find("SFY4011", Of(new DateOnly(2024, 12, 1)), today));
        Assert.Equal("Old", Assert.Single(Find("SFY4011", Of(new DateOnly(2024, 11, 1)), today)).Template.Name);
        Assert.Empty(Find("SFY4011", Of(new DateOnly(2024, 11, 1)), today, ("oldest", 36)));
        Assert.Equal("Future", Assert.Single(Find("SFY4011", Of(new DateOnly(2026, 11, 26)), today)).Template.Name);
        Assert.False(Speaks("SFY4011", Of(new DateOnly(2000, 1, 1))));
    }

    [Fact]
    public void SFY4101_HardFats_OnlyForABar()
    {
        BatchSetup bar = new() { Form = ProductForm.Bar };
        Formula With(double coconut) => s_plain with { Fats = [Fat("canola-oil", 500), Fat("coconut-oil", coconut)] };
        Assert.NotEmpty(Find("SFY4101", With(80), bar));
        Assert.Empty(Find("SFY4101", With(120), bar));
        Assert.Empty(Find("SFY4101", With(80), bar, ("lowest", 15)));
        Assert.Empty(Find("SFY4101", With(80)));
        Assert.Empty(Find("SFY4101", With(80), new BatchSetup { Form = ProductForm.Soft }));
    }

    [Fact]
    public void SFY4102_CastorOil() => Limit("SFY4102", c => s_plain with { Fats = [Fat("olive-oil", 700 - c), Fat("coconut-oil", 300), Fat("castor-oil", c)] }, 165, 180, "highest", 16);

    [Fact]
    public void SFY4103_LauricSoap_IsRaisedToTheOptionsSuperfat()
    {
        Formula lauric = s_plain with { Fats = [Fat("coconut-oil", 600), Fat("olive-oil", 100)] };
        Limit("SFY4103", s => Superfat(lauric, s), 8, 7.9, "superfat", 7);
        Assert.False(Speaks("SFY4103", Superfat(lauric, 5), ("highest", 60)));
        Assert.Equal(8, ((SuperfatTarget)Fixed("SFY4103", Superfat(lauric, 5)).Alkali).Superfat.Percent, 9);
        Assert.False(Speaks("SFY4103", Superfat(lauric, -5)));
    }
}
