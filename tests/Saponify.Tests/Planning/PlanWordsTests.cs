using Saponify.Tests.Formulas;
using Saponify.Tests.Support;
using UnitsNet.Units;

namespace Saponify.Tests.Planning;

/// <summary>Plans, batches and margins as their readers see them, with everything in them that can be said; made-up materials, so that no table changes them.</summary>
public class PlanWordsTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;
    private static readonly Alkali s_soda = Alkali.SodiumHydroxide(Ratio.FromPercent(98)), s_flakes = Alkali.PotassiumHydroxide(Ratio.FromPercent(90));
    private static readonly Acid s_twice = new("twice", "Twin acid", MolarMass.FromGramsPerMole(100), 1, 1);

    private static Mass Grams(double grams) => Mass.FromGrams(grams);

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    private static SaponificationValue Value(double value) => SaponificationValue.FromMilligramsKohPerGram(value);

    private static Fat Ranged(double low, double high) => new("ranged", "Ranged fat", FatClass.Triglyceride, new()
    {
        Saponification = new(Value((low + high) / 2), Evidence.Standard, ["made up for this test"]) { Low = Value(low), High = Value(high) },
    });

    private static readonly Fat s_exact = Fat.Own("exact", "Exact fat", Value(200), "made up for this test");
    private static readonly Fat s_single = new("single", "Single fat", FatClass.Triglyceride, new() { Saponification = new(Value(190), Evidence.Measured, ["made up for this test"]) });
    private static readonly Additive s_odd = new("odd", "Odd powder", AdditiveKind.Other, Stage.Trace, new() { Fat = Percent(20), Acid = Percent(10), Protein = Percent(30) });
    private static readonly Additive s_butter = new("nut-butter", "Nut butter", AdditiveKind.Other, Stage.Trace, new() { Fat = Percent(50), FatKind = new("nut", "Nut oil", FatClass.Triglyceride, new()) });
    private static readonly Additive s_twin = new("twin", "Twin salt", AdditiveKind.Other, Stage.LyeLiquid, new() { Acid = Percent(50), AcidKind = s_twice });

    private static Formula Everything => new("Everything a plan can say")
    {
        Fats =
        [
            Ranged(180, 200).Weighing(Grams(500)),
            s_exact.WithLot(new() { Name = "L-7", Source = "certificate", Saponification = Value(201) }).Weighing(Grams(300)),
            s_exact.Weighing(Grams(100)) with { Line = "own" },
            s_single.Weighing(Grams(100)).AtTrace(),
        ],
        Alkali = AlkaliPlan.ForSuperfat(Percent(6), s_soda.ShareOfHydroxide(Percent(75)) with { Line = "soda" }, s_flakes.ShareOfHydroxide(Percent(25))).OfListedFats(),
        Liquids = LiquidPlan.LyeConcentration(Percent(30)).DissolvingInFrozen(Liquid.Water, Temperature.FromDegreesCelsius(-10))
            .HoldingBack(s_pantry.Liquid("oat-drink").Weighing(Grams(60)).At(Temperature.FromDegreesCelsius(20)), s_pantry.Liquid("water").Weighing(Grams(20))),
        Additives =
        [
            s_pantry.Additive("kaolin").ShareOfFats(Percent(1)).At(Stage.Fats),
            s_odd.Weighing(Grams(10)),
            s_butter.Weighing(Grams(10)),
            s_twin.Weighing(Grams(10)),
            s_pantry.Additive("fragrance-oil").AmountUnknown(),
            s_pantry.Additive("citric-acid-monohydrate").AmountUnknown().At(Stage.LyeLiquid),
            s_pantry.Additive("calendula-petals").Weighing(Grams(3)).At(Stage.Top),
        ],
    };

    [Fact]
    public void APlan_SaysEverythingThereIsToSay() => Golden.Matches(Everything.Plan().ToString(), "plans", "words", "everything.txt");

    [Fact]
    public void APlanWithoutMuch_SaysWhatIsMissing()
    {
        Formula late = FormulaTests.Plain(s_exact.Weighing(Grams(500)).AtTrace()) with
        {
            Alkali = AlkaliPlan.Weighed(s_soda.Weighing(Grams(75))),
            Liquids = LiquidPlan.TotalWater(Grams(100)).DissolvingIn(new Liquid("sour", "Sour milk", new() { Water = Percent(20), Fat = Percent(79), FatKind = s_exact })),
        };
        Golden.Matches(late.Plan().ToString(), "plans", "words", "late-fat-alone.txt");
    }

    [Fact]
    public void APlanWithObstacles_SaysWhatStops()
    {
        Fat unknown = new("unknown", "Unknown oil", FatClass.Triglyceride, new());
        Formula formula = FormulaTests.Plain(unknown.Weighing(Grams(500))) with { Additives = [s_pantry.Additive("citric-acid-monohydrate").Weighing(Grams(50))], Alkali = AlkaliPlan.Weighed(s_soda.Weighing(Grams(10))) };
        Formula wet = FormulaTests.Plain(s_exact.Weighing(Grams(500))) with { Liquids = LiquidPlan.TotalWater(Grams(100)).HoldingBack(s_pantry.Liquid("water").Weighing(Grams(150))) };
        Formula fatty = FormulaTests.Plain(s_exact.Weighing(Grams(500))) with { Liquids = LiquidPlan.LyeConcentration(Percent(2)).DissolvingIn(s_pantry.Liquid("heavy-cream")) };
        Formula dry = FormulaTests.Plain(s_exact.Weighing(Grams(500))) with { Liquids = LiquidPlan.TotalWater(Mass.Zero) };
        // 200 g of water held back are more than a lye of 40 or 25 % over all water has
        Formula drowned = FormulaTests.Plain(s_exact.Weighing(Grams(300))) with { Liquids = LiquidPlan.LyeConcentration(Percent(15)).HoldingBack(s_pantry.Liquid("water").Weighing(Grams(200))) };
        Formula huge = FormulaTests.Plain(s_exact.Weighing(Grams(9.9e8)));
        Golden.Matches(string.Join('\n', new[] { formula, wet, fatty, dry, drowned, huge }.Select(f => f.Plan().ToString())), "plans", "words", "obstacles.txt");
    }

    [Fact]
    public void WhatMayTakeUpLye_IsListedWithItsReason()
    {
        string[] lines = [.. Everything.Plan().PossibleUptake.Select(p => FormattableString.Invariant($"{p.Path}|{p.What}|{p.Why}|{p.AtMost?.Grams:0.000}"))];
        Assert.Contains("additives[odd]|fat in Odd powder|its fat is of unknown kind|", lines);
        Assert.Contains("additives[odd]|acid in Odd powder|its acid is of unknown kind|", lines);
        Assert.Contains("additives[nut-butter]|fat in Nut butter|its fat has no usable saponification value|", lines);
        // 10 g of half an acid of 100 g/mol, one proton more: 0.05 mol, three quarters of it sodium hydroxide of 98 %, a quarter potassium hydroxide of 90 %
        Assert.Contains(FormattableString.Invariant($"additives[twin]|Twin acid in Twin salt|not every proton is given up in soap|{0.05 * ((0.75 * 39.997 / 0.98) + (0.25 * 56.105 / 0.9)):0.000}"), lines);
        Assert.Contains("additives[citric-acid-monohydrate]|Citric acid, monohydrate|its amount is not known|", lines);
        Assert.DoesNotContain(lines, l => l.StartsWith("additives[fragrance-oil]", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, l => l.StartsWith("additives[kaolin]", StringComparison.Ordinal));
    }

    [Fact]
    public void ALineOfAnAdditiveWithoutMass_TakesUpNothing()
    {
        Formula formula = Everything with { Additives = [s_odd.Weighing(Mass.Zero), s_twin.Weighing(Mass.Zero)] };
        Assert.DoesNotContain(formula.Plan().PossibleUptake, p => p.Path.ToString().StartsWith("additives", StringComparison.Ordinal));
        Assert.DoesNotContain(formula.Plan().Water, w => w.Path.ToString().StartsWith("additives", StringComparison.Ordinal));
    }

    [Fact]
    public void LinesOfTheAlkalis_KeepTheirIds()
    {
        BatchPlan plan = Everything.Plan();
        Assert.Equal(["soda", "potassium-hydroxide"], plan.Alkalis.Select(a => a.Line));
        // a share of the listed fats becomes a mass, what is not known stays unknown
        Assert.Equal(["10", "10", "10", "10", "", "", "3"], plan.Additives.Select(a => a.Mass is { } mass ? Math.Round(mass.Grams, 9).ToString(System.Globalization.CultureInfo.InvariantCulture) : ""));
    }

    private static WeighedBatch Bench() => WeighedBatch.Start(new Formula("Bench")
    {
        Fats = [s_exact.Weighing(Grams(700)), Ranged(180, 200).Weighing(Grams(300))],
        Alkali = AlkaliPlan.ForSuperfat(Percent(5), s_soda.ShareOfHydroxide(Percent(75)), s_flakes.ShareOfHydroxide(Percent(25))),
        Liquids = LiquidPlan.LyeConcentration(Percent(30)).HoldingBack(s_pantry.Liquid("heavy-cream").Weighing(Grams(30))),
        Additives = [s_pantry.Additive("kaolin").Weighing(Grams(10))],
    }.Plan());

    private const string Soda = "alkali.alkalis[sodium-hydroxide]", Potash = "alkali.alkalis[potassium-hydroxide]";

    [Fact]
    public void ABatch_SaysWhereItStandsAndWhatCanBeDone()
    {
        WeighedBatch start = Bench();
        WeighedBatch fats = start.Weigh("fats[exact]", Grams(735)).Weigh("fats[ranged]", Grams(300.1));
        WeighedBatch all = fats.Weigh(Soda, start.Lines.Single(l => l.Path.ToString() == Soda).PlannedGrams is var soda ? Grams(soda * 1.2) : default)
            .Weigh(Potash, Grams(start.Lines.Single(l => l.Path.ToString() == Potash).PlannedGrams)).Weigh("liquids.lyeLiquid", Grams(290)).Weigh("liquids.heldBack[heavy-cream]", Grams(30)).Weigh("additives[kaolin]", Grams(9));
        WeighedBatch light = all.Weigh(Soda, Grams(40)).WithAlkaliIn();
        Golden.Matches(string.Join("\n", [start.ToString(), fats.ToString(), all.ToString(), all.WithAlkaliIn().ToString(), light.ToString(), all.WhenPoured().ToString(), light.WhenPoured().ToString(),
            all.ToText(new(Grams(2)), new(Grams(0.5)))]), "batches", "bench.txt");
    }

    [Fact]
    public void ABatchOfWeighedAlkali_HasNothingToAim_AndNoFatIsLyeHeavy()
    {
        WeighedBatch own = WeighedBatch.Start((FormulaTests.Plain(s_exact.Weighing(Grams(500))) with { Alkali = AlkaliPlan.Weighed(s_soda.Weighing(Grams(65))) }).Plan());
        WeighedBatch none = own.Weigh("fats[exact]", Mass.Zero).Weigh(Soda, Grams(65));
        Golden.Matches(own + "\n" + none, "batches", "weighed-alkali.txt");
    }

    [Fact]
    public void AWax_IsNeverOfferedAgainstLye()
    {
        Fat wax = new("wax", "Some wax", FatClass.Wax, new() { Saponification = new(Value(95), Evidence.Standard, ["made up for this test"]) });
        WeighedBatch batch = WeighedBatch.Start(FormulaTests.Plain(s_exact.Weighing(Grams(500)), wax.Weighing(Grams(20))).Plan());
        WeighedBatch heavy = batch.Weigh(Soda, batch.Lines.Single(l => l.Path.ToString() == Soda).PlannedGrams is var soda ? Grams(soda * 1.1) : default);
        Assert.Equal(["exact"], heavy.Choices.Where(c => c.Kind == BatchChoiceKind.AddFat).Select(c => c.Fat!.Id));
    }

    [Fact]
    public void ASuperfatOfAllTheLye_CantBeReachedByFat()
    {
        Formula none = FormulaTests.Plain(s_exact.Weighing(Grams(500))) with { Alkali = AlkaliPlan.ForSuperfat(Percent(100), s_soda), Liquids = LiquidPlan.TotalWater(Grams(200)) };
        WeighedBatch batch = WeighedBatch.Start(none.Plan()).Weigh(Soda, Grams(10)).WithAlkaliIn();
        Assert.Equal([BatchChoiceKind.Accept], batch.Choices.Select(c => c.Kind));
    }

    [Fact]
    public void ASuperfatOfTheListedFats_IsAimedAtOnTheBenchToo()
    {
        // 500 g of saponification value 200, 100 g of cream with fat of its own; alkali for 95 % of the listed fat alone
        Formula formula = FormulaTests.Plain(s_exact.Weighing(Grams(500))) with
        {
            Alkali = AlkaliPlan.ForSuperfat(Percent(5), s_soda).OfListedFats(),
            Liquids = LiquidPlan.LyeConcentration(Percent(30)).HoldingBack(new Liquid("cream", "Some cream", new() { Water = Percent(60), Fat = Percent(40), FatKind = s_exact }).Weighing(Grams(100))),
        };
        WeighedBatch batch = WeighedBatch.Start(formula.Plan()).Weigh("fats[exact]", Grams(550));
        double alkali = 550 * 200 / 56105.0 * 0.95 * 39.997 / 0.98;
        Assert.Equal(alkali, Assert.Single(batch.AlkaliToWeigh).Mass.Grams, 6);
        // 30 % of all water: 70 g of water to 30 g of pure alkali, less the 60 g in the cream
        Assert.Equal((alkali * 0.98 * 70 / 30) - 60, batch.LiquidToWeigh!.Mass.Grams, 6);
    }

    [Fact]
    public void AMargin_SaysWhereItsDoubtComesFrom()
    {
        static Formula Of(Fat fat, Purity purity) => FormulaTests.Plain(fat.Weighing(Grams(1000))) with { Alkali = AlkaliPlan.ForSuperfat(Percent(5), Alkali.SodiumHydroxide(purity)) };
        Purity certain = Purity.Certified(Percent(98));
        Margin[] margins =
        [
            Of(s_exact, certain).Plan().Margin(null)!,                                       // nothing in doubt
            Of(s_single, certain).Plan().Margin(null)!,                                      // one sample, no range stated
            Of(Ranged(180, 200), certain).Plan().Margin(null)!,                              // lye-heavy at worst
            Of(Ranged(199, 201), Purity.AtLeast(Percent(96))).Plan().Margin(new(Grams(1)) { Accuracy = Percent(0.1) }, new(Grams(0.1)) { Accuracy = Percent(0.1) }, Percent(99))!,
            Everything.Plan().Margin(new(Grams(5)))!,
        ];
        Golden.Matches(string.Join("\n", margins.Select(m => m + "\n" + m.ToHtml())), "margins", "words.txt");
    }

    [Theory]
    [InlineData(0, "no")]
    [InlineData(0.00009, "less than 0.01 %")]
    [InlineData(0.0001, "0.01 %")]
    [InlineData(0.25, "25 %")]
    public void AProbability_IsNeverCalledNoneWhileThereIsSome(double probability, string shown) => Assert.Equal(shown, MarginText.Probability(probability));

    [Theory]
    [InlineData(0.05, "5.00 %")]
    [InlineData(0.049999, "4.99 %")]
    [InlineData(0.049999999999, "5.00 %")]                        // noise of the arithmetic
    [InlineData(-0.00001, "-0.01 %")]
    public void ASuperfat_IsCut_NotRounded(double superfat, string shown) => Assert.Equal(shown, PlanText.Cut(superfat));

    [Fact]
    public void APlan_IsPrintedInTheUnitOfMostFats()
    {
        static MassUnit Unit(params Mass[] masses) => PlanSheet.UsualUnit(FormulaTests.Plain([.. masses.Select((m, i) => s_exact.Weighing(m) with { Line = "fat " + i })]));
        Mass ounce = Mass.FromOunces(1), gram = Grams(1), stone = Mass.FromStone(1);
        Assert.Equal(MassUnit.Gram, Unit(ounce, gram, gram));
        Assert.Equal(MassUnit.Ounce, Unit(ounce, ounce, gram));
        Assert.Equal(MassUnit.Ounce, Unit(ounce, gram));                  // the first of two
        Assert.Equal(MassUnit.Ounce, Unit(stone, stone, ounce));          // no amount is written in stones
        Assert.Equal(MassUnit.Gram, Unit(stone));
        Assert.Equal((MassUnit.Kilogram, MassUnit.Gram), (new Scale(Mass.FromKilograms(0.001)).Unit, new Scale(Mass.FromStone(0.001)).Unit));
    }

    [Fact]
    public void TheCoarseScaleOfTheAlkali_WeighsNothingElse()
    {
        Formula formula = new("Two scales")
        {
            Fats = [s_exact.Weighing(Grams(3))],
            Alkali = AlkaliPlan.ForSuperfat(Percent(5), s_soda),
            Liquids = LiquidPlan.TotalWater(Grams(6)).HoldingBack(s_pantry.Liquid("milk-goat").Weighing(Grams(3))),
            Additives = [s_pantry.Additive("kaolin").Weighing(Grams(2))],
        };
        ScalePlan plan = formula.Plan().OnScale(new(Grams(0.01)), new(Grams(5)));
        Assert.Equal(["fats[exact]", "alkali.alkalis[sodium-hydroxide]", "liquids.lyeLiquid", "liquids.heldBack[milk-goat]", "additives[kaolin]"], plan.Lines.Select(l => l.Path.ToString()));
        Assert.Equal("alkali.alkalis[sodium-hydroxide]", Assert.Single(plan.Obstacles).Path.ToString());
    }

    [Fact]
    public void LyeDissolvedInAnotherLiquidThanPlanned_IsNotReckonedAnew()
    {
        WeighedBatch batch = Bench().LyeLiquidWas(s_pantry.Liquid("milk-goat")).Weigh("fats[exact]", Grams(800));
        Assert.Equal(batch.Lines.Single(l => l.Path.ToString() == "liquids.lyeLiquid").PlannedGrams, batch.LiquidToWeigh!.Mass.Grams, 9);
    }

    [Fact]
    public void WhatIsNotThere_BringsNoDoubt_AndAWaxIsCountedLow()
    {
        Fat wax = new("wax", "Some wax", FatClass.Wax, new() { AcidValue = new(Value(20), Evidence.Standard, ["made up for this test"]) });
        Additive fatty = new("fatty", "Fatty powder", AdditiveKind.Other, Stage.Trace, new() { Fat = Percent(50), FatKind = s_exact });
        Margin margin = (FormulaTests.Plain(s_exact.Weighing(Grams(500)), wax.Weighing(Grams(10)), Ranged(180, 200).Weighing(Mass.Zero)) with { Additives = [fatty.Weighing(Mass.Zero)] }).Plan().Margin(new(Grams(1)))!;
        Assert.DoesNotContain(margin.Causes, c => c.What.Contains("Fatty powder", StringComparison.Ordinal) || c.What.Contains("Ranged fat", StringComparison.Ordinal));
        Assert.Empty(margin.NoData);
    }
}
