using System.Globalization;
using Saponify.Analysis;
using UnitsNet;

namespace Saponify.Testing;

/// <summary>
/// Checks a rule of your own: what it finds and where, what it leaves alone, what its fixes give, and with every formula the contract of rules: it does not throw,
/// says the same twice and in every culture, its messages have all their arguments and no closing stop, its fixes remove the finding, add no error and are done once.
/// Throws <see cref="RuleVerificationException"/>, so that it works with any test framework. Immutable, thread-safe.
/// </summary>
/// <example><code>RuleVerifier.For(new KeepNamesShort()).Finds(longName, at: "name").IsSilentOn(shortName);</code></example>
public sealed class RuleVerifier
{
    private static readonly string[] s_cultures = ["tr-TR", "de-DE", "fr-FR", "ar-SA"];

    private readonly FormulaRule _rule;
    private readonly BatchSetup _setup;
    private readonly AnalyzerConfig _config;

    private RuleVerifier(FormulaRule rule, BatchSetup setup, AnalyzerConfig config)
    {
        _rule = rule;
        _setup = setup;
        _config = config;
    }

    /// <summary>Starts to check a rule: its contract on formulas without fats, without alkali, with extreme masses.</summary>
    /// <param name="rule">The rule.</param>
    /// <exception cref="ArgumentNullException"><paramref name="rule"/> is null.</exception>
    /// <exception cref="RuleVerificationException">It breaks the contract.</exception>
    public static RuleVerifier For(FormulaRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        RuleVerifier verifier = new(rule, BatchSetup.Unknown, AnalyzerConfig.Default.WithSeverity(rule.Descriptor.Id, rule.Descriptor.DefaultSeverity));
        foreach (Formula odd in OddFormulas())
            verifier.Contract(odd);
        return verifier;
    }

    /// <summary>The same check under other circumstances.</summary>
    /// <param name="setup">The circumstances.</param>
    /// <exception cref="ArgumentNullException"><paramref name="setup"/> is null.</exception>
    public RuleVerifier With(BatchSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        return new(_rule, setup, _config);
    }

    /// <summary>The same check with an option set.</summary>
    /// <param name="option">The option.</param>
    /// <param name="value">Its value, in its range.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public RuleVerifier With(RuleOption option, double value) => new(_rule, _setup, _config.WithOption(_rule.Descriptor.Id, option, value));

    /// <summary>The rule finds something in a formula, at these places and nowhere else.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="at">The stable paths of the findings, in order, for example <c>fats[olive-oil].mass</c>.</param>
    /// <exception cref="RuleVerificationException">It finds something else, or breaks the contract.</exception>
    public RuleVerifier Finds(Formula formula, params string[] at)
    {
        ArgumentNullException.ThrowIfNull(at);
        AnalysisReport report = Contract(formula);
        string expected = string.Join(", ", at), found = string.Join(", ", Mine(report).Select(d => d.Path.ToString()));
        return at.Length > 0 && expected == found ? this : throw Fault($"should find something at \"{expected}\" in \"{formula.Name}\", but found it at \"{found}\".\n{report}");
    }

    /// <summary>The rule applies to a formula and finds nothing.</summary>
    /// <param name="formula">The formula.</param>
    /// <exception cref="RuleVerificationException">It finds something, does not apply, or breaks the contract.</exception>
    public RuleVerifier IsSilentOn(Formula formula)
    {
        AnalysisReport report = Contract(formula);
        RuleOutcome outcome = report.Outcomes.Single(o => o.Rule.Id == _rule.Descriptor.Id);
        if (outcome.Status != RuleStatus.Ran)
            throw Fault($"should run on \"{formula.Name}\", but was {outcome.Status}: {outcome.Reason}.");
        return Mine(report).Any() ? throw Fault($"should find nothing in \"{formula.Name}\".\n{report}") : this;
    }

    /// <summary>The rule says that it has nothing to look at in a formula.</summary>
    /// <param name="formula">The formula.</param>
    /// <exception cref="RuleVerificationException">It runs, or breaks the contract.</exception>
    public RuleVerifier DoesNotApplyTo(Formula formula)
    {
        RuleOutcome outcome = Contract(formula).Outcomes.Single(o => o.Rule.Id == _rule.Descriptor.Id);
        return outcome.Status == RuleStatus.NotApplicable ? this : throw Fault($"should not apply to \"{formula.Name}\", but was {outcome.Status}.");
    }

