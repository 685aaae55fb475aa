namespace Saponify.Internals;

/// <summary>Where materials come from.</summary>
internal static class Origins
{
    internal static readonly string[] Known = ["animal", "insect", "mineral", "plant", "synthetic"];

    /// <summary>An origin that is not stated is not vegan: doubt falls on the careful side.</summary>
    internal static bool IsVegan(string? origin) => origin is "plant" or "mineral" or "synthetic";
}
