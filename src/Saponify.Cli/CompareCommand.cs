using System.CommandLine;

namespace Saponify.Cli;

/// <summary><c>saponify compare FILE...</c></summary>
internal static class CompareCommand
{
    internal static Command Make(TextReader input)
    {
        Argument<string[]> files = new("FILE") { Description = "Formula files (JSON), one to 26; - reads standard input.", Arity = new ArgumentArity(1, 26) };
        files.Validators.Add(FormulaInput.RefuseOptions);
        Command command = new("compare", "What bar will it be: the scores of formulas side by side, drawn as bars, and what each fat brings. One file works too.") { files };
        command.SetAction(result => Run(result, input, result.GetValue(files)!));
        return command;
    }

    private static int Run(ParseResult result, TextReader input, string[] files)
    {
        TextWriter print = result.InvocationConfiguration.Output, errors = result.InvocationConfiguration.Error;
        if (OwnTables.Pantry(result, errors) is not { } pantry)
            return ExitCode.Unreadable;
        List<Formula> formulas = [];
        foreach (string path in files)
        {
            if (FormulaInput.Read(path, pantry, input, errors)?.Formula is { } formula)
                formulas.Add(formula);
        }
        if (formulas.Count > 0)
            print.Write(BarComparison.Of([.. formulas]));
        return formulas.Count < files.Length ? ExitCode.Unreadable
            : formulas.TrueForAll(f => f.Balance().CanBeWeighed) ? ExitCode.Fine : ExitCode.Findings;
    }
}
