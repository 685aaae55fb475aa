namespace Saponify;

/// <summary>
/// The circumstances of a batch, which are not the formula: scale, date, product, exclusions. What is not given makes the rules that need it
/// "not applicable". Immutable; equality by content.
/// </summary>
public sealed record BatchSetup
{
    /// <summary>Nothing known.</summary>
    public static BatchSetup Unknown { get; } = new();

    /// <summary>The scale that is weighed on.</summary>
    public Scale? Scale { get; init; }

    /// <summary>The scale for the alkali, when it is another one.</summary>
    public Scale? AlkaliScale { get; init; }

    /// <summary>Today, for suppressions and certificates that expire. The library has no clock.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>What is to come out: a bar, or a soft soap. Null when not said.</summary>
    public ProductForm? Form { get; init; }

    /// <summary>What the customer or the label excludes: <c>animal</c> (vegan), allergen classes such as <c>milk</c> or <c>tree-nut</c>, or ids of materials.</summary>
    public ValueList<string> Excluded { get; init; }

    /// <summary>What the certificates of the scents allow in the finished soap; empty when not said.</summary>
    public ValueList<FragranceLimit> FragranceLimits { get; init; }

    /// <summary>Market areas that the soap is sold in, for example <c>EU</c>; empty when not said.</summary>
    public ValueList<string> Markets { get; init; }
}
