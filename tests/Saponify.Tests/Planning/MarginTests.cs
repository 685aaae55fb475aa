using Saponify.Tests.Formulas;
using Saponify.Tests.Support;

namespace Saponify.Tests.Planning;

/// <summary>Margins worked out by hand, and the corners found by trying all of them.</summary>
public class MarginTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    private static Fat Ranged(double low, double used, double high) => new("ranged", "Ranged fat", FatClass.Triglyceride, new()
    {
        Saponification = new(SaponificationValue.FromMilligramsKohPerGram(used), Evidence.Standard, ["made up for this test"])
        {
            Low = SaponificationValue.FromMilligramsKohPerGram(low),
            High = SaponificationValue.FromMilligramsKohPerGram(high),
        },
    });

    private static Formula Of(Fat fat, Purity purity, double grams = 1000) => new("Test")
    {
        Fats = [fat.Weighing(Mass.FromGrams(grams))],
        Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.SodiumHydroxide(purity)),
        Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(30)),
    };

    [Fact]
    public void OneRange_IsWorkedOutByHand()
    {
        // SV 180 to 200, used 190; alkali for 95 % of 190: at SV 180 the superfat is 1 - 0.95 x 190/180, at 200 it is 1 - 0.95 x 190/200
        Margin margin = Of(Ranged(180, 190, 200), Purity.Certified(Ratio.FromPercent(98))).Plan().Margin(null)!;
        Assert.Equal(1 - (0.95 * 190 / 180), margin.Worst.DecimalFractions, 12);
        Assert.Equal(1 - (0.95 * 190 / 200), margin.Best.DecimalFractions, 12);
        Assert.Equal(0.05, margin.BestEstimate.DecimalFractions, 12);
        Assert.Equal(0.95 * 10 / 190 / Math.Sqrt(3), margin.StandardUncertainty.DecimalFractions, 12);
        Assert.Equal(1, Assert.Single(margin.Causes).ShareOfVariance.DecimalFractions, 12);
        Assert.Equal("saponification value of Ranged fat", margin.Causes[0].What);
        // the middle 95 % of one rectangle: SV 180.5 to 199.5
        Assert.Equal(1 - (0.95 * 190 / 180.5), margin.Low.DecimalFractions, 6);
        Assert.Equal(1 - (0.95 * 190 / 199.5), margin.High.DecimalFractions, 6);
        // lye-heavy where the true SV is below 0.95 x 190 = 180.5, half a unit out of twenty
        Assert.Equal(0.5 / 20, margin.ProbabilityOfLyeHeavy.DecimalFractions, 4);
    }

    [Fact]
    public void LabelMinimum_OpensTheMarginUpwards()
    {
        Margin margin = Of(Ranged(190, 190, 190), Purity.AtLeast(Ratio.FromPercent(90))).Plan().Margin(null)!;
        Assert.Equal(0.05, margin.Nominal.DecimalFractions, 9);
        Assert.Equal(0.05, margin.Worst.DecimalFractions, 9);
        Assert.Equal(1 - (0.95 * 0.9), margin.Best.DecimalFractions, 9);
        Assert.Equal(0, margin.ProbabilityOfLyeHeavy.DecimalFractions);
        Assert.Equal(MarginCauseKind.Purity, Assert.Single(margin.Causes).Kind);
    }

    [Fact]
    public void NothingInDoubt_HasNoWidth()
    {
        Margin margin = Of(Ranged(190, 190, 190), Purity.Certified(Ratio.FromPercent(98))).Plan().Margin(null)!;
        Assert.Equal((0, 0.05, 0.05), (margin.StandardUncertainty.DecimalFractions, Math.Round(margin.Worst.DecimalFractions, 12), Math.Round(margin.High.DecimalFractions, 12)));
        Assert.Empty(margin.Causes);
    }

    [Fact]
    public void OneFatInTwoPlaces_IsOneDoubt()
    {
        Formula formula = FormulaTests.Plain(s_pantry.Fat("coconut-oil").Weighing(Mass.FromGrams(300)), s_pantry.Fat("coconut-oil").Weighing(Mass.FromGrams(200)).AtTrace());
        formula = formula with { Liquids = formula.Liquids.HoldingBack(s_pantry.Liquid("coconut-milk-raw").Weighing(Mass.FromGrams(60))) };
        Margin margin = formula.Plan().Margin(null)!;
        Assert.Single(margin.Causes, c => c.Kind == MarginCauseKind.SaponificationValue);
        Assert.Equal(["composition of " + s_pantry.Liquid("coconut-milk-raw").Name], margin.NoData);
    }

    [Fact]
    public void OneGramOfSoda_OnAKilogramOfFat_IsThreeQuartersOfAPoint()
    {
        // arithmetic: 1 g NaOH / 39.997 against 1000 g x 190/56105
        ScalePlan plan = Of(Ranged(190, 190, 190), Purity.Certified(Ratio.FromPercent(100))).Plan().OnScale(new(Mass.FromGrams(1)));
        Assert.Equal(0.738, plan.SuperfatPerAlkaliStep!.Value.Percent, 3);
        // a step of a tenth of an ounce may be off by half of it either way: 1.05 points here, 2.3 points on a pound of fat
        Scale ounces = new(Mass.FromOunces(0.1));
        Assert.Equal(1.05, Of(Ranged(190, 190, 190), Purity.Certified(Ratio.FromPercent(100))).Plan().OnScale(ounces).SuperfatPerAlkaliStep!.Value.Percent / 2, 2);
        Assert.Equal(2.3, Of(Ranged(190, 190, 190), Purity.Certified(Ratio.FromPercent(100)), 454).Plan().OnScale(ounces).SuperfatPerAlkaliStep!.Value.Percent / 2, 1);
    }

    [Fact]
    public void Corners_AreAttained_AsTryingThemAllShows()
    {
        Formula formula = FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(400)), s_pantry.Fat("coconut-oil").Weighing(Mass.FromGrams(200))) with
        {
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(4), Alkali.SodiumHydroxide(Purity.Between(Ratio.FromPercent(97), Ratio.FromPercent(99)))),
            Additives = [s_pantry.Additive("lactic-acid-80").Weighing(Mass.FromGrams(8))],
        };
        BatchPlan plan = formula.Plan();
        Scale scale = new(Mass.FromGrams(1));
        TrueBatch batch = new(plan, scale);
        double[] places = new double[batch.Doubts];
        (double least, double most) = (double.PositiveInfinity, double.NegativeInfinity);
        for (long corner = 0; corner < 1L << places.Length; corner++)
        {
            for (int i = 0; i < places.Length; i++)
                places[i] = corner >> i & 1;
            double superfat = batch.Superfat(places);
            (least, most) = (Math.Min(least, superfat), Math.Max(most, superfat));
        }
        Margin margin = plan.Margin(scale)!;
        Assert.Equal(least, margin.Worst.DecimalFractions, 12);
        Assert.Equal(most, margin.Best.DecimalFractions, 12);
    }

    [Fact]
    public void APlanWithObstacles_HasNoMargin() => Assert.Null(FormulaTests.Plain().Plan().Margin(null));

    [Fact]
    public void NominalSuperfat_LiesBelowTheBestEstimate_ForEveryFatOfTheTables()
    {
        foreach (Fat fat in s_pantry.Fats.Where(f => f.Saponification?.Value.MilligramsKohPerGram > 0))
        {
            Margin margin = Of(fat, Purity.Between(Ratio.FromPercent(97), Ratio.FromPercent(99))).Plan().Margin(null)!;
            Assert.True(margin.Nominal.DecimalFractions <= margin.BestEstimate.DecimalFractions + 1e-12, FormattableString.Invariant($"{fat.Id}: {margin.Nominal.Percent} above {margin.BestEstimate.Percent}"));
        }
    }

    [Fact]
    public void TwoScales_WhoseErrorsDoNotCancel_WidenTheMargin()
    {
        BatchPlan plan = Of(Ranged(190, 190, 190), Purity.Certified(Ratio.FromPercent(98))).Plan();
        Scale kitchen = new(Mass.FromGrams(1)) { Accuracy = Ratio.FromPercent(1) }, fine = new(Mass.FromGrams(0.01)) { Accuracy = Ratio.FromPercent(0.2) };
        Assert.DoesNotContain(plan.Margin(kitchen)!.Causes, c => c.Kind == MarginCauseKind.TwoScales);
        MarginCause cause = Assert.Single(plan.Margin(kitchen, fine, Ratio.FromPercent(95))!.Causes, c => c.Kind == MarginCauseKind.TwoScales);
        Assert.Equal(0.95 * 0.012, cause.HalfWidth.DecimalFractions, 6);
    }

    [Theory]
    [MemberData(nameof(PlanTests.ExampleNames), MemberType = typeof(PlanTests))]
    public void MarginsOfTheExamples_AreTheApprovedOnes(string name)
    {
        FormulaFile file = FormulaFile.Read(File.ReadAllBytes(Repository.Path("data", "examples", name + ".json")), s_pantry);
        Golden.Matches(file.Formula!.Plan().Margin(new Scale(Mass.FromGrams(1)))!.ToString(), "margins", name + ".txt");
    }
}
