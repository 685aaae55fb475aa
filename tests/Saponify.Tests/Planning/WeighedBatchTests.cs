using Saponify.Tests.Formulas;
using Saponify.Tests.Support;

namespace Saponify.Tests.Planning;

/// <summary>At the bench: nobody hits the planned grams.</summary>
public class WeighedBatchTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;
    private const string Soda = "alkali.alkalis[sodium-hydroxide]";

    private static readonly Formula s_formula = FormulaTests.Plain(
        s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(400)), s_pantry.Fat("coconut-oil").Weighing(Mass.FromGrams(200))) with
    {
        Additives = [s_pantry.Additive("citric-acid-monohydrate").ShareOfFats(Ratio.FromPercent(1))],
    };

    private static readonly BatchPlan s_plan = s_formula.Plan();

    private static WeighedBatch Start() => WeighedBatch.Start(s_plan);

    private static double Percent(Ratio? superfat) => superfat!.Value.Percent;

    [Fact]
    public void ALineThatPouredOver_AsksForMoreAlkaliAndLiquid()
    {
        WeighedBatch batch = Start().Weigh("fats[olive-oil]", Mass.FromGrams(431));
        Assert.Equal(["fats[coconut-oil]", "liquids.lyeLiquid", Soda, "additives[citric-acid-monohydrate]"], batch.Missing.Select(m => m.Path.ToString()));
        Assert.True(Percent(batch.Superfat) > 9);
        double more = 31 * s_pantry.Fat("olive-oil").Saponification!.Value.MilligramsKohPerGram / 56105 * 0.95 * 39.997 / 0.98;
        Assert.Equal(s_plan.Alkalis[0].Mass.Grams + more, batch.AlkaliToWeigh[0].Mass.Grams, 6);
        Assert.Equal(batch.AlkaliToWeigh[0].Mass.Grams * 0.98 * 70 / 30, batch.LiquidToWeigh!.Mass.Grams + (6 * 0.08573), 2);
        Assert.Equal(7.75, batch.Lines[0].Off!.Value.Percent, 2);
    }

    [Fact]
    public void WhatNeverComes_IsReckonedToo()
    {
        WeighedBatch batch = Start().Weigh("fats[olive-oil]", Mass.FromGrams(400));
        Assert.Equal(5, Percent(batch.Superfat), 6);
        Assert.True(Percent(batch.SuperfatIfTheRestNeverComes) < -40);
        Assert.Matches(@"\n  If it never comes, apart from the alkali: -\d+\.\d\d %, LYE-HEAVY\n", batch.ToString());
    }

    [Fact]
    public void TooMuchAlkaliInTheCup_CanBeWeighedAnew_OrMetWithFat()
    {
        WeighedBatch batch = Start().Weigh(Soda, s_plan.Alkalis[0].Mass * 1.1);
        Assert.Contains(batch.Choices, c => c.Kind == BatchChoiceKind.WeighAlkali);
        Assert.DoesNotContain(batch.Choices, c => c.Kind == BatchChoiceKind.AddLye);
        BatchChoice fat = batch.Choices.First(c => c.Kind == BatchChoiceKind.AddFat && c.Fat!.Id == "olive-oil");
        Assert.Equal(5, Percent(fat.Superfat), 6);
    }

    [Fact]
    public void OnceTheAlkaliIsIn_OnlyAdditionsRemain()
    {
        WeighedBatch heavy = Start().Weigh(Soda, s_plan.Alkalis[0].Mass * 1.1).WithAlkaliIn();
        Assert.True(heavy.IsLyeHeavy);
        Assert.Equal([BatchChoiceKind.AddFat], heavy.Choices.Select(c => c.Kind).Distinct());
        Assert.Empty(heavy.AlkaliToWeigh);
        WeighedBatch mended = heavy.Choices[0].Apply();
        Assert.False(mended.IsLyeHeavy);
        Assert.Contains(mended.Missing, m => m.Path.ToString().StartsWith("fats[added ", StringComparison.Ordinal));

        WeighedBatch mild = Start().Weigh(Soda, s_plan.Alkalis[0].Mass * 0.9).WithAlkaliIn();
        Assert.Equal([BatchChoiceKind.Accept, BatchChoiceKind.AddLye], mild.Choices.Select(c => c.Kind));
        BatchChoice lye = mild.Choices[1];
        Assert.Contains("never solid", lye.Text, StringComparison.Ordinal);
        Assert.Equal(5, Percent(lye.Superfat), 6);
        Assert.All(((WeighedAlkali)lye.Apply().AsWeighed.Alkali).Alkalis.Where(a => a.Line == "added lye"), a => Assert.True(a.Alkali.IsSolution));
    }

    [Fact]
    public void ALyeHeavyBatchThatIsPoured_IsNotToBeUsed()
    {
        WeighedBatch batch = Start().Weigh(Soda, s_plan.Alkalis[0].Mass * 1.1).WhenPoured();
        BatchChoice only = Assert.Single(batch.Choices);
        Assert.Equal(BatchChoiceKind.Discard, only.Kind);
        Assert.StartsWith("Don't use this batch", only.Text, StringComparison.Ordinal);
        Assert.Equal(BatchChoiceKind.Accept, Assert.Single(Start().WhenPoured().Choices).Kind);
    }

    [Fact]
    public void ForgottenPurity_LeavesMoreSuperfat()
    {
        BatchPlan pure = (s_formula with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.SodiumHydroxide(Ratio.FromPercent(100))) }).Plan();
        WeighedBatch batch = WeighedBatch.Start(pure).AlkaliWas(Soda, Alkali.SodiumHydroxide(Ratio.FromPercent(90))).WithAlkaliIn();
        Assert.InRange(Percent(batch.Superfat), 14, 16);
        Assert.False(batch.IsLyeHeavy);
    }

    [Fact]
    public void PotashForSoda_LeavesMuchSuperfat_AndSodaForPotashIsLyeHeavy()
    {
        WeighedBatch potash = Start().AlkaliWas(Soda, Alkali.PotassiumHydroxide(Ratio.FromPercent(98))).WithAlkaliIn();
        Assert.InRange(Percent(potash.Superfat), 30, 36);
        BatchPlan soft = (s_formula with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.PotassiumHydroxide(Ratio.FromPercent(90))) }).Plan();
        WeighedBatch soda = WeighedBatch.Start(soft).AlkaliWas("alkali.alkalis[potassium-hydroxide]", Alkali.SodiumHydroxide(Ratio.FromPercent(98))).WithAlkaliIn();
        Assert.True(Percent(soda.Superfat) < -40);
        Assert.Contains(soda.Choices, c => c.Kind == BatchChoiceKind.AddFat);
        Assert.Throws<ArgumentException>(() => Start().AlkaliWas("alkali.alkalis[lye]", Alkali.SodiumHydroxide(Ratio.FromPercent(98))));
    }

    [Fact]
    public void MilkInsteadOfWater_TakesUpLye() =>
        Assert.True(Percent(Start().LyeLiquidWas(s_pantry.Liquid("heavy-cream")).Superfat) > 15);

    [Fact]
    public void ADoubledLine_IsSeen()
    {
        Assert.True(Start().Doubled(Soda).IsLyeHeavy);
        Assert.True(Percent(Start().Doubled("fats[olive-oil]").Superfat) > 35);
        Assert.Throws<ArgumentException>(() => Start().Doubled("fats[tallow]"));
    }

    [Fact]
    public void TheWrongFat_MovesTheSuperfatByItsOwnValue()
    {
        WeighedBatch batch = Start().FatWas("fats[coconut-oil]", s_pantry.Fat("castor-oil"));
        Assert.True(batch.IsLyeHeavy);
        Assert.Equal("fats[coconut-oil]", batch.Lines[1].Path.ToString());
        Assert.Equal("Castor oil", batch.Lines[1].What);
    }

    [Fact]
    public void UnknownLines_AreRefusedWithTheKnownOnes()
    {
        ArgumentException fault = Assert.Throws<ArgumentException>(() => Start().Weigh("fats[olive]", Mass.FromGrams(1)));
        Assert.Contains("fats[olive-oil]", fault.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => WeighedBatch.Start(FormulaTests.Plain().Plan()));
        Assert.Throws<ArgumentOutOfRangeException>(() => Start().Weigh(Soda, Mass.FromGrams(-1)));
    }

    [Fact]
    public void Batches_EqualByContent() => EqualityContract.Test(
        Start().Weigh(Soda, Mass.FromGrams(80)), Start().Weigh(Soda, Mass.FromGrams(81)).Weigh(Soda, Mass.FromGrams(80)), Start(), Start().Weigh(Soda, Mass.FromGrams(80)).WithAlkaliIn());
}
