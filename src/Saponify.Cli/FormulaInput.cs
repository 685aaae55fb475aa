using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text;
using static System.FormattableString;

namespace Saponify.Cli;

/// <summary>Reads formula files and prints what is wrong with them in the way compilers do.</summary>
internal static class FormulaInput
{
    /// <summary>The file, or null when it can't be read; then its faults are printed already.</summary>
    internal static FormulaFile? Read(string path, Pantry pantry, TextReader input, TextWriter errors)
    {
        if (Bytes(path, input, errors) is not { } bytes)
            return null;
        FormulaFile file = FormulaFile.Read(bytes, pantry);
        Print(path, file.Problems, file.Notices, errors);
        return file.Formula is null ? null : file;
    }

    /// <summary>Reads one file after the other and prints what is made of each, a blank line between; the exit code is the gravest.</summary>
    /// <param name="make">The text for a file, or null when it has told what is wrong, and the exit code.</param>
    internal static int PrintEach(ParseResult result, TextReader input, string[] files, Func<string, FormulaFile, Pantry, (string? Text, int Exit)> make, bool apart = true)
    {
        TextWriter print = result.InvocationConfiguration.Output, errors = result.InvocationConfiguration.Error;
        if (OwnTables.Pantry(result, errors) is not { } pantry)
            return ExitCode.Unreadable;
        int exit = ExitCode.Fine;
        bool first = true;
        foreach (string path in files)
        {
            (string? text, int code) = Read(path, pantry, input, errors) is { } file ? make(path, file, pantry) : (null, ExitCode.Unreadable);
            exit = Math.Max(exit, code);
            if (text is null)
                continue;
            if (!first && apart)
                print.WriteLine();
            first = false;
            print.Write(text);
        }
        return exit;
    }

    /// <summary>The exit code of a formula that was printed.</summary>
    internal static int ExitOf(BatchPlan plan) => plan.Balance.CanBeWeighed ? ExitCode.Fine : ExitCode.Findings;

    /// <summary>The batch whose weights stand in a file, or null when it can't be read; then its faults are printed already.</summary>
    internal static WeighedBatch? ReadBatch(string path, Pantry pantry, Formula formula, TextReader input, TextWriter errors)
    {
        if (Bytes(path, input, errors) is not { } bytes)
            return null;
        BatchFile file = BatchFile.Read(bytes, pantry, formula);
        Print(path, file.Problems, file.Notices, errors);
        return file.Batch;
    }

    /// <summary>An option that does not exist would otherwise pass for a file.</summary>
    internal static void RefuseOptions(ArgumentResult files)
    {
        foreach (Token token in files.Tokens)
        {
            if (token.Value.Length > 1 && token.Value[0] == '-')
                files.AddError($"There is no option {token.Value}. See --help.");
        }
    }

    private static byte[]? Bytes(string path, TextReader input, TextWriter errors)
    {
        try
        {
            return path == "-" ? FromInput(input) : FromFile(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            errors.WriteLine($"{NameOf(path)}: error: {fault.Message}");
            return null;
        }
    }

    private static void Print(string path, ValueList<Problem> problems, ValueList<Problem> notices, TextWriter errors)
    {
        foreach (Problem problem in problems)
            errors.WriteLine(Line(NameOf(path), "error", problem));
        foreach (Problem notice in notices)
            errors.WriteLine(Line(NameOf(path), "note", notice));
    }

    internal static string NameOf(string path) => path == "-" ? "standard input" : path;

    /// <summary>Not more than is refused anyway.</summary>
    private static byte[] FromFile(string path)
    {
        using FileStream stream = File.OpenRead(path);
        byte[] bytes = new byte[FormulaFile.LargestBytes + 1];
        return bytes[..stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)];
    }

    private static byte[] FromInput(TextReader input)
    {
        char[] text = new char[FormulaFile.LargestBytes + 1];
        return Encoding.UTF8.GetBytes(text, 0, input.ReadBlock(text));
    }

    internal static string Line(string name, string kind, Problem problem) =>
        Invariant($"{name}({problem.Place.Line},{problem.Place.Column}): {kind} {problem.Id}: {problem.Text}{(problem.Expected is null ? "" : "; " + problem.Expected)}");
}
