using Saponify.Analysis;
using Saponify.Tests.Formulas;
using Saponify.Tests.Support;

namespace Saponify.Tests.Analysis;

/// <summary>What the engine owes, whatever the rules.</summary>
public class EngineTests
{
    private static readonly Formula s_formula = FormulaTests.Plain(Pantry.Reference.Fat("olive-oil").Weighing(Mass.FromGrams(300)), Pantry.Reference.Fat("lard").Weighing(Mass.FromGrams(300))) with { Name = "A name that is {long}" };

    private static readonly BatchSetup s_today = new() { Today = new DateOnly(2026, 11, 25) };

    private static FormulaAnalyzer With(params FormulaRule[] rules) => new(rules);

    [Fact]
    public void Finding_CarriesMessagePlaceAndFix()
    {
        Diagnostic found = Assert.Single(With(new KeepNamesShort()).Analyze(s_formula).Diagnostics);
        Assert.Equal("the name A name that is {long} has 21 letters, at most 10 are wanted", found.ToMessage());
        Assert.Equal(("ACME1/Long/name", "warning ACME1: name: " + found.ToMessage()), (found.Fingerprint, found.ToString()));
        Fix fix = Assert.Single(found.Fixes);
        Assert.Equal("A name tha", fix.Apply().Name);
        Change change = Assert.Single(fix.Changes);
        Assert.Equal(("name", "A name that is {long}", "A name tha"), (change.Path.ToString(), change.Before, change.After));
        Assert.Equal(21, found.Args[1].Number);
    }

