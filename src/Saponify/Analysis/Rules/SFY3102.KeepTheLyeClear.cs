using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class KeepTheLyeClear() : FormulaRule(new("SFY3102", "KeepTheLyeClear", Severity.Warning,
    "The lye drops crystals when it cools",
    "Crystals of hydroxide that stay in the jug are missing in the pot; in the bar they are grains of lye.")
{
    Messages =
    [
        new("Cooled", "a lye of {strength}, cooled to {temperature}, may drop crystals; it stays clear at {limit} or warmer"),
        new("Standing", "a lye of {strength} that stands in a room of {temperature} may drop crystals; it stays clear at {limit} or warmer"),
    ],
    Sources = ["gse-koh", "wang-2008"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Lyes.WhyNoHeat(facts)
        ?? (facts.Process!.LyeTemperature is null && facts.Setup.Process!.Room is null ? "it is not said what the lye is cooled to" : null);

    public override void Analyze(in RuleContext context)
    {
        ProcessPlan process = context.Facts.Process!;
        LyeSolution lye = process.Lye!;
        // lye that is used warm never gets as cold as the room
        bool isCooled = process.LyeTemperature is not null;
        Temperature temperature = process.LyeTemperature ?? process.Setup.Room!.Value;
        if (lye.IsClearAt(temperature) != false)
            return;
        Figure<Temperature> limit = lye.Properties.CrystallisesBelow!;
        context.Report(isCooled ? "Cooled" : "Standing", FormulaPath.Liquids,
            [Arg.Of("strength", lye.Properties.Strength), Arg.Of("temperature", temperature.DegreesCelsius, "°C"), Arg.Of("limit", limit.High!.Value.DegreesCelsius, "°C")], evidence: limit.Evidence);
    }
}
