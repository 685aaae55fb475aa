using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// What is known of lye of one strength: density, heat capacity, boiling point, when it crystallises, heat of solution. Each figure has its
/// range (the stated error), sources and evidence; beyond what was measured there is none: null, never a guess. Immutable, thread-safe;
/// equality by content.
/// </summary>
/// <remarks>
/// Lye of both alkalis is the mean of the pure ones at the same strength, by mass of pure alkali: an estimate, and its range spans both.
/// </remarks>
public sealed record LyeProperties
{
    internal LyeProperties(double strength, double sodiumShare) => (StrengthFraction, SodiumFraction) = (strength, sodiumShare);

    internal double StrengthFraction { get; }

    /// <summary>Share of the mass of pure alkali that is NaOH.</summary>
    internal double SodiumFraction { get; }

    /// <summary>Strength: pure alkali/(pure alkali + water). There are figures from 0 to 50 %.</summary>
    public Ratio Strength => Stored.ToRatio(StrengthFraction);

    /// <summary>Share of the mass of pure alkali that is sodium hydroxide; the rest is potassium hydroxide.</summary>
    public Ratio SodiumShare => Stored.ToRatio(SodiumFraction);

    /// <summary>True for lye of both alkalis: its figures are estimates.</summary>
    public bool IsEstimate => SodiumFraction is > 0 and < 1;

    /// <summary>
    /// Heat that one mol of dry alkali releases when it dissolves to this strength at 25 degrees Celsius; positive. Basis of NBS 1982. Null above 50 %.
    /// Sources: olsson-1997, felder-rousseau (NaOH); balej-1985 (KOH, within 1.5 kJ/mol).
    /// </summary>
    public Figure<MolarEnergy>? HeatOfSolution
    {
        get
        {
            // the mean per mol, since each mol releases its own heat
            double sodium = SodiumFraction / Molar.SodiumHydroxide, potassium = (1 - SodiumFraction) / Molar.PotassiumHydroxide;
            return Mean(sodium / (sodium + potassium), kind => DissolvingHeat.At(kind, StrengthFraction), v => MolarEnergy.FromKilojoulesPerMole(v));
        }
    }

    /// <summary>
    /// Boiling point at 101.325 kPa, within 0.1 degrees of the sources; what else is dissolved would raise it. Null above 50 %.
    /// Sources: olsson-1997 (NaOH), balej-1985 (KOH).
    /// </summary>
    public Figure<Temperature>? BoilingPoint => Mean(SodiumFraction,
        kind => Point(LyeFits.BoilingPoint(kind, StrengthFraction), LyeFits.BoilingError, kind == AlkaliKind.SodiumHydroxide ? "olsson-1997" : "balej-1985"),
        v => Temperature.FromDegreesCelsius(v));

    /// <summary>
    /// Below this temperature crystals drop, within about 2 degrees; without a low end where only "at most 0 degrees Celsius" is known.
    /// Null above 60 % NaOH or 60.6 % KOH. Of both alkalis it is the higher of the two. Sources: wang-2008 (NaOH), gse-koh and others (KOH).
    /// </summary>
    public Figure<Temperature>? CrystallisesBelow
    {
        get
        {
            CurvePoint? first = null;
            foreach (AlkaliKind kind in Kinds())
            {
                if (Crystallising.At(kind, StrengthFraction) is not { } point)
                    return null;
                first = first is null || point.High > first.High ? point : first;
            }
            return new(Temperature.FromDegreesCelsius(double.IsInfinity(first!.Low) ? first.High : first.Value), first.Evidence, first.Sources)
            {
                Low = double.IsInfinity(first.Low) ? null : Temperature.FromDegreesCelsius(first.Low),
                High = Temperature.FromDegreesCelsius(first.High),
                Note = first.Note,
            };
        }
    }

    /// <summary>Lye of sodium hydroxide.</summary>
    /// <param name="strength">Pure NaOH/(NaOH + water), from 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static LyeProperties OfSodiumHydroxide(Ratio strength) => OfBoth(strength, Ratio.FromPercent(100));

    /// <summary>Lye of potassium hydroxide.</summary>
    /// <param name="strength">Pure KOH/(KOH + water), from 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static LyeProperties OfPotassiumHydroxide(Ratio strength) => OfBoth(strength, Ratio.Zero);

