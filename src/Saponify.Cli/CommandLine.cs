using System.CommandLine;

namespace Saponify.Cli;

/// <summary>The command line: parse, call the library, print, exit code; nothing else.</summary>
internal static class CommandLine
{
    internal static int Run(string[] args, TextReader input, TextWriter output, TextWriter errors)
    {
        RootCommand root = new("""
            Saponify plans cold-process soap: lye and liquid from real weights, the fat, water and acid of milk and cream counted.

            Exit codes: 0 fine, 1 obstacles or errors in the formula, 2 input can't be read, 64 wrong use.
            Lye burns skin and eyes. The figures are a help to trained people, not a replacement for the safety data sheet and local rules.
            """)
        {
            PlanCommand.Make(input),
            CompareCommand.Make(input),
            CheckCommand.Make(input),
            FixCommand.Make(input),
            WeighCommand.Make(input),
            ProcessCommand.Make(input),
            MouldCommand.Make(input),
            CureCommand.Make(input),
            FatsCommand.Make(),
            ShowCommand.Make(),
            OwnTables.Option,
        };
        ParseResult parsed = root.Parse(args);
        int exit = parsed.Invoke(new InvocationConfiguration { Output = output, Error = errors });
        return parsed.Errors.Count > 0 ? ExitCode.WrongUse : exit;
    }
}
