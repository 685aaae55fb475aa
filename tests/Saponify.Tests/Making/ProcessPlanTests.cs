using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Formulas;
using Saponify.Tests.Support;
using static Saponify.Tests.Making.Jugs;

namespace Saponify.Tests.Making;

/// <summary>The temperature plan of a formula.</summary>
public class ProcessPlanTests
{
    public static TheoryData<string> Examples => [.. Repository.Examples.Select(f => Path.GetFileNameWithoutExtension(f))];

    private static Formula Example(string name) => FormulaFile.Read(File.ReadAllBytes(Repository.Path("data", "examples", name + ".json")), Pantry.Reference).Formula!;

    /// <summary>A kitchen of 21 degrees, water of 18, a plastic jug, fats of 45, lye let down to 38.</summary>
    private static ProcessSetup Kitchen => new()
    {
        Room = C(21),
        Water = C(18),
        HeldBack = C(5),
        Fats = C(45),
        Lye = C(38),
        MilkLimit = C(40),
        Vessel = new(VesselMaterial.Of("polypropylene"), Volume.FromLiters(1.5), Length.FromCentimeters(12), Mass.FromGrams(140)),
        LeastHeadspace = Ratio.FromPercent(40),
    };

    [Theory]
    [MemberData(nameof(Examples))]
    public void Text_OfAnExample(string name) => Golden.Matches(Example(name).Plan().Process(Kitchen).ToString(), "process", name + ".txt");

    [Fact]
    public void Text_IsTheSameInEveryCulture()
    {
        string invariant = Example("oat-and-cream").Plan().Process(Kitchen).ToString();
        foreach (string culture in InCulture.Names)
            Assert.Equal(invariant, InCulture.Run(culture, () => Example("oat-and-cream").Plan().Process(Kitchen).ToString()));
    }

    [Fact]
    public void WhatIsNotGiven_IsAskedFor()
    {
        ProcessPlan nothing = Example("oat-and-cream").Plan().Process(ProcessSetup.Unknown);
        // the formula states its liquids
        Assert.Equal([ProcessInput.Room, ProcessInput.Fats, ProcessInput.Lye, ProcessInput.Vessel], nothing.Questions.Select(q => q.Input));
        Assert.Null(nothing.Lye);
        Assert.Null(nothing.WithFats);
        Assert.Null(nothing.CoolingTime);
        ProcessPlan shaving = Example("shaving-soap").Plan().Process(ProcessSetup.Unknown);
        Assert.Equal([ProcessInput.Room, ProcessInput.Water, ProcessInput.Fats, ProcessInput.Lye, ProcessInput.Vessel], shaving.Questions.Select(q => q.Input));
        Assert.Equal(FormulaPath.LyeLiquid, shaving.Questions[1].Path);
        ProcessPlan iced = Example("shaving-soap").Plan().Process(Kitchen with { IceShare = Ratio.FromPercent(20) });
        Assert.Equal([ProcessInput.Ice], iced.Questions.Select(q => q.Input));
        Assert.Empty(Example("shaving-soap").Plan().Process(Kitchen).Questions);
    }

    [Fact]
    public void AFatThatMeltsAboveEveryKettle_IsNoException()
    {
        Figure<Temperature> melting = new(C(230), Evidence.Measured, ["made up for this test"]) { Low = C(220), High = C(240) };
        Fat hard = new("hard", "Hard fat", FatClass.Triglyceride, new() { Saponification = new(SaponificationValue.FromMilligramsKohPerGram(190), Evidence.Measured, ["made up for this test"]), Melting = melting });
        ProcessStep warming = FormulaTests.Plain(hard.Weighing(Mass.FromGrams(500))).Plan().Process(Kitchen).Steps[0];
        Assert.Equal(C(240), warming.Temperature);
        Assert.Contains(warming.Notes, n => n.StartsWith("At 45 °C Hard fat", StringComparison.Ordinal));
        Assert.DoesNotContain(warming.Notes, n => n.Contains("kJ", StringComparison.Ordinal));
    }

