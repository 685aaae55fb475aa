namespace Saponify.Internals;

/// <summary>A row of a table that people look up by its names.</summary>
internal interface INamed
{
    string Id { get; }

    string Name { get; }

    /// <summary>Other names; none of them leads to another row.</summary>
    ValueList<string> Aliases { get; }

    /// <summary>Names and numbers of an inventory. Several rows may share one; then it leads to none of them.</summary>
    IEnumerable<string> ListedNames { get; }
}
