using Saponify.Tests.Formulas;
using Saponify.Tests.Support;
using static Saponify.Tests.Making.Jugs;

namespace Saponify.Tests.Making;

/// <summary>Temperatures, moulds and cures as their readers see them, in kitchens where everything happens that can be said; made-up fats and liquids, so that no table of them changes it.</summary>
public class MakingWordsTests
{
    private static readonly ValueList<string> s_invented = ["made up for this test"];
    private static readonly Alkali s_soda = Alkali.SodiumHydroxide(Percent(98)), s_flakes = Alkali.PotassiumHydroxide(Percent(86));

    private static readonly Fat s_soft = Of("soft", "Soft fat", 22, 26, Evidence.Measured), s_hard = Of("hard", "Hard fat", 48, 52, Evidence.Memory), s_thin = Of("thin", "Thin oil", -10, 5, Evidence.Standard);
    private static readonly Fat s_unread = Fat.Own("unread", "Unread oil", SaponificationValue.FromMilligramsKohPerGram(190), "made up for this test");

    private static readonly Liquid s_milk = new("milk", "Some milk", new() { Water = Percent(88), Fat = Percent(4), FatKind = s_soft, Sugar = Percent(5), Protein = Percent(3) });
    private static readonly Liquid s_brew = new("brew", "Some brew", new() { Water = Percent(90), Alcohol = Percent(5), Sugar = Percent(5) });
    private static readonly Liquid s_tea = new("tea", "Some tea", new() { Water = Percent(100) });

    private static Vessel Jug => new(VesselMaterial.Of("polypropylene"), Volume.FromMilliliters(1500), Length.FromCentimeters(12), Grams(140));

    private static Vessel Glass => new(VesselMaterial.Of("soda-lime-glass"), Volume.FromMilliliters(450), Length.FromCentimeters(8), Grams(300));

    private static ProcessSetup Kitchen => new() { Room = C(21), Water = C(18), HeldBack = C(5), Fats = C(45), Lye = C(38), MilkLimit = C(40), Vessel = Jug, LeastHeadspace = Percent(40) };

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    private static Mass Grams(double grams) => Mass.FromGrams(grams);

    private static Fat Of(string id, string name, double low, double high, Evidence evidence) => new(id, name, FatClass.Triglyceride, new()
    {
        Saponification = new(SaponificationValue.FromMilligramsKohPerGram(195), Evidence.Measured, s_invented),
        Melting = new(C((low + high) / 2), evidence, s_invented) { Low = C(low), High = C(high) },
    });

    private static readonly Fat s_acids = new("acids", "Split acids", FatClass.FreeAcid, new() { Saponification = new(SaponificationValue.FromMilligramsKohPerGram(200), Evidence.Measured, s_invented) });

    private static Fat Dense(string id, string name, double low, double high, string? note, double melting) => new(id, name, FatClass.Triglyceride, new()
    {
        Saponification = new(SaponificationValue.FromMilligramsKohPerGram(195), Evidence.Measured, s_invented),
        Melting = new(C(melting), Evidence.Measured, s_invented),
        Density = new(Density.FromGramsPerMilliliter((low + high) / 2), Evidence.Measured, s_invented) { Low = Density.FromGramsPerMilliliter(low), High = Density.FromGramsPerMilliliter(high), Note = note },
    });

    private static Formula Plain(string name, LiquidPlan liquids, params FatPortion[] fats) => FormulaTests.Plain(fats) with { Name = name, Liquids = liquids };

    private static LiquidPlan Lye(double percent) => LiquidPlan.LyeConcentration(Percent(percent));

    private static void Matches(string file, params (Formula Formula, ProcessSetup Setup)[] kitchens) =>
        Golden.Matches(string.Join("\n", kitchens.Select(k => k.Formula.Plan().Process(k.Setup).ToString())), "process", "words", file);

    [Fact]
    public void Fats_MeltSetAndStayClear()
    {
        FatPortion[] fats = [s_hard.Weighing(Grams(200)), s_soft.Weighing(Grams(200)), s_thin.Weighing(Grams(100)), s_unread.Weighing(Grams(50)), s_unread.Weighing(Grams(50)) with { Line = "more" }, Of("gone", "Fat of no mass", 90, 95, Evidence.Measured).Weighing(Mass.Zero)];
        FatPortion[] late = [s_hard.Weighing(Grams(20)).AtTrace() with { Line = "late hard" }, s_thin.Weighing(Grams(20)).AtTrace() with { Line = "late thin" }, s_unread.Weighing(Grams(20)).AtTrace() with { Line = "late unread" }];
        Matches("fats.txt",
            (Plain("A pot that sets", Lye(30), [.. fats, .. late]), Kitchen),
            (Plain("A warm pot", Lye(30), [.. fats, .. late]), Kitchen with { Fats = C(60), Lye = C(60), Room = C(53) }),
            (Plain("A pot between", Lye(30), fats), Kitchen with { Fats = C(52), Lye = C(49) }),
            (Plain("Nothing on file", Lye(30), s_unread.Weighing(Grams(500))), Kitchen),
            (Plain("Late fat without a room", Lye(30), s_soft.Weighing(Grams(500)), s_thin.Weighing(Grams(20)).AtTrace()), new()));
    }

