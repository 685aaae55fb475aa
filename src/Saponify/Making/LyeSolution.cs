using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// Lye as it comes out of a <see cref="LyeJug"/>: strength, properties, heat, and the peak temperature as an upper bound. Beyond a lye of 50 %
/// there are no figures, and what rests on them is null. Immutable, thread-safe.
/// </summary>
/// <remarks>
/// Energy balance about 25 degrees Celsius, where the heat of solution is tabled: the parts bring their heat content; dissolving, diluting and
/// neutralising add heat; all of it stays in the lye: peak = 25 + (heat brought + heat released)/heat capacity of the lye.
/// No vessel, no room and no steam takes any: that is why it is a bound. Ice is warmed and melted first.
/// </remarks>
public sealed class LyeSolution
{
    /// <summary>kJ per mol of acid: acetic acid with hydroxide, a stand-in for every acid. Source: crc-thermodynamics, own arithmetic.</summary>
    private const double Neutralising = 57.5;

    /// <summary>kJ per mol of fat taken apart: the most that is named anywhere, a rule of thumb of the industry (memory). Esters give 54.3 (crc-thermodynamics).</summary>
    private const double Saponifying = 75;

    /// <summary>mL per g of what is there beside alkali and water, near enough (memory).</summary>
    private const double OtherMilliliters = 0.7;

    private readonly JugContents _contents;
    private readonly double _dissolving, _diluting, _neutralising, _saponifying, _peak, _flakes, _iceLeft;

    internal LyeSolution(LyeJug jug)
    {
        Jug = jug;
        JugContents contents = _contents = new(jug);
        double lye = contents.Pure + contents.Water;
        Properties = new(lye > 0 ? contents.Pure / lye : 0, contents.Pure > 0 ? contents.PureSodium / contents.Pure : 1);
        Capacity = (lye * Properties.HeatCapacityAt60) + contents.OtherCapacity;
        _dissolving = Properties.Released(contents.Solid.Sodium, contents.Solid.Potassium) * 1000;
        _diluting = (Properties.Released(contents.Bought.Sodium, contents.Bought.Potassium) * 1000) - contents.BoughtReleased;
        _neutralising = Math.Min(contents.Acid, SodiumMoles + PotassiumMoles) * (Neutralising + HeatLeftPerMole) * 1000;
        _saponifying = Math.Min(contents.Fat, Math.Max(0, SodiumMoles + PotassiumMoles - contents.Acid)) * Saponifying * 1000;
        (_peak, _iceLeft) = Peaks(Released);
        (_flakes, _) = Peaks(Released - contents.Hydrate);
    }

    internal double Capacity { get; }

    internal double Grams => _contents.Pure + _contents.Water + _contents.Other;

    internal double PureGrams => _contents.Pure;

    internal double WaterGrams => _contents.Water;

    internal double SodiumMoles => _contents.Solid.Sodium + _contents.Bought.Sodium;

    internal double PotassiumMoles => _contents.Solid.Potassium + _contents.Bought.Potassium;

        internal double AlcoholGrams => _contents.Alcohol;

    internal double? PeakCelsius => Finite(_peak);

    internal double? FlakesCelsius => Finite(_flakes);

    /// <summary>What went in.</summary>
    public LyeJug Jug { get; }

    /// <summary>Density, heat capacity, boiling point, crystallising: by the strength of the lye before acids take part.</summary>
    public LyeProperties Properties { get; }

    /// <summary>Pure alkali in it.</summary>
    public Mass PureAlkali => Mass.FromGrams(PureGrams);

    /// <summary>Water in it: of the liquids, melted ice, additives, the alkali.</summary>
    public Mass Water => Mass.FromGrams(WaterGrams);

    /// <summary>Everything in the jug.</summary>
    public Mass Mass => Mass.FromGrams(Grams);

    /// <summary>Heat that solid alkali releases in dissolving, counted as if it were dry; 0 for bought lye. Null beyond 50 %.</summary>
    public Energy? HeatOfDissolving => Joules(_dissolving);

    /// <summary>Heat that bought lye releases in being diluted. Null beyond 50 %.</summary>
    public Energy? HeatOfDiluting => Joules(_diluting);

    /// <summary>Heat that acids in the jug release, 57.5 kJ per mol and the heat of dilution still in the lye. Source: crc-thermodynamics. Null beyond 50 %.</summary>
    public Energy? HeatOfNeutralising => Joules(_neutralising);

    /// <summary>
    /// Heat that fat in the jug releases when lye takes it apart, as in milk or cream as the lye liquid: 75 kJ per mol, the most that is named anywhere
    /// (memory). Null beyond 50 %.
    /// </summary>
    public Energy? HeatOfSaponifying => double.IsFinite(Capacity) ? Joules(_saponifying) : null;

    /// <summary>
    /// Dissolving, diluting, neutralising and saponifying together: the heat of the bound. Sugar gives heat in lye that nobody has measured; it is not in it.
    /// Null beyond 50 %.
    /// </summary>
    public Energy? HeatReleased => Joules(Released);

