using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// How warm things are and what the lye is made in: circumstances, not the formula. Nothing has a default; what is not given is asked for by
/// the plan. Temperatures that a formula states for its liquids win. Immutable; equality by content.
/// </summary>
public sealed record ProcessSetup
{
    internal static readonly Limits RoomLimits = new(-30, 60);
    internal static readonly Limits WaterLimits = new(-10, 100);
    internal static readonly Limits AlkaliLimits = new(-30, 60);
    internal static readonly Limits HeldBackLimits = new(-10, 100);
    internal static readonly Limits FatsLimits = new(0, 150);
    internal static readonly Limits LyeLimits = new(0, 100);
    internal static readonly Limits MixedLimits = new(0, 100);
    internal static readonly Limits MilkLimitLimits = new(0, 100);
    internal static readonly Limits IceLimits = new(-80, 0);
    internal static readonly Limits IceShareLimits = new(0, 1);
    internal static readonly Limits HeadspaceLimits = new(0, 1);

    /// <summary>Nothing known.</summary>
    public static ProcessSetup Unknown { get; } = new();

    /// <summary>The room, from -30 to 60 degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? Room { get; init => field = Within(value, RoomLimits, "The temperature of the room"); }

    /// <summary>The liquid the alkali is dissolved in, where the formula does not state it, from -10 to 100 degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? Water { get; init => field = Within(value, WaterLimits, "The temperature of the water"); }

    /// <summary>The alkali, from -30 to 60 degrees Celsius; as warm as the room when not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? Alkali { get; init => field = Within(value, AlkaliLimits, "The temperature of the alkali"); }

    /// <summary>The held-back liquids, where the formula does not state it, from -10 to 100 degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? HeldBack { get; init => field = Within(value, HeldBackLimits, "The temperature of the held-back liquids"); }

    /// <summary>The fat pot when the lye comes in, from 0 to 150 degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? Fats { get; init => field = Within(value, FatsLimits, "The temperature of the fats"); }

    /// <summary>What the lye is cooled to before anything joins it, from 0 to 100 degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? Lye { get; init => field = Within(value, LyeLimits, "The temperature to cool the lye to"); }

    /// <summary>The temperature wanted when all is in the pot, from 0 to 100 degrees Celsius; without <see cref="Lye"/> it decides what the lye is cooled to.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? Mixed { get; init => field = Within(value, MixedLimits, "The temperature wanted in the pot"); }

    /// <summary>
    /// The temperature that lye with milk or sugar shall not pass, from 0 to 100 degrees Celsius; null when you set none. No source has a sharp threshold:
    /// 25 to 40 degrees is common practice.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? MilkLimit { get; init => field = Within(value, MilkLimitLimits, "The limit for milk"); }

    /// <summary>Share of the lye liquid that goes in as ice, from 0 to 100 %; null for none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Ratio? IceShare { get; init => field = value is { } share ? Stored.ToRatio(Stored.Fraction(share, IceShareLimits, "The share of ice", nameof(value))) : null; }

    /// <summary>How cold that ice is, from -80 to 0 degrees Celsius: ice above 0 can't be.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? Ice { get; init => field = Within(value, IceLimits, "The temperature of ice"); }

    /// <summary>What the lye is made in.</summary>
    public Vessel? Vessel { get; init; }

    /// <summary>What the vessel cools in; still air of the room when not given.</summary>
    public Surroundings? Surroundings { get; init; }

    /// <summary>Share of the vessel that shall stay free, from 0 to 100 %; null when you do not care.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Ratio? LeastHeadspace { get; init => field = value is { } share ? Stored.ToRatio(Stored.Fraction(share, HeadspaceLimits, "The headspace", nameof(value))) : null; }

    private static Temperature? Within(Temperature? value, Limits limits, string what)
    {
        if (value is { } temperature)
            Stored.Celsius(temperature, limits, what, nameof(value));
        return value;
    }
}
