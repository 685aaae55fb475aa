using Saponify.Tests.Formulas;

namespace Saponify.Tests.Scoring;

/// <summary>Scores of bars as a maker meets them.</summary>
public class ScoreTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    private static FatBlend Of(params (string Fat, double Percent)[] parts) => FatBlend.Of([.. parts.Select(p => (s_pantry.Fat(p.Fat), Ratio.FromPercent(p.Percent)))]);

    private static BarScores Soda(params (string Fat, double Percent)[] parts) => Of(parts).Scores(Ratio.FromPercent(5), Ratio.Zero);

    private static FattyAcid Acid(string shorthand) => FattyAcid.FromShorthand(shorthand);

    private static BarScores Single(Fat fat) => FatBlend.Of((fat, Ratio.FromPercent(100))).Scores(Ratio.FromPercent(5), Ratio.Zero);

    [Fact]
    public void All_AreInTheOrderOfDishHandSkinShelf()
    {
        BarScores scores = Soda(("olive-oil", 60), ("coconut-oil", 40));
        Assert.Equal(Enum.GetValues<ScoreKind>(), scores.All.Select(s => s.Kind));
        Assert.Equal(["hardness", "wear resistance", "lather volume", "lather stability", "cleansing", "conditioning", "oxidation risk"], scores.All.Select(s => s.Definition.Name));
        Assert.Equal([0, 0, 1, 1, 2, 2, 3], scores.All.Select(s => (int)s.Definition.Group));
        Assert.Same(scores.Hardness, scores[ScoreKind.Hardness]);
        Assert.Throws<ArgumentOutOfRangeException>(() => scores[(ScoreKind)7]);
    }

    [Fact]
    public void PurePalmiticSoap_IsWorkedOutByHand()
    {
        BarScores scores = Single(AnyBlend.Own("palmitic", (Acid("C16:0"), 1)));
        Assert.Equal(100, scores.Hardness!.Value);
        Assert.Equal(95, scores.WearResistance!.Value);
        Assert.Equal(0, scores.LatherVolume!.Value);
        Assert.Equal(100, scores.LatherStability!.Value);
        Assert.Equal(30, scores.Cleansing!.Value, 12);
        Assert.Equal(71.25, scores.Conditioning!.Value, 12);
        Assert.Equal(0, scores.OxidationRisk!.Value);
    }

    [Fact]
    public void HalfLauricHalfOleic_IsWorkedOutByHand()
    {
        BarScores scores = FatBlend.Of((AnyBlend.Own("half", (Acid("C12:0"), 0.5), (Acid("C18:1"), 0.5)), Ratio.FromPercent(100))).Scores(Ratio.FromPercent(4), Ratio.FromPercent(10));
        Assert.Equal(45 * 0.92, scores.Hardness!.Value, 10);                        // (0.70 + 0.20)/2, less 0.8 of the potassium
        Assert.Equal(12.5 * 0.95, scores.WearResistance!.Value, 10);                // (0.20 + 0.05)/2, less half of the potassium
        Assert.Equal(100 * 0.55 / 0.63 * 0.8, scores.LatherVolume!.Value, 10);      // Q = (1 + 0.1)/2, F = (0 + 1)/2
        Assert.Equal(35, scores.LatherStability!.Value, 10);
        Assert.Equal(77.5, scores.Cleansing!.Value, 10);
        Assert.Equal(75 * 0.375 + (25 * 0.65 * 0.5), scores.Conditioning!.Value, 10); // irritation 0.625, emollient 0.65, half of 8 % superfat
        Assert.Equal(20, scores.OxidationRisk!.Value, 10);                          // X = 0.5
    }

    [Fact]
    public void Coconut_BringsMoreLatherThanItsShare_InABlendWithOlive()
    {
        Score lather = Soda(("olive-oil", 75), ("coconut-oil", 25)).LatherVolume!;
        FatPoints[] fats = [.. lather.ByFat];
        Assert.Equal(["Olive oil", "Coconut oil"], fats.Select(f => f.What));
        Assert.InRange(fats[1].Points / lather.Value, 0.4, 0.6);
        Assert.InRange(fats[1].Share.Percent, 24, 26);
        Assert.Null(fats[0].Path);
        AcidPoints lauric = lather.ByAcid.Single(a => a.Acid.Shorthand == "C12:0");
        Assert.Equal([WeightKind.Quick, WeightKind.Film], lauric.Weights.Select(w => w.Kind));
        Assert.Contains("jce-soap", lauric.Weights[0].Sources);
    }

    [Fact]
    public void Fat_OfCream_CountsAndHasItsPlace()
    {
        Formula formula = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        formula = formula with { Liquids = formula.Liquids.HoldingBack(s_pantry.Liquid("heavy-cream").Weighing(Mass.FromGrams(150))) };
        FatPoints[] fats = [.. formula.Scores().Hardness!.ByFat];
        Assert.Equal(["fats[olive-oil]", "liquids.heldBack[heavy-cream]"], fats.Select(f => f.Path!.ToString()));
        Assert.True(fats[1].Points > 0);
    }

    [Fact]
    public void LateFat_CountsAsMuchAsFatInThePot()
    {
        Formula early = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)), s_pantry.Fat("cocoa-butter").Weighing(Mass.FromGrams(60)));
        Formula late = early with { Fats = [early.Fats[0], early.Fats[1].AtTrace()] };
        Assert.Equal(early.Scores().All.Select(s => s.Value), late.Scores().All.Select(s => s.Value));
    }

    [Theory]
    [InlineData("C4:0")]
    [InlineData("C6:0")]
    public void Butyric_AndCaproic_WeighAsCaprylic(string acid) =>
        Assert.Equal(Enum.GetValues<WeightKind>().Select(k => ScoreWeights.Of(Acid("C8:0"), k)!.Value), Enum.GetValues<WeightKind>().Select(k => ScoreWeights.Of(Acid(acid), k)!.Value));

    [Fact]
    public void Conditioning_CountsSuperfatFrom0To8PerCent()
    {
        double At(double percent) => Of(("olive-oil", 100)).Scores(Ratio.FromPercent(percent), Ratio.Zero).Conditioning!.Value;
        Assert.Equal(At(0), At(-12));
        Assert.True(At(4) > At(0));
        Assert.Equal(At(8), At(20));
        Assert.Equal((At(0) + At(8)) / 2, At(4), 10);
    }

    [Fact]
    public void LyeHeavyFormula_IsScoredWithoutSuperfat()
    {
        Formula formula = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        formula = formula with { Alkali = AlkaliPlan.Weighed(Alkali.SodiumHydroxide(Ratio.FromPercent(98)).Weighing(Mass.FromGrams(90))) };
        Assert.True(formula.Balance().SuperfatOfAllFat!.Value.Percent < -20);
        Assert.Equal(0, formula.Scores().Superfat.Percent);
    }

    [Fact]
    public void Potash_MakesSofterSoap_AndFromThirtyPerCentOnLowConfidence()
    {
        BarScores At(double percent) => Of(("tallow", 100)).Scores(Ratio.FromPercent(5), Ratio.FromPercent(percent));
        Assert.Equal(At(0).Hardness!.Value * 0.2, At(100).Hardness!.Value, 9);
        Assert.Equal(At(0).WearResistance!.Value * 0.5, At(100).WearResistance!.Value, 9);
        Assert.Equal(ScoreConfidence.Fair, At(30).Hardness!.Confidence);
        Assert.Equal(ScoreConfidence.Low, At(31).Hardness!.Confidence);
        Assert.Contains(At(31).Remarks, r => r.Contains("potassium", StringComparison.Ordinal));
    }

    [Fact]
    public void Castor_RestsOnAnalogy()
    {
        Assert.Equal(ScoreConfidence.Fair, Soda(("castor-oil", 5), ("olive-oil", 95)).OxidationRisk!.Confidence);
        BarScores much = Soda(("castor-oil", 20), ("olive-oil", 80));
        Assert.All(much.All, s => Assert.Equal(ScoreConfidence.Low, s.Confidence));
        Assert.Contains(much.Remarks, r => r.Contains("analogy", StringComparison.Ordinal));
    }

    [Fact]
    public void AcidWithoutWeights_UpToFivePerCent_IsLeftOut_Beyond_NothingIsScored()
    {
        BarScores At(double share) => Single(AnyBlend.Own("own", (Acid("C18:1"), 1 - share), (Acid("C18:3-conj"), share)));
        BarScores little = At(0.04);
        Assert.True(little.IsScored);
        Assert.Equal(4, little.Unknown.Percent, 9);
        Assert.Equal(Single(AnyBlend.Own("own", (Acid("C18:1"), 1))).Hardness!.Value, little.Hardness!.Value, 9);
        BarScores much = At(0.06);
        Assert.False(much.IsScored);
        Assert.Null(much.Hardness);
        Assert.Empty(much.All);
        Assert.Equal("6 % of the acids can't be counted, more than 5 %", much.WhyNotScored);
        UnscoredPart part = Assert.Single(much.Unscored);
        Assert.Equal("C18:3-conj", part.What);
        Assert.Equal(6, part.Share.Percent, 9);
        Assert.Contains("Not scored", much.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("emu-oil", "lanolin", "a wax hardly turns into soap")]
    [InlineData("olive-oil", "beeswax", "a wax hardly turns into soap")]
    [InlineData("olive-oil", "human-milk-fat", "its acids are not on file")]
    [InlineData("olive-oil", "rosehip-seed-oil", "its profile is incomplete")]
    public void FatWhoseAcidsAreNotKnown_IsNamedWithItsShare(string known, string unknown, string why)
    {
        UnscoredPart part = Soda((known, 90), (unknown, 10)).Unscored.Single(u => u.What == s_pantry.Fat(unknown).Name);
        Assert.Equal(why, part.Why);
        Assert.InRange(part.Share.Percent, 1, 12);
    }

    [Fact]
    public void IncompleteProfile_CountsByWhatItNames()
    {
        // rosehip names 86 % of its acids: a tenth of it leaves 1.4 % unknown
        BarScores scores = Soda(("olive-oil", 90), ("rosehip-seed-oil", 10));
        Assert.True(scores.IsScored);
        Assert.Equal(0.1 * (1 - s_pantry.Fat("rosehip-seed-oil").Profile!.RawSum.DecimalFractions), scores.Unscored.Single(u => u.What == "Rosehip seed oil").Share.DecimalFractions, 3);
        Assert.False(Soda(("olive-oil", 50), ("rosehip-seed-oil", 50)).IsScored);
    }

    [Fact]
    public void FatOfUnknownKind_InADrink_CountsAsUnknown()
    {
        Formula formula = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        Liquid drink = new("own-drink", "Own drink", new() { Water = Ratio.FromPercent(50), Fat = Ratio.FromPercent(50) });
        BarScores scores = (formula with { Liquids = formula.Liquids.HoldingBack(drink.Weighing(Mass.FromGrams(100))) }).Scores();
        Assert.False(scores.IsScored);
        Assert.Equal("fat of unknown kind", Assert.Single(scores.Unscored, u => u.Share.Percent > 5).Why);
    }

    [Fact]
    public void FormulaWithoutFat_IsNotScored() => Assert.Equal("there is no fat to score", FormulaTests.Plain().Scores().WhyNotScored);

    [Fact]
    public void LotOnlyFat_IsScoredByItsProfile_ThoughItCannotBeWeighed()
    {
        Formula formula = FormulaTests.Plain(s_pantry.Fat("shea-butter").Weighing(Mass.FromGrams(100)));
        Assert.NotEmpty(formula.Plan().Obstacles);
        Assert.True(formula.Scores().IsScored);
    }

    [Fact]
    public void Evidence_IsTheWeakestOfTheProfiles()
    {
        Assert.Equal(Evidence.Memory, Soda(("tallow", 50), ("coconut-oil", 50)).Evidence);
        Assert.Contains(Soda(("tallow", 50), ("coconut-oil", 50)).Remarks, r => r.EndsWith("the profile of Tallow.", StringComparison.Ordinal));
        Assert.Null(Soda(("beeswax", 100)).Evidence);
    }

    [Fact]
    public void Bands_StartAtNought_AndRise()
    {
        foreach (ScoreDefinition definition in ScoreDefinition.All)
        {
            Assert.Same(definition, ScoreDefinition.Of(definition.Kind));
            Assert.Equal(0, definition.Bands[0].From);
            Assert.Equal(definition.Bands.Select(b => b.From).Order(), definition.Bands.Select(b => b.From));
            Assert.Equal(definition.Bands.Count, definition.Bands.Select(b => b.Words).Distinct().Count());
            for (int i = 0; i < definition.Bands.Count; i++)
            {
                Assert.Same(definition.Bands[i], definition.BandOf(definition.Bands[i].From));
                Assert.Same(definition.Bands[i], definition.BandOf(i + 1 < definition.Bands.Count ? Math.BitDecrement(definition.Bands[i + 1].From) : 100));
            }
        }
    }

    [Fact]
    public void EveryScorableFatOfTheTables_AndEveryAcidWithWeights_IsScored()
    {
        Assert.InRange(AnyBlend.Scorable.Length, 90, 130);
        Assert.All(FattyAcid.All.Where(a => ScoreWeights.Of(a, WeightKind.Film) is not null), a => Assert.All(Single(AnyBlend.Own("pure", (a, 1))).All, s => Assert.InRange(s.Value, 0, 100)));
        Assert.All(s_pantry.Fats, f => Assert.All(Single(f).All, s => Assert.InRange(s.Value, 0, 100)));
    }

    [Fact]
    public void FatWithAnAcidUnsaid_BringsOnlyWhatItSays()
    {
        // 85 % named: the rest is left out, 3 % of all, and the others are scaled up
        Fat whole = AnyBlend.Own("whole", (Acid("C16:0"), 1));
        Fat part = new("part", "Part", FatClass.Triglyceride, new() { Profile = FattyAcidProfile.Of((Acid("C16:0"), Ratio.FromPercent(85))), Saponification = whole.Saponification, ProfileSources = ["made up for this test"] });
        Assert.True(part.Profile!.IsPartial);
        BarScores scores = FatBlend.Of((whole, Ratio.FromPercent(80)), (part, Ratio.FromPercent(20))).Scores(Ratio.Zero, Ratio.Zero);
        double[] shares = [.. scores.Hardness!.ByFat.Select(f => f.Share.DecimalFractions)];
        Assert.Equal(1, shares.Sum(), 1e-12);
        Assert.Equal(0.85 * 20 / 80, shares[1] / shares[0], 0.001 * shares[1]);
    }

    [Fact]
    public void Text_OfOneScore_SaysNameValueAndBand() => Assert.Equal("hardness 32, tender, needs months", Soda(("olive-oil", 100)).Hardness!.ToString());

    [Fact]
    public void Nothing_IsPromisedBeyondTheRanges()
    {
        FatBlend blend = Of(("olive-oil", 100));
        Assert.Throws<ArgumentOutOfRangeException>(() => blend.Scores(Ratio.FromPercent(101), Ratio.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => blend.Scores(Ratio.FromPercent(5), Ratio.FromPercent(-1)));
        Assert.Throws<ArgumentNullException>(() => ((Formula)null!).Scores());
        Assert.Throws<ArgumentNullException>(() => ((FatBlend)null!).Scores(Ratio.Zero, Ratio.Zero));
    }
}
