using Saponify.Tests.Formulas;

namespace Saponify.Tests.Planning;

/// <summary>Where plans are easily wrong by a sign, a side or a limit; all reckoned by hand, with 56.105 g/mol of KOH and 39.997 g/mol of NaOH.</summary>
public class PlanEdgeTests
{
    private static readonly Alkali s_potash = Alkali.PotassiumHydroxide(Ratio.FromPercent(100)), s_soda = Alkali.SodiumHydroxide(Ratio.FromPercent(100));

    private static Fat Exact(double koh, string id = "exact") => Fat.Own(id, "Exact fat " + id, SaponificationValue.FromMilligramsKohPerGram(koh), "made up for this test");

    private static Formula Of(AlkaliPlan alkali, params FatPortion[] fats) =>
        new("Test") { Fats = [.. fats], Alkali = alkali, Liquids = LiquidPlan.TotalWater(Mass.FromGrams(400)) };

    /// <summary>1 kg of saponification value 200: takes 200 g of KOH.</summary>
    private static Formula Kilogram(AlkaliPlan alkali) => Of(alkali, Exact(200).Weighing(Mass.FromGrams(1000)));

    private static AdditivePortion HalfFat(Stage stage) => new Additive("half-fat", "Half fat", AdditiveKind.Other, Stage.Trace,
        new() { Water = Ratio.FromPercent(50), Fat = Ratio.FromPercent(50), FatKind = Exact(200) }).Weighing(Mass.FromGrams(100)).At(stage);

