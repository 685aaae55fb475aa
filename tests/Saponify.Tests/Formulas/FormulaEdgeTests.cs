namespace Saponify.Tests.Formulas;

/// <summary>Where formulas are easily wrong: several alkalis, several unusable fats, scaling, what a suppression covers.</summary>
public class FormulaEdgeTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;
    private static readonly Alkali s_soda = Alkali.SodiumHydroxide(Ratio.FromPercent(100)), s_flakes = Alkali.PotassiumHydroxide(Ratio.FromPercent(90));

    /// <summary>1 kg of saponification value 200: takes 200/56.105 mol.</summary>
    private static Formula Kilogram(AlkaliPlan alkali) => FormulaTests.Plain(Fat.Own("exact", "Exact fat", SaponificationValue.FromMilligramsKohPerGram(200), "made up for this test").Weighing(Mass.FromGrams(1000))) with
    {
        Alkali = alkali,
        Liquids = LiquidPlan.TotalWater(Mass.FromGrams(400)),
    };

    [Fact]
    public void SharesOfMass_GiveTheMassesAndTheWaterThatTheyAre()
    {
        BatchPlan plan = Kilogram(AlkaliPlan.ForSuperfat(Ratio.Zero, s_soda.ShareOfMass(Ratio.FromPercent(30)), s_flakes.ShareOfMass(Ratio.FromPercent(70)))).Plan();
        // a gram of the mix: 0.3/39.997 + 0.7 x 0.9/56.105 mol, 0.3 + 0.63 g pure, 0.07 g of water
        double grams = 200 / 56.105 / ((0.3 / 39.997) + (0.63 / 56.105));
        Assert.Equal((grams, grams * 0.93), (plan.Balance.AlkaliAsWeighed.Grams, plan.Balance.PureAlkali.Grams), (a, b) => Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item2 - b.Item2) < 1e-9);
        Assert.Equal(grams, plan.Alkalis.Sum(a => a.Mass.Grams), 9);
        Assert.Equal(grams * 0.3, plan.Alkalis[0].Mass.Grams, 9);
        Assert.Equal(grams * 0.07, Assert.Single(plan.Water, w => w.What == "water of the alkali").Water.Grams, 9);
        Assert.Equal(400, plan.Balance.AllWater.Grams, 9);
    }

    [Fact]
    public void TwoFatsWithoutAValue_StopABatchAsOneDoes()
    {
        Formula formula = FormulaTests.Plain(new[] { "olive-oil", "shea-butter", "neem-oil" }.Select(id => s_pantry.Fat(id).Weighing(Mass.FromGrams(100))).ToArray());
        Assert.False(formula.Balance().CanBeWeighed);
        Assert.Equal(["fats[shea-butter]", "fats[neem-oil]"], formula.Plan().Obstacles.Select(o => o.Path.ToString()));
        Assert.Empty(formula.Plan().Alkalis);
    }

    [Fact]
    public void AWaterRule_ShowsItsShareOrItsMass()
    {
        LiquidPlan[] shares = [LiquidPlan.LyeConcentration(Ratio.FromPercent(30)), LiquidPlan.WaterToAlkali(Ratio.FromDecimalFractions(2)), LiquidPlan.WaterToFats(Ratio.FromPercent(38))];
        LiquidPlan[] masses = [LiquidPlan.TotalWater(Mass.FromGrams(300)), LiquidPlan.WeighedLyeLiquid(Liquid.Water.Weighing(Mass.FromGrams(300)))];
        Assert.Equal([30.0, 200, 38], shares.Select(s => Math.Round(s.Share!.Value.Percent, 9)));
        Assert.All(shares, s => Assert.Null(s.Mass));
        Assert.All(masses, m => Assert.Equal(300, m.Mass!.Value.Grams));
        Assert.All(masses, m => Assert.Null(m.Share));
    }

    [Fact]
    public void Scaling_KeepsEachWaterRule()
    {
        Formula formula = Kilogram(AlkaliPlan.ForSuperfat(Ratio.Zero, s_soda));
        Assert.Equal((LiquidPlan.TotalWater(Mass.FromGrams(800)), 800), (formula.ScaledBy(2).Liquids, formula.ScaledBy(2).Balance().AllWater.Grams));
        LiquidPlan lye = LiquidPlan.LyeConcentration(Ratio.FromPercent(30));
        Assert.Equal(lye, (formula with { Liquids = lye }).ScaledBy(2).Liquids);
        Assert.Contains("without fat", Assert.Throws<InvalidOperationException>(() => FormulaTests.Plain().ScaledTo(Mass.FromGrams(1))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ColdLiquid_IsNotFrozen()
    {
        LiquidPlan plan = LiquidPlan.LyeConcentration(Ratio.FromPercent(30));
        Assert.Equal((false, 7), (plan.DissolvingIn(Liquid.Water, Temperature.FromDegreesCelsius(7)).LyeLiquid.IsFrozen, plan.DissolvingIn(Liquid.Water, Temperature.FromDegreesCelsius(7)).LyeLiquid.Temperature!.Value.DegreesCelsius));
        Assert.True(plan.DissolvingInFrozen(Liquid.Water, Temperature.FromDegreesCelsius(-7)).LyeLiquid.IsFrozen);
        Assert.False(plan.DissolvingIn(Liquid.Water).LyeLiquid.IsFrozen);
    }

    [Fact]
    public void WeighedAlkaliOfNoMass_LeavesAllFatAsItIs()
    {
        LyeBalance balance = Kilogram(AlkaliPlan.Weighed(s_soda.Weighing(Mass.Zero), s_flakes.Weighing(Mass.Zero))).Balance();
        Assert.Equal((0, 100), (balance.AlkaliAsWeighed.Grams, balance.SuperfatOfAllFat!.Value.Percent));
        // parts alike where no mass says how they share
        Assert.Equal((39.997 + 56.105) / 2, Kilogram(AlkaliPlan.Weighed(s_soda.Weighing(Mass.Zero), s_flakes.Weighing(Mass.Zero))).Alkali.Mix.PurePerMole, 9);
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("fats", true)]
    [InlineData("fats[castor]", true)]
    [InlineData("fats[castor].mass", true)]
    [InlineData("fats[castor].mas", false)]
    [InlineData("fats[cast", false)]
    [InlineData("alkali", false)]
    [InlineData("fats[castor].mass.unit", false)]
    public void ASuppression_CoversItsPlaceAndWhatIsBelow(string path, bool covers) =>
        Assert.Equal(covers, new Suppression("SFY2001", path, "known").Covers(FormulaPath.Root.Member("fats").Item(1, "castor").Member("mass")));

    [Fact]
    public void Null_IsRefusedWhereItIsGiven()
    {
        Mass gram = Mass.FromGrams(1);
        Assert.Equal("fat", Assert.Throws<ArgumentNullException>(() => ((Fat)null!).Weighing(gram)).ParamName);
        Assert.Equal("fat", Assert.Throws<ArgumentNullException>(() => ((Fat)null!).Pouring(Volume.FromMilliliters(1))).ParamName);
        Assert.Equal("liquid", Assert.Throws<ArgumentNullException>(() => ((Liquid)null!).Weighing(gram)).ParamName);
        Assert.Equal("liquid", Assert.Throws<ArgumentNullException>(() => ((Liquid)null!).Pouring(Volume.FromMilliliters(1))).ParamName);
        Assert.Equal("alkali", Assert.Throws<ArgumentNullException>(() => ((Alkali)null!).Weighing(gram)).ParamName);
        Assert.Equal("alkali", Assert.Throws<ArgumentNullException>(() => ((Alkali)null!).ShareOfMass(Ratio.FromPercent(1))).ParamName);
        Assert.Equal("additive", Assert.Throws<ArgumentNullException>(() => ((Additive)null!).AmountUnknown()).ParamName);
        Assert.Equal("portion", Assert.Throws<ArgumentNullException>(() => LiquidPlan.WeighedLyeLiquid(null!)).ParamName);
        Assert.Equal("liquid", Assert.Throws<ArgumentNullException>(() => LiquidPlan.TotalWater(gram).DissolvingIn(null!)).ParamName);
        Assert.Throws<ArgumentNullException>(() => FatBlend.Of(null!));
        Assert.Throws<ArgumentNullException>(() => FatBlend.Of((null!, Ratio.FromPercent(100))));
        Assert.Equal("path", Assert.Throws<ArgumentNullException>(() => new Suppression("SFY2001", null!, "known")).ParamName);
        Assert.Equal("reason", Assert.Throws<ArgumentNullException>(() => new Suppression("SFY2001", "", null!)).ParamName);
        Assert.Throws<ArgumentException>(() => FormulaPath.Root.Member(""));
        Assert.Throws<ArgumentException>(() => FormulaPath.Root.Item(0, ""));
        Assert.Equal("/fats/0", FormulaPath.Root.Member("fats").Item(0, "a").ToJsonPointer());
    }
}