    [Fact]
    public void Lye_BoilsCrystallisesAndStandsInItsJug()
    {
        FatPortion fat = s_soft.Weighing(Grams(500));
        Formula both = Plain("Two alkalis, one of them flakes", Lye(33), fat) with { Alkali = AlkaliPlan.ForSuperfat(Percent(5), s_soda.ShareOfHydroxide(Percent(50)), s_flakes.ShareOfHydroxide(Percent(50))) };
        Formula flakes = both with { Name = "Flakes alone", Alkali = AlkaliPlan.ForSuperfat(Percent(5), s_flakes) };
        Formula bought = Plain("Bought lye", Lye(30), fat) with { Alkali = AlkaliPlan.ForSuperfat(Percent(5), Alkali.SodiumHydroxideSolution(Percent(50))) };
        Matches("lye.txt",
            (both, Kitchen),
            (flakes, Kitchen with { Vessel = Glass }),
            (bought, Kitchen with { Alkali = C(20) }),
            (Plain("Strong lye", Lye(48), fat), Kitchen with { Lye = C(20) }),
            (Plain("Lye beyond the figures", Lye(51), fat), Kitchen),
            (Plain("Weak lye", Lye(15), fat), Kitchen with { Lye = C(60) }),
            (Plain("Brew in the jug", Lye(30).DissolvingIn(s_brew), fat), Kitchen),
            (Plain("Tea in the jug", Lye(30).DissolvingIn(s_tea), fat), Kitchen with { MilkLimit = C(20) }),
            (Plain("Frozen milk in the jug", Lye(30).DissolvingInFrozen(s_milk, C(-18)), fat), Kitchen with { Surroundings = Surroundings.IceBath(), Lye = C(25) }),
            (Plain("More ice than melts", Lye(12), fat), Kitchen with { IceShare = Percent(90), Ice = C(-30), Water = C(1) }),
            (Plain("Some ice", Lye(30), fat), Kitchen with { IceShare = Percent(30), Ice = C(-18) }));
    }

    [Fact]
    public void Cooling_TakesItsTime_OrNeverEnds()
    {
        FatPortion fat = s_soft.Weighing(Grams(500));
        Formula plain = Plain("Plain", Lye(30), fat);
        Matches("cooling.txt",
            (plain with { Name = "Still air" }, Kitchen with { Lye = C(25) }),
            (plain with { Name = "Ice bath" }, Kitchen with { Surroundings = Surroundings.IceBath(), Lye = C(10), Vessel = Glass }),
            (plain with { Name = "Never so cool" }, Kitchen with { Lye = C(15) }),
            (plain with { Name = "Never so warm" }, Kitchen with { Lye = C(95) }),
            (plain with { Name = "No jug" }, Kitchen with { Vessel = null }),
            (plain with { Name = "Wanted in the pot" }, Kitchen with { Lye = null, Mixed = C(43) }),
            (plain with { Name = "Not to be had in the pot" }, Kitchen with { Lye = null, Mixed = C(90) }),
            (plain with { Name = "Fats for the pot" }, Kitchen with { Mixed = C(44) }),
            (plain with { Name = "No fats for the pot" }, Kitchen with { Mixed = C(99) }),
            (plain with { Name = "In Fahrenheit" }, Kitchen with { Room = Temperature.FromDegreesFahrenheit(70), Vessel = Glass }),
            (plain with { Name = "Little known" }, new() { Room = C(21), Mixed = C(40) }),
            (plain with { Name = "Nothing known", Liquids = plain.Liquids.HoldingBack(s_milk.Weighing(Grams(50))) }, ProcessSetup.Unknown),
            (Plain("No fat", Lye(30)), Kitchen));
    }

