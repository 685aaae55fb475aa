using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>One fat line of a formula: which fat, how much, when. Made by <see cref="Portions"/>. Immutable; equality by content.</summary>
public sealed record FatPortion : ILine<FatPortion>
{
    private readonly StoredMass _mass;
    private readonly StoredVolume? _poured;

    internal FatPortion(Fat fat, Mass mass, StoredVolume? poured = null)
    {
        ArgumentNullException.ThrowIfNull(fat);
        Fat = fat;
        Line = fat.Id;
        Mass = mass;
        _poured = poured;
    }

    internal double Grams => _mass.Grams;

    internal double Hydroxide => _mass.Grams * Fat.HydroxidePerGram;

    /// <summary>Id of the line, unique in its list: the fat's own id unless you give one; repeats get -2, -3 when the formula is made.</summary>
    /// <exception cref="ArgumentException">Blank, too long, or with brackets, slashes or control characters.</exception>
    public string Line { get; init => field = LineId.Check(value, "The id of a line"); }

    /// <summary>The fat.</summary>
    public Fat Fat { get; }

    /// <summary>How much of it, from 0 to 1e9 g. Setting it forgets what was poured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 1e9 g, or not a number.</exception>
    public Mass Mass
    {
        get => _mass.Written;
        init => (_mass, _poured) = (StoredMass.Of(value, "The mass of a fat", "mass"), null);
    }

    /// <summary>The volume it was poured by, or null when it was weighed; <see cref="Mass"/> then follows from the fat's density.</summary>
    public Volume? Poured => _poured?.Written;

    /// <summary><see cref="Stage.Fats"/> for the fat pot or <see cref="Stage.Trace"/> for a late fat.</summary>
    public Stage Stage { get; private init; } = Stage.Fats;

    internal bool IsLate => Stage == Stage.Trace;

    /// <summary>The same portion as a late fat, added at trace.</summary>
    public FatPortion AtTrace() => this with { Stage = Stage.Trace };

    /// <summary>For people, for example <c>430 g Olive oil</c>: in the unit it was given in; invariant.</summary>
    public override string ToString() => $"{Text.Number(Mass.Value)} {AmountWriter.Unit(Mass)} {Fat.Name}";

    FatPortion ILine<FatPortion>.WithLine(string line) => this with { Line = line };

    internal FatPortion Times(double factor) =>
        _poured is { } poured
            ? Fat.Pouring(Volume.From(poured.Written.Value * factor, poured.Written.Unit)) with { Line = Line, Stage = Stage }
            : this with { Mass = _mass.Times(factor, "A scaled mass").Written };
}
