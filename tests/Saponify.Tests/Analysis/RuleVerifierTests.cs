using Saponify.Analysis;
using Saponify.Testing;
using Saponify.Tests.Formulas;

namespace Saponify.Tests.Analysis;

/// <summary>The verifier for people who write rules: passes what is right, and says what is wrong.</summary>
public class RuleVerifierTests
{
    private static readonly Formula s_long = FormulaTests.Plain(Pantry.Reference.Fat("olive-oil").Weighing(Mass.FromGrams(300))) with { Name = "A long name indeed" };

    private static readonly Formula s_short = s_long with { Name = "Short" };

    [Fact]
    public void ARightRule_Passes() =>
        RuleVerifier.For(new KeepNamesShort()).Finds(s_long, at: "name").IsSilentOn(s_short).Fixes(s_long, "Cut", s_long with { Name = "A long nam" })
            .With(KeepNamesShort.Limit, 30).IsSilentOn(s_long);

    [Fact]
    public void WhatIsWrong_IsSaid()
    {
        Assert.Contains("found it at \"name\"", Fails(() => RuleVerifier.For(new KeepNamesShort()).Finds(s_long, at: "fats")), StringComparison.Ordinal);
        Assert.Contains("found it at \"\"", Fails(() => RuleVerifier.For(new KeepNamesShort()).Finds(s_short, at: "name")), StringComparison.Ordinal);
        Assert.Contains("should find nothing", Fails(() => RuleVerifier.For(new KeepNamesShort()).IsSilentOn(s_long)), StringComparison.Ordinal);
        Assert.Contains("no date is given", Fails(() => RuleVerifier.For(new NameEveryFat()).IsSilentOn(s_long)), StringComparison.Ordinal);
        Assert.Contains("should not apply", Fails(() => RuleVerifier.For(new KeepNamesShort()).DoesNotApplyTo(s_long)), StringComparison.Ordinal);
        Assert.Contains("offers no fix", Fails(() => RuleVerifier.For(new KeepNamesShort()).Fixes(s_long, "Paint", s_short)), StringComparison.Ordinal);
        Assert.Contains("another formula", Fails(() => RuleVerifier.For(new KeepNamesShort()).Fixes(s_long, "Cut", s_short)), StringComparison.Ordinal);
        Assert.Contains("throws on", Fails(() => RuleVerifier.For(new Throw())), StringComparison.Ordinal);
    }

    [Fact]
    public void Circumstances_ArePassedOn() =>
        RuleVerifier.For(new NameEveryFat()).DoesNotApplyTo(s_long).With(new BatchSetup { Today = new DateOnly(2026, 11, 25) }).Finds(s_long, at: "fats[olive-oil]");

    [Fact]
    public void EveryRuleOfTheLibrary_KeepsTheContract()
    {
        foreach (FormulaRule rule in FormulaAnalyzer.BuiltInRules)
            RuleVerifier.For(rule);
    }

    private static string Fails(Action code) => Assert.Throws<RuleVerificationException>(code).Message;
}