    /// <summary>A fix of the rule gives this formula.</summary>
    /// <param name="formula">The faulty formula.</param>
    /// <param name="key">Key of the fix.</param>
    /// <param name="expected">What it should give.</param>
    /// <exception cref="RuleVerificationException">There is no such fix, it gives something else, or the rule breaks the contract.</exception>
    public RuleVerifier Fixes(Formula formula, string key, Formula expected)
    {
        AnalysisReport report = Contract(formula);
        Fix fix = Mine(report).SelectMany(d => d.Fixes).FirstOrDefault(f => f.Key == key) ?? throw Fault($"offers no fix \"{key}\" for \"{formula.Name}\".\n{report}");
        return fix.Apply().Equals(expected) ? this : throw Fault($"the fix \"{key}\" gives another formula than expected: {string.Join("; ", fix.Changes)}");
    }

    private IEnumerable<Diagnostic> Mine(AnalysisReport report) => report.Diagnostics.Where(d => d.Id == _rule.Descriptor.Id);

    /// <summary>What every rule owes on every formula.</summary>
    private AnalysisReport Contract(Formula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        FormulaAnalyzer analyzer = new([_rule], _config);
        AnalysisReport report = analyzer.Analyze(formula, _setup);
        if (report.Outcomes.Single().Status == RuleStatus.Failed)
            throw Fault($"throws on \"{formula.Name}\": {report.Diagnostics[0].ToMessage(CultureInfo.InvariantCulture)}");
        string text = report.ToString();
        if (text != analyzer.Analyze(formula, _setup).ToString())
            throw Fault($"says different things about \"{formula.Name}\" when asked twice.");
        foreach (string culture in s_cultures)
        {
            if (text != In(culture, () => analyzer.Analyze(formula, _setup).ToString()))
                throw Fault($"says something else about \"{formula.Name}\" under the culture {culture}.");
        }
        foreach (Diagnostic diagnostic in Mine(report))
        {
            string message = diagnostic.ToMessage(CultureInfo.InvariantCulture);
            if (message.EndsWith('.') || message.Contains('\n', StringComparison.Ordinal) || diagnostic.Template.Format.Split('{').Skip(1).Any(p => !diagnostic.Args.Any(a => p.StartsWith(a.Name + "}", StringComparison.Ordinal))))
                throw Fault($"the message \"{message}\" ends with a stop, has a line break, or lacks an argument.");
            foreach (Fix fix in diagnostic.Fixes)
            {
                if (Mine(analyzer.Analyze(fix.Apply(), _setup)).Any(d => d.Fingerprint == diagnostic.Fingerprint))
                    throw Fault($"the fix \"{fix.Key}\" leaves its finding in \"{formula.Name}\".");
            }
        }
        return report;
    }

    private RuleVerificationException Fault(string what) => new($"{_rule.Descriptor.Id} {_rule.Descriptor.Name}: {what}");

    private static T In<T>(string culture, Func<T> code)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            return code();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static IEnumerable<Formula> OddFormulas()
    {
        AlkaliPlan alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.SodiumHydroxide(Ratio.FromPercent(98)));
        LiquidPlan liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(30));
        Fat fat = Fat.Own("a-fat", "A fat", SaponificationValue.FromMilligramsKohPerGram(190), "made up for a test");
        yield return new Formula("Without fats") { Fats = [], Alkali = alkali, Liquids = liquids };
        yield return new Formula("Without alkali") { Fats = [fat.Weighing(Mass.FromGrams(500))], Alkali = AlkaliPlan.Weighed(Alkali.SodiumHydroxide(Ratio.FromPercent(98)).Weighing(Mass.Zero)), Liquids = liquids };
        yield return new Formula("Of nothing") { Fats = [fat.Weighing(Mass.Zero)], Alkali = alkali, Liquids = LiquidPlan.TotalWater(Mass.Zero) };
        yield return new Formula("Of a thousand tonnes") { Fats = [fat.Weighing(Mass.FromGrams(1e9)), fat.Weighing(Mass.FromGrams(1e9))], Alkali = alkali, Liquids = liquids };
        yield return new Formula("Plain") { Fats = [fat.Weighing(Mass.FromGrams(500))], Alkali = alkali, Liquids = liquids };
    }
}
