using Saponify.Analysis;
using Saponify.Tests.Formulas;
using Saponify.Tests.Support;

namespace Saponify.Tests.Analysis;

/// <summary>What no rule, configuration or batch setup can be, and what its author is told instead.</summary>
public class AnalysisRefusalTests
{
    private static readonly Formula s_formula = FormulaTests.Plain(Pantry.Reference.Fat("olive-oil").Weighing(Mass.FromGrams(500)));
    private static readonly FormulaAnalyzer s_analyzer = new([new KeepNamesShort()]);
    private static readonly RuleOption s_letters = KeepNamesShort.Limit;

    private delegate void Use(in RuleContext context);

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    private static Formula Same(Formula formula) => formula;

    private static RuleDescriptor Rule(string id = "ACME4", string name = "KeepQuiet", Severity severity = Severity.Info, string title = "A sound", string harm = "Noise.") => new(id, name, severity, title, harm) { Messages = [] };

    /// <summary>What a rule meets that uses its context so.</summary>
    private static object? Within(Use use)
    {
        Using rule = new(use);
        _ = new FormulaAnalyzer([rule]).Analyze(s_formula);
        return rule.Fault is { } fault ? throw fault : null;
    }

    [Fact]
    public void WhatNoRuleOrSetupCanBe_IsRefusedWithAReason() => new Refusals()
        .Of(() => Rule(id: null!))
        .Of(() => Rule(id: " "))
        .Of(() => Rule(id: "ACME-4"))
        .Of(() => Rule(name: ""))
        .Of(() => Rule(severity: (Severity)99))
        .Of(() => Rule(title: ""))
        .Of(() => Rule(harm: ""))
        .Of(() => Rule() with { Messages = [null!] })
        .Of(() => Rule() with { Options = [null!] })
        .Of(() => Rule() with { Sources = ["memory", null!] })
        .Of(() => Rule() with { FormerIds = [null!] })
        .Of(() => Arg.Of(null!, 1, null))
        .Of(() => Arg.Of("name", null!))
        .Of(() => new MessageTemplate("", "the name is long"))
        .Of(() => new MessageTemplate("Long", ""))
        .Of(() => new MessageTemplate("Long", "the name is long."))
        .Of(() => new MessageTemplate("Long", "the name\nis long"))
        .Of(() => new RuleOption("", "letters", 10, 1, 100, "Longest name."))
        .Of(() => new RuleOption("limit", "", 10, 1, 100, "Longest name."))
        .Of(() => new RuleOption("limit", "letters", 101, 1, 100, "Longest name."))
        .Of(() => new RuleOption("limit", "letters", 10, 1, 100, ""))
        .Of(() => new FixOffer("", "Cut the name", FixEffect.KeepsProduct, Same))
        .Of(() => new FixOffer("Cut", "", FixEffect.KeepsProduct, Same))
        .Of(() => new FixOffer("Cut", "Cut the name", (FixEffect)99, Same))
        .Of(() => new FixOffer("Cut", "Cut the name", FixEffect.KeepsProduct, null!))
        .Of(() => new Fix(s_formula, new("Cut", "Cut the name", FixEffect.KeepsProduct, _ => null!)).Apply())
        .Of(() => new Described(null!))
        .Of(() => new Described(Rule()))
        .Of(() => Within((in c) => c.Option(null!)))
        .Of(() => Within((in c) => c.Option(s_letters)))
        .Of(() => Within((in c) => c.Report("Long", FormulaPath.Root)))
        .Of(() => Within((in c) => c.Report("Used", null!)))
        .Of(() => new FormulaAnalyzer(null!))
        .Of(() => new FormulaAnalyzer([new KeepNamesShort(), null!]))
        .Of(() => new FormulaAnalyzer([new KeepNamesShort(), new KeepNamesShort()]))
        .Of(() => new FormulaAnalyzer([new KeepNamesShort("sfy9001")]))
        .Of(() => s_analyzer.With(default(FormulaRule[])!))
        .Of(() => s_analyzer.With(default(AnalyzerConfig)!))
        .Of(() => s_analyzer.Analyze(default(Formula)!))
        .Of(() => s_analyzer.ApplyFixes(null!, _ => null))
        .Of(() => s_analyzer.ApplyFixes(s_formula, null!))
        .Of(() => s_analyzer.ApplyFixes(s_formula, _ => null, mostPasses: 1001))
        .Of(() => s_analyzer.Analyze(s_formula).Mend((FixEffect)99))
        .Of(() => AnalyzerConfig.Of((Preset)99))
        .Of(() => AnalyzerConfig.Default.WithSeverity(null!, Severity.Info))
        .Of(() => AnalyzerConfig.Default.WithSeverity("SFY2001", (Severity)99))
        .Of(() => AnalyzerConfig.Default.WithSeverity((RuleCategory)99, Severity.Info))
        .Of(() => AnalyzerConfig.Default.WithSeverity(RuleCategory.Custom, (Severity)99))
        .Of(() => Rule() with { Floor = (Severity)99 })
        .Of(() => AnalyzerConfig.Default.WithOption(null!, s_letters, 20))
        .Of(() => AnalyzerConfig.Default.WithOption("ACME1", null!, 20))
        .Of(() => AnalyzerConfig.Default.WithOption("ACME1", s_letters, 101))
        .Of(() => AnalyzerConfig.Default.WithSuppression(null!))
        .Of(() => AnalyzerConfig.Default.SeverityOf(null!))
        .Of(() => new FragranceLimit("", Percent(2), "certificate of lot 7"))
        .Of(() => new FragranceLimit("fragrance-oil", Percent(101), "certificate of lot 7"))
        .Of(() => new FragranceLimit("fragrance-oil", Percent(2), ""))
        .Of(() => new BatchSetup { Moulds = 0 })
        .Of(() => new BatchSetup { Pour = Temperature.FromDegreesCelsius(101) })
        .Of(() => new BatchSetup { LeftInPot = Percent(51) })
        .Of(() => new BatchSetup { WantedBars = 0 })
        .Of(() => new BatchSetup { CuredBars = [Mass.FromGrams(100), Mass.Zero] })
        .Of(() => new BatchSetup { DeclaredMass = Mass.Zero })
        .Match("analysis");

    private sealed class Described(RuleDescriptor descriptor) : FormulaRule(descriptor)
    {
        public override void Analyze(in RuleContext context)
        {
        }
    }

    private sealed class Using(Use use) : FormulaRule(new("ACME4", "UseTheContext", Severity.Info, "Uses its context", "None.") { Messages = [new("Used", "used")] })
    {
        public Exception? Fault { get; private set; }

        public override void Analyze(in RuleContext context)
        {
            try
            {
                use(in context);
            }
            catch (ArgumentException fault)
            {
                Fault = fault;
            }
        }
    }
}
