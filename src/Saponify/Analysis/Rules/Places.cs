namespace Saponify.Analysis.Rules;

/// <summary>Places and lists that several rules need.</summary>
internal static class Places
{
    private static readonly FormulaPath s_superfat = FormulaPath.Alkali.Member("superfat");
    private static readonly FormulaPath s_alkalis = FormulaPath.Alkali.Member("alkalis");

    /// <summary>Where the superfat is decided: its own member, or the alkali that was weighed.</summary>
    internal static FormulaPath Superfat(Formula formula) => formula.Alkali is SuperfatTarget ? s_superfat : FormulaPath.Alkali;

    internal static FormulaPath Alkali(int index, string line) => s_alkalis.Item(index, line);

    internal static FormulaPath Fat(Formula formula, int index) => FormulaPath.Fats.Item(index, formula.Fats[index].Line);

    internal static FormulaPath HeldBack(Formula formula, int index) => FormulaPath.HeldBack.Item(index, formula.Liquids.HeldBack[index].Line);

    internal static FormulaPath Additive(Formula formula, int index) => FormulaPath.Additives.Item(index, formula.Additives[index].Line);

    internal static IEnumerable<(int Index, string Line, Alkali Alkali)> Alkalis(Formula formula) => formula.Alkali is SuperfatTarget target
        ? target.Alkalis.Select((a, i) => (i, a.Line, a.Alkali))
        : ((WeighedAlkali)formula.Alkali).Alkalis.Select((a, i) => (i, a.Line, a.Alkali));

    internal static string Name(AlkaliKind kind) => kind == AlkaliKind.SodiumHydroxide ? "sodium hydroxide" : "potassium hydroxide";

    /// <summary>A sentence of the tables as part of a message.</summary>
    internal static string Clause(string? sentence) => sentence is null ? "no more is on file" : char.ToLowerInvariant(sentence[0]) + sentence[1..].TrimEnd('.');

    internal static ValueList<T> Without<T>(ValueList<T> list, int index) where T : IEquatable<T> => [.. list.Take(index), .. list.Skip(index + 1)];

    internal static ValueList<T> Replace<T>(ValueList<T> list, int index, T item) where T : IEquatable<T> => [.. list.Take(index), item, .. list.Skip(index + 1)];
}
