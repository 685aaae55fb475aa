using FsCheck;
using FsCheck.Fluent;
using Saponify.Analysis;
using Saponify.Tests.Support;

namespace Saponify.Tests.Analysis;

/// <summary>Laws of all rules together, over formulas good and bad.</summary>
public class RuleLaws
{
    private static readonly Gen<BatchSetup> s_setups =
        from step in Gen.Elements(0.01, 1, 5)
        from known in Gen.Choose(0, 3)
        from form in Gen.Elements(ProductForm.Bar, ProductForm.Soft)
        from celsius in Gen.Choose(5, 60)
        from centimeters in Gen.Choose(4, 40)
        from excluded in Gen.Elements("animal", "milk", "olive-oil", "tree-nut")
        select known == 0 ? BatchSetup.Unknown : new BatchSetup
        {
            Scale = new Scale(Mass.FromGrams(step)),
            Form = form,
            Excluded = known == 2 ? [excluded] : [],
            FragranceLimits = known == 3 ? [new("fragrance-oil", Ratio.FromPercent(1), "certificate"), new("essential-oil", Ratio.FromPercent(step), "certificate")] : [],
            Today = new DateOnly(2026, 11, 25),
            Markets = ["EU"],
            Process = Temperatures(known, celsius, centimeters),
            Mould = Mould.Box(Length.FromCentimeters(centimeters), Length.FromCentimeters(8), Length.FromCentimeters(7)),
            Cut = new() { Thickness = Length.FromCentimeters(celsius / 5.0), Samples = known },
            Pour = Temperature.FromDegreesCelsius(celsius),
            IsInsulated = known == 2,
            WantedBars = centimeters,
            PouredOn = new DateOnly(2026, 1, 5),
            SoldFrom = new DateOnly(2026, 1, 5).AddDays(celsius),
            Cure = new("bar", new(new(2026, 1, 5), Mass.FromGrams(centimeters * 10)), new(new(2026, 1, 5 + known), Mass.FromGrams(celsius * 5))),
            Ready = ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(1)),
            CuredBars = [Mass.FromGrams(celsius), Mass.FromGrams(centimeters)],
            DeclaredMass = Mass.FromGrams(centimeters),
        };

    private static ProcessSetup Temperatures(int known, int celsius, int centimeters) => new()
    {
        Room = Temperature.FromDegreesCelsius(20),
        Water = Temperature.FromDegreesCelsius(celsius),
        HeldBack = Temperature.FromDegreesCelsius(5),
        Fats = Temperature.FromDegreesCelsius(celsius),
        Lye = known == 3 ? null : Temperature.FromDegreesCelsius(65 - celsius),
        MilkLimit = Temperature.FromDegreesCelsius(35),
        Vessel = new(VesselMaterial.All[celsius % VesselMaterial.All.Count], Volume.FromMilliliters(centimeters * 50), Length.FromCentimeters(10), Mass.FromGrams(100)),
    };

    [Law]
    public Property NoRuleThrows_OnAnyFormula() => Prop.ForAll(Any.Formulas.Arbitrary(), s_setups.Arbitrary(), (formula, setup) =>
    {
        AnalysisReport report = FormulaAnalyzer.Default.Analyze(formula, setup);
        Diagnostic? odd = report.Diagnostics.FirstOrDefault(d => d.ToMessage().Length == 0 || d.ToMessage().Contains('{', StringComparison.Ordinal) || d.ToMessage().EndsWith('.'));
        return (report.Outcomes.All(o => o.Status != RuleStatus.Failed) && report.Outcomes.Count == FormulaAnalyzer.BuiltInRules.Count && odd is null)
            .Label(odd?.ToString() ?? string.Join(", ", report.Diagnostics.Where(d => d.Id == "SFY0001")));
    });

    [Law]
    public Property TheOrderOfRules_TheCultureAndTheOrderOfLines_ChangeNoFinding() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), s_setups.Arbitrary(), Gen.Elements(InCulture.Names).Arbitrary(), (formula, setup, culture) =>
    {
        string usual = FormulaAnalyzer.Default.Analyze(formula, setup).ToString();
        FormulaAnalyzer reversed = new(FormulaAnalyzer.BuiltInRules.Reverse());
        string[] fingerprints = [.. FormulaAnalyzer.Default.Analyze(formula, setup).Diagnostics.Select(d => d.Fingerprint).Order(StringComparer.Ordinal)];
        string[] turned = [.. FormulaAnalyzer.Default.Analyze(formula with { Fats = [.. formula.Fats.Reverse()] }, setup).Diagnostics.Select(d => d.Fingerprint).Order(StringComparer.Ordinal)];
        return usual == InCulture.Run(culture, () => reversed.Analyze(formula, setup).ToString())
            && (fingerprints.SequenceEqual(turned) || fingerprints.Any(f => f.StartsWith("SFY1105", StringComparison.Ordinal)));
    });

    /// <summary>The safety theorem: no error, active or accepted, means a superfat of at least 0, a usable value for every fat, and water that dissolves the alkali.</summary>
    [Law(20_000)]
    public Property AFormulaWithoutAnError_IsSafeToWeigh() => Prop.ForAll(Gen.OneOf(Any.Formulas, Any.SoundFormulas, Any.SoundFormulas.Select(Tight)).Arbitrary(), formula =>
    {
        AnalysisReport report = FormulaAnalyzer.Default.Analyze(formula);
        if (report.HasAtLeast(Severity.Error) || report.Suppressed.Any(d => d.Severity == Severity.Error))
            return !report.IsSafeToWeigh;
        LyeBalance balance = report.Plan.Balance;
        double soda = 0, potash = 0;
        foreach (AlkaliPortion alkali in report.Plan.Alkalis)
        {
            double pure = alkali.Mass.Grams * alkali.Alkali.Purity.High.DecimalFractions;
            _ = alkali.Alkali.Kind == AlkaliKind.SodiumHydroxide ? soda += pure : potash += pure;
        }
        double water = report.Plan.Water.Where(w => w.IsWhileDissolving).Sum(w => w.Water.Grams);
        bool allSolution = report.Plan.Alkalis.All(a => a.Alkali.IsSolution);
        return report.IsSafeToWeigh
            && balance.SuperfatOfAllFat!.Value.DecimalFractions >= 0
            && formula.Fats.All(f => f.Fat.Saponification is not null)
            && (allSolution || water >= ((0.92 * soda) + (0.90 * potash)) * (1 - 1e-6));
    });

    [Law]
    public Property AFix_RemovesItsFinding_AddsNoError_IsDoneOnce_AndChangesOnePartOnly() => Prop.ForAll(Gen.OneOf(Any.SoundFormulas, Any.SoundFormulas.Select(Tight), Any.Formulas).Arbitrary(), s_setups.Arbitrary(), (formula, setup) =>
    {
        AnalysisReport before = FormulaAnalyzer.Default.Analyze(formula, setup);
        foreach (Diagnostic diagnostic in before.Diagnostics)
        {
            foreach (Fix fix in diagnostic.Fixes)
            {
                Formula after = fix.Apply();
                AnalysisReport report = FormulaAnalyzer.Default.Analyze(after, setup);
                if (report.Diagnostics.Any(d => d.Fingerprint == diagnostic.Fingerprint))
                    return false.Label($"{fix.Key} leaves {diagnostic} as {report.Diagnostics.First(d => d.Fingerprint == diagnostic.Fingerprint)}");
                Diagnostic? worse = report.Diagnostics.FirstOrDefault(d => d.Severity == Severity.Error && before.Diagnostics.All(b => b.Id != d.Id));
                if (worse is not null)
                    return false.Label($"{fix.Key} adds {worse}");
                if (fix.Changes.Count == 0 || after.Equals(formula))
                    return false.Label($"{fix.Key} changes nothing");
                if (!IsScaling(fix.Key) && fix.Changes.Select(c => Part(c.Path)).Distinct().Count() > 1)
                    return false.Label($"{fix.Key} changes {string.Join("; ", fix.Changes)}");
            }
        }
        return true.ToProperty();
    });

    [Law]
    public Property Mending_EndsWithNoFixOfThatKindLeft() => Prop.ForAll(Gen.OneOf(Any.SoundFormulas, Any.SoundFormulas.Select(Tight)).Arbitrary(), formula =>
    {
        Formula mended = FormulaAnalyzer.Default.Analyze(formula).Mend(FixEffect.ChangesProduct);
        return FormulaAnalyzer.Default.Analyze(mended).Diagnostics.All(d => d.Fixes.Count == 0);
    });

    /// <summary>The converse that keeps noise down: what makers make by good practice gives no error and few warnings.</summary>
    [Fact]
    public void SoundFormulas_GiveNoErrorAndFewWarnings()
    {
        int warnings = 0, remarks = 0, formulas = 0;
        SortedDictionary<string, int> byRule = new(StringComparer.Ordinal);
        foreach (Formula formula in Any.GoodFormulas.Sample(2000, LawAttribute.Seed, 20))
        {
            AnalysisReport report = FormulaAnalyzer.Default.Analyze(formula);
            Assert.DoesNotContain(report.Diagnostics, d => d.Severity == Severity.Error);
            foreach (Diagnostic diagnostic in report.Diagnostics)
            {
                _ = diagnostic.Severity == Severity.Warning ? warnings++ : remarks++;
                byRule[diagnostic.Id] = byRule.GetValueOrDefault(diagnostic.Id) + 1;
            }
            formulas++;
        }
        TestContext.Current.TestOutputHelper!.WriteLine(FormattableString.Invariant($"{warnings / (double)formulas:F3} warnings and {remarks / (double)formulas:F3} remarks a formula: {string.Join(", ", byRule.Select(r => $"{r.Key} {r.Value}"))}"));
        Assert.InRange(warnings / (double)formulas, 0, 0.05);
        Assert.InRange(remarks / (double)formulas, 0, 0.5);
    }

    /// <summary>The fixes that change every mass: another size of the batch.</summary>
    private static bool IsScaling(string key) => key == "UseAScaleFineEnough.Larger" || key.EndsWith(".Scale", StringComparison.Ordinal);

    /// <summary>Fats, alkali, liquids or additives: the first member of a path.</summary>
    private static string Part(FormulaPath path) => path.ToString().Split('.', '[')[0];

    /// <summary>A formula at the edge: a superfat near 0, lye near the strength at which the alkali still dissolves.</summary>
    private static Formula Tight(Formula formula) => formula with
    {
        Alkali = ((SuperfatTarget)formula.Alkali) with { Superfat = ((SuperfatTarget)formula.Alkali).Superfat / 10 - Ratio.FromPercent(1) },
        Liquids = formula.Liquids.Rule == WaterRule.LyeConcentration ? LiquidPlan.LyeConcentration(Ratio.FromDecimalFractions(0.3 + (formula.Liquids.Share!.Value.DecimalFractions - 0.25) * 1.8)).DissolvingIn(formula.Liquids.LyeLiquid.Liquid).HoldingBack([.. formula.Liquids.HeldBack]) : formula.Liquids,
    };
}
