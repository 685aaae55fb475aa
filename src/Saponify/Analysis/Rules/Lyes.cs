using Saponify.Internals;
using UnitsNet;

namespace Saponify.Analysis.Rules;

/// <summary>What the rules on heat have in common.</summary>
internal static class Lyes
{
    /// <summary>Why the heat of the lye can't be judged, or null.</summary>
    internal static string? WhyNoHeat(FormulaFacts facts) =>
        facts.Setup.Process is null ? "no temperatures are given"
        : !facts.Balance.CanBeWeighed ? "the batch can't be weighed"
        : facts.Process!.Lye is not { } lye ? "the temperature of the liquid or of the room is not given"
        : lye.Peak is null ? "there are no figures beyond a lye of 50 %" : null;

    /// <summary>A temperature as part of a message.</summary>
    internal static string Show(double celsius) => $"{Text.Fixed(celsius, 0)} °C";

    /// <summary>The jug filled with its liquid so cold that the peak stays at or below a temperature; where nothing warmer does, milk and the like frozen.</summary>
    internal static FixOffer[] Colder(string rule, FormulaFacts facts, double peak)
    {
        LyeLiquid lye = facts.Formula.Liquids.LyeLiquid;
        if (lye.IsFrozen || facts.Plan.LyeLiquid is null)
            return [];
        if (facts.Process?.Lye?.Jug.LiquidTemperatureFor(Temperature.FromDegreesCelsius(peak)) is not { } warmest)
            return lye.Liquid == Liquid.Water ? [] : [LiquidFixes.Freeze(rule, lye.Liquid)];
        double celsius = Math.Floor(warmest.DegreesCelsius);
        return [new($"{rule}.Colder", $"Take {lye.Liquid.Name} of {Show(celsius)}", FixEffect.KeepsProduct, f => f with { Liquids = f.Liquids.DissolvingIn(lye.Liquid, Temperature.FromDegreesCelsius(celsius)) })];
    }
}
