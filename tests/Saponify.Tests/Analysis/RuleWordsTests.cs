using Saponify.Analysis;
using Saponify.Tests.Support;

namespace Saponify.Tests.Analysis;

/// <summary>What rules say beyond the faulty formulas of their pages: together they show every message there is, filled in.</summary>
public class RuleWordsTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    private static readonly Formula s_plain = RuleLimitTests.Plain;

    private static Mass Grams(double grams) => Mass.FromGrams(grams);

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static Length Cm(double value) => Length.FromCentimeters(value);

    private static Fat Own(string id, double koh) => Fat.Own(id, "Own " + id, SaponificationValue.FromMilligramsKohPerGram(koh), "made up for this test");

    private static CureSeries Bars(params (int Day, double Grams)[] weighings) => new("1", [.. weighings.Select(w => new BarWeighing(new DateOnly(2026, 1, 5).AddDays(w.Day), Grams(w.Grams)))]);

    private static CureSeries Weekly(Func<int, double> grams) => Bars([.. Enumerable.Range(0, 10).Select(i => (7 * i, grams(i)))]);

    private static BatchSetup Jug(string material, double milliliters, double? free = null, double water = 20) => new()
    {
        Process = new() { Room = C(20), Water = C(water), Vessel = new(VesselMaterial.Of(material), Volume.FromMilliliters(milliliters), Cm(9), Grams(200)), LeastHeadspace = free is { } share ? Percent(share) : null },
    };

    /// <summary>Formulas and circumstances, each for one rule.</summary>
    private static IEnumerable<(string Id, Formula Formula, BatchSetup Setup)> Cases()
    {
        BatchSetup none = BatchSetup.Unknown;
        yield return ("SFY1106", s_plain.ScaledBy(100), none);
        yield return ("SFY2014", s_plain with { Fats = [s_pantry.Fat("olive-oil").Weighing(Grams(2))] }, new() { Scale = new(Grams(1)) { MinimumLoad = Grams(5) } });
        yield return ("SFY2016", s_plain with { Fats = [.. s_plain.Fats.Select(f => f.AtTrace())] }, none);
        yield return ("SFY3001", s_plain with { Liquids = LiquidPlan.TotalWater(Mass.Zero) }, none);
        yield return ("SFY3001", s_plain with { Liquids = LiquidPlan.LyeConcentration(Percent(2)).DissolvingIn(s_pantry.Liquid("heavy-cream")) }, none);
        yield return ("SFY3002", s_plain with { Liquids = s_plain.Liquids.DissolvingIn(s_pantry.Liquid("milk-goat")) }, none);
        yield return ("SFY3004", s_plain with { Liquids = s_plain.Liquids.DissolvingIn(new Liquid("cider", "Own cider", new() { Water = Percent(93), Alcohol = Percent(5) })) }, none);
        yield return ("SFY3102", s_plain with { Liquids = LiquidPlan.LyeConcentration(Percent(36)) }, new() { Process = new() { Room = C(5), Water = C(5) } });
        yield return ("SFY3103", s_plain with { Liquids = s_plain.Liquids.DissolvingIn(s_pantry.Liquid("milk-goat"), C(4)) }, new() { Process = new() { Room = C(20), MilkLimit = C(40) } });
        yield return ("SFY3105", s_plain, Jug("hdpe", 1000));
        yield return ("SFY3105", s_plain, Jug("borosilicate-glass", 1000, water: 35));
        yield return ("SFY3105", s_plain, Jug("soda-lime-glass", 200, 30));
        yield return ("SFY3105", s_plain, Jug("polypropylene", 300, 40));
        yield return ("SFY4004", s_plain with { Fats = [.. s_plain.Fats, Own("short", 380).Weighing(Grams(50))] }, none);
        yield return ("SFY4011", s_plain with { Fats = [s_pantry.Fat("olive-oil").WithLot(new() { Name = "L-7", Source = "certificate", Saponification = SaponificationValue.FromMilligramsKohPerGram(190), Date = new(2026, 5, 1) }).Weighing(Grams(500))] }, new() { Today = new(2026, 4, 1) });
        yield return ("SFY5001", s_plain with { Additives = [s_pantry.Additive("sorbitol").ShareOfFats(Percent(40))] }, none);
        yield return ("SFY6003", s_plain with { Liquids = s_plain.Liquids.DissolvingIn(s_pantry.Liquid("almond-drink-unsweetened")) }, new() { Excluded = ["almond oil"] });
        yield return ("SFY6004", s_plain with { Fats = [.. s_plain.Fats, Own("butter", 190).Weighing(Grams(50))] }, new() { Excluded = ["animal"] });
        yield return ("SFY6104", s_plain, new() { Mould = Mould.Slab(Cm(40), Cm(30), Cm(4)), Cut = new() { Thickness = Cm(6), Across = Cm(31) } });
        yield return ("SFY6104", s_plain, new() { Mould = Mould.Slab(Cm(40), Cm(30), Cm(4)), Cut = new() { Thickness = Cm(6) } });
        yield return ("SFY6104", s_plain, new() { Mould = Mould.Cylinder(Cm(7), Cm(30)), Cut = new() { Thickness = Cm(6), Across = Cm(3) } });
        yield return ("SFY6106", s_plain, new() { Cure = Bars((0, 120), (14, 112), (7, 115)) });
        yield return ("SFY6106", s_plain, new() { Cure = Bars((0, 120), (7, 112), (14, 113)) });
        yield return ("SFY6106", s_plain, new() { Cure = Bars((0, 120), (7, 90), (14, 80)) });
        CureSeries drying = Weekly(i => 120 + (20 * Math.Pow(0.5, i)) + (i % 2 == 0 ? 0.2 : -0.2));
        yield return ("SFY6107", s_plain, new() { Cure = drying, Ready = ReadyWhen.WeeklyLossBelow(Percent(1)), SoldFrom = drying.Fit().Forecast(ReadyWhen.WeeklyLossBelow(Percent(1)), Percent(95))!.Date });
        yield return ("SFY6109", s_plain, new() { CuredBars = [Grams(10), Grams(200)], DeclaredMass = Grams(100) });
    }

    [Fact]
    public void EveryMessage_IsShownFilledIn_OnAPageOrHere()
    {
        List<Diagnostic> here = [];
        List<string> silent = [];
        foreach ((string id, Formula formula, BatchSetup setup) in Cases())
        {
            Diagnostic[] found = [.. RulePage.Analyzer.Analyze(formula, setup).Diagnostics.Where(d => d.Id == id)];
            here.AddRange(found);
            silent.AddRange(found.Length == 0 ? [here.Count + " " + id] : []);
        }
        Assert.Empty(silent);
        Golden.Matches(string.Concat(here.Select(d => d + "\n")), "rules", "words.txt");
        HashSet<(string, string)> shown = [.. here.Concat(RulePage.All.SelectMany(p => p.Faulty.Diagnostics)).Select(d => (d.Id, d.Template.Name))];
        Assert.All(FormulaAnalyzer.BuiltInRules.SelectMany(r => r.Descriptor.Messages.Select(m => (r.Descriptor.Id, m.Name))), m => Assert.Contains(m, shown));
    }
}
