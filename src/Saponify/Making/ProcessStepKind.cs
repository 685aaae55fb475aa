namespace Saponify;

/// <summary>A step from the lye jug to the pot.</summary>
public enum ProcessStepKind : byte
{
    /// <summary>The fats of the pot are warmed until they are clear.</summary>
    WarmFats,

    /// <summary>The alkali dissolves.</summary>
    DissolveAlkali,

    /// <summary>The lye cools.</summary>
    CoolLye,

    /// <summary>Held-back liquids join the lye.</summary>
    JoinHeldBack,

    /// <summary>The lye joins the fats.</summary>
    JoinFats,

    /// <summary>Late fats join at trace.</summary>
    AddLateFats,
}
