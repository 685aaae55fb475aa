namespace Saponify.Tests.Json;

/// <summary>The table of members as lists and as Markdown.</summary>
internal static class FormulaShapesText
{
    /// <summary>Every object of the format, the file first, each before those inside it.</summary>
    internal static IReadOnlyList<Shape> AllShapes { get; } = [.. From(FormulaShapes.Formula).Distinct()];

    private static IEnumerable<Shape> From(Shape shape) => shape.Members.Select(m => m.Shape).OfType<Shape>().SelectMany(From).Prepend(shape);
}
