using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>Something that speaks against a vessel, with the number found and the limit. Immutable; equality by content.</summary>
public sealed record VesselFinding
{
    internal VesselFinding(VesselFindingKind kind, VesselMaterial material, double found, double limit, string unit, ValueList<string> sources, Evidence evidence)
    {
        Kind = kind;
        Material = material;
        Found = found;
        Limit = limit;
        Unit = unit;
        Sources = sources;
        Evidence = evidence;
    }

    /// <summary>What it is.</summary>
    public VesselFindingKind Kind { get; }

    /// <summary>What the vessel is made of.</summary>
    public VesselMaterial Material { get; }

    /// <summary>The number found, in <see cref="Unit"/>; 0 without a unit.</summary>
    public double Found { get; }

    /// <summary>The limit, in <see cref="Unit"/>; 0 without a unit.</summary>
    public double Limit { get; }

    /// <summary>Unit of both numbers: <c>°C</c>, <c>K</c>, <c>mL</c> or <c>%</c>; empty when there is no number.</summary>
    public string Unit { get; }

    /// <summary>Keys of the sources of the limit; empty when it is arithmetic.</summary>
    public ValueList<string> Sources { get; }

    /// <summary>How well they support it.</summary>
    public Evidence Evidence { get; }

    /// <summary>One sentence in English, in degrees Celsius; invariant.</summary>
    public override string ToString() => ToText(TemperatureUnit.DegreeCelsius);

    internal string ToText(TemperatureUnit unit)
    {
        string found = Show(Found, unit), limit = Show(Limit, unit);
        string memory = Evidence == Evidence.Memory ? " (memory)" : "";
        return Kind switch
        {
            VesselFindingKind.NeverForLye => $"{Material.Name} must NEVER hold lye. {Material.Note}".TrimEnd(),
            VesselFindingKind.TooHot => $"The lye may reach {found}; {Material.Name} stands {limit} at the most{memory}.",
            VesselFindingKind.HotForLong => $"The lye may reach {found}; {Material.Name} stands more than {limit} for a short time only{memory}.",
            VesselFindingKind.Attacked => $"The lye may reach {found}; from {limit} on it takes the surface off {Material.Name}.",
            VesselFindingKind.ThermalShock => $"A step of up to {found} may crack {Material.Name}, which stands {limit} when new and unscratched.",
            VesselFindingKind.TooSmall => $"The content of {found} does NOT fit into {limit}.",
            VesselFindingKind.LittleHeadspace => $"Only {found} of the vessel stays free; {limit} is asked for.",
            _ => $"A lye of {found} is stronger than the {limit} that figures reach: its heat can't be told.",
        };
    }

    private string Show(double number, TemperatureUnit unit) => Unit switch
    {
        "°C" => ProcessText.Show(Temperature.FromDegreesCelsius(number), unit),
        "K" when unit == TemperatureUnit.DegreeFahrenheit => $"{Text.Fixed(number * 1.8, 0)} °F",
        _ => $"{Text.Fixed(number, 0)} {Unit}",
    };
}
