using Saponify.Tests.Formulas;

namespace Saponify.Tests.Planning;

/// <summary>What a scale can show, and what it can't.</summary>
public class ScalePlanTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    private static BatchPlan Olive(double grams) => FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(grams))).Plan();

    [Fact]
    public void Alkali_IsCutToAWholeStep_AndFatsGoUp()
    {
        BatchPlan plan = Olive(500.3);
        ScalePlan scale = plan.OnScale(new(Mass.FromGrams(2)));
        ScaleLine alkali = scale.Lines.Single(l => l.Path.ToString().StartsWith("alkali", StringComparison.Ordinal)), fat = scale.Lines.Single(l => l.Path.ToString().StartsWith("fats", StringComparison.Ordinal));
        Assert.Equal(502, fat.Mass.Grams);
        Assert.Equal(Math.Floor(plan.Alkalis[0].Mass.Grams / 2) * 2, alkali.Mass.Grams);
        Assert.True(scale.Balance.SuperfatOfAllFat!.Value.Percent > 5);
        Assert.Contains("One step of the alkali's scale, 2 g, is worth", scale.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void BelowTheMinimumLoad_IsRefused()
    {
        ScalePlan scale = Olive(20).OnScale(new(Mass.FromGrams(0.1)) { MinimumLoad = Mass.FromGrams(5) });
        Obstacle obstacle = Assert.Single(scale.Obstacles);
        Assert.Equal("alkali.alkalis[sodium-hydroxide]", obstacle.Path.ToString());
        Assert.Contains("minimum load of 5 g", obstacle.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void LessThanOneStepOfAlkali_IsRefused() =>
        Assert.Contains("less than one step", Assert.Single(Olive(20).OnScale(new(Mass.FromGrams(5))).Obstacles).Reason, StringComparison.Ordinal);

    [Fact]
    public void BeyondTheCapacity_IsSplitIntoLoads()
    {
        ScalePlan scale = Olive(2600).OnScale(new(Mass.FromGrams(1)) { Capacity = Mass.FromKilograms(1) });
        Assert.Equal(3, scale.Lines[0].Loads);
        Assert.Contains("in 3 loads", scale.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ACoarseStep_SaysHowLargeABatchWouldDo()
    {
        ScalePlan scale = Olive(200).OnScale(new(Mass.FromGrams(1)));
        Mass enough = scale.ListedFatsFor(Ratio.FromPercent(0.5))!.Value;
        Assert.Equal(0.5, Olive(enough.Grams).OnScale(new(Mass.FromGrams(1))).SuperfatPerAlkaliStep!.Value.Percent, 2);
        Assert.Contains("for half a point it takes", scale.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Scale_Impossible_CannotBeMade()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Scale(Mass.Zero));
        Assert.ThrowsAny<ArgumentException>(() => new Scale(Mass.FromGrams(double.NaN)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Scale(Mass.FromGrams(1)) { Accuracy = Ratio.FromPercent(21) });
        Assert.Throws<ArgumentOutOfRangeException>(() => new Scale(Mass.FromGrams(1)) { Capacity = Mass.FromGrams(-1) });
    }

    [Fact]
    public void APlanWithObstacles_OffersNothing()
    {
        ScalePlan scale = FormulaTests.Plain().Plan().OnScale(new(Mass.FromGrams(1)));
        Assert.Empty(scale.Lines);
        Assert.NotEmpty(scale.Obstacles);
    }
}
