using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class KeepFatsMeltedInThePot() : FormulaRule(new("SFY3106", "KeepFatsMeltedInThePot", Severity.Info,
    "A fat sets in the pot",
    "A batter that thickens because a fat sets looks like trace and has not reacted: it separates in the mould, with pockets of lye.")
{
    Messages = [new("Sets", "{fats} below the melting range at the {temperature} in the pot; {needed} or more keeps all of them melted")],
    Sources = ["common-practice"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Lyes.WhyNoHeat(facts) ?? (facts.Process!.WithFats?.MixedTemperature is null ? "the temperature in the pot is not known" : null);

    public override void Analyze(in RuleContext context)
    {
        double temperature = context.Facts.Process!.WithFats!.MixedTemperature!.Value.DegreesCelsius;
        List<FormulaPath> lines = [];
        List<string> names = [];
        (double needed, Evidence? evidence) = (double.NegativeInfinity, null);
        ValueList<FatSetting> settings = context.Facts.Process.Setting;
        for (int i = 0; i < settings.Count; i++)
        {
            // late fats are melted by themselves, which another rule says
            if (settings[i] is not { Verdict: FatSettingVerdict.Sets, Portion: { IsLate: false, Grams: > 0 } portion, Melting: { } melting })
                continue;
            lines.Add(Places.Fat(context.Formula, i));
            names.Add(portion.Fat.Name);
            needed = Math.Max(needed, FatHeating.HighEnd(melting));
            evidence = evidence >= melting.Evidence ? evidence : melting.Evidence;
        }
        if (lines.Count > 0)
            context.Report("Sets", FormulaPath.Fats, [Arg.Of("fats", Blend.Names(names) + (lines.Count > 1 ? " are" : " is")), Arg.Of("temperature", temperature, "°C"), Arg.Of("needed", needed, "°C")], related: [.. lines], evidence: evidence);
    }
}
