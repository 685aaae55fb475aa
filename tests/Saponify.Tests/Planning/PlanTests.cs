using Saponify.Tests.Formulas;
using Saponify.Tests.Support;

namespace Saponify.Tests.Planning;

/// <summary>Plans worked out by hand.</summary>
public class PlanTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    /// <summary>A fat of a round saponification value, so that the arithmetic can be followed: 1000 g of SV 200 take 200 g of KOH.</summary>
    private static Fat Round(double koh, string id = "round") => new(id, "Round fat", FatClass.Triglyceride, new()
    {
        Saponification = new(SaponificationValue.FromMilligramsKohPerGram(koh), Evidence.Measured, ["made up for this test"]),
    });

    private static Formula Of(AlkaliPlan alkali, LiquidPlan liquids, params ReadOnlySpan<FatPortion> fats) =>
        new("Test") { Fats = ValueList.Create(fats), Alkali = alkali, Liquids = liquids };

    private static readonly Alkali s_purePotash = Alkali.PotassiumHydroxide(Ratio.FromPercent(100));

    [Fact]
    public void Kilogram_OfSaponificationValue200_Takes190gOfPotash_AtFivePerCent()
    {
        BatchPlan plan = Of(AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), s_purePotash), LiquidPlan.WaterToAlkali(Ratio.FromDecimalFractions(2)), Round(200).Weighing(Mass.FromKilograms(1))).Plan();
        Assert.Equal(190, Assert.Single(plan.Alkalis).Mass.Grams, 9);
        Assert.Equal(380, plan.LyeLiquid!.Mass.Grams, 9);
        Assert.Equal(1570, plan.BatchMass.Grams, 9);
        Assert.Equal(5, plan.Balance.SuperfatOfAllFat!.Value.Percent, 9);
        Assert.Equal(100.0 / 3, plan.Balance.LyeConcentrationOfAllWater!.Value.Percent, 9);
    }

    [Fact]
    public void Acid_TakesItsLyeBeforeTheFats()
    {
        Formula plain = Of(AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), s_purePotash), LiquidPlan.TotalWater(Mass.FromGrams(400)), Round(200).Weighing(Mass.FromKilograms(1)));
        Formula sour = plain with { Additives = [s_pantry.Additive("citric-acid-monohydrate").Weighing(Mass.FromGrams(10))] };
        // 10 g of citric acid monohydrate, 210.138 g/mol, three protons: 0.142763 mol, 8.010 g of KOH
        Assert.Equal(190 + (3 * 10 / 210.138 * 56.105), sour.Plan().Balance.AlkaliAsWeighed.Grams, 3);
        Assert.Equal(5, sour.Balance().SuperfatOfAllFat!.Value.Percent, 9);
        LyeUptake acid = Assert.Single(sour.Plan().LyeUptake, u => u.Taker == LyeTaker.Acid);
        Assert.Equal("additives[citric-acid-monohydrate]", acid.Path.ToString());
    }

    [Fact]
    public void WeighedAlkali_MakesTheSuperfatTheResult()
    {
        Formula formula = Of(AlkaliPlan.Weighed(s_purePotash.Weighing(Mass.FromGrams(210))), LiquidPlan.TotalWater(Mass.FromGrams(400)), Round(200).Weighing(Mass.FromKilograms(1)));
        Assert.Equal(-5, formula.Balance().SuperfatOfAllFat!.Value.Percent, 9);
        Assert.Contains("LYE-HEAVY", formula.Plan().ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void LateFat_IsCountedAndShownApart()
    {
        BatchPlan plan = Of(AlkaliPlan.ForSuperfat(Ratio.FromPercent(10), s_purePotash), LiquidPlan.TotalWater(Mass.FromGrams(400)),
            Round(200).Weighing(Mass.FromGrams(900)), Round(200, "late").Weighing(Mass.FromGrams(100)).AtTrace()).Plan();
        Assert.Equal(10, plan.Balance.SuperfatOfAllFat!.Value.Percent, 9);
        Assert.Equal(0, plan.Balance.SuperfatBeforeLateFats!.Value.Percent, 9);
    }

    [Fact]
    public void FrozenMilkAlone_IsSolvedInClosedForm()
    {
        // by hand, iterating instead of solving: 1 kg of SV 200, 27 % lye in a milk of 87 % water with 4 % of a fat of SV 240
        Fat milkFat = Round(240, "milk-fat");
        Liquid milk = new("test-milk", "Test milk", new() { Water = Ratio.FromPercent(87), Fat = Ratio.FromPercent(4), FatKind = milkFat });
        BatchPlan plan = Of(AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), s_purePotash), LiquidPlan.LyeConcentration(Ratio.FromPercent(27)).DissolvingInFrozen(milk, Temperature.FromDegreesCelsius(-18)),
            Round(200).Weighing(Mass.FromKilograms(1))).Plan();
        double liquid = 0, alkali = 0;
        for (int i = 0; i < 200; i++)
        {
            alkali = 0.95 * (200 + (liquid * 0.04 * 0.240));
            liquid = alkali * 73 / 27 / 0.87;
        }
        Assert.Equal(alkali, plan.Balance.AlkaliAsWeighed.Grams, 9);
        Assert.Equal(liquid, plan.LyeLiquid!.Mass.Grams, 9);
        Assert.True(plan.LyeLiquid.IsFrozen);
        // one after the other, without going round, would miss by more than two per cent
        Assert.True(plan.Balance.AlkaliAsWeighed.Grams > 190 * 1.025);
    }

    [Fact]
    public void SharesOfMass_AndOfHydroxide_AreNotTheSame()
    {
        Alkali soda = Alkali.SodiumHydroxide(Ratio.FromPercent(100));
        Formula By(AlkaliShare one, AlkaliShare two) => Of(AlkaliPlan.ForSuperfat(Ratio.Zero, one, two), LiquidPlan.TotalWater(Mass.FromGrams(400)), Round(200).Weighing(Mass.FromKilograms(1)));
        ValueList<AlkaliPortion> moles = By(soda.ShareOfHydroxide(Ratio.FromPercent(50)), s_purePotash.ShareOfHydroxide(Ratio.FromPercent(50))).Plan().Alkalis;
        Assert.Equal(100 * 39.997 / 56.105, moles[0].Mass.Grams, 9);
        Assert.Equal(100, moles[1].Mass.Grams, 9);
        ValueList<AlkaliPortion> mass = By(soda.ShareOfMass(Ratio.FromPercent(50)), s_purePotash.ShareOfMass(Ratio.FromPercent(50))).Plan().Alkalis;
        Assert.Equal(mass[0].Mass.Grams, mass[1].Mass.Grams, 9);
        Assert.Equal(200 / 56.105, (mass[0].Mass.Grams / 39.997) + (mass[1].Mass.Grams / 56.105), 9);
    }

    [Fact]
    public void BoughtSolution_BringsItsWaterAndNeedsNoneToDissolve()
    {
        BatchPlan plan = Of(AlkaliPlan.ForSuperfat(Ratio.Zero, Alkali.PotassiumHydroxideSolution(Ratio.FromPercent(50))), LiquidPlan.TotalWater(Mass.FromGrams(200)), Round(200).Weighing(Mass.FromKilograms(1))).Plan();
        Assert.Empty(plan.Obstacles);
        Assert.Null(plan.LyeLiquid);
        Assert.Equal(400, plan.Alkalis[0].Mass.Grams, 9);
        Assert.Equal(0, plan.LiquidWindow.LeastToDissolve!.Value.Grams);
    }

    [Fact]
    public void LabelMinimum_IsReckonedAsPure()
    {
        Formula By(Purity purity) => Of(AlkaliPlan.ForSuperfat(Ratio.Zero, Alkali.PotassiumHydroxide(purity)), LiquidPlan.TotalWater(Mass.FromGrams(400)), Round(200).Weighing(Mass.FromKilograms(1)));
        Assert.Equal(200, By(Purity.AtLeast(Ratio.FromPercent(85))).Balance().AlkaliAsWeighed.Grams, 9);
        Assert.Equal(200 / 0.92, By(Purity.Between(Ratio.FromPercent(88), Ratio.FromPercent(92))).Balance().AlkaliAsWeighed.Grams, 9);
    }

    [Fact]
    public void CreamThatCarriesTheSuperfat_IsSaid()
    {
        Formula formula = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        formula = formula with { Liquids = formula.Liquids.HoldingBack(s_pantry.Liquid("heavy-cream").Weighing(Mass.FromGrams(150))) };
        BatchPlan plan = formula.Plan();
        Assert.True(plan.IsSafeOnlyByUnlistedFat);
        Assert.True(plan.Balance.SuperfatOfListedFats!.Value.Percent < 0);
        Assert.Contains("Beware", plan.ToString(), StringComparison.Ordinal);
        Assert.False((formula with { Alkali = ((SuperfatTarget)formula.Alkali).OfListedFats() }).Plan().IsSafeOnlyByUnlistedFat);
    }

    [Fact]
    public void WhatIsInDoubt_IsListedAndNotCounted()
    {
        Formula plain = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
        Formula doubtful = plain with
        {
            Liquids = plain.Liquids.HoldingBack(s_pantry.Liquid("oat-drink").Weighing(Mass.FromGrams(50))),
            Additives = [s_pantry.Additive("edta-disodium-dihydrate").Weighing(Mass.FromGrams(2)), s_pantry.Additive("citric-acid-monohydrate").AmountUnknown()],
        };
        ValueList<PossibleUptake> possible = doubtful.Plan().PossibleUptake;
        Assert.Contains(possible, p => p.Path.ToString() == "liquids.heldBack[oat-drink]" && p.AtMost is null);
        Assert.Contains(possible, p => p.Path.ToString() == "additives[citric-acid-monohydrate]" && p.Why.Contains("not known", StringComparison.Ordinal));
        Assert.Contains(possible, p => p.Path.ToString() == "additives[edta-disodium-dihydrate]" && p.AtMost > Mass.Zero);
    }

    [Theory]
    [MemberData(nameof(ExampleNames))]
    public void Examples_AsText_AreTheApprovedOnes(string name)
    {
        FormulaFile file = FormulaFile.Read(File.ReadAllBytes(Repository.Path("data", "examples", name + ".json")), s_pantry);
        Golden.Matches(file.Formula!.Plan().ToString(), "plans", name + ".txt");
    }

    public static TheoryData<string> ExampleNames => [.. Repository.Examples.Select(e => Path.GetFileNameWithoutExtension(e))];

    [Fact]
    public void ToText_InAnotherUnit_ConvertsEverything()
    {
        BatchPlan plan = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(500))).Plan();
        string ounces = plan.ToText(UnitsNet.Units.MassUnit.Ounce);
        Assert.Contains("17.64 oz  Olive oil", ounces, StringComparison.Ordinal);
        Assert.DoesNotContain(" g  ", ounces, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => plan.ToText(UnitsNet.Units.MassUnit.Stone));
    }
}