    [Fact]
    public void Numbers_FollowTheCultureThatIsPassed_AndNoOther()
    {
        MessageTemplate message = new("M", "{x} and {y}");
        ValueList<Arg> args = [Arg.Of("x", 1234.567, "g"), Arg.Of("y", 0.5, null)];
        Assert.Equal("1235 g and 0.5", InCulture.Run("de-DE", () => message.Fill(args.AsSpan(), System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal("1235 g and 0,5", message.Fill(args.AsSpan(), System.Globalization.CultureInfo.GetCultureInfo("de-DE")));
        Assert.Equal("x = 1235 g", args[0].ToString());
        Assert.Equal("1235 g and {y}", message.Fill(args.AsSpan()[..1], System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void ThrowingRule_BecomesAFinding_AndTheOthersRunOn()
    {
        AnalysisReport report = With(new Throw(), new KeepNamesShort()).Analyze(s_formula);
        Assert.Equal(["SFY0001", "ACME1"], report.Diagnostics.Select(d => d.Id));
        Assert.Equal(Severity.Error, report.Diagnostics[0].Severity);
        Assert.Equal("rule ACME2 failed with InvalidOperationException: out of order; its findings are withdrawn", report.Diagnostics[0].ToMessage());
        Assert.Equal([RuleStatus.Ran, RuleStatus.Failed], report.Outcomes.Select(o => o.Status));
    }

    [Fact]
    public void Order_IsByPlaceThenRule_WhateverTheRegistration()
    {
        FormulaRule[] rules = [new KeepNamesShort(), new NameEveryFat(), new NameEveryFat("ACME0")];
        string first = With(rules).Analyze(s_formula, s_today).ToString();
        Assert.Equal(first, With([.. Enumerable.Reverse(rules)]).Analyze(s_formula, s_today).ToString());
        Assert.Equal(["ACME0", "ACME3", "ACME0", "ACME3", "ACME1"], With(rules).Analyze(s_formula, s_today).Diagnostics.Select(d => d.Id));
    }

    [Fact]
    public void Outcomes_SayWhyARuleWasSilent()
    {
        AnalysisReport report = new FormulaAnalyzer([new NameEveryFat(), new KeepNamesShort()], AnalyzerConfig.Default.WithSeverity("ACME1", null)).Analyze(s_formula);
        Assert.Empty(report.Diagnostics);
        Assert.Equal([(RuleStatus.Disabled, null), (RuleStatus.NotApplicable, "no date is given")], report.Outcomes.Select(o => (o.Status, o.Reason)));
    }

    [Fact]
    public void Severity_RuleBeatsCategoryBeatsPreset_AndTheFloorHolds()
    {
        RuleDescriptor safety = new NameEveryFat(floor: Severity.Warning).Descriptor, plain = new KeepNamesShort().Descriptor;
        AnalyzerConfig strict = AnalyzerConfig.Of(Preset.Strict);
        Assert.Equal(Severity.Error, strict.SeverityOf(plain));
        Assert.Equal(Severity.Info, strict.WithSeverity(RuleCategory.Custom, Severity.Info).SeverityOf(plain));
        Assert.Equal(Severity.Hidden, strict.WithSeverity(RuleCategory.Custom, Severity.Info).WithSeverity("ACME1", Severity.Hidden).SeverityOf(plain));
        Assert.Equal(Severity.Warning, AnalyzerConfig.Of(Preset.Off).SeverityOf(safety));
        Assert.Equal(Severity.Warning, AnalyzerConfig.Default.WithSeverity("ACME3", null).SeverityOf(safety));
        Assert.Null(AnalyzerConfig.Of(Preset.Off).SeverityOf(plain));
    }

    /// <summary>Severity of a rule by preset: default, learner, strict.</summary>
    [Theory]
    [InlineData(Severity.Hidden, true, Severity.Hidden, Severity.Info, Severity.Hidden)]
    [InlineData(Severity.Info, true, Severity.Info, Severity.Info, Severity.Info)]
    [InlineData(Severity.Warning, true, Severity.Warning, Severity.Warning, Severity.Error)]
    [InlineData(Severity.Error, true, Severity.Error, Severity.Error, Severity.Error)]
    [InlineData(Severity.Warning, false, null, Severity.Info, null)]
    public void Presets_ShowHiddenAdviceToLearners_AndTakeWarningsForErrors(Severity own, bool isOn, Severity? byDefault, Severity? forLearners, Severity? strict)
    {
        RuleDescriptor rule = new("ACME4", "KeepQuiet", own, "A sound", "Noise.") { Messages = [], IsOnByDefault = isOn };
        Assert.Equal((byDefault, forLearners, strict), (AnalyzerConfig.Default.SeverityOf(rule), AnalyzerConfig.Of(Preset.Learner).SeverityOf(rule), AnalyzerConfig.Of(Preset.Strict).SeverityOf(rule)));
        Assert.Equal("rules/ACME4.md", rule.HelpPage);
    }

    [Fact]
    public void Options_AreSetInTheirRange()
    {
        FormulaAnalyzer analyzer = With(new KeepNamesShort());
        Assert.Empty(analyzer.With(AnalyzerConfig.Default.WithOption("ACME1", KeepNamesShort.Limit, 30)).Analyze(s_formula).Diagnostics);
        Assert.Throws<ArgumentOutOfRangeException>(() => AnalyzerConfig.Default.WithOption("ACME1", KeepNamesShort.Limit, 101));
        Assert.Throws<ArgumentOutOfRangeException>(() => AnalyzerConfig.Default.WithOption("ACME1", KeepNamesShort.Limit, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RuleOption("x", "g", 5, 6, 7, "help"));
    }

    [Fact]
    public void Suppression_WithAReason_MovesTheFindingAndKeepsItVisible()
    {
        Formula accepted = s_formula with { Suppressions = [new("ACME1", "name", "the customer's wish") { Author = "M", Until = new DateOnly(2027, 1, 1) }] };
        AnalysisReport report = With(new KeepNamesShort()).Analyze(accepted, s_today);
        Assert.Empty(report.Diagnostics);
        Assert.Equal("the customer's wish", Assert.Single(report.Suppressed).Suppression!.Reason);
        Assert.Equal("accepted: warning ACME1: name: the name A name that is {long} has 21 letters, at most 10 are wanted (the customer's wish)\n", report.ToString());
    }

    [Fact]
    public void Report_InWords_NamesFindingsAndTheirFixes()
    {
        Assert.Equal("warning ACME1: name: the name A name that is {long} has 21 letters, at most 10 are wanted\n    fix: Cut the name to 10 letters\n", With(new KeepNamesShort()).Analyze(s_formula).ToString());
        AnalysisReport clean = With(new NameEveryFat()).Analyze(s_formula);
        Assert.Equal("nothing found\n", clean.ToString());
        Assert.Same(clean.Outcomes, clean.Outcomes);
    }

    [Fact]
    public void HasAtLeast_ComparesWithTheGravestFinding()
    {
        AnalysisReport report = With(new KeepNamesShort()).Analyze(s_formula);
        Assert.True(report.HasAtLeast(Severity.Warning));
        Assert.False(report.HasAtLeast(Severity.Error));
        Assert.True(report.IsSafeToWeigh);
    }

    [Fact]
    public void Findings_AreEqual_ByRuleMessagePlaceAndArguments()
    {
        Diagnostic Find(FormulaAnalyzer analyzer, Formula formula) => analyzer.Analyze(formula) is { Suppressed: [var accepted] } ? accepted : Assert.Single(analyzer.Analyze(formula).Diagnostics);
        FormulaAnalyzer analyzer = With(new KeepNamesShort());
        Formula oneLetterMore = s_formula with { Name = s_formula.Name + "." };
        Diagnostic found = Find(analyzer, s_formula), again = Find(analyzer, s_formula);
        Assert.Equal(found, again);
        Assert.Equal(found.GetHashCode(), again.GetHashCode());
        Diagnostic[] others =
        [
            Find(analyzer, oneLetterMore),
            Find(analyzer.With(AnalyzerConfig.Default.WithSeverity("ACME1", Severity.Hidden)), s_formula),
            Find(analyzer, s_formula with { Suppressions = [new("ACME1", "", "wanted")] }),
            Find(With(new KeepNamesShort("ACME9")), s_formula),
        ];
        Assert.All(others, o => Assert.NotEqual(found, o));
        Assert.StartsWith("hidden ACME1: name: ", others[1].ToString(), StringComparison.Ordinal);
        Assert.False(found.Equals(null));
    }

    [Theory]
    [InlineData("", null, "SFY0002")]
    [InlineData("  ", null, "SFY0002")]
    [InlineData("a reason", "2026-11-24", "SFY0004")]
    public void Suppression_WithoutAReasonOrExpired_IsReportedAndNotApplied(string reason, string? until, string id)
    {
        Suppression suppression = new("ACME1", "", reason) { Until = until is null ? null : DateOnly.ParseExact(until, "yyyy-MM-dd", null) };
        AnalysisReport report = With(new KeepNamesShort()).Analyze(s_formula with { Suppressions = [suppression] }, s_today);
        Assert.Equal(["ACME1", id], report.Diagnostics.Select(d => d.Id));
        Assert.Equal("suppressions[ACME1]", report.Diagnostics[1].Path.ToString());
        Assert.Equal(until is null ? "the suppression of ACME1 at \"\" has no reason and is not applied" : "the suppression of ACME1 at \"\" held until 2026-11-24 and is not applied", report.Diagnostics[1].ToMessage());
        // accepted for every formula: no line of this one is to blame
        AnalysisReport ofConfig = new FormulaAnalyzer([new KeepNamesShort()], AnalyzerConfig.Default.WithSuppression(suppression)).Analyze(s_formula, s_today);
        Assert.Equal([(id, ""), ("ACME1", "name")], ofConfig.Diagnostics.Select(d => (d.Id, d.Path.ToString())));
    }

    [Fact]
    public void Suppression_HoldsOnItsLastDay()
    {
        Formula formula = s_formula with { Suppressions = [new("ACME1", "", "a reason") { Until = s_today.Today }] };
        Assert.Single(With(new KeepNamesShort()).Analyze(formula, s_today).Suppressed);
    }

    [Fact]
    public void Suppression_ThatCoversNothing_IsSaid_ButOnlyIfItsRuleRan()
    {
        Formula formula = s_formula with { Name = "Short", Suppressions = [new("ACME1", "", "just in case"), new("ACME3", "fats[lard]", "later")] };
        Assert.Equal("info SFY0003: suppressions[ACME1]: the suppression of ACME1 at \"\" covers nothing\n", With(new KeepNamesShort(), new NameEveryFat()).Analyze(formula).ToString());
    }

    [Fact]
    public void Suppression_CoversItsPlaceAndBelow_NotNeighboursOfASimilarName()
    {
        Suppression oil = new("X", "fats[olive-oil]", "r");
        Assert.True(oil.Covers(FormulaPath.Root.Member("fats").Item(0, "olive-oil").Member("mass")));
        Assert.False(oil.Covers(FormulaPath.Root.Member("fats").Item(0, "olive-oil-2")));
        Assert.False(new Suppression("X", "fat", "r").Covers(FormulaPath.Root.Member("fats")));
        Assert.True(new Suppression("X", "", "r").Covers(FormulaPath.Root));
    }

    [Fact]
    public void EngineFindings_CannotBeSuppressed()
    {
        Formula formula = s_formula with { Suppressions = [new("SFY0001", "", "go away")] };
        Assert.Equal(["SFY0001", "SFY0003"], With(new Throw()).Analyze(formula).Diagnostics.Select(d => d.Id));
    }

    [Fact]
    public void ApplyFixes_GoesToAFixedPoint()
    {
        FormulaAnalyzer analyzer = With(new KeepNamesShort());
        Assert.Equal("A name tha", analyzer.Analyze(s_formula).Mend().Name);
        Formula short_ = s_formula with { Name = "Short" };
        Assert.Same(short_, analyzer.Analyze(short_).Mend());
        Assert.Throws<ArgumentOutOfRangeException>(() => analyzer.ApplyFixes(s_formula, d => null, null, 0));
    }

    [Fact]
    public void ApplyFixes_OfFixesThatUndoEachOther_StopsWhenAFormulaComesBack()
    {
        int asked = 0;
        Formula result = With(new KeepNamesShort()).ApplyFixes(s_formula, d => asked++ < 50 ? new Fix(d.Fixes[0].Apply(), new("Back", "Back", FixEffect.KeepsProduct, _ => s_formula)) : null);
        Assert.Equal(s_formula, result);
        Assert.Equal(1, asked);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    public void ApplyFixes_StopsAfterSoManyFixes(int most)
    {
        Formula result = With(new KeepNamesShort()).ApplyFixes(s_formula, d => new Fix(d.Fixes[0].Before, new("Longer", "Longer", FixEffect.KeepsProduct, f => f with { Name = f.Name + "." })), null, most);
        Assert.Equal(s_formula.Name + new string('.', most), result.Name);
    }

    [Fact]
    public void Registration_RefusesTheLibrarysPrefixAndIdsTwice()
    {
        Assert.Throws<ArgumentException>(() => With(new KeepNamesShort(), new KeepNamesShort()));
        Assert.Throws<ArgumentException>(() => With(new KeepNamesShort("SFY9001")));
        Assert.Throws<ArgumentException>(() => new RuleDescriptor("A-1", "N", Severity.Info, "T", "H") { Messages = [] });
        Assert.Throws<ArgumentException>(() => new MessageTemplate("M", "ends with a stop."));
        Assert.Equal("ACME1", FormulaAnalyzer.Default.With(new KeepNamesShort()).Rules[0].Descriptor.Id);
    }

    [Fact]
    public void Cancellation_IsTheOnlyExceptionBesideNull()
    {
        Assert.Throws<OperationCanceledException>(() => FormulaAnalyzer.Default.Analyze(s_formula, cancellation: new CancellationToken(true)));
        Assert.Throws<ArgumentNullException>(() => FormulaAnalyzer.Default.Analyze(null!));
        using CancellationTokenSource source = new();
        FormulaAnalyzer impatient = With(new Cancel(source), new KeepNamesShort());
        Assert.Throws<OperationCanceledException>(() => impatient.Analyze(s_formula, cancellation: source.Token));
        // a rule that gives up unasked has failed
        Assert.Equal([RuleStatus.Ran, RuleStatus.Failed], impatient.Analyze(s_formula).Outcomes.Select(o => o.Status));
    }

    [Fact]
    public void EightThreads_GetTheSameReport()
    {
        FormulaAnalyzer analyzer = With(new KeepNamesShort(), new NameEveryFat(), new Throw());
        string one = analyzer.Analyze(s_formula, s_today).ToString();
        Parallel.For(0, 2000, new ParallelOptions { MaxDegreeOfParallelism = 8 }, _ => Assert.Equal(one, analyzer.Analyze(s_formula, s_today).ToString()));
    }

    [Fact]
    public void Difference_NamesEveryMemberThatChanged()
    {
        Pantry pantry = Pantry.Reference;
        Formula after = s_formula with
        {
            Fats = [s_formula.Fats[0].AtTrace(), pantry.Fat("tallow").Weighing(Mass.FromOunces(3))],
            Alkali = ((SuperfatTarget)s_formula.Alkali) with { Superfat = Ratio.FromPercent(7) },
            Liquids = LiquidPlan.WaterToFats(Ratio.FromPercent(40)).HoldingBack(pantry.Liquid("oat-drink").Weighing(Mass.FromGrams(20))),
            Additives = [pantry.Additive("kaolin").ShareOfFats(Ratio.FromPercent(2))],
        };
        Assert.Equal(
            [
                "fats[olive-oil].stage: fats -> trace", "fats[lard]: fat lard, mass 300 g, stage fats, saponificationValue 194.4 mg KOH/g -> nothing",
                "fats[tallow]: nothing -> fat tallow, mass 3 oz, stage fats, saponificationValue 195.8 mg KOH/g", "alkali.superfat: 5 % -> 7 %",
                "liquids.lyeConcentration: 30 % -> nothing", "liquids.waterToFats: nothing -> 40 %", "liquids.heldBack[oat-drink]: nothing -> liquid oat-drink, mass 20 g",
                "additives[kaolin]: nothing -> additive kaolin, ofFats 2 %, stage trace",
            ],
            FormulaDifference.Of(s_formula, after).Select(c => c.ToString()));
        Assert.Empty(FormulaDifference.Of(s_formula, s_formula with { Fats = s_formula.Fats }));
    }

    [Fact]
    public void Difference_OfAlkaliWaterAdditivesAndSuppressions()
    {
        Pantry pantry = Pantry.Reference;
        Alkali soda = Alkali.SodiumHydroxide(Ratio.FromPercent(98)), potash = Alkali.PotassiumHydroxide(Ratio.FromPercent(90));
        Formula before = s_formula with
        {
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), soda.ShareOfHydroxide(Ratio.FromPercent(95)), (potash with { BoundWater = Ratio.FromPercent(8) }).ShareOfHydroxide(Ratio.FromPercent(5))),
            Liquids = LiquidPlan.WaterToAlkali(Ratio.FromDecimalFractions(2.25)),
            Additives = [pantry.Additive("kaolin").AmountUnknown()],
            Suppressions = [new("SFY5014", "additives[kaolin]", "by eye"), new("SFY3006", "", "as always")],
        };
        Formula ofMass = before with
        {
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), soda.ShareOfMass(Ratio.FromPercent(95)), potash.ShareOfMass(Ratio.FromPercent(5))),
            Liquids = LiquidPlan.TotalWater(Mass.FromGrams(210)).DissolvingIn(Liquid.Water, Temperature.FromDegreesCelsius(8)),
            Additives = [pantry.Additive("kaolin").Weighing(Mass.FromGrams(12)).At(Stage.LyeLiquid)],
            Suppressions = [new("SFY5014", "additives[kaolin]", "weighed") { Author = "M", Until = new DateOnly(2027, 1, 31) }],
        };
        Formula weighed = ofMass with
        {
            Alkali = AlkaliPlan.Weighed(soda.Weighing(Mass.FromGrams(80))),
            Liquids = LiquidPlan.WeighedLyeLiquid(Liquid.Water.Weighing(Mass.FromGrams(210)).FrozenAt(Temperature.FromDegreesCelsius(-10))),
        };
        Golden.Matches(string.Concat(FormulaDifference.Of(before, ofMass).Select(c => c + "\n")) + "\n" + string.Concat(FormulaDifference.Of(ofMass, weighed).Select(c => c + "\n")), "rules", "difference.txt");
    }
}