    /// <summary>Lye of both alkalis: an estimate.</summary>
    /// <param name="strength">Pure alkali/(pure alkali + water), from 0 to 100 %.</param>
    /// <param name="sodiumShare">NaOH as a share of the mass of pure alkali, from 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static LyeProperties OfBoth(Ratio strength, Ratio sodiumShare) =>
        new(Stored.Fraction(strength, 0, 1, "The strength of a lye"), Stored.Fraction(sodiumShare, 0, 1, "The share of sodium hydroxide"));

    /// <summary>Density. Null above 50 % or outside 0 to 100 degrees Celsius (NaOH), 15 to 80 (KOH). Sources: ict-3 (NaOH), laliberte-2009 (KOH).</summary>
    /// <param name="temperature">Temperature of the lye.</param>
    public Figure<Density>? Density(Temperature temperature) => Mean(SodiumFraction,
        kind => kind == AlkaliKind.SodiumHydroxide
            ? Point(LyeFits.Density(kind, StrengthFraction, temperature.DegreesCelsius), LyeFits.SodiumDensityError, "ict-3")
            : Point(LyeFits.Density(kind, StrengthFraction, temperature.DegreesCelsius), LyeFits.PotassiumDensityError, "laliberte-2009"),
        v => UnitsNet.Density.FromGramsPerMilliliter(v));

    /// <summary>
    /// Heat capacity. NaOH above 30.3 % has figures near 60 degrees Celsius only; they are used at every temperature, and near 25 degrees they
    /// may be 2 % high. KOH above 46.5 % is extrapolated and its note says so. Null above 50 % or outside 0 to 100 degrees.
    /// Sources: olsson-1997, laliberte-2009.
    /// </summary>
    /// <param name="temperature">Temperature of the lye.</param>
    public Figure<SpecificEntropy>? HeatCapacity(Temperature temperature) => Mean(SodiumFraction, kind =>
        {
            double celsius = temperature.DegreesCelsius, value = LyeFits.HeatCapacity(kind, StrengthFraction, celsius);
            if (kind == AlkaliKind.PotassiumHydroxide)
                return Point(value, LyeFits.PotassiumHeatCapacityError, "laliberte-2009", StrengthFraction > LyeFits.PotassiumMeasured ? "beyond 46.5 % extrapolated" : null);
            bool isFar = StrengthFraction > LyeFits.SodiumMeasuredAt25 && celsius < 60;
            return Point(value, isFar ? Math.Max(LyeFits.SodiumHeatCapacityError, 0.02 * value * Math.Min(1, (60 - celsius) / 35)) : LyeFits.SodiumHeatCapacityError,
                isFar || celsius >= 60 ? "olsson-1997" : celsius <= 25 ? "laliberte-2009" : "laliberte-2009;olsson-1997", isFar ? "figure for 60 °C" : null);
        },
        v => SpecificEntropy.FromKilojoulesPerKilogramKelvin(v));

    /// <summary>
    /// Boiling point under another air pressure, for kitchens high up; within about 1 degree (checked for NaOH of 50 % at 10 kPa). The activity
    /// of the water follows from the boiling point at 101.325 kPa and from the heat of dilution. Null above 50 %.
    /// Sources: wagner-pruss-1993, olsson-1997, balej-1985.
    /// </summary>
    /// <param name="pressure">Air pressure, from 0.1 to 110 kPa.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Figure<Temperature>? BoilingPointAt(Pressure pressure)
    {
        double kilopascals = Guard.InRange(pressure.Kilopascals, 0.1, 110, "The air pressure", "kPa", nameof(pressure));
        return Mean(SodiumFraction, kind => Point(BoilingPointAt(kind, kilopascals), 1, kind == AlkaliKind.SodiumHydroxide ? "computed;olsson-1997;wagner-pruss-1993" : "balej-1985;computed;wagner-pruss-1993", evidence: Evidence.Memory),
            v => Temperature.FromDegreesCelsius(v));
    }

    /// <summary>J per g of solution and K, for heat balances; NaN beyond the figures.</summary>
    internal double HeatCapacityAt60 => Mean(SodiumFraction, kind => LyeFits.HeatCapacityAt60(kind, StrengthFraction));

    internal double BoilingCelsius => Mean(SodiumFraction, kind => LyeFits.BoilingPoint(kind, StrengthFraction));

