using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Saponify;

/// <summary>What a vessel is made of, and what it stands. Immutable; equality by content.</summary>
public sealed record VesselMaterial
{
    internal VesselMaterial(string id, string name, LyeFitness lye, ValueList<string> sources, Evidence evidence, string? note, Func<string, CurvePoint?> figure)
    {
        Id = id;
        Name = name;
        Lye = lye;
        Sources = sources;
        Evidence = evidence;
        Note = note;
        LargestTemperature = Figure(figure("largest-temperature"), v => Temperature.FromDegreesCelsius(v));
        AttackedFrom = Figure(figure("attack"), v => Temperature.FromDegreesCelsius(v));
        ThermalShock = Figure(figure("thermal-shock"), v => TemperatureDelta.FromKelvins(v));
        HeatCapacity = Figure(figure("heat-capacity"), v => SpecificEntropy.FromKilojoulesPerKilogramKelvin(v));
    }

    /// <summary>Short name, for example <c>polypropylene</c>.</summary>
    public string Id { get; }

    /// <summary>Name for people.</summary>
    public string Name { get; }

    /// <summary>Whether it may hold lye.</summary>
    public LyeFitness Lye { get; }

    /// <summary>Keys of the sources of <see cref="Lye"/>.</summary>
    public ValueList<string> Sources { get; }

    /// <summary>How well they support it.</summary>
    public Evidence Evidence { get; }

    /// <summary>What to know about it, or null.</summary>
    public string? Note { get; }

    /// <summary>Lye it stands for long up to the low end, for a short time up to the high end; null when no figure is on file.</summary>
    public Figure<Temperature>? LargestTemperature { get; }

    /// <summary>From here lye takes off its surface strongly; null when that is not known of it.</summary>
    public Figure<Temperature>? AttackedFrom { get; }

    /// <summary>The sudden difference of temperature that it stands, new and without a scratch; null for what does not crack.</summary>
    public Figure<TemperatureDelta>? ThermalShock { get; }

    /// <summary>Heat capacity, or null when no figure is on file.</summary>
    public Figure<SpecificEntropy>? HeatCapacity { get; }

    /// <summary>All materials, sorted by id.</summary>
    public static ValueList<VesselMaterial> All => [.. MakingTables.Vessels.Values.OrderBy(m => m.Id, StringComparer.Ordinal)];

    /// <summary>The material with this id.</summary>
    /// <param name="id">For example <c>stainless-steel</c>, in upper or lower case.</param>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none; the message names all.</exception>
    public static VesselMaterial Of(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return TryFind(id, out VesselMaterial? found) ? found
            : throw new KeyNotFoundException($"There is no material \"{id}\". Known: {string.Join(", ", All.Select(m => m.Id))}.");
    }

    internal static bool TryFind(string id, [NotNullWhen(true)] out VesselMaterial? material) => MakingTables.Vessels.TryGetValue(id, out material);

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    private static Figure<T>? Figure<T>(CurvePoint? row, Func<double, T> make) where T : struct =>
        row is null ? null : new(make(row.Value), row.Evidence, row.Sources) { Low = make(row.Low), High = make(row.High), Note = row.Note };
}