    /// <summary>
    /// Heat that flakes do not release, because their bound water sits in KOH.H2O or NaOH.H2O already: 42.97 and 23.1 kJ per mol of it.
    /// Source: crc-enthalpy-of-solution.
    /// </summary>
    public Energy HeatOfHydrate => Energy.FromJoules(_contents.Hydrate);

    /// <summary>Heat that the ice takes to warm to 0 degrees Celsius, and what of it melts to melt. Sources: geankoplis, crc-fusion.</summary>
    public Energy HeatTakenByIce => Energy.FromJoules(_contents.IceHeat - (IceLeft.Grams * HeatCapacities.MeltingOfIce));

    /// <summary>Heat capacity of all that is in the jug, near 60 degrees Celsius. Null beyond 50 %.</summary>
    public Entropy? HeatCapacity => Finite(Capacity) is { } value ? Entropy.FromJoulesPerKelvin(value) : null;

    /// <summary>
    /// Peak temperature, upper bound: all heat stays in the lye and the alkali is taken as dry. Its figures are good to <see cref="PeakError"/>. It may lie
    /// above the boiling point: then the lye boils instead. With sugar in the jug it is no bound. Null beyond 50 %.
    /// </summary>
    public Temperature? Peak => Celsius(_peak);

    /// <summary>
    /// Peak temperature to expect of alkali with bound water, such as KOH flakes, whose water is hydrate already: still without losses to jug and
    /// room. Equal to <see cref="Peak"/> without bound water. Null beyond 50 %.
    /// </summary>
    public Temperature? PeakOfHydrate => Celsius(_flakes);

    /// <summary>How far the stated error of the heat of solution moves the peak: about 1 K for NaOH, 3 K for KOH. Null beyond 50 %.</summary>
    public TemperatureDelta? PeakError => Finite(ErrorKelvins) is { } error ? TemperatureDelta.FromKelvins(error) : null;

    /// <summary>True with sugar in the jug, from milk, juice or honey: it gives heat in lye that nobody has measured, and the peak is no bound then.</summary>
    public bool HasSugar => _contents.Sugar > 0;

    /// <summary>Ice that is left because the heat does not melt it all; the peak is 0 degrees Celsius then.</summary>
    public Mass IceLeft => Mass.FromGrams(double.IsNaN(_peak) ? 0 : _iceLeft);

    /// <summary>True when the upper bound, with its error, reaches the boiling point at 101.325 kPa: it may boil over. Null beyond 50 %.</summary>
    public bool? MayBoil => double.IsFinite(_peak + Properties.BoilingCelsius) ? _peak + ErrorKelvins >= Properties.BoilingCelsius : null;

    /// <summary>
    /// Volume, at the temperature or, outside the figures, at the nearest one that has them. What is there beside alkali and water counts 0.7 mL per g (memory):
    /// an estimate then. Null beyond 50 %.
    /// </summary>
    /// <param name="temperature">Temperature of the lye.</param>
    public Volume? VolumeAt(Temperature temperature) =>
        Finite(((PureGrams + WaterGrams) * Properties.MillilitersPerGram(temperature.DegreesCelsius)) + (_contents.Other * OtherMilliliters)) is { } value ? Volume.FromMilliliters(value) : null;

    /// <summary>True when the lye stays clear at this temperature, the doubt of the figure included; null when there is none.</summary>
    /// <param name="temperature">Temperature of the lye.</param>
    public bool? IsClearAt(Temperature temperature) => Properties.CrystallisesBelow is { } limit ? temperature.DegreesCelsius >= limit.High!.Value.DegreesCelsius : null;

    private double Released => _dissolving + _diluting + _neutralising + _saponifying;

    private double ErrorKelvins => ((SodiumMoles * ErrorOf(AlkaliKind.SodiumHydroxide)) + (PotassiumMoles * ErrorOf(AlkaliKind.PotassiumHydroxide))) * 1000 / Capacity;

    private double ErrorOf(AlkaliKind kind) => DissolvingHeat.At(kind, Properties.StrengthFraction)?.Error ?? 0;

    /// <summary>kJ per mol that is still in the lye and comes out when it is diluted without end.</summary>
    private double HeatLeftPerMole => SodiumMoles + PotassiumMoles > 0
        ? ((SodiumMoles * DissolvingHeat.Dilute(AlkaliKind.SodiumHydroxide)) + (PotassiumMoles * DissolvingHeat.Dilute(AlkaliKind.PotassiumHydroxide))
            - Properties.Released(SodiumMoles, PotassiumMoles)) / (SodiumMoles + PotassiumMoles)
        : 0;

    /// <summary>The temperature that comes out, and the ice that is left: below 0 degrees it does not melt.</summary>
    private (double Celsius, double IceLeft) Peaks(double released)
    {
        if (Capacity == 0)
            return (double.NaN, 0);
        double celsius = JugContents.Tabled + ((_contents.Content + released) / Capacity);
        return celsius < 0 && _contents.Ice > 0
            ? (0, Math.Min(_contents.Ice, -celsius * Capacity / HeatCapacities.MeltingOfIce))
            : (celsius, 0);
    }

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    private static Energy? Joules(double value) => Finite(value) is { } joules ? Energy.FromJoules(joules) : null;

    private static Temperature? Celsius(double value) => Finite(value) is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;
}
