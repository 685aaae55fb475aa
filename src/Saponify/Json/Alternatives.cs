namespace Saponify;

/// <summary>Members of an object that exclude each other. With <see cref="Missing"/> one of them must stand, and that is said when none does.</summary>
internal sealed record Alternatives(Member[] Members, string Keep)
{
    internal string? Missing { get; init; }

    internal string? Wanted { get; init; }
}
