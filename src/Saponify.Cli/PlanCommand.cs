using System.CommandLine;
using System.Text;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify.Cli;

/// <summary><c>saponify plan FILE...</c></summary>
internal static class PlanCommand
{
    private static readonly (string Text, MassUnit Unit)[] s_units = [("g", MassUnit.Gram), ("kg", MassUnit.Kilogram), ("oz", MassUnit.Ounce), ("lb", MassUnit.Pound)];

    internal static Command Make(TextReader input)
    {
        Argument<string[]> files = new("FILE") { Description = "Formula files (JSON); - reads standard input.", Arity = ArgumentArity.OneOrMore };
        files.Validators.Add(FormulaInput.RefuseOptions);
        Option<string> unit = new("--unit", "-u") { Description = "Print all masses in this unit instead of the formula's own." };
        unit.AcceptOnlyFromAmong([.. s_units.Select(u => u.Text)]);
        Option<string> output = new("--output", "-o") { Description = "text for people, json for programs.", DefaultValueFactory = _ => "text" };
        output.AcceptOnlyFromAmong("text", "json");
        Option<Scale?> scale = new("--scale") { Description = "Print in whole steps of this scale, such as 1g or 0.1oz, and say how sure the superfat is.", CustomParser = SetupOptions.ParseScale };
        Option<Scale?> alkaliScale = new("--alkali-scale") { Description = "The scale for the alkali, when it is another one.", CustomParser = SetupOptions.ParseScale };
        Option<string?> weighed = new("--weighed") { Description = "A file with what was really weighed (JSON, saponify-batch/1): how the batch stands, what to weigh now, what can be done." };
        Command command = new("plan", "What to weigh for a formula: by vessel, with the superfats, who takes up lye, and cautions.") { files, unit, output, scale, alkaliScale, weighed };
        command.SetAction(result => Run(result, input, result.GetValue(files)!, result.GetValue(unit), result.GetValue(output) == "json", result.GetValue(scale), result.GetValue(alkaliScale), result.GetValue(weighed)));
        return command;
    }

    private static int Run(ParseResult result, TextReader input, string[] files, string? unit, bool json, Scale? scale, Scale? alkaliScale, string? weighed) => FormulaInput.PrintEach(result, input, files, (path, file, pantry) =>
    {
        WeighedBatch? batch = weighed is null ? null : FormulaInput.ReadBatch(weighed, pantry, file.Formula!, input, result.InvocationConfiguration.Error);
        if (weighed is not null && batch is null)
            return (null, ExitCode.Unreadable);
        BatchPlan plan = file.Formula!.Plan();
        string text = batch is not null ? OnTheBench(batch, scale ?? alkaliScale, alkaliScale ?? scale)
            : json ? Encoding.UTF8.GetString(PlanJson.Write(plan))
            : (scale ?? alkaliScale) is { } steps ? OnScale(plan, scale ?? steps, alkaliScale ?? steps)
            : unit is null ? plan.ToString()
            : plan.ToText(s_units.First(u => u.Text == unit).Unit);
        return (text, batch is { IsLyeHeavy: true } ? ExitCode.Findings : FormulaInput.ExitOf(plan));
    }, apart: !json);

    private static string OnScale(BatchPlan plan, Scale scale, Scale alkaliScale) =>
        plan.OnScale(scale, alkaliScale) + (plan.Margin(scale, scale.Equals(alkaliScale) ? null : alkaliScale, Ratio.FromPercent(95)) is { } margin ? "\nHow sure the superfat of all fat is\n" + margin : "");

    private static string OnTheBench(WeighedBatch batch, Scale? scale, Scale? alkaliScale) =>
        (scale is null ? batch.ToString() : batch.ToText(scale, alkaliScale))
        + (batch.AsWeighed.Plan().Margin(scale, Equals(scale, alkaliScale) ? null : alkaliScale, Ratio.FromPercent(95)) is { } margin ? "\nHow sure the superfat of all fat is\n" + margin : "");
}