    [Fact]
    public void Milk_IsHeldBack_AndKeptBelowItsLimit()
    {
        FatPortion fat = s_soft.Weighing(Grams(500));
        static LiquidPlan Held(LiquidPortion portion, double percent = 30) => Lye(percent).HoldingBack(portion);
        Matches("milk.txt",
            (Plain("A little cold milk", Held(s_milk.Weighing(Grams(40))), fat), Kitchen),
            (Plain("Past the limit", Held(s_milk.Weighing(Grams(40))), fat), Kitchen with { MilkLimit = C(30) }),
            (Plain("Only more water helps", Held(s_milk.Weighing(Grams(100)), 28), fat), Kitchen with { MilkLimit = C(30), Lye = C(10), HeldBack = C(45) }),
            (Plain("Nothing helps", Held(s_milk.Weighing(Grams(60)), 28), fat), Kitchen with { MilkLimit = C(1), Lye = C(10), HeldBack = C(45) }),
            (Plain("Warmer than the lye", Held(s_milk.Weighing(Grams(100))), fat), Kitchen with { Lye = C(20), HeldBack = C(20) }),
            (Plain("Frozen, and it stays so in part", Held(s_milk.Weighing(Grams(110)).FrozenAt(C(-40)), 26), fat), Kitchen with { Lye = C(2) }),
            (Plain("Tea never scorches", Held(s_tea.Weighing(Grams(60)).At(C(30))), fat), Kitchen with { MilkLimit = C(20) }),
            (Plain("No limit given", Held(s_milk.Weighing(Grams(40))), fat), Kitchen with { MilkLimit = null }));
    }

    /// <summary>The first temperature that anybody stated says in which degrees all are printed.</summary>
    [Fact]
    public void Degrees_AreThoseOfWhatWasGiven()
    {
        Temperature warm = Temperature.FromDegreesFahrenheit(100), cold = Temperature.FromDegreesFahrenheit(40);
        Formula plain = Plain("Plain", Lye(30), s_soft.Weighing(Grams(500))), milky = plain with { Liquids = Lye(30).HoldingBack(s_milk.Weighing(Grams(50))) };
        foreach (ProcessSetup setup in (ProcessSetup[])[new() { Room = cold }, new() { Water = cold }, new() { Fats = warm }, new() { Lye = warm }, new() { Mixed = warm }, new() { HeldBack = cold }])
            Assert.Contains("clear from 79 °F on", milky.Plan().Process(setup).ToString(), StringComparison.Ordinal);
        Assert.Contains("°F", (plain with { Liquids = Lye(30).DissolvingIn(s_tea, cold) }).Plan().Process(ProcessSetup.Unknown).ToString(), StringComparison.Ordinal);
        Assert.Contains("°F", (plain with { Liquids = Lye(30).HoldingBack(s_tea.Weighing(Grams(20)), s_milk.Weighing(Grams(50)).At(cold)) }).Plan().Process(ProcessSetup.Unknown).ToString(), StringComparison.Ordinal);
        Assert.Contains("clear from 26 °C on", milky.Plan().Process(new() { Room = C(20), Water = cold, Fats = warm, Lye = warm }).ToString(), StringComparison.Ordinal);
    }

    private static Mould Loaf => Mould.Box(Cm(25), Cm(9), Cm(7));

    private static Length Cm(double value) => Length.FromCentimeters(value);

