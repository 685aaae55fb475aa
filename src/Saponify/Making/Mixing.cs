using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// Lye brought together with cold or frozen milk, with warm fats, or both: an estimate of the temperature that comes out. Immutable.
/// </summary>
/// <remarks>
/// T = (sum of mass x heat capacity x temperature + heat of dilution)/(sum of mass x heat capacity); ice first warms and melts. The heat of
/// dilution comes from the water that the liquids bring to the lye: strong lye in cold milk ends up far warmer than a plain mean says.
/// Not counted: losses, and the first heat of saponification.
/// </remarks>
public sealed record Mixing
{
    /// <summary>How warm a lye can be, in degrees Celsius.</summary>
    internal static readonly Limits LyeLimits = new(-30, 200);

    /// <summary>The lye.</summary>
    public required LyeSolution Lye { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); }

    /// <summary>How warm the lye is, from -30 to 200 degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public required Temperature LyeTemperature { get; init => field = Temperature.FromDegreesCelsius(Stored.Celsius(value, LyeLimits, "The temperature of the lye")); }

    /// <summary>Milk, cream, water, juice: each with its temperature, frozen or not.</summary>
    /// <exception cref="ArgumentException">The list holds a null or a portion without a temperature.</exception>
    public ValueList<LiquidPortion> Liquids { get; init => field = LyeJug.WithTemperatures(LineId.MakeUnique(value, "The liquids"), nameof(value)); }

    /// <summary>Melted fats.</summary>
    /// <exception cref="ArgumentException">The list holds a null.</exception>
    public ValueList<FatPortion> Fats { get; init => field = LineId.MakeUnique(value, "The fats"); }

    /// <summary>How warm the fats are, from 0 to 150 degrees Celsius; needed when there are fats.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? FatTemperature
    {
        get;
        init => field = value is { } temperature ? Temperature.FromDegreesCelsius(Stored.Celsius(temperature, 0, 150, "The temperature of the fats", nameof(value))) : null;
    }

    /// <summary>The temperature that comes out: an estimate. 0 degrees Celsius with <see cref="IceLeft"/> when ice is left. Null for lye beyond 50 %.</summary>
    /// <exception cref="InvalidOperationException">There are fats, and their temperature is not stated.</exception>
    public Temperature? MixedTemperature => Out(LyeTemperature.DegreesCelsius, FatCelsius, DilutingJoules).Celsius is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>The plain mean, as if diluting lye gave no heat: lower than the truth. Null for lye beyond 50 %.</summary>
    /// <exception cref="InvalidOperationException">There are fats, and their temperature is not stated.</exception>
    public Temperature? PlainMean => Out(LyeTemperature.DegreesCelsius, FatCelsius, 0).Celsius is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>Ice of frozen portions that does not melt.</summary>
    /// <exception cref="InvalidOperationException">There are fats, and their temperature is not stated.</exception>
    public Mass IceLeft => Mass.FromGrams(Out(LyeTemperature.DegreesCelsius, FatCelsius, DilutingJoules).IceLeft);

    /// <summary>Heat released because the liquids dilute the lye. Null for lye beyond 50 %.</summary>
    public Energy? HeatOfDilution => double.IsFinite(DilutingJoules) ? Energy.FromJoules(DilutingJoules) : null;

    /// <summary>Strength of the lye with the water of the liquids.</summary>
    public Ratio StrengthAfter => Stored.ToRatio(Diluted.StrengthFraction);

    /// <summary>Heat capacity of everything brought together. Null for lye beyond 50 %.</summary>
    public Entropy? HeatCapacity => double.IsFinite(Capacity) ? Entropy.FromJoulesPerKelvin(Capacity) : null;

    /// <summary>The lye temperature with which a temperature comes out. It may be one that lye can't have: look at its boiling point and when it crystallises. Null for lye beyond 50 %, or when ice would be left.</summary>
    /// <param name="wanted">The temperature wanted.</param>
    /// <exception cref="InvalidOperationException">There are fats, and their temperature is not stated.</exception>
    public Temperature? LyeTemperatureFor(Temperature wanted)
    {
        double celsius = LyeTemperature.DegreesCelsius + ((wanted.DegreesCelsius - WithoutLimit(FatCelsius)) * Capacity / Lye.Capacity);
        return double.IsFinite(celsius) && !(wanted.DegreesCelsius < 0 && HasIce) ? Temperature.FromDegreesCelsius(celsius) : null;
    }

    /// <summary>The fat temperature with which a temperature comes out; null without fats, for lye beyond 50 %, or when ice would be left.</summary>
    /// <param name="wanted">The temperature wanted.</param>
    public Temperature? FatTemperatureFor(Temperature wanted)
    {
        double celsius = (wanted.DegreesCelsius - WithoutLimit(0)) * Capacity / FatCapacity;
        return double.IsFinite(celsius) && !(wanted.DegreesCelsius < 0 && HasIce) ? Temperature.FromDegreesCelsius(celsius) : null;
    }

    /// <summary>
    /// Water that, put into the lye beforehand at the temperature of the lye, keeps what comes out at or below a temperature: weaker lye has less
    /// heat of dilution left. Zero when it is so already; null when nine times the water does not do it, or without figures.
    /// </summary>
    /// <param name="limit">The temperature that shall not be passed.</param>
    /// <exception cref="InvalidOperationException">There are fats, and their temperature is not stated.</exception>
    public Mass? WaterFor(Temperature limit)
    {
        // more water first takes away heat of dilution and in the end only warms: look along the way, then halve
        const int Steps = 200;
        double most = 8 * Lye.WaterGrams, before = 0;
        for (int i = 0; i <= Steps; i++)
        {
            double grams = most * i / Steps;
            if (Weakened(grams) <= limit.DegreesCelsius)
                return Mass.FromGrams(i == 0 ? 0 : LyeJug.Least(before, grams, g => Weakened(g) <= limit.DegreesCelsius)!.Value);
            before = grams;
        }
        return null;
    }

    /// <summary>Which of the fats set at the temperature that comes out. Empty for lye beyond 50 %.</summary>
    /// <exception cref="InvalidOperationException">There are fats, and their temperature is not stated.</exception>
    public ValueList<FatSetting> Setting() => MixedTemperature is { } temperature ? FatSetting.At(temperature, new([.. Fats.Where(f => f.Grams > 0)])) : [];

    private double FatCapacity => Fats.Sum(f => f.Grams) * HeatCapacities.Fat;

    private double Capacity => Lye.Capacity + FatCapacity + Liquids.Sum(l => l.Grams * HeatCapacities.Of(l.Liquid.Contents));

    private double LiquidWater => Liquids.Sum(l => l.Grams * l.Liquid.WaterPerGram);

    private bool HasIce => Ice > 0;

    private double Ice => Liquids.Sum(l => l.IsFrozen ? l.Grams * l.Liquid.WaterPerGram : 0);

    private LyeProperties Diluted => AtWater(Lye.WaterGrams + LiquidWater);

    private double DilutingJoules => (Diluted.Released(Lye.SodiumMoles, Lye.PotassiumMoles) - Lye.Properties.Released(Lye.SodiumMoles, Lye.PotassiumMoles)) * 1000;

    private double FatCelsius => Fats.Count == 0 ? 0
        : FatTemperature?.DegreesCelsius ?? throw new InvalidOperationException("The temperature of the fats is not stated; set FatTemperature.");

    private LyeProperties AtWater(double water) => new(Lye.PureGrams > 0 ? Lye.PureGrams / (Lye.PureGrams + water) : 0, Lye.Properties.SodiumFraction);

    /// <summary>Heat contents about 0 degrees, the lye among them.</summary>
    private double Content(double lyeCelsius, double fatCelsius) =>
        (Lye.Capacity * lyeCelsius) + (FatCapacity * fatCelsius) + Liquids.Sum(HeatCapacities.HeatContent);

    /// <summary>What comes out by the formula alone, below 0 as if ice melted there too.</summary>
    private double WithoutLimit(double fatCelsius) => (Content(LyeTemperature.DegreesCelsius, fatCelsius) + DilutingJoules) / Capacity;

    private (double? Celsius, double IceLeft) Out(double lyeCelsius, double fatCelsius, double heat)
    {
        double celsius = (Content(lyeCelsius, fatCelsius) + heat) / Capacity;
        if (!double.IsFinite(celsius))
            return (null, 0);
        return celsius < 0 && HasIce ? (0, Math.Min(Ice, -celsius * Capacity / HeatCapacities.MeltingOfIce)) : (celsius, 0);
    }

    /// <summary>What comes out when so much water at the temperature of the lye joined the lye first and the lye came back to that temperature; NaN without figures.</summary>
    private double Weakened(double grams)
    {
        LyeProperties weaker = AtWater(Lye.WaterGrams + grams), diluted = AtWater(Lye.WaterGrams + grams + LiquidWater);
        double lye = Lye.Capacity - ((Lye.PureGrams + Lye.WaterGrams) * Lye.Properties.HeatCapacityAt60) + ((Lye.PureGrams + Lye.WaterGrams + grams) * weaker.HeatCapacityAt60);
        double heat = (diluted.Released(Lye.SodiumMoles, Lye.PotassiumMoles) - weaker.Released(Lye.SodiumMoles, Lye.PotassiumMoles)) * 1000;
        double capacity = Capacity - Lye.Capacity + lye;
        return (Content(LyeTemperature.DegreesCelsius, FatCelsius) + ((lye - Lye.Capacity) * LyeTemperature.DegreesCelsius) + heat) / capacity;
    }
}
