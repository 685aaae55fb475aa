namespace Saponify;

/// <summary>What a process plan asks for when it is not given.</summary>
public enum ProcessInput : byte
{
    /// <summary>The temperature of the room.</summary>
    Room,

    /// <summary>The temperature of the liquid that the alkali is dissolved in.</summary>
    Water,

    /// <summary>The temperature of the ice.</summary>
    Ice,

    /// <summary>The temperature of held-back liquids.</summary>
    HeldBack,

    /// <summary>The temperature of the fat pot.</summary>
    Fats,

    /// <summary>What the lye is cooled to, or the temperature wanted in the pot.</summary>
    Lye,

    /// <summary>The vessel that the lye is made in.</summary>
    Vessel,
}
