using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>One liquid line of a formula: which liquid, how much, how warm, frozen or not. Made by <see cref="Portions"/>. Immutable; equality by content.</summary>
public sealed record LiquidPortion : ILine<LiquidPortion>
{
    private readonly StoredMass _mass;
    private readonly StoredVolume? _poured;
    private readonly StoredTemperature? _temperature;

    internal LiquidPortion(Liquid liquid, Mass mass, StoredVolume? poured = null)
    {
        ArgumentNullException.ThrowIfNull(liquid);
        Liquid = liquid;
        Line = liquid.Id;
        Mass = mass;
        _poured = poured;
    }

    internal double Grams => _mass.Grams;

    /// <summary>Id of the line, unique in its list: the liquid's own id unless you give one; repeats get -2, -3 when the plan is made.</summary>
    /// <exception cref="ArgumentException">Blank, too long, or with brackets, slashes or control characters.</exception>
    public string Line { get; init => field = LineId.Check(value, "The id of a line"); }

    /// <summary>The liquid.</summary>
    public Liquid Liquid { get; }

    /// <summary>How much of it, from 0 to 1e9 g. Setting it forgets what was poured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 1e9 g, or not a number.</exception>
    public Mass Mass
    {
        get => _mass.Written;
        init => (_mass, _poured) = (StoredMass.Of(value, "The mass of a liquid", "mass"), null);
    }

    /// <summary>The volume it was poured by, or null when it was weighed; <see cref="Mass"/> then follows from the liquid's density.</summary>
    public Volume? Poured => _poured?.Written;

    /// <summary>How warm it goes in, or null when not stated.</summary>
    public Temperature? Temperature => _temperature?.Written;

    /// <summary>True when it goes in frozen.</summary>
    public bool IsFrozen { get; private init; }

    /// <summary>The same portion at a temperature, liquid.</summary>
    /// <param name="temperature">From -10 to 100 degrees Celsius.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public LiquidPortion At(Temperature temperature) => WithTemperature(LyeLiquid.LiquidAt(temperature), frozen: false);

    /// <summary>The same portion frozen.</summary>
    /// <param name="temperature">From -80 to 0 degrees Celsius.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public LiquidPortion FrozenAt(Temperature temperature) => WithTemperature(LyeLiquid.FrozenAt(temperature), frozen: true);

    /// <summary>For people, for example <c>192.1 g Water</c>: in the unit it was given in; invariant.</summary>
    public override string ToString() => $"{Text.Number(Mass.Value)} {AmountWriter.Unit(Mass)} {Liquid.Name}";

    LiquidPortion ILine<LiquidPortion>.WithLine(string line) => this with { Line = line };

    internal LiquidPortion WithTemperature(StoredTemperature? temperature, bool frozen) => new(this, temperature, frozen);

    internal StoredTemperature? StoredTemperature => _temperature;

    internal LiquidPortion Times(double factor) =>
        _poured is { } poured
            ? (Liquid.Pouring(Volume.From(poured.Written.Value * factor, poured.Written.Unit)) with { Line = Line }).WithTemperature(_temperature, IsFrozen)
            : this with { Mass = _mass.Times(factor, "A scaled mass").Written };

    private LiquidPortion(LiquidPortion other, StoredTemperature? temperature, bool frozen) : this(other)
    {
        _temperature = temperature;
        IsFrozen = frozen;
    }
}
