using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>What the alkali is dissolved in, how warm and in which form. Immutable; equality by content.</summary>
public sealed record LyeLiquid
{
    private readonly StoredTemperature? _temperature;

    internal LyeLiquid(Liquid liquid, StoredTemperature? temperature, bool frozen)
    {
        ArgumentNullException.ThrowIfNull(liquid);
        Liquid = liquid;
        _temperature = temperature;
        IsFrozen = frozen;
    }

    internal static LyeLiquid PlainWater { get; } = new(Liquid.Water, null, false);

    internal StoredTemperature? StoredTemperature => _temperature;

    /// <summary>The liquid.</summary>
    public Liquid Liquid { get; }

    /// <summary>How warm it is when the alkali goes in, or null when not stated.</summary>
    public Temperature? Temperature => _temperature?.Written;

    /// <summary>True when the alkali is dissolved in frozen liquid.</summary>
    public bool IsFrozen { get; }

    internal static StoredTemperature LiquidAt(Temperature temperature) => Internals.StoredTemperature.Of(temperature, -10, 100, "The temperature of a liquid");

    internal static StoredTemperature FrozenAt(Temperature temperature) => Internals.StoredTemperature.Of(temperature, -80, 0, "The temperature of a frozen liquid");
}
