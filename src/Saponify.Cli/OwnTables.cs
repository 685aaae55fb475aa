using System.CommandLine;

namespace Saponify.Cli;

/// <summary>The option <c>--own FILE</c> of every command: own tables of fats, such as suppliers' certificates, on top of the reference tables.</summary>
internal static class OwnTables
{
    internal static Option<string[]> Option { get; } = new("--own")
    {
        Description = "Own table of fats (CSV: id, name, SV, source ...) on top of the reference tables, such as a supplier's certificate; may be given again.",
        Recursive = true,
    };

    /// <summary>The reference tables with the own ones on top; null when one can't be read: then its faults are printed already.</summary>
    internal static Pantry? Pantry(ParseResult result, TextWriter errors)
    {
        Pantry? pantry = Saponify.Pantry.Reference;
        foreach (string path in result.GetValue(Option) ?? [])
        {
            if (Read(path, pantry, errors) is not { } with)
                return null;
            pantry = with;
        }
        return pantry;
    }

    private static Pantry? Read(string path, Pantry below, TextWriter errors)
    {
        PantryFile file;
        try
        {
            file = below.With(File.ReadAllBytes(path));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            errors.WriteLine($"{path}: error: {fault.Message}");
            return null;
        }
        foreach (TableFault fault in file.Faults)
            errors.WriteLine(Line(path, "error", fault));
        foreach (TableFault notice in file.Notices)
            errors.WriteLine(Line(path, "note", notice));
        return file.Pantry;
    }

    private static string Line(string path, string kind, TableFault fault) =>
        FormattableString.Invariant($"{path}({fault.Line}): {kind}: {(fault.Column.Length == 0 ? "" : fault.Column + ": ")}{fault.Reason}");
}
