using Saponify.Internals;

namespace Saponify;

/// <summary>What is known of one delivery of a fat. A lot's own saponification value beats the reference table. Immutable; equality by content.</summary>
public sealed record Lot
{
    /// <summary>The lot's number or name, not blank.</summary>
    /// <exception cref="ArgumentException">The text is blank.</exception>
    public required string Name { get; init => field = Guard.Text(value, "The name of a lot"); }

    /// <summary>Where its figures come from, for example <c>supplier's certificate</c>; not blank.</summary>
    /// <exception cref="ArgumentException">The text is blank.</exception>
    public required string Source { get; init => field = Guard.Text(value, "The source of a lot"); }

    /// <summary>The lot's own saponification value; null when the certificate gives none.</summary>
    public SaponificationValue? Saponification { get; init; }

    /// <summary>Date of the certificate, or null.</summary>
    public DateOnly? Date { get; init; }
}
