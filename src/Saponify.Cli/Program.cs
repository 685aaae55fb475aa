using System.CommandLine;
using System.Text;
using Saponify.Cli;

Console.OutputEncoding = Encoding.UTF8;
Console.InputEncoding = Encoding.UTF8;
RootCommand root = new("""
    Saponify plans cold-process soap: lye and liquid from real weights, the fat, water and acid of milk and cream counted.

    Exit codes: 0 fine, 1 obstacles or errors in the formula, 2 input can't be read, 64 wrong use.
    Lye burns skin and eyes. The figures are a help to trained people, not a replacement for the safety data sheet and local rules.
    """)
{
    PlanCommand.Make(),
};
ParseResult parsed = root.Parse(args);
int exit = parsed.Invoke();
return parsed.Errors.Count > 0 ? ExitCode.WrongUse : exit;
