namespace Microsoft.DotNet.Interactive.Formatting;

/// <summary>
/// Tells notebook kernels how a type shows itself. Kernels look for this attribute by its full name, so the library needs no package of theirs.
/// </summary>
[AttributeUsage(AttributeTargets.Class)]
internal sealed class TypeFormatterSourceAttribute(Type formatterSourceType) : Attribute
{
    public Type FormatterSourceType { get; } = formatterSourceType;

    public string[] PreferredMimeTypes { get; set; } = [];
}
