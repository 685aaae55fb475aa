using Saponify.Internals;
using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class CheckTheUnitOfTemperatures() : FormulaRule(new("SFY1108", "CheckTheUnitOfTemperatures", Severity.Warning,
    "A temperature may be in Fahrenheit",
    "Milk or water that is said to have 68 °C when 68 °F is meant spoils every forecast of heat.")
{
    Messages = [new("Fahrenheit", "{liquid} at {celsius}: is {fahrenheit} meant, {converted}?")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "°C", 50, 20, 100, "Highest temperature of a liquid that is not doubted.");

    private static void Check(in RuleContext context, FormulaPath path, string liquid, StoredTemperature temperature, double limit)
    {
        if (temperature.Written.Unit != UnitsNet.Units.TemperatureUnit.DegreeCelsius || temperature.Celsius <= limit)
            return;
        context.Report("Fahrenheit", path,
            [Arg.Of("liquid", liquid), Arg.Of("celsius", temperature.Celsius, "°C"), Arg.Of("fahrenheit", temperature.Celsius, "°F"), Arg.Of("converted", (temperature.Celsius - 32) / 1.8, "°C")]);
    }

    public override void Analyze(in RuleContext context)
    {
        double limit = context.Option(Highest);
        LyeLiquid lye = context.Formula.Liquids.LyeLiquid;
        if (lye.StoredTemperature is { } jug)
            Check(context, FormulaPath.LyeLiquid.Member("temperature"), lye.Liquid.Name, jug, limit);
        for (int i = 0; i < context.Formula.Liquids.HeldBack.Count; i++)
        {
            LiquidPortion portion = context.Formula.Liquids.HeldBack[i];
            if (portion.StoredTemperature is { } temperature)
                Check(context, FormulaPath.HeldBack.Item(i, portion.Line).Member("temperature"), portion.Liquid.Name, temperature, limit);
        }
    }
}