    private static AlkaliPlan FivePerCent => AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), s_potash);

    [Fact]
    public void FatInAnAdditive_TakesUpLyeToo()
    {
        LyeBalance balance = (Kilogram(FivePerCent) with { Additives = [HalfFat(Stage.Trace)] }).Balance();
        Assert.Equal(0.95 * 210, balance.AlkaliAsWeighed.Grams, 9);
        Assert.Equal(210 / 56.105, balance.FatDemand.Moles, 9);
        Assert.Equal((5.0, 0.25), (Math.Round(balance.SuperfatOfAllFat!.Value.Percent, 9), Math.Round(balance.SuperfatOfListedFats!.Value.Percent, 9)));
        // it is fat enough even when nothing else is
        Assert.True((Of(AlkaliPlan.Weighed(s_potash.Weighing(Mass.FromGrams(9)))) with { Additives = [HalfFat(Stage.Trace)] }).Balance().CanBeWeighed);
    }

    [Theory]
    [InlineData(Stage.LyeLiquid, true)]
    [InlineData(Stage.Trace, false)]
    public void WaterOfAnAdditive_DissolvesAlkaliOnlyInTheJug(Stage stage, bool inTheJug)
    {
        BatchPlan plan = (Kilogram(FivePerCent) with { Additives = [HalfFat(stage)] }).Plan();
        Assert.Equal(inTheJug, Assert.Single(plan.Water, w => w.Path.ToString() == "additives[half-fat]").IsWhileDissolving);
        double pure = 0.95 * 210, water = inTheJug ? 400 : 350;
        Assert.Equal(pure / (pure + water), plan.Balance.LyeConcentrationWhileDissolving!.Value.DecimalFractions, 9);
        Assert.Equal(400, plan.Balance.AllWater.Grams, 9);
    }

    [Fact]
    public void ZeroSuperfat_IsNeitherLyeHeavyNorSafeOnlyByOtherFat()
    {
        Formula zero = Kilogram(AlkaliPlan.ForSuperfat(Ratio.Zero, s_potash));
        Assert.False(zero.Plan().IsSafeOnlyByUnlistedFat);
        Assert.False(WeighedBatch.Start(zero.Plan()).IsLyeHeavy);
        Assert.DoesNotContain("LYE-HEAVY", zero.Plan().ToString(), StringComparison.Ordinal);
        Assert.True((zero with { Additives = [HalfFat(Stage.Trace)] }).Plan().IsSafeOnlyByUnlistedFat);
    }

    [Fact]
    public void Null_IsRefused()
    {
        BatchPlan plan = Kilogram(FivePerCent).Plan();
        Scale scale = new(Mass.FromGrams(1));
        Assert.Throws<ArgumentNullException>(() => ((Formula)null!).Balance());
        Assert.Throws<ArgumentNullException>(() => ((Formula)null!).Plan());
        Assert.Throws<ArgumentNullException>(() => ((BatchPlan)null!).Margin(scale));
        Assert.Equal("plan", Assert.Throws<ArgumentNullException>(() => ((BatchPlan)null!).OnScale(scale)).ParamName);
        Assert.Equal("scale", Assert.Throws<ArgumentNullException>(() => plan.OnScale(null!, scale)).ParamName);
        Assert.Equal("alkaliScale", Assert.Throws<ArgumentNullException>(() => plan.OnScale(scale, null!)).ParamName);
        Assert.Equal("plan", Assert.Throws<ArgumentNullException>(() => WeighedBatch.Start(null!)).ParamName);
        Assert.Equal("actual", Assert.Throws<ArgumentNullException>(() => WeighedBatch.Start(plan).FatWas("fats[exact]", null!)).ParamName);
    }

    [Fact]
    public void RangeOfFatAndAcidInAMilk_IsADoubtOfItsOwn()
    {
        // 100 g of milk, 4 % fat of SV 224.42 (3 to 5 %), 0.9 % lactic acid of 90 g/mol (0.8 to 1.0 %)
        Liquid milk = new("milk", "Milk", new()
        {
            Water = Ratio.FromPercent(87), Fat = Ratio.FromPercent(4), LeastFat = Ratio.FromPercent(3), MostFat = Ratio.FromPercent(5), FatKind = Exact(224.42, "milk-fat"),
            Acid = Ratio.FromPercent(0.9), LeastAcid = Ratio.FromPercent(0.8), MostAcid = Ratio.FromPercent(1), AcidKind = new Acid("lactic", "Lactic acid", MolarMass.FromGramsPerMole(90), 1, 0),
        });
        Formula formula = Kilogram(FivePerCent);
        Margin margin = (formula with { Liquids = formula.Liquids.HoldingBack(milk.Weighing(Mass.FromGrams(100))) }).Plan().Margin(null)!;
        double fat = (200 / 56.105) + (100 * 0.04 * 0.22442 / 56.105);
        MarginCause ofFat = Assert.Single(margin.Causes, c => c.What == "fat content of Milk"), ofAcid = Assert.Single(margin.Causes, c => c.What == "acid content of Milk");
        Assert.Equal(0.95 * (100 * 0.01 * 0.22442 / 56.105) / fat, ofFat.HalfWidth.DecimalFractions, 9);
        Assert.Equal(100 * 0.001 / 90 / fat, ofAcid.HalfWidth.DecimalFractions, 9);
        Assert.Empty(margin.NoData);
    }

    [Fact]
    public void TwoScales_WidenBothCorners()
    {
        Margin margin = Kilogram(FivePerCent).Plan().Margin(new(Mass.FromGrams(1)) { Accuracy = Ratio.FromPercent(1) }, new(Mass.FromGrams(0.1)) { Accuracy = Ratio.FromPercent(0.2) }, Ratio.FromPercent(95))!;
        Assert.Equal(1 - (190.05 * 1.012 / (0.2 * 999.5 * 1)), margin.Worst.DecimalFractions, 9);
        Assert.Equal(1 - (189.95 * 0.988 / (0.2 * 1000.5 * 1)), margin.Best.DecimalFractions, 9);
    }

    private static SuperfatTarget Halves => AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), s_soda.ShareOfHydroxide(Ratio.FromPercent(50)), s_potash.ShareOfHydroxide(Ratio.FromPercent(50)));

    [Fact]
    public void OneOfTwoAlkalisTooHeavy_TheOtherMakesUpForIt()
    {
        BatchPlan plan = Kilogram(Halves).Plan();
        double half = 0.95 * 200 / 56.105 / 2;
        WeighedBatch batch = WeighedBatch.Start(plan).Weigh("alkali.alkalis[sodium-hydroxide]", Mass.FromGrams((half * 39.997) + 2));
        AlkaliPortion rest = Assert.Single(batch.AlkaliToWeigh);
        Assert.Equal("potassium-hydroxide", rest.Line);
        Assert.Equal((half - (2 / 39.997)) * 56.105, rest.Mass.Grams, 6);
        // far too much of one: none of the other
        Assert.Equal(0, Assert.Single(WeighedBatch.Start(plan).Weigh("alkali.alkalis[sodium-hydroxide]", Mass.FromGrams(200)).AlkaliToWeigh).Mass.Grams);
        // weighed anew, both go down by the same share, and the amount is both together
        BatchChoice anew = Assert.Single(batch.Choices, c => c.Kind == BatchChoiceKind.WeighAlkali);
        Assert.Equal(half * 2 / ((half * 2) + (2 / 39.997)) * ((half * (39.997 + 56.105)) + 2), anew.Amount!.Value.Grams, 6);
    }

    [Fact]
    public void SuperfatOfTheListedFats_IsReachedByAddingFat()
    {
        // cream of an additive does not count: 210 g of KOH want 210/0.95 g of demand, 200 are there; SV 200 a gram takes 0.2 g
        Formula formula = Kilogram(AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), s_potash).OfListedFats()) with { Additives = [HalfFat(Stage.Trace)] };
        WeighedBatch batch = WeighedBatch.Start(formula.Plan()).Weigh("alkali.alkalis[potassium-hydroxide]", Mass.FromGrams(210));
        BatchChoice early = Assert.Single(batch.Choices, c => c.Kind == BatchChoiceKind.AddFat), late = Assert.Single(batch.WithAlkaliIn().Choices, c => c.Kind == BatchChoiceKind.AddFat);
        Assert.Equal(((210 / 0.95) - 200) / 0.2, early.Amount!.Value.Grams, 6);
        Assert.Equal((Stage.Fats, Stage.Trace), (early.Apply().AsWeighed.Fats[^1].Stage, late.Apply().AsWeighed.Fats[^1].Stage));
        Assert.Equal(190, Assert.Single(WeighedBatch.Start(formula.Plan()).AlkaliToWeigh).Mass.Grams, 6);
    }

    [Fact]
    public void AddedLye_IsOfTheKindInTheJug()
    {
        string Lye(Alkali alkali) => WeighedBatch.Start(Kilogram(AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), alkali)).Plan())
            .Weigh($"alkali.alkalis[{alkali.Id}]", Mass.FromGrams(100)).WithAlkaliIn().Choices.Single(c => c.Kind == BatchChoiceKind.AddLye).Text;
        // 90 g of KOH lack; the lye is 100 in 500, 20 %: 450 g, 360 of them water
        Assert.Equal("Add 450 g of cooled lye of 20 %: 90 g of pure potassium hydroxide dissolved in 360.0 g of water, never solid.", Lye(s_potash));
        Assert.Contains("of pure sodium hydroxide dissolved", Lye(s_soda), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatWasWeighed_IsWhatIsDoubled()
    {
        WeighedBatch batch = WeighedBatch.Start(Kilogram(FivePerCent).Plan());
        Assert.Equal(1800, batch.Weigh("fats[exact]", Mass.FromGrams(900)).Doubled("fats[exact]").Lines[0].Weighed!.Value.Grams, 9);
        Assert.Equal(2000, batch.Doubled("fats[exact]").Lines[0].Weighed!.Value.Grams, 9);
        Assert.Empty(batch.WithAlkaliIn().AlkaliToWeigh);
    }

    [Fact]
    public void ALateFat_StaysLateWhenItWasAnother()
    {
        Formula formula = Of(FivePerCent, Exact(200).Weighing(Mass.FromGrams(900)), Exact(200, "late").Weighing(Mass.FromGrams(100)).AtTrace());
        ValueList<FatPortion> fats = WeighedBatch.Start(formula.Plan()).FatWas("fats[late]", Exact(190, "other")).FatWas("fats[exact]", Exact(191, "another")).AsWeighed.Fats;
        Assert.Equal([(Stage.Fats, "another", "exact"), (Stage.Trace, "other", "late")], fats.Select(f => (f.Stage, f.Fat.Id, f.Line)));
    }

    [Fact]
    public void AScaleThatIsNotTared_ErrsTwice() =>
        Assert.Equal((0.5, 1), (new Scale(Mass.FromGrams(1)).HalfWidth, new Scale(Mass.FromGrams(1)) { IsTared = false }.HalfWidth));

    [Fact]
    public void TheAlkalisScale_HasItsOwnStepAndItsOwnMinimum()
    {
        BatchPlan plan = Of(FivePerCent, Exact(200).Weighing(Mass.FromGrams(23))).Plan();   // 4.37 g of KOH
        Scale coarse = new(Mass.FromGrams(5)), fine = new(Mass.FromGrams(0.1));
        Assert.Equal([25.0, 4.3], plan.OnScale(coarse, fine).Lines.Take(2).Select(l => l.Mass.Grams));
        Assert.Empty(plan.OnScale(coarse, fine).Obstacles);
        Assert.Contains("less than one step of 5 g", Assert.Single(plan.OnScale(fine, coarse).Obstacles).Reason, StringComparison.Ordinal);
        Assert.Contains("less than one step of 5 g", plan.OnScale(fine, coarse).ToString(), StringComparison.Ordinal);
        Assert.Equal("fats[exact]", Assert.Single(plan.OnScale(fine with { MinimumLoad = Mass.FromGrams(30) }, fine).Obstacles, o => o.Path.ToString().StartsWith("fats", StringComparison.Ordinal)).Path.ToString());
    }

    [Fact]
    public void Bench_IsShownInWords()
    {
        WeighedBatch batch = WeighedBatch.Start(Kilogram(FivePerCent).Plan()).Weigh("fats[exact]", Mass.FromGrams(1100));
        string text = batch.ToString();
        Assert.Contains("Test, on the bench: weighing\n", text, StringComparison.Ordinal);
        Assert.Contains("1100 g   +10.0 %  Exact fat exact  fats[exact]\n", text, StringComparison.Ordinal);
        // 220 g of demand, 190 g of alkali: 13.63 %, cut
        Assert.Contains("Superfat of all fat 13.63 % so far, what is not weighed yet standing in at plan\n", text, StringComparison.Ordinal);
        Assert.Contains("Weigh now 209 g potassium hydroxide, 100 % (cut, never rounded up)\n", text, StringComparison.Ordinal);
        Assert.Contains("the alkali is in, only additions are possible", batch.WithAlkaliIn().ToString(), StringComparison.Ordinal);
        WeighedBatch heavy = batch.Weigh("fats[exact]", Mass.FromGrams(900)).WhenPoured();
        Assert.Contains("on the bench: poured\n", heavy.ToString(), StringComparison.Ordinal);
        // 180 g of demand: 1 - 190/180
        Assert.Contains("Superfat of all fat -5.56 % so far, what is not weighed yet standing in at plan: LYE-HEAVY\n", heavy.ToString(), StringComparison.Ordinal);
        Assert.Contains(" -10.0 %", heavy.ToString(), StringComparison.Ordinal);
        Assert.Contains("  1. Don't use this batch", heavy.ToString(), StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => batch.ToText(null!));
        Assert.Contains("Weigh now 208 g potassium", batch.ToText(new Scale(Mass.FromGrams(2))), StringComparison.Ordinal);
        Assert.Contains("Weigh now 205 g potassium", batch.ToText(new Scale(Mass.FromGrams(2)), new Scale(Mass.FromGrams(5))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.25, 1.3, "1.25 g")]
    [InlineData(2, 3.1, "4 g")]
    [InlineData(0.1, 3.14, "3.1 g")]
    [InlineData(2, 0.4, "< 2 g")]
    public void AScale_ShowsAsManyDecimalsAsItsStepHas(double step, double grams, string shown) =>
        Assert.Equal(shown, Rounding.Of(new Scale(Mass.FromGrams(step))).Nearest(grams));

    [Fact]
    public void Evidence_OfAPlan_IsItsWeakestFat()
    {
        Fat Known(string id, Evidence evidence) => new(id, id, FatClass.Triglyceride, new() { Saponification = new(SaponificationValue.FromMilligramsKohPerGram(190), evidence, ["made up for this test"]) });
        FatPortion standard = Known("a", Evidence.Standard).Weighing(Mass.FromGrams(1)), memory = Known("b", Evidence.Memory).Weighing(Mass.FromGrams(1));
        Assert.Equal((Evidence.Memory, Evidence.Memory), (FormulaTests.Plain(standard, memory).Plan().Evidence, FormulaTests.Plain(memory, standard).Plan().Evidence));
        Assert.Null(FormulaTests.Plain().Plan().Evidence);
    }

    [Fact]
    public void WeighedAlkali_IsPrintedAsItWasWeighed()
    {
        string text = Kilogram(AlkaliPlan.Weighed(s_potash.Weighing(Mass.FromGrams(190.123)))).Plan().ToString();
        Assert.Contains("190.123 g  potassium hydroxide, 100 %, as weighed", text, StringComparison.Ordinal);
        Assert.DoesNotContain("cut, never rounded up", text, StringComparison.Ordinal);
    }
}
