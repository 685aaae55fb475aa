using Saponify.Internals;
using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class KeepMilkFromScorching() : FormulaRule(new("SFY3103", "KeepMilkFromScorching", Severity.Warning,
    "Lye heats milk above the limit",
    "Diluting lye gives heat: cold milk in cooled lye may end up warmer than the lye was, turn brown and smell of ammonia.")
{
    Messages =
    [
        new("HeldBack", "{liquids} and the lye of {lye} come to about {temperature}, above the limit of {limit}: {way}"),
        new("InTheJug", "the lye in {liquids} may reach {temperature}, above the limit of {limit}: {way}"),
    ],
    Sources = ["common-practice"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Lyes.WhyNoHeat(facts)
        ?? (facts.Setup.Process!.MilkLimit is null ? "no limit for milk is given" : facts.Formula.Liquids.HeldBack.Any(h => ProcessSteps.Scorches(h.Liquid)) || ProcessSteps.Scorches(facts.Formula.Liquids.LyeLiquid.Liquid) ? null : "no liquid scorches");

    public override void Analyze(in RuleContext context)
    {
        ProcessPlan process = context.Facts.Process!;
        Temperature limit = process.Setup.MilkLimit!.Value;
        LyeSolution lye = process.Lye!;
        LyeLiquid liquid = context.Formula.Liquids.LyeLiquid;
        // of milk in the jug that is neither frozen nor cold another rule speaks
        bool isCold = liquid.IsFrozen || liquid.StoredTemperature?.Celsius <= context.OptionOf("SFY3002", KeepLyeOffWarmMilk.Warmest);
        if (lye.Jug.Liquids.Any(l => ProcessSteps.Scorches(l.Liquid)) && isCold && lye.PeakCelsius > limit.DegreesCelsius)
        {
            string more = lye.Jug.MoreLiquidFor(limit) is { } factor ? $"take {Text.Fixed(factor, 1)} times the liquid" : "dissolve in water";
            context.Report("InTheJug", FormulaPath.LyeLiquid, [Arg.Of("liquids", liquid.Liquid.Name), Arg.Of("temperature", lye.PeakCelsius!.Value, "°C"), Arg.Of("limit", limit.DegreesCelsius, "°C"), Arg.Of("way", more + ", or stir the alkali in slowly over a cold bath")]);
        }
        if (process.WithHeldBack is not { MixedTemperature: { } mixed } mixing || mixed.DegreesCelsius <= limit.DegreesCelsius || !mixing.Liquids.Any(l => ProcessSteps.Scorches(l.Liquid)))
            return;
        string names = Blend.Names(mixing.Liquids.Where(l => ProcessSteps.Scorches(l.Liquid)).Select(l => l.Liquid.Name));
        string colder = mixing.LyeTemperatureFor(limit) is { DegreesCelsius: >= 0 } wanted ? $"cool the lye to {Lyes.Show(Math.Floor(wanted.DegreesCelsius))}" : "";
        Mass? water = mixing.WaterFor(limit);
        string weaker = water is { } grams ? $"put {Text.Number(Math.Ceiling(grams.Grams))} g more water into the lye" : "";
        string way = string.Join(" or ", new[] { colder, weaker }.Where(w => w.Length > 0));
        List<FixOffer> fixes = [];
        if (!mixing.Liquids.All(l => l.IsFrozen))
        {
            fixes.Add(new("KeepMilkFromScorching.Freeze", "Freeze the held-back liquids to -18 °C", FixEffect.KeepsProduct,
                f => f with { Liquids = f.Liquids.HoldingBack([.. f.Liquids.HeldBack.Select(h => h.IsFrozen ? h : h.FrozenAt(Temperature.FromDegreesCelsius(-18)))]) }));
        }
        // weaker lye starts from another heat capacity too, so a little more is taken
        if (water is { Grams: > 0 } extra && context.Facts.Plan.LyeLiquid is { Grams: > 0 } jug && LyeFixes.WithLyeLiquid(context.Formula, Math.Ceiling(jug.Grams + (extra.Grams * 1.02 / jug.Liquid.WaterPerGram))) is { } weakened)
            fixes.Add(new("KeepMilkFromScorching.Weaken", $"Dissolve the alkali in {Text.Number(Math.Ceiling(extra.Grams))} g more water", FixEffect.ChangesProduct, f => f with { Liquids = weakened }));
        context.Report("HeldBack", FormulaPath.HeldBack, [Arg.Of("liquids", names), Arg.Of("lye", process.LyeTemperature!.Value.DegreesCelsius, "°C"), Arg.Of("temperature", mixed.DegreesCelsius, "°C"), Arg.Of("limit", limit.DegreesCelsius, "°C"),
            Arg.Of("way", way.Length > 0 ? way : "freeze them, or hold them back for the fats")], [.. fixes]);
    }
}
