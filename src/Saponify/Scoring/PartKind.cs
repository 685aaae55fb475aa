namespace Saponify;

/// <summary>The kinds of parts of a bar, in the order in which they are shown.</summary>
public enum PartKind : byte
{
    /// <summary>Soap of a fatty acid and a cation.</summary>
    Soap,

    /// <summary>Glycerol freed from glycerides that reacted; glycerol added is an additive.</summary>
    Glycerol,

    /// <summary>Glyceride or fatty acid that took up no lye: the superfat.</summary>
    UnreactedFat,

    /// <summary>Unsaponifiable matter and what the figures of the fats do not account for; waxes, with the few cations that they take up.</summary>
    Unsaponifiable,

    /// <summary>Water: weighed, of liquids, of crystals, of the alkali, formed.</summary>
    Water,

    /// <summary>Salts of the acids in liquids and additives, and acids that gave up no proton.</summary>
    AcidSalt,

    /// <summary>Sugars.</summary>
    Sugar,

    /// <summary>Protein.</summary>
    Protein,

    /// <summary>Ash, fibre and other solids of liquids, ash of additives.</summary>
    OtherSolids,

    /// <summary>Alcohol; it leaves with the water.</summary>
    Alcohol,

    /// <summary>What is left of an additive beside its water, fat, acid, sugar, protein, alcohol and ash.</summary>
    Additive,

    /// <summary>Part of the alkali that is neither hydroxide nor water.</summary>
    InertOfAlkali,

    /// <summary>Hydroxide that nothing took up: the bar is lye-heavy.</summary>
    AlkaliLeft,
}