    /// <summary>kJ that so many mol of each alkali release when they dissolve to this strength from the dry solid.</summary>
    internal double Released(double sodiumMoles, double potassiumMoles) =>
        (sodiumMoles > 0 ? sodiumMoles * DissolvingHeat.Released(AlkaliKind.SodiumHydroxide, StrengthFraction) : 0)
        + (potassiumMoles > 0 ? potassiumMoles * DissolvingHeat.Released(AlkaliKind.PotassiumHydroxide, StrengthFraction) : 0);

    /// <summary>mL per g of solution, at the temperature or the nearest one that has figures; NaN above 50 %.</summary>
    internal double MillilitersPerGram(double celsius) => 1 / Mean(SodiumFraction, kind =>
    {
        (double low, double high) = LyeFits.DensityRange(kind);
        return LyeFits.Density(kind, StrengthFraction, Math.Clamp(celsius, low, high));
    });

    private double BoilingPointAt(AlkaliKind kind, double kilopascals)
    {
        const double Gas = 8.314462618e-3, Step = 1e-4;
        double boiling = LyeFits.BoilingPoint(kind, StrengthFraction);
        if (double.IsNaN(boiling))
            return double.NaN;
        // n mol of water per mol of alkali; the heat content of the water is the slope of the heat of solution in n
        double n = Molar.Hydroxide(kind) * (1 - StrengthFraction) / (Molar.Water * StrengthFraction);
        double Strength(double moles) => Molar.Hydroxide(kind) / (Molar.Hydroxide(kind) + (moles * Molar.Water));
        double slope = StrengthFraction < 1e-3 ? 0
            : (DissolvingHeat.Released(kind, Strength(n * (1 + (2 * Step)))) - DissolvingHeat.Released(kind, Strength(n))) / (2 * Step * n);
        double activity = Math.Log(101.325 / WaterVapour.Pressure(boiling));
        double Excess(double celsius) =>
            Math.Log(WaterVapour.Pressure(celsius) / kilopascals) + activity - (slope / Gas * ((1 / (celsius + WaterVapour.Kelvin)) - (1 / (boiling + WaterVapour.Kelvin))));
        (double low, double high) = (-20, 200);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Excess(middle) > 0 ? (low, middle) : (middle, high);
        }
        return (low + high) / 2;
    }

    private IEnumerable<AlkaliKind> Kinds()
    {
        if (SodiumFraction > 0)
            yield return AlkaliKind.SodiumHydroxide;
        if (SodiumFraction < 1)
            yield return AlkaliKind.PotassiumHydroxide;
    }

    private static double Mean(double sodiumShare, Func<AlkaliKind, double> of) =>
        (sodiumShare > 0 ? sodiumShare * of(AlkaliKind.SodiumHydroxide) : 0) + (sodiumShare < 1 ? (1 - sodiumShare) * of(AlkaliKind.PotassiumHydroxide) : 0);

    /// <summary>The mean of the figures of the pure lyes; null when one of them has none.</summary>
    private static Figure<T>? Mean<T>(double sodiumShare, Func<AlkaliKind, CurvePoint?> of, Func<double, T> make) where T : struct
    {
        CurvePoint? sodium = sodiumShare > 0 ? of(AlkaliKind.SodiumHydroxide) : null, potassium = sodiumShare < 1 ? of(AlkaliKind.PotassiumHydroxide) : null;
        if ((sodium is null && sodiumShare > 0) || (potassium is null && sodiumShare < 1))
            return null;
        if (sodium is null || potassium is null)
        {
            CurvePoint one = (sodium ?? potassium)!;
            return new(make(one.Value), one.Evidence, one.Sources) { Low = make(one.Low), High = make(one.High), Note = one.Note };
        }
        var evidence = (Evidence)Math.Max((int)Evidence.Computed, Math.Max((int)sodium.Evidence, (int)potassium.Evidence));
        return new(make((sodiumShare * sodium.Value) + ((1 - sodiumShare) * potassium.Value)), evidence, [.. sodium.Sources.Concat(potassium.Sources).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)])
        {
            Low = make(Math.Min(sodium.Low, potassium.Low)),
            High = make(Math.Max(sodium.High, potassium.High)),
            Note = "estimate: the mean of the pure lyes at the same strength",
        };
    }

    private static CurvePoint? Point(double value, double error, string sources, string? note = null, Evidence evidence = Evidence.Computed) =>
        double.IsNaN(value) ? null : new(0, value - error, value + error, [.. sources.Split(';')], evidence, note);
}
