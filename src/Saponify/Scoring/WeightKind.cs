namespace Saponify;

/// <summary>What a weight of a fatty acid is for. All but <see cref="Oxidation"/> lie between 0 and 1.</summary>
public enum WeightKind : byte
{
    /// <summary>Share of its soda soap that is crystalline at 20 degrees Celsius.</summary>
    Hardness,

    /// <summary>Share of its soda soap that is crystalline at 38 degrees Celsius, in the hand.</summary>
    Wear,

    /// <summary>How well its soap lifts grease in tepid water.</summary>
    Cleansing,

    /// <summary>How much its soap irritates skin.</summary>
    Irritation,

    /// <summary>How liquid it is on the skin, as unsaponified fat.</summary>
    Emollient,

    /// <summary>How readily its soap foams.</summary>
    Quick,

    /// <summary>How well its soap makes films that carry the foam of the others.</summary>
    Film,

    /// <summary>How long the foam of its soap lasts.</summary>
    Lasting,

    /// <summary>How fast it oxidises, oleic acid being 1.</summary>
    Oxidation,
}
