namespace Saponify;

/// <summary>What an additive is there for.</summary>
public enum AdditiveKind : byte
{
    /// <summary>None of the others.</summary>
    Other,

    /// <summary>Acid: takes up lye and turns into its salt.</summary>
    Acid,

    /// <summary>Salt.</summary>
    Salt,

    /// <summary>Sugar, honey, syrup: heats and browns in lye.</summary>
    Sugar,

    /// <summary>Holds water: glycerol, sorbitol.</summary>
    Humectant,

    /// <summary>Binds metal ions.</summary>
    Chelator,

    /// <summary>Slows rancidity.</summary>
    Antioxidant,

    /// <summary>Clay.</summary>
    Clay,

    /// <summary>Colours the soap.</summary>
    Colorant,

    /// <summary>Scrubs.</summary>
    Exfoliant,

    /// <summary>Leaves, petals, powders of plants.</summary>
    Botanical,

    /// <summary>Protein such as silk.</summary>
    Protein,

    /// <summary>Powdered milk, cream or whey.</summary>
    MilkSolids,

    /// <summary>Fragrance or essential oil.</summary>
    Fragrance,
}
