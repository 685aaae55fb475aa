namespace Saponify.Internals;

/// <summary>What can be chosen by origin, allergen and evidence: a fat, a liquid, an additive.</summary>
internal interface IMaterial : INamed
{
    string? Allergen { get; }

    bool IsVegan { get; }

    Evidence? Evidence { get; }
}
