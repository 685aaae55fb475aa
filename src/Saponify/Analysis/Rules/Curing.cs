using Saponify.Internals;

namespace Saponify.Analysis.Rules;

/// <summary>What the rules on the cure have in common.</summary>
internal static class Curing
{
    /// <summary>A day as part of a message.</summary>
    internal static Arg Day(string name, DateOnly day) => Arg.Of(name, Text.Day(day));

    /// <summary>Why the weighings give no forecast, or null.</summary>
    internal static string? WhyNoForecast(FormulaFacts facts) =>
        facts.Cure is not { } fit ? "no weighings are given" : facts.Setup.Ready is null ? "it is not said when a bar is ready" : fit.Succeeded ? null : fit.Verdict.TrimEnd('.');
}
