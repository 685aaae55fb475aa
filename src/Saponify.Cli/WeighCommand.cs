using System.CommandLine;

namespace Saponify.Cli;

/// <summary><c>saponify weigh FILE</c></summary>
internal static class WeighCommand
{
    internal static Command Make(TextReader input)
    {
        Argument<string> file = new("FILE") { Description = "The formula file (JSON)." };
        Option<string?> save = new("--save") { Description = "Where the weights are kept; FILE with .weights.json at its end when left out. If it is there already, weighing goes on." };
        Option<Scale?> scale = new("--scale") { Description = "Step of the scale, such as 1g or 0.1oz: what to weigh is said in its steps.", CustomParser = SetupOptions.ParseScale };
        Option<Scale?> alkaliScale = new("--alkali-scale") { Description = "The scale for the alkali, when it is another one.", CustomParser = SetupOptions.ParseScale };
        Command command = new("weigh", "At the bench: asks for one weight after the other, keeps each at once, says what changed and what can be done.") { file, save, scale, alkaliScale };
        command.SetAction(result => Run(result, input, result.GetValue(file)!, result.GetValue(save), result.GetValue(scale), result.GetValue(alkaliScale)));
        return command;
    }

    private static int Run(ParseResult result, TextReader input, string path, string? save, Scale? scale, Scale? alkaliScale)
    {
        TextWriter print = result.InvocationConfiguration.Output, errors = result.InvocationConfiguration.Error;
        if (path == "-")
        {
            errors.WriteLine("weigh reads the weights from standard input; give the formula as a file.");
            return ExitCode.WrongUse;
        }
        if (OwnTables.Pantry(result, errors) is not { } pantry || FormulaInput.Read(path, pantry, input, errors)?.Formula is not { } formula)
            return ExitCode.Unreadable;
        BatchPlan plan = formula.Plan();
        if (!plan.Balance.CanBeWeighed)
        {
            print.Write(plan);
            return ExitCode.Findings;
        }
        string kept = save ?? Path.ChangeExtension(path, ".weights.json");
        WeighedBatch? batch = File.Exists(kept) ? FormulaInput.ReadBatch(kept, pantry, formula, input, errors) : WeighedBatch.Start(plan);
        if (batch is null)
            return ExitCode.Unreadable;
        WeighSession session = new(batch, scale ?? alkaliScale, alkaliScale ?? scale, input, print, b => WholeFile.Write(kept, BatchFile.Write(b, pantry)));
        try
        {
            batch = session.Run();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{kept}: error: {fault.Message}");
            return ExitCode.Unreadable;
        }
        print.WriteLine($"Kept in {kept}.");
        return batch.IsLyeHeavy ? ExitCode.Findings : ExitCode.Fine;
    }
}
