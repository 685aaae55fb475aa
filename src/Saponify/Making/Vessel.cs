using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// A jug, pot or beaker: what it is made of and how large it is. It is taken as a straight cylinder, of which base, wetted wall and surface
/// give off heat. Immutable; equality by content.
/// </summary>
public sealed record Vessel
{
    internal static readonly Limits VolumeLimits = new(1, 1e6);
    internal static readonly Limits DiameterLimits = new(1, 500);
    internal static readonly Limits MassLimits = new(0, 1e6);

    /// <summary>Makes a vessel.</summary>
    /// <param name="material">What it is made of.</param>
    /// <param name="volume">Volume to the brim, from 1 mL to 1000 L.</param>
    /// <param name="diameter">Inner diameter, from 1 cm to 5 m.</param>
    /// <param name="mass">Its own mass, empty, from 0 to 1000 kg.</param>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure outside its range, or not a number.</exception>
    public Vessel(VesselMaterial material, Volume volume, Length diameter, Mass mass)
    {
        ArgumentNullException.ThrowIfNull(material);
        Material = material;
        Milliliters = Guard.InRange(volume.Milliliters, VolumeLimits, "The volume of a vessel", "mL", nameof(volume));
        Centimeters = Guard.InRange(diameter.Centimeters, DiameterLimits, "The diameter of a vessel", "cm", nameof(diameter));
        Grams = Guard.InRange(Stored.ToGrams(mass), MassLimits, "The mass of a vessel", "g", nameof(mass));
    }

    internal double Milliliters { get; }

    internal double Centimeters { get; }

    internal double Grams { get; }

    /// <summary>What it is made of.</summary>
    public VesselMaterial Material { get; }

    /// <summary>Volume to the brim.</summary>
    public Volume Volume => Volume.FromMilliliters(Milliliters);

    /// <summary>Inner diameter.</summary>
    public Length Diameter => Length.FromCentimeters(Centimeters);

    /// <summary>Its own mass, empty.</summary>
    public Mass Mass => Mass.FromGrams(Grams);

    /// <summary>Area that gives off heat when it holds so much: base, wetted wall, surface.</summary>
    /// <param name="content">Volume of the content; what is above the brim does not count.</param>
    public Area AreaFor(Volume content)
    {
        double radius = Centimeters / 2, height = Math.Clamp(content.Milliliters, 0, Milliliters) / (Math.PI * radius * radius);
        return Area.FromSquareCentimeters((2 * Math.PI * radius * radius) + (2 * Math.PI * radius * height));
    }

    /// <summary>
    /// How lye cools in it: the heat capacity of lye and vessel over the heat that its area gives off. An estimate; readings of your own
    /// (<see cref="NewtonCooling.Fit"/>) beat it. Null for lye beyond 50 %, for none at all or more than the vessel holds,
    /// and for a time constant beyond 1000 hours.
    /// </summary>
    /// <param name="lye">The lye.</param>
    /// <param name="surroundings">What the vessel stands in.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public CoolingSpan? Cooling(LyeSolution lye, Surroundings surroundings)
    {
        ArgumentNullException.ThrowIfNull(lye);
        ArgumentNullException.ThrowIfNull(surroundings);
        if (lye.VolumeAt(surroundings.Temperature) is not { Milliliters: >= 1e-6 } volume || volume.Milliliters > Milliliters)
            return null;
        Entropy capacity = Entropy.FromJoulesPerKelvin(lye.Capacity + (Grams * (Material.HeatCapacity?.Value.KilojoulesPerKilogramKelvin ?? 0)));
        Area area = AreaFor(volume);
        double times = capacity.JoulesPerKelvin / area.SquareMeters;
        return NewtonCooling.TimeLimits.Holds(times / surroundings.MostTransfer) && NewtonCooling.TimeLimits.Holds(times / surroundings.LeastTransfer)
            ? new(NewtonCooling.Of(surroundings.Temperature, capacity, area, surroundings.Most), NewtonCooling.Of(surroundings.Temperature, capacity, area, surroundings.Least), surroundings.Evidence)
            : null;
    }

    /// <summary>
    /// What speaks against making this lye in it; empty when nothing does. The peak is the upper bound, so a finding may be spared in practice,
    /// but no danger is left out for what the tables know.
    /// </summary>
    /// <param name="lye">The lye.</param>
    /// <param name="vesselTemperature">How warm the empty vessel is.</param>
    /// <param name="leastHeadspace">The share of the volume that shall stay free, from 0 to 100 %; null when you do not care (a third to a half is common practice, no source).</param>
    /// <exception cref="ArgumentNullException"><paramref name="lye"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A headspace outside its range, or not a number.</exception>
    public ValueList<VesselFinding> Check(LyeSolution lye, Temperature vesselTemperature, Ratio? leastHeadspace = null)
    {
        ArgumentNullException.ThrowIfNull(lye);
        double? least = leastHeadspace is { } share ? Stored.Fraction(share, ProcessSetup.HeadspaceLimits, "The headspace", nameof(leastHeadspace)) : null;
        List<VesselFinding> found = [];
        if (Material.Lye == LyeFitness.Never)
            found.Add(new(VesselFindingKind.NeverForLye, Material, 0, 0, "", Material.Sources, Material.Evidence));
        if (lye.PeakCelsius is not { } peak)
        {
            found.Add(new(VesselFindingKind.NoFigures, Material, lye.Properties.StrengthFraction * 100, LyeFits.Strongest * 100, "%", [], Evidence.Computed));
            return found.ToValueList();
        }
        // the lye can't get hotter than it boils
        peak = Math.Min(peak, lye.Properties.BoilingCelsius);
        if (Material.LargestTemperature is { } largest && peak > largest.Low!.Value.DegreesCelsius)
        {
            bool isTooHot = peak > largest.High!.Value.DegreesCelsius;
            found.Add(new(isTooHot ? VesselFindingKind.TooHot : VesselFindingKind.HotForLong, Material, peak, (isTooHot ? largest.High : largest.Low).Value.DegreesCelsius, "°C", largest.Sources, largest.Evidence));
        }
        if (Material.AttackedFrom is { } attack && peak >= attack.Low!.Value.DegreesCelsius)
            found.Add(new(VesselFindingKind.Attacked, Material, peak, attack.Low.Value.DegreesCelsius, "°C", attack.Sources, attack.Evidence));
        if (Shock(Math.Abs(peak - vesselTemperature.DegreesCelsius)) is { } shock)
            found.Add(shock);
        double volume = lye.VolumeAt(Temperature.FromDegreesCelsius(peak))!.Value.Milliliters, free = 1 - (volume / Milliliters);
        if (free < 0)
            found.Add(new(VesselFindingKind.TooSmall, Material, volume, Milliliters, "mL", [], Evidence.Computed));
        else if (free < least)
            found.Add(new(VesselFindingKind.LittleHeadspace, Material, free * 100, least.Value * 100, "%", ["common-practice"], Evidence.Memory));
        return found.ToValueList();
    }

    /// <summary>Whether putting the warm vessel into a bath of another temperature may crack it; null when not.</summary>
    /// <param name="content">How warm the vessel and its content are.</param>
    /// <param name="bath">How cold the bath is.</param>
    public VesselFinding? CheckBath(Temperature content, Temperature bath) => Shock(Math.Abs(content.DegreesCelsius - bath.DegreesCelsius));

    private VesselFinding? Shock(double step) => Material.ThermalShock is { } shock && step > shock.Low!.Value.Kelvins
        ? new(VesselFindingKind.ThermalShock, Material, step, shock.Low.Value.Kelvins, "K", shock.Sources, shock.Evidence)
        : null;
}
