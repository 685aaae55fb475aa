namespace Saponify;

/// <summary>Something wrong in a table: where, what, and what would be right. Immutable; equality by content.</summary>
public sealed record TableFault
{
    internal TableFault(string table, int line, string column, string reason)
    {
        Table = table;
        Line = line;
        Column = column;
        Reason = reason;
    }

    /// <summary>The table or file.</summary>
    public string Table { get; }

    /// <summary>The line, from 1; 0 for the whole table.</summary>
    public int Line { get; }

    /// <summary>Name of the column; empty for the whole row.</summary>
    public string Column { get; }

    /// <summary>What was found and what would be right; one sentence in English, invariant.</summary>
    public string Reason { get; }

    /// <summary>For example <c>fats.csv(12, class): "oil" is no class ...</c>.</summary>
    public override string ToString() => Column.Length == 0
        ? FormattableString.Invariant($"{Table}({Line}): {Reason}")
        : FormattableString.Invariant($"{Table}({Line}, {Column}): {Reason}");
}