    [Fact]
    public void Moulds_FillOverflowAndHeat()
    {
        BatchPlan plan = Plain("Some bars", Lye(30), s_soft.Weighing(Grams(900))).Plan();
        BatchPlan sweet = Plain("Sweet bars", Lye(30).HoldingBack(s_milk.Weighing(Grams(100))), s_soft.Weighing(Grams(9000))).Plan();
        BatchPlan ounces = (Plain("Bars in ounces", Lye(30).DissolvingIn(s_brew), s_soft.Weighing(Mass.FromOunces(32)))).Plan();
        BatchPlan mixed = (Plain("Bars of many things", Lye(30),
            Dense("a", "Fat weighed at 40 degrees", 0.90, 0.91, "40 degC/water 20 degC", 22).Weighing(Grams(300)), Dense("b", "Fat weighed somewhere", 0.91, 0.93, null, 22).Weighing(Grams(300)),
            Dense("c", "Fat weighed as a block", 0.94, 0.96, "20 degC", 40).Weighing(Grams(300)), s_acids.Weighing(Grams(50))) with
        {
            Additives =
            [
                new Additive("scent", "Some scent", AdditiveKind.Fragrance, Stage.Trace, new()).Weighing(Grams(30)), new Additive("earth", "Some earth", AdditiveKind.Other, Stage.Trace, new()).Weighing(Grams(20)),
                new Additive("sour", "Some sour powder", AdditiveKind.Other, Stage.Trace, new() { Acid = Percent(30), Ash = Percent(40), Water = Percent(10) }).Weighing(Grams(10)),
            ],
        }).Plan();
        (BatchPlan, MouldJob)[] jobs =
        [
            (plan, new() { Mould = Loaf }),
            (plan, new() { Mould = Loaf, Cut = new() { Thickness = Cm(2.5), Samples = 1, Kerf = Cm(0.1), Ends = Cm(0.3) }, Pour = C(38), Loss = Percent(12), WantedBars = 30, WantedMass = Grams(110), LeftInPot = Percent(2) }),
            (plan, new() { Mould = Loaf, Cut = new() { Thickness = Cm(2.5) }, Pour = C(38), WantedBars = 30, WantedMass = Grams(110) }),
            (plan, new() { Mould = Loaf, Cut = new() { Thickness = Cm(26) }, Pour = C(38), WantedBars = 30, WantedMass = Grams(110), Loss = Percent(10) }),
            (plan, new() { Mould = Loaf, Cut = new() { Thickness = Cm(2.5), Samples = 20 }, Loss = Percent(60), WantedBars = 30, WantedMass = Grams(110) }),
            (plan, new() { Mould = Mould.OfVolume(Volume.FromMilliliters(1330)), Pour = C(38) }),
            (plan, new() { Mould = Mould.OfVolume(Volume.FromMilliliters(1300)), Pour = C(38) }),
            (mixed, new() { Mould = Loaf, Pour = C(50) }),
            (plan, new() { Mould = Mould.Cavities(6, Volume.FromMilliliters(95)), Samples = 2, Pour = C(30), Loss = Percent(10), WantedBars = 10, WantedMass = Grams(90) }),
            (plan, new() { Mould = Mould.Cylinder(Cm(7), Cm(30)), Cut = new() { Thickness = Cm(2.5) }, Pour = C(38), IsInsulated = true }),
            (plan, new() { Mould = Mould.Slab(Cm(40), Cm(30), Cm(4)), Cut = new() { Thickness = Cm(6), Across = Cm(9) }, Pour = C(38), Loss = Percent(10), WantedBars = 10, WantedMass = Grams(90) }),
            (sweet, new() { Mould = Mould.Box(Cm(60), Cm(20), Cm(15)), Pour = C(50), IsInsulated = true }),
            (ounces, new() { Mould = Loaf, Pour = Temperature.FromDegreesFahrenheit(110), Cut = new() { Thickness = Cm(2) } }),
            (Plain("Lye beyond the figures", Lye(51), s_soft.Weighing(Grams(500))).Plan(), new() { Mould = Loaf }),
            (Plain("No fat", Lye(30)).Plan(), new() { Mould = Loaf }),
        ];
        Golden.Matches(string.Join("\n", jobs.Select(j => MouldText.Of(j.Item1, j.Item2))), "mould", "words.txt");
    }

    [Fact]
    public void Bars_AreFollowedUntilTheyAreReady()
    {
        DateOnly first = new(2026, 3, 1);
        int[] days = [0, 4, 9, 14, 21, 30, 42];
        CureSeries Series(string name, Func<int, double> grams, params int[] on) => new(name, [.. on.Select(d => new BarWeighing(first.AddDays(d), Grams(Math.Round(grams(d), 1))))]);
        static double Drying(int day) => 104 + (16 * Math.Exp(-day / 13.0));
        Moisture moisture = Plain("Some bars", Lye(30), s_soft.Weighing(Grams(900))).Plan().Moisture();
        CureSeries good = Series("good", Drying, days);
        CureSeries poured = Series("poured", Drying, days) with { Poured = Grams(121), Moisture = moisture, Scale = new(Grams(1)) };
        CureSeries ounces = new("ounces", [.. days.Select(d => new BarWeighing(first.AddDays(d), Mass.FromOunces(Math.Round(Drying(d) / 28.35, 2))))]);
        CureSeries rough = Series("rough", d => Drying(d) + (d % 2 == 0 ? 0.25 : -0.25), 0, 3, 6, 10, 13, 17, 20) with { Scale = new(Grams(0.5)) };
        CureSeries open = Series("early", Drying, 0, 3, 6, 9), few = Series("few", Drying, 0, 7), still = Series("still", _ => 100, 0, 7, 14, 21), moist = Series("moist", Drying, 0, 7) with { Moisture = moisture };
        ReadyWhen weekly = ReadyWhen.WeeklyLossBelow(Percent(1)), final = ReadyWhen.WithinOfFinal(Percent(0.5));
        Golden.Matches(string.Join("\n",
            CureText.Of([good], weekly, Ratio.Zero, null),
            CureText.Of([good], null, Ratio.Zero, Grams(100)),
            CureText.Of([rough], final, Ratio.Zero, null),
            CureText.Of([poured, good], final, Percent(2), Grams(100)),
            CureText.Of([ounces], weekly, Percent(1), Mass.FromOunces(3.5)),
            CureText.Of([open, few, still, moist], weekly, Ratio.Zero, Grams(120)),
            CureText.Of([good], weekly, Ratio.Zero, Grams(2))), "cure", "words.txt");
    }
}
