namespace Saponify;

/// <summary>What a rule is about: the first digit of its id.</summary>
public enum RuleCategory : byte
{
    /// <summary>The engine itself.</summary>
    Engine,

    /// <summary>Structure and units.</summary>
    Structure,

    /// <summary>Lye safety.</summary>
    Lye,

    /// <summary>Liquids and heat.</summary>
    Liquids,

    /// <summary>Fats and the bar.</summary>
    Fats,

    /// <summary>Additives and scent.</summary>
    Additives,

    /// <summary>What the order asks for, batch, mould and cure.</summary>
    Batch,

    /// <summary>Label and records.</summary>
    Label,

    /// <summary>The data that figures rest on.</summary>
    Data,

    /// <summary>A rule of an embedding app.</summary>
    Custom,
}