    [Fact]
    public void LyeOfFrozenSpirit_IsNoException()
    {
        Liquid spirit = new("spirit", "Cold spirit", new() { Alcohol = Ratio.FromPercent(100) });
        Formula formula = FormulaTests.Plain(Pantry.Reference.Fat("olive-oil").Weighing(Mass.FromGrams(500))) with
        {
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.SodiumHydroxideSolution(Ratio.FromPercent(5))),
            Liquids = LiquidPlan.WeighedLyeLiquid(spirit.Weighing(Mass.FromGrams(50_000)).FrozenAt(C(-80))).HoldingBack(Pantry.Reference.Liquid("milk-goat").Weighing(Mass.FromGrams(50))),
        };
        ProcessPlan plan = formula.Plan().Process(Kitchen);
        Assert.NotEmpty(plan.Steps);
        Assert.Null(plan.WithHeldBack);
        Assert.Null(plan.WithFats);
        Assert.Contains("Cold spirit", plan.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_ComeInTheOrderOfTheWork()
    {
        ProcessPlan plan = Example("oat-and-cream").Plan().Process(Kitchen);
        Assert.Equal([ProcessStepKind.WarmFats, ProcessStepKind.DissolveAlkali, ProcessStepKind.CoolLye, ProcessStepKind.JoinHeldBack, ProcessStepKind.JoinFats, ProcessStepKind.AddLateFats], plan.Steps.Select(s => s.Kind));
        Assert.Equal([Claim.Estimate, Claim.UpperBound, Claim.Given, Claim.Estimate, Claim.Estimate, Claim.Estimate], plan.Steps.Select(s => s.Claim));
        Assert.Equal(plan.Lye!.Peak, plan.Steps[1].Temperature);
        Assert.Equal(plan.WithHeldBack!.MixedTemperature, plan.Steps[3].Temperature);
        Assert.Equal(plan.WithFats!.MixedTemperature, plan.Steps[4].Temperature);
        Assert.Equal(plan.CoolingTime, plan.Steps[2].Time);
    }

    [Fact]
    public void FormulaTemperatures_WinOverTheCircumstances()
    {
        ProcessPlan plan = Example("oat-and-cream").Plan().Process(Kitchen with { Water = C(60), HeldBack = C(30) });
        Assert.Equal(10, plan.Lye!.Jug.Liquids[0].Temperature!.Value.DegreesCelsius, 9);
        Assert.All(plan.WithHeldBack!.Liquids, l => Assert.Equal(5, l.Temperature!.Value.DegreesCelsius, 9));
    }

    [Fact]
    public void TemperatureWantedInThePot_DecidesTheLye()
    {
        ProcessPlan plan = Example("market-day-bar").Plan().Process(Kitchen with { Lye = null, Mixed = C(43) });
        Assert.Equal(43, plan.WithFats!.MixedTemperature.Celsius(), 9);
        Assert.InRange(plan.LyeTemperature.Celsius(), 35, 43);
        ProcessPlan hopeless = Example("market-day-bar").Plan().Process(Kitchen with { Lye = null, Mixed = C(90) });
        Assert.Null(hopeless.LyeTemperature);
        Assert.Contains(hopeless.Steps, s => s.Notes.Any(n => n.Contains("warm or cool the fats instead", StringComparison.Ordinal)));
    }

    [Fact]
    public void MilkPastItsLimit_IsSaid_WithWhatKeepsItCool()
    {
        ProcessPlan plan = Example("oat-and-cream").Plan().Process(Kitchen with { MilkLimit = C(35) });
        Assert.True(plan.WithHeldBack!.MixedTemperature.Celsius() > 35);
        Assert.Contains(plan.Steps[2].Notes, n => n.StartsWith("The held-back milk would pass your limit of 35 °C: cool the lye to", StringComparison.Ordinal));
        Assert.Contains(plan.Steps[3].Notes, n => n.StartsWith("ABOVE your limit", StringComparison.Ordinal));
        ProcessPlan silent = Example("oat-and-cream").Plan().Process(Kitchen with { MilkLimit = null });
        Assert.DoesNotContain(silent.Steps, s => s.Notes.Any(n => n.Contains("limit", StringComparison.Ordinal)));
    }

    [Fact]
    public void PotashThatBoils_IsSaid()
    {
        Formula soft = new("Soft soap")
        {
            Fats = [Pantry.Reference.Fat("olive-oil").Weighing(Mass.FromGrams(500))],
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(4), Alkali.PotassiumHydroxide(Ratio.FromPercent(100))),
            Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(36)),
        };
        Assert.Contains(soft.Plan().Process(Kitchen).Steps[1].Notes, n => n.StartsWith("IT MAY BOIL: it boils at 12", StringComparison.Ordinal));
        Assert.DoesNotContain(soft.Plan().Process(Kitchen with { IceShare = Ratio.FromPercent(80), Ice = C(-18) }).Steps[1].Notes, n => n.Contains("BOIL", StringComparison.Ordinal));
    }

    [Fact]
    public void StrongerThanTheFigures_IsSaid()
    {
        Formula strong = Example("market-day-bar") with { Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(51)) };
        ProcessPlan plan = strong.Plan().Process(Kitchen);
        Assert.Null(plan.Lye!.Peak);
        Assert.Contains(plan.Steps[1].Notes, n => n.Contains("no figures beyond 50 %", StringComparison.Ordinal));
        Assert.Null(plan.WithFats);
        Assert.Equal(VesselFindingKind.NoFigures, Assert.Single(plan.VesselFindings).Kind);
    }

    [Fact]
    public void BeerAndMilkInTheJug_AreWarnedOf_AndTheirPeakIsNoBound()
    {
        Liquid stout = new("stout", "Stout", new Contents { Water = Ratio.FromPercent(90), Alcohol = Ratio.FromPercent(5), Sugar = Ratio.FromPercent(3) });
        Formula beer = Example("market-day-bar") with { Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(29)).DissolvingIn(stout) };
        ProcessStep step = beer.Plan().Process(Kitchen).Steps[1];
        Assert.Equal(Claim.Estimate, step.Claim);
        Assert.Contains(step.Notes, n => n.StartsWith("The alcohol in it boils from 78 °C on", StringComparison.Ordinal));
        Assert.Contains(step.Notes, n => n.StartsWith("Sugar in lye browns", StringComparison.Ordinal));
        Assert.Contains(step.Notes, n => n.StartsWith("That is above your limit of 40 °C for milk", StringComparison.Ordinal));
        Assert.Equal(Claim.UpperBound, Example("market-day-bar").Plan().Process(Kitchen).Steps[1].Claim);
    }

    [Fact]
    public void SolidLateFat_IsMeltedFirst()
    {
        Formula late = Example("market-day-bar");
        late = late with { Fats = [.. late.Fats, Pantry.Reference.Fat("cocoa-butter").Weighing(Mass.FromGrams(50)).AtTrace(), Pantry.Reference.Fat("jojoba-oil").Weighing(Mass.FromGrams(50)).AtTrace()] };
        ProcessStep step = late.Plan().Process(Kitchen).Steps[^1];
        Assert.Equal(ProcessStepKind.AddLateFats, step.Kind);
        Assert.Equal("Cocoa butter melts at 31 to 34 °C: melt it first, to 34 °C or more.", step.Notes[0]);
        Assert.EndsWith("is liquid at 21 °C.", step.Notes[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Fahrenheit_RunsThrough()
    {
        string text = Example("market-day-bar").Plan().Process(Kitchen with { Room = Temperature.FromDegreesFahrenheit(70), Vessel = new(VesselMaterial.Of("soda-lime-glass"), Volume.FromLiters(1), Length.FromCentimeters(10), Mass.FromGrams(300)) }).ToString();
        Assert.Contains("room 70 °F", text, StringComparison.Ordinal);
        Assert.Contains("72 °F when new", text.ReplaceLineEndings(" ").Replace("      ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("°C", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Obstacles_LeaveNothingToDo()
    {
        Formula none = Example("market-day-bar") with { Fats = [] };
        ProcessPlan plan = none.Plan().Process(Kitchen);
        Assert.Empty(plan.Steps);
        Assert.Null(plan.Lye);
        Assert.Contains("This batch can't be weighed", plan.ToString(), StringComparison.Ordinal);
    }

    [Law]
    public Property Process_NeverThrows_AndEveryNumberIsFinite() => Prop.ForAll(Any.Formulas.Arbitrary(), Gen.Choose(0, 1023).Arbitrary(), (formula, bits) =>
    {
        T? Maybe<T>(int bit, T value) where T : struct => (bits & (1 << bit)) != 0 ? value : null;
        ProcessPlan plan = formula.Plan().Process(new()
        {
            Room = Maybe(0, C(22)), Water = Maybe(1, C(18)), HeldBack = Maybe(2, C(5)), Fats = Maybe(3, C(40)), Lye = Maybe(4, C(35)), Mixed = Maybe(5, C(38)),
            MilkLimit = Maybe(6, C(33)), IceShare = Maybe(7, Ratio.FromPercent(40)), Ice = C(-18), LeastHeadspace = Maybe(8, Ratio.FromPercent(30)),
            Vessel = (bits & 512) != 0 ? Kitchen.Vessel : null,
        });
        double?[] numbers =
        [
            plan.Lye?.Peak?.DegreesCelsius, plan.Lye?.PeakOfHydrate?.DegreesCelsius, plan.Lye?.HeatReleased?.Joules, plan.WithFats?.MixedTemperature?.DegreesCelsius,
            plan.WithHeldBack?.MixedTemperature?.DegreesCelsius, plan.CoolingTime?.Value.Seconds, plan.LyeTemperature?.DegreesCelsius, plan.Lye?.VolumeAt(C(20))?.Milliliters,
        ];
        return plan.ToString().Length > 20 && numbers.All(n => n is null || double.IsFinite(n.Value)) && (plan.Steps.Count == 0) == (plan.Plan.Obstacles.Count > 0)
            && !plan.ToString().Contains("NaN", StringComparison.Ordinal);
    });
}
