using Saponify.Analysis;

namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    /// <summary>700 g of one fat of these acids, in per cent.</summary>
    private static Formula OfAcids(params (string Acid, double Percent)[] acids) => s_plain with
    {
        Fats =
        [
            new Fat("own", "Own fat", FatClass.Triglyceride, new()
            {
                Profile = FattyAcidProfile.Of([.. acids.Select(a => (FattyAcid.FromShorthand(a.Acid), Ratio.FromPercent(a.Percent)))]),
                ProfileSources = ["certificate"],
            }).Weighing(Mass.FromGrams(700)),
        ],
    };

    /// <summary>
    /// Hardness 100 x (0.70 lauric + 1 palmitic + 0.20 oleic), soft below 25; wear 100 x (0.20 lauric + 0.95 palmitic + 0.05 oleic), gone quickly below 20 (docs/scores.md). With 20 % of
    /// lauric, x of palmitic and the rest oleic acid that is 30 + 80 x and 8 + 90 x: below 20 up to x = 13.33 %.
    /// </summary>
    [Fact]
    public void SFY4106_LowestBand_ByHand()
    {
        Formula With(double palmitic) => OfAcids(("C12:0", 20), ("C16:0", palmitic), ("C18:1", 80 - palmitic));
        Diagnostic soft = Assert.Single(Find("SFY4106", With(13.3), s_bar));
        Assert.DoesNotContain("hardness", soft.ToMessage(), StringComparison.Ordinal);
        Assert.Empty(Find("SFY4106", With(13.4), s_bar));
    }

    /// <summary>
    /// With 25 % of lauric, x of palmitic and the rest oleic acid wear is 8.75 + 90 x: a point above the edge of 20 at x = 13.61 %. By the weights of docs/scores.md the other scores then lie
    /// at 43, 72, 49, 63, 61 and 23, more than a point from every edge.
    /// </summary>
    [Fact]
    public void SFY4107_APointFromTheEdge()
    {
        Formula With(double palmitic) => Superfat(OfAcids(("C12:0", 25), ("C16:0", palmitic), ("C18:1", 75 - palmitic)), 8);
        int Edges(double palmitic, double? near = null)
        {
            AnalyzerConfig asked = AnalyzerConfig.Default.WithSeverity("SFY4107", Severity.Info);
            RuleOption option = FormulaAnalyzer.BuiltInRules.Single(r => r.Descriptor.Id == "SFY4107").Descriptor.Options.Single();
            return FormulaAnalyzer.Default.With(near is { } points ? asked.WithOption("SFY4107", option, points) : asked).Analyze(With(palmitic), s_bar).Diagnostics.Count(d => d.Id == "SFY4107");
        }
        Assert.Equal((1, 0), (Edges(13.60), Edges(13.62)));
        Assert.Equal((0, 1), (Edges(13.60, 0.9), Edges(13.62, 1.1)));
    }

    /// <summary>More than 5 % of the acids without weights; the fat without a profile has the value of tripalmitin, 3000 x 56.105/(3 x 256.430 + 38.049) = 208.48, so acids go by mass.</summary>
    [Fact]
    public void SFY4104_FivePerCent_ByHand()
    {
        Formula With(double grams)
        {
            Formula palmitic = OfAcids(("C16:0", 100));
            FatPortion unknown = Saponify.Fat.Own("hand", "Fat by hand", SaponificationValue.FromMilligramsKohPerGram(208.48), "certificate").Weighing(Mass.FromGrams(grams));
            return palmitic with { Fats = [palmitic.Fats[0] with { Mass = Mass.FromGrams(700 - grams) }, unknown] };
        }
        Assert.Empty(Find("SFY4104", With(34.9), s_bar));
        Assert.Single(Find("SFY4104", With(35.1), s_bar));
    }

    /// <summary>The risk is 100 X/(X + 2) and high from 65 on (docs/scores.md): X = 2 x 65/35 = 3.7143. Linoleic acid weighs 10.3 and palmitic 0, so it is reached at 36.06 % of linoleic acid.</summary>
    [Fact]
    public void SFY4105_HighestBand_ByHand()
    {
        Formula With(double linoleic) => OfAcids(("C18:2", linoleic), ("C16:0", 100 - linoleic));
        Assert.Empty(Find("SFY4105", With(36.0), s_bar));
        Assert.Single(Find("SFY4105", With(36.1), s_bar));
        Assert.Empty(Find("SFY4105", With(36.1), new BatchSetup { Form = ProductForm.Soft }));
    }

    /// <summary>Any antioxidant of the table silences the rule, at any stage; what only binds metals does not, and neither does vitamin E that is in the oil by nature.</summary>
    [Theory]
    [InlineData("rosemary-oleoresin", true)]
    [InlineData("tocopherol-mixed", true)]
    [InlineData("bht", true)]
    [InlineData("bha", true)]
    [InlineData("citric-acid-monohydrate", false)]
    [InlineData("edta-tetrasodium-dihydrate", false)]
    [InlineData("kaolin", false)]
    public void SFY4105_IsSilencedByAnAntioxidant(string additive, bool silenced)
    {
        Formula bare = s_plain with { Fats = [Fat("canola-oil", 550), Fat("coconut-oil", 150)] };
        Assert.Single(Find("SFY4105", bare, s_bar));
        Formula with = bare with { Additives = [Dose(additive, 0.05)] };
        Assert.Equal(!silenced, Find("SFY4105", with, s_bar).Count == 1);
        AnalysisReport report = FormulaAnalyzer.Default.Analyze(with, s_bar);
        Assert.Equal(silenced ? RuleStatus.NotApplicable : RuleStatus.Ran, report.Outcomes.Single(o => o.Rule.Id == "SFY4105").Status);
    }

    /// <summary>One fault, one finding, wherever the options move the place at which one rule hands over to the other.</summary>
    [Fact]
    public void SFY4105_And_SFY4106_SpeakWhereAnotherRuleIsToldNotTo()
    {
        Formula oxidises = Superfat(s_plain with { Fats = [Fat("canola-oil", 550), Fat("coconut-oil", 150)] }, 12);
        Assert.Equal(["SFY4008"], SpeaksWith("SFY4008", "highest", 15, oxidises, "SFY4105", s_bar));
        Assert.Equal(["SFY4105"], SpeaksWith("SFY4008", "highest", 60, oxidises, "SFY4105", s_bar));
        Assert.Equal(["SFY4105"], SpeaksWith("SFY4008", "superfat", 15, oxidises, "SFY4105", s_bar));
        Formula soft = OfAcids(("C12:0", 20), ("C16:0", 13.3), ("C18:1", 66.7));
        Assert.Equal(["SFY4106"], SpeaksWith("SFY4101", "lowest", 33, soft, "SFY4106", s_bar));
        Assert.Equal(["SFY4101"], SpeaksWith("SFY4101", "lowest", 34, soft, "SFY4106", s_bar));
    }

    /// <summary>The bound of the block, 100 degrees from the pour and the rise without losses; what is not wrapped and small loses its heat.</summary>
    [Fact]
    public void SFY6103_TheBoundOfAHundredDegrees()
    {
        BatchSetup Poured(double celsius, bool wrapped = true) => new() { Mould = Mould.Cavities(8, Volume.FromMilliliters(130)), Pour = C(celsius), IsInsulated = wrapped };
        double rise = s_milky.Plan().HeatInMould(null, C(30), true)!.Rise.High!.Value.Kelvins;
        Assert.InRange(rise, 60, 80);
        Assert.Empty(Find("SFY6103", s_milky, Poured(100 - rise - 0.05)));
        Assert.Single(Find("SFY6103", s_milky, Poured(100 - rise + 0.05)));
        Assert.Empty(Find("SFY6103", s_milky, Poured(100 - rise + 0.05, wrapped: false)));
        Assert.Empty(Find("SFY6103", s_plain, Poured(60)));
    }

    /// <summary>What is poured is the batch less what stays in the pot; the batter at its densest must fit, at its lightest it must come to 85 % of the moulds.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(10, 1)]
    [InlineData(10, 2)]
    public void SFY6101_And_SFY6102_Cavities_AndWhatStaysInThePot(double left, int moulds)
    {
        Figure<Density> density = s_plain.Plan().Batter(C(38))!.Density;
        // 700 g of fats of about 0.90 g/mL and 333 g of lye of about 1.31 g/mL: 1033 g in 1032 mL
        Assert.InRange(density.Low!.Value.GramsPerMilliliter, 0.97, density.High!.Value.GramsPerMilliliter);
        Assert.InRange(density.High.Value.GramsPerMilliliter, density.Low.Value.GramsPerMilliliter, 1.03);
        double poured = s_plain.Balance().BatchMass.Grams * (1 - (left / 100)), least = poured / density.High.Value.GramsPerMilliliter, most = poured / density.Low.Value.GramsPerMilliliter;
        BatchSetup Tray(double room) => new() { Mould = Mould.Cavities(8, Volume.FromMilliliters(room / 8 / moulds)), Moulds = moulds, Pour = C(38), LeftInPot = Ratio.FromPercent(left) };

        Assert.Empty(Find("SFY6101", s_plain, Tray(least * 1.0001)));
        Assert.Single(Find("SFY6101", s_plain, Tray(least * 0.9999)));
        Assert.Empty(Find("SFY6102", s_plain, Tray(most / 0.85 * 0.9999)));
        Assert.Single(Find("SFY6102", s_plain, Tray(most / 0.85 * 1.0001)));
        Assert.Empty(Find("SFY6102", s_plain, Tray(most / 0.85 * 1.0001), ("least", 84)));
        // both fixes go to the middle of the density: the mould is full, and what stays in the pot is made as well
        Assert.Equal(700 * 0.95, Fixed("SFY6101", s_plain, Tray((least + most) / 2 * 0.95)).ListedFats.Grams, 1.0);
        Assert.Equal(700 * 1.3, Fixed("SFY6102", s_plain, Tray((least + most) / 2 * 1.3)).ListedFats.Grams, 1.0);
        Assert.EndsWith(moulds == 1 ? ", which fills the mould" : ", which fills 2 moulds", Find("SFY6102", s_plain, Tray((least + most) / 2 * 1.3))[0].Fixes[0].Title, StringComparison.Ordinal);
    }

    /// <summary>Each cavity is a bar, whatever its size and whatever stays in the pot; samples are taken off each mould.</summary>
    [Fact]
    public void SFY6105_Cavities_AreBars()
    {
        BatchSetup Wanted(int bars, int moulds = 1, int samples = 0) => new()
        {
            Mould = Mould.Cavities(8, Volume.FromMilliliters(125)),
            Moulds = moulds,
            WantedBars = bars,
            LeftInPot = Ratio.FromPercent(50),
            Cut = samples > 0 ? new() { Thickness = Length.FromCentimeters(2.5), Samples = samples } : null,
        };
        Assert.Empty(Find("SFY6105", s_plain, Wanted(8)));
        Assert.Equal("1 of this mould, full, gives 8 bars for sale, and 9 are wanted: that takes 2", Assert.Single(Find("SFY6105", s_plain, Wanted(9))).ToMessage());
        Assert.Empty(Find("SFY6105", s_plain, Wanted(16, moulds: 2)));
        Assert.Single(Find("SFY6105", s_plain, Wanted(17, moulds: 2)));
        Assert.Empty(Find("SFY6105", s_plain, Wanted(7, samples: 1)));
        Assert.Single(Find("SFY6105", s_plain, Wanted(8, samples: 1)));
        Assert.Empty(Find("SFY6105", s_plain, Wanted(14, moulds: 2, samples: 1)));
        Assert.Single(Find("SFY6105", s_plain, Wanted(15, moulds: 2, samples: 1)));
        Assert.Equal("no bar is left to sell, whatever is poured", FormulaAnalyzer.Default.Analyze(s_plain, Wanted(1, samples: 8)).Outcomes.Single(o => o.Rule.Id == "SFY6105").Reason);
    }

    [Fact]
    public void SFY6105_AMouldOfAStatedVolume_IsOneBar()
    {
        BatchSetup Wanted(int bars) => new() { Mould = Mould.OfVolume(Volume.FromMilliliters(1000)), WantedBars = bars };
        Assert.Empty(Find("SFY6105", s_plain, Wanted(1)));
        Assert.Single(Find("SFY6105", s_plain, Wanted(2)));
    }
}
