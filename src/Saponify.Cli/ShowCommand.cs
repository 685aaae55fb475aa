using System.CommandLine;

namespace Saponify.Cli;

/// <summary><c>saponify show NAME...</c></summary>
internal static class ShowCommand
{
    internal static Command Make()
    {
        Argument<string[]> names = new("NAME")
        {
            Description = "Id, name, alias, CAS number or allergen class; quote names with blanks.",
            Arity = ArgumentArity.OneOrMore,
        };
        names.Validators.Add(FormulaInput.RefuseOptions);
        Command command = new("show", "Says everything about a fat, liquid, additive, essential oil or allergen: figures, fatty acids as bars, evidence, sources.") { names };
        command.SetAction(result => Run(result, result.GetValue(names)!));
        return command;
    }

    private static int Run(ParseResult result, string[] names)
    {
        TextWriter print = result.InvocationConfiguration.Output, errors = result.InvocationConfiguration.Error;
        if (OwnTables.Pantry(result, errors) is not { } pantry)
            return ExitCode.Unreadable;
        int exit = ExitCode.Fine;
        bool first = true;
        foreach (string name in names)
        {
            if (pantry.Describe(name) is { } text)
            {
                print.Write((first ? "" : "\n") + text);
                first = false;
                continue;
            }
            ValueList<string> near = pantry.NearestOfAll(name);
            errors.WriteLine($"error: the tables have nothing called \"{(name.Length > 100 ? name[..100] + "..." : name)}\"{(near.Count == 0 ? "" : "; nearest: " + string.Join(", ", near))}");
            exit = ExitCode.Unreadable;
        }
        return exit;
    }
}
