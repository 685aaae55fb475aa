using Saponify.Analysis;
using Saponify.Tests.Support;

namespace Saponify.Tests.Analysis;

/// <summary>Rules just inside and just outside their limits, with their options and their fixes; faulty and clean formulas stand on the rules' pages.</summary>
public partial class RuleLimitTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    /// <summary>500 g of olive oil and 200 g of coconut oil, 6 % superfat, a lye of 30 % over all water: no rule has anything to say.</summary>
    private static readonly Formula s_plain = new("Plain")
    {
        Fats = [Fat("olive-oil", 500), Fat("coconut-oil", 200)],
        Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), Alkali.SodiumHydroxide(Ratio.FromPercent(98))),
        Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(30)),
    };

    internal static Formula Plain => s_plain;

    [Theory]
    [MemberData(nameof(RulePage.Ids), MemberType = typeof(RulePage))]
    public void PlainFormula_IsCleanForEveryRule(string id) => Assert.Empty(Find(id, s_plain));

    /// <summary>One fault, one finding.</summary>
    [Fact]
    public void EmptyFormula_LacksFat_AndNothingElseIsSaid() => Assert.Equal("SFY2021", Assert.Single(FormulaAnalyzer.Default.Analyze(s_plain with { Fats = [] }).Diagnostics).Id);

    private static FatPortion Fat(string id, double grams) => s_pantry.Fat(id).Weighing(Mass.FromGrams(grams));

    private static FatPortion Lot(string id, double grams, double koh, DateOnly? date = null) =>
        s_pantry.Fat(id).WithLot(new() { Name = "L-7", Source = "certificate", Saponification = SaponificationValue.FromMilligramsKohPerGram(koh), Date = date }).Weighing(Mass.FromGrams(grams));

    private static AdditivePortion Dose(string id, double percent) => s_pantry.Additive(id).ShareOfFats(Ratio.FromPercent(percent));

    private static LiquidPortion Held(string id, double grams) => s_pantry.Liquid(id).Weighing(Mass.FromGrams(grams));

    private static LiquidPlan Strength(double percent) => LiquidPlan.LyeConcentration(Ratio.FromPercent(percent));

    private static Formula Superfat(Formula formula, double percent) => formula with { Alkali = ((SuperfatTarget)formula.Alkali) with { Superfat = Ratio.FromPercent(percent) } };

    /// <summary>What one rule finds, with its options set.</summary>
    private static IReadOnlyList<Diagnostic> Find(string id, Formula formula, BatchSetup? setup = null, params (string Key, double Value)[] options)
    {
        FormulaRule rule = FormulaAnalyzer.BuiltInRules.Single(r => r.Descriptor.Id == id);
        AnalyzerConfig config = AnalyzerConfig.Default;
        foreach ((string key, double value) in options)
            config = config.WithOption(id, rule.Descriptor.Options.Single(o => o.Key == key), value);
        return [.. FormulaAnalyzer.Default.With(config).Analyze(formula, setup).Diagnostics.Where(d => d.Id == id)];
    }

    private static bool Speaks(string id, Formula formula, params (string Key, double Value)[] options) => Find(id, formula, null, options).Count > 0;

    /// <summary>Which of two rules speak when the first has this option.</summary>
    private static string[] SpeaksWith(string id, string key, double value, Formula formula, string other, BatchSetup? setup = null)
    {
        RuleOption option = FormulaAnalyzer.BuiltInRules.Single(r => r.Descriptor.Id == id).Descriptor.Options.Single(o => o.Key == key);
        return [.. FormulaAnalyzer.Default.With(AnalyzerConfig.Default.WithOption(id, option, value)).Analyze(formula, setup).Diagnostics.Select(d => d.Id).Where(d => d == id || d == other)];
    }

    /// <summary>The formula that the first fix gives; its finding is gone.</summary>
    private static Formula Fixed(string id, Formula formula, BatchSetup? setup = null, int fix = 0)
    {
        Formula after = Assert.Single(Find(id, formula, setup)).Fixes[fix].Apply();
        Assert.Empty(Find(id, after, setup));
        return after;
    }

    /// <summary>The rule speaks on one side of a limit and not on the other, and its option moves the limit.</summary>
    private static void Limit(string id, Func<double, Formula> formula, double inside, double outside, string option, double loose)
    {
        Assert.False(Speaks(id, formula(inside)), $"{id} speaks at {inside}");
        Assert.True(Speaks(id, formula(outside)), $"{id} is silent at {outside}");
        Assert.False(Speaks(id, formula(outside), (option, loose)), $"{id} speaks at {outside} though {option} is {loose}");
    }
}
