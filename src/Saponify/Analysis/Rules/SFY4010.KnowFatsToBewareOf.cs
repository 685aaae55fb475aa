namespace Saponify.Analysis.Rules;

internal sealed class KnowFatsToBewareOf() : FormulaRule(new("SFY4010", "KnowFatsToBewareOf", Severity.Warning,
    "A fat to beware of",
    "Some oils of trade are toxic when crude, sensitise skin, gum up, or are banned from cosmetics where the soap is sold.")
{
    Messages = [new("Beware", "{fat}: {why}")],
    Sources = ["memory"],
})
{
    private static string? Why(Fat fat, ValueList<string> markets) => fat.Id switch
    {
        "jatropha-oil" => "the crude oil is toxic; only detoxified oil belongs on skin",
        "rosin" => "rosin is a known skin sensitiser",
        "tung-oil" => "a drying oil: what stays free goes rancid and gummy",
        "laurel-berry-oil" when markets.Contains("EU", StringComparer.OrdinalIgnoreCase) => "EU law bans the oil of laurel seeds from cosmetics; the oil of the whole fruit is another one",
        _ => null,
    };

    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            if (Why(context.Formula.Fats[i].Fat, context.Setup.Markets) is { } why)
                context.Report("Beware", Places.Fat(context.Formula, i), [Arg.Of("fat", context.Formula.Fats[i].Fat.Name), Arg.Of("why", why)], evidence: Evidence.Memory);
        }
    }
}
