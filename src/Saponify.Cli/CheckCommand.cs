using System.CommandLine;
using System.Text;
using Saponify.Analysis;
using static System.FormattableString;

namespace Saponify.Cli;

/// <summary><c>saponify check FILE...</c></summary>
internal static class CheckCommand
{
    internal static Command Make(TextReader input)
    {
        Argument<string[]> files = new("FILE") { Description = "Formula files (JSON); - reads standard input.", Arity = ArgumentArity.OneOrMore };
        files.Validators.Add(FormulaInput.RefuseOptions);
        Option<string?> config = new("--config") { Description = "Configuration of the rules (JSON)." };
        Option<string?> sarif = new("--sarif") { Description = "Write a SARIF 2.1.0 log to this file." };
        Option<string> output = new("--output", "-o") { Description = "text for people and editors, json for programs.", DefaultValueFactory = _ => "text" };
        output.AcceptOnlyFromAmong("text", "json");
        Option<bool> all = new("--all") { Description = "Show hidden findings and rules that did not apply as well." };
        SetupOptions setup = new();
        Command command = new("check", "Checks formulas like a compiler checks programs: findings with place, severity, message and fixes. Circumstances come from the setup of the file where no option says otherwise.") { files, config, sarif, output, all };
        setup.AddTo(command);
        command.SetAction(result => Run(result, input, result.GetValue(files)!, f => setup.Of(result, f.Setup), result.GetValue(config), result.GetValue(sarif), result.GetValue(output) == "json", result.GetValue(all)));
        return command;
    }

    private static int Run(ParseResult result, TextReader input, string[] files, Func<FormulaFile, BatchSetup> setup, string? config, string? sarif, bool json, bool all)
    {
        TextWriter print = result.InvocationConfiguration.Output, errors = result.InvocationConfiguration.Error;
        if (Analyzer(config, errors) is not { } analyzer || OwnTables.Pantry(result, errors) is not { } pantry)
            return ExitCode.Unreadable;
        int exit = ExitCode.Fine, unreadable = 0;
        List<(AnalysisReport Report, string? Artifact)> reports = [];
        foreach (string path in files)
        {
            if (FormulaInput.Read(path, pantry, input, errors) is not { } file)
            {
                unreadable++;
                continue;
            }
            AnalysisReport report = analyzer.Analyze(file, setup(file));
            reports.Add((report, path == "-" ? null : path));
            if (json)
                print.Write(Encoding.UTF8.GetString(ReportJson.Write(report)));
            else
                Print(print, path == "-" ? "standard input" : path, report, all);
            if (report.HasAtLeast(Severity.Error) || !report.Plan.Balance.CanBeWeighed)
                exit = ExitCode.Findings;
        }
        if (!json)
            print.WriteLine(Summary(files.Length, unreadable, reports));
        if (sarif is not null)
            File.WriteAllBytes(sarif, SarifLog.Write(reports));
        return unreadable > 0 ? ExitCode.Unreadable : exit;
    }

    internal static FormulaAnalyzer? Analyzer(string? config, TextWriter errors)
    {
        if (config is null)
            return FormulaAnalyzer.Default;
        byte[] bytes;
        try
        {
            bytes = File.ReadAllBytes(config);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{config}: error: {fault.Message}");
            return null;
        }
        AnalyzerConfigFile file = AnalyzerConfigFile.Read(bytes);
        foreach (Problem problem in file.Problems)
            errors.WriteLine(FormulaInput.Line(config, "error", problem));
        return file.Problems.Count > 0 ? null : FormulaAnalyzer.Default.With(file.Config);
    }

    private static void Print(TextWriter print, string name, AnalysisReport report, bool all)
    {
        foreach (Diagnostic diagnostic in report.Diagnostics)
        {
            if (diagnostic.Severity == Severity.Hidden && !all)
                continue;
            print.WriteLine($"{name}{(diagnostic.Place is null ? ": " : "")}{diagnostic}");
            foreach (Fix fix in diagnostic.Fixes)
                print.WriteLine($"    fix: {fix.Title}{(fix.Effect == FixEffect.ChangesProduct ? " (changes the product)" : "")}");
        }
        foreach (Diagnostic diagnostic in report.Suppressed)
            print.WriteLine($"{name}{(diagnostic.Place is null ? ": " : "")}{diagnostic} (accepted: {diagnostic.Suppression!.Reason})");
        if (!all)
            return;
        foreach (RuleOutcome outcome in report.Outcomes.Where(o => o.Status is RuleStatus.NotApplicable or RuleStatus.Disabled))
            print.WriteLine($"{name}: {outcome.Rule.Id} {outcome.Rule.Name}: {(outcome.Status == RuleStatus.Disabled ? "off" : "not applicable, " + outcome.Reason)}");
    }

    private static string Summary(int files, int unreadable, List<(AnalysisReport Report, string? Artifact)> reports)
    {
        int Count(Severity severity) => reports.Sum(r => r.Report.Diagnostics.Count(d => d.Severity == severity));
        int accepted = reports.Sum(r => r.Report.Suppressed.Count);
        string Of(int count, string what) => Invariant($"{count} {what}{(count == 1 ? "" : "s")}");
        return $"{Of(files, "formula")}: {Of(Count(Severity.Error), "error")}, {Of(Count(Severity.Warning), "warning")}, {Of(Count(Severity.Info), "info")}"
            + (accepted > 0 ? Invariant($", {accepted} accepted") : "") + (unreadable > 0 ? Invariant($", {unreadable} can't be read") : "");
    }
}
