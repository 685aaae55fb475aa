using System.CommandLine;
using System.Text;
using Saponify.Analysis;

namespace Saponify.Cli;

/// <summary><c>saponify fix FILE...</c></summary>
internal static class FixCommand
{
    internal static Command Make(TextReader input)
    {
        Argument<string[]> files = new("FILE") { Description = "Formula files (JSON); - reads standard input and prints the fixed formula.", Arity = ArgumentArity.OneOrMore };
        files.Validators.Add(FormulaInput.RefuseOptions);
        Option<bool> write = new("--write") { Description = "Write the changes into the files; without it they are only shown." };
        Option<bool> product = new("--product") { Description = "Apply fixes that change the product as well, such as another superfat." };
        Option<string[]> rules = new("--rule") { Description = "Only fixes of these rules, such as SFY2001.", AllowMultipleArgumentsPerToken = true };
        Option<string?> config = new("--config") { Description = "Configuration of the rules (JSON)." };
        SetupOptions setup = new();
        Command command = new("fix", "Applies the fixes that the rules offer, one after the other; shows the change, and writes it only with --write. Circumstances come from the setup of the file where no option says otherwise.") { files, write, product, rules, config };
        setup.AddTo(command);
        command.SetAction(result => Run(result, input));
        return command;

        int Run(ParseResult result, TextReader reader)
        {
            TextWriter errors = result.InvocationConfiguration.Error;
            string[] only = result.GetValue(rules) ?? [];
            if (CheckCommand.Analyzer(result.GetValue(config), errors) is not { } analyzer || OwnTables.Pantry(result, errors) is not { } pantry)
                return ExitCode.Unreadable;
            if (Array.Find(only, r => !analyzer.Rules.Any(d => d.Descriptor.Id == r)) is { } unknown)
            {
                errors.WriteLine($"There is no rule {unknown}.");
                return ExitCode.WrongUse;
            }
            FixEffect upTo = result.GetValue(product) ? FixEffect.ChangesProduct : FixEffect.KeepsProduct;
            int exit = ExitCode.Fine;
            foreach (string path in result.GetValue(files)!)
                exit = Math.Max(exit, Fix(path, d => only.Length > 0 && !only.Contains(d.Rule.Id) ? null : d.Fixes.FirstOrDefault(f => f.Effect <= upTo)));
            return exit;

            int Fix(string path, Func<Diagnostic, Fix?> choose) => FormulaInput.Read(path, pantry, reader, errors) is { } file
                ? FixCommand.Fix(path, file, analyzer, setup.Of(result, file.Setup), choose, result.GetValue(write), result.InvocationConfiguration.Output, errors)
                : ExitCode.Unreadable;
        }
    }

    private static int Fix(string path, FormulaFile file, FormulaAnalyzer analyzer, BatchSetup setup, Func<Diagnostic, Fix?> choose, bool write, TextWriter print, TextWriter errors)
    {
        bool piped = path == "-";
        string name = piped ? "standard input" : path;
        TextWriter talk = piped ? errors : print;
        List<string> applied = [];
        Formula changed = analyzer.ApplyFixes(file.Formula!, d =>
        {
            Fix? fix = choose(d);
            if (fix is not null)
                applied.Add($"{name}: {d.Rule.Id}: {fix.Title}{(fix.Effect == FixEffect.ChangesProduct ? " (changes the product)" : "")}");
            return fix;
        }, setup, 1000);
        applied.ForEach(talk.WriteLine);
        string before = Encoding.UTF8.GetString(file.Edit(file.Formula!)), after = Encoding.UTF8.GetString(file.Edit(changed));
        if (piped)
        {
            print.Write(after);
        }
        else if (before == after)
        {
            talk.WriteLine($"{name}: nothing to fix");
        }
        else
        {
            talk.Write(LineDifference.Of(before, after));
            if (write && !Write(path, after, errors))
                return ExitCode.Unreadable;
            talk.WriteLine(write ? $"{name}: written" : $"{name}: not written; --write does that");
        }
        AnalysisReport left = analyzer.Analyze(changed, setup);
        int errorsLeft = left.Diagnostics.Count(d => d.Severity == Severity.Error);
        if (errorsLeft > 0)
            talk.WriteLine(FormattableString.Invariant($"{name}: {errorsLeft} error{(errorsLeft == 1 ? "" : "s")} left; see: saponify check"));
        return errorsLeft > 0 ? ExitCode.Findings : ExitCode.Fine;
    }

    private static bool Write(string path, string text, TextWriter errors)
    {
        try
        {
            WholeFile.Write(path, Encoding.UTF8.GetBytes(text));
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{path}: error: {fault.Message}");
            return false;
        }
    }
}
