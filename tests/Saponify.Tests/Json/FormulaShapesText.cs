using System.Globalization;
using System.Text;
using Saponify.Internals;

namespace Saponify.Tests.Json;

/// <summary>The table of members as a list of objects, and as the Markdown of docs/formula-file.md.</summary>
internal static class FormulaShapesText
{
    /// <summary>Every object of the format, the file first, each before those inside it.</summary>
    internal static IReadOnlyList<Shape> AllShapes { get; } = [.. From(FormulaShapes.Formula).Distinct()];

    internal static string Members()
    {
        StringBuilder text = new();
        foreach (Shape shape in AllShapes)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n### {Title(shape)}\n\n{shape.Description}{Rules(shape)}\n\n| member | needed | holds | meaning |\n|---|---|---|---|\n");
            foreach (Member member in shape.Members.Where(m => m.Refusal is null))
                text.Append(CultureInfo.InvariantCulture, $"| `{member.Name}` | {(member.Required ? "yes" : "")} | {Holds(member)} | {member.Description} |\n");
        }
        return text.ToString();
    }

    internal static string Units()
    {
        StringBuilder text = new("\n| amount | unit | also written |\n|---|---|---|\n");
        Rows(text, "mass", UnitTable.Mass);
        text.Append("| mass | `lb` and `oz` together: `1 lb 3 oz` | any spelling of the two |\n");
        Rows(text, "volume", UnitTable.Volume);
        Rows(text, "length", UnitTable.Length);
        Rows(text, "temperature", UnitTable.Temperature);
        Rows(text, "share", UnitTable.Ratio);
        return text.ToString();
    }

    private static IEnumerable<Shape> From(Shape shape) => shape.Members.Select(m => m.Shape).OfType<Shape>().SelectMany(From).Prepend(shape);

    /// <summary>Where the object stands: <c>fats[]</c>, <c>liquids.lyeLiquid</c>; the file itself has no such place.</summary>
    private static string Title(Shape shape)
    {
        string[] places = [.. Places(FormulaShapes.Formula, "", shape).Distinct()];
        return places is [""] ? "The file" : string.Join(", ", places.Select(p => $"`{p}`"));
    }

    private static IEnumerable<string> Places(Shape at, string path, Shape wanted) =>
        (at == wanted ? [path] : Enumerable.Empty<string>())
        .Concat(at.Members.Where(m => m.Shape is not null).SelectMany(m => Places(m.Shape!, $"{path}{(path.Length == 0 ? "" : ".")}{m.Name}{(m.Kind == MemberKind.List ? "[]" : "")}", wanted)));

    private static string Rules(Shape shape) => string.Concat(shape.OneOf.Select(o =>
        $" {(o.Missing is null ? "At most" : "Exactly")} one of {string.Join(", ", o.Members.Select(m => $"`{m.Name}`"))} may stand."));

    private static string Holds(Member member) => member.Kind switch
    {
        MemberKind.Choice => string.Join(", ", member.Choices.Select(c => $"`{c}`")),
        MemberKind.LineId => "id, at most 80 characters, none of `[ ] / ~`",
        MemberKind.Note or MemberKind.Text => "text",
        MemberKind.Flag => "`true`, `false`",
        MemberKind.Date => "date, `2026-11-25`",
        MemberKind.Object => "object",
        MemberKind.List => "list",
        MemberKind.Texts => "list of texts",
        MemberKind.Masses => "list of masses, each" + Range(member),
        MemberKind.Count => "whole number" + Range(member),
        MemberKind.HeatTransfer => "heat transfer" + Range(member),
        MemberKind.Purity => "purity: `98 %`, `97 to 100 %`, `at least 85 %`",
        MemberKind.Saponification => "`192.4 mg KOH/g` or `0.1372 g NaOH/g`" + Range(member),
        MemberKind.Parts => "parts, `2.2 : 1`" + Range(member),
        MemberKind.Percent => "share" + Range(member),
        _ => member.Kind.ToString().ToLowerInvariant() + Range(member),
    };

    private static string Range(Member member)
    {
        double scale = member.Kind == MemberKind.Percent ? 100 : 1;
        return string.Create(CultureInfo.InvariantCulture, $", {member.Low * scale:0.##} to {member.High * scale:0.##} {member.RangeUnit}").TrimEnd().Replace("1000000000", "1e9", StringComparison.Ordinal);
    }

    private static void Rows<T>(StringBuilder text, string amount, (string Text, T Unit)[] table) where T : notnull
    {
        foreach (IGrouping<T, string> unit in table.GroupBy(u => u.Unit, u => u.Text))
            text.Append(CultureInfo.InvariantCulture, $"| {amount} | `{unit.First()}` | {string.Join(", ", unit.Skip(1).Select(u => $"`{u}`"))} |\n");
    }
}
