using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// How warm a batter can get in the mould: a bound, as if no heat were lost. Real moulds lose heat, the small ones most. Immutable.
/// </summary>
/// <remarks>
/// Rise = heat of all alkali that reacts after the pour, and of sugar, over the heat capacity of the batter. Heat per mol of alkali:
/// the low end is ester and dilute hydroxide, 54.3 kJ (derived from crc-thermodynamics: ethyl acetate); the value adds the heat that the lye
/// gives off when it is diluted (tables of heats of solution); the high end is 75 kJ, a rule of thumb of the industry, memory. Sugar, high end only: 1.3 kJ/g, as if all of it
/// became lactic acid and its salt (memory; nobody has measured it in soap). Not counted: crystallising soap, for which there is no figure.
/// </remarks>
public sealed class MouldHeat
{
    internal static readonly Limits PourLimits = new(0, 100);

    /// <summary>kJ per mol of alkali.</summary>
    private const double Ester = 54.3, RuleOfThumb = 75;

    /// <summary>kJ per g of sugar.</summary>
    private const double Sugar = 1.3;

    /// <summary>m2/s: how fast heat passes through soap, 0.2 to 0.45 W/(m K) over 1.0 g/mL and 2.4 to 2.9 J/(g K). From memory.</summary>
    private const double LeastDiffusivity = 0.7e-7, MostDiffusivity = 1.9e-7;

    private readonly double _low, _value, _high;

    private MouldHeat(Temperature pour, bool isInsulated, double low, double value, double high, double sugar, double sugarRise, Figure<Duration>? cooling)
    {
        Pour = pour;
        IsInsulated = isInsulated;
        (_low, _value, _high) = (low, value, high);
        SugarInBatch = Mass.FromGrams(sugar);
        RiseBySugar = TemperatureDelta.FromKelvins(sugarRise);
        CoreCooling = cooling;
    }

    /// <summary>The temperature at the pour.</summary>
    public Temperature Pour { get; }

    /// <summary>True when the mould is wrapped or stands warm.</summary>
    public bool IsInsulated { get; }

    /// <summary>The rise if no heat were lost: an upper bound, whose own range is that of the heat of reaction.</summary>
    public Figure<TemperatureDelta> Rise => Figure(v => TemperatureDelta.FromKelvins(v), 0);

    /// <summary>The temperature that it can't pass, if no heat were lost.</summary>
    public Figure<Temperature> Peak => Figure(v => Temperature.FromDegreesCelsius(v), Pour.DegreesCelsius);

    /// <summary>Sugar of milk, honey and the like in the whole batch.</summary>
    public Mass SugarInBatch { get; }

    /// <summary>The part of the high end that sugar may add.</summary>
    public TemperatureDelta RiseBySugar { get; }

    /// <summary>
    /// In this time the middle of the block falls to 37 % of its excess if its skin were kept at room temperature: with air around it, or insulated,
    /// it takes longer. Blocks that need hours come near the bound. An estimate; null for moulds without sizes. Diffusion of heat in a box or a cylinder.
    /// </summary>
    public Figure<Duration>? CoreCooling { get; }

    /// <summary>True when the bound reaches 100 degrees Celsius: water may boil out, and the soap rise over the rim.</summary>
    public bool MayBoil => Peak.High!.Value.DegreesCelsius >= 100;

    /// <summary>True when heat stays in: insulated, or a core that cools over hours.</summary>
    public bool KeepsItsHeat => IsInsulated || CoreCooling is { } cooling && cooling.Value.Hours >= 2;

    /// <summary>True when it keeps its heat, may boil, and has sugar that browns and heats: milk or honey in a large or insulated block.</summary>
    public bool MayScorch => KeepsItsHeat && MayBoil && SugarInBatch.Grams > 0;

    internal static MouldHeat? Of(BatchPlan plan, Mould? mould, Temperature pour, bool isInsulated)
    {
        LyeBalance balance = plan.Balance;
        double celsius = Stored.Celsius(pour, PourLimits, "The temperature at the pour");
        double lyeGrams = balance.PureAlkaliGrams + balance.AllWaterGrams;
        if (!balance.CanBeWeighed || !(lyeGrams > 0) || !LyeFits.IsInRange(balance.PureAlkaliGrams / lyeGrams))
            return null;
        AlkaliMix mix = plan.Formula.Alkali.Mix;
        double strength = balance.PureAlkaliGrams / lyeGrams, sodium = balance.Hydroxide * mix.SodiumShare, potassium = balance.Hydroxide - sodium;
        LyeProperties lye = new(strength, Math.Clamp(sodium * Molar.SodiumHydroxide / Math.Max(balance.PureAlkaliGrams, 1e-300), 0, 1));
        double capacity = (lyeGrams * lye.HeatCapacityAt60) + (balance.AlkaliGrams - balance.PureAlkaliGrams - (balance.Hydroxide * mix.WaterPerMole)) * HeatCapacities.Inert;
        foreach (FatPortion portion in plan.Formula.Fats)
            capacity += portion.Grams * HeatCapacities.Fat;
        double sugar = 0;
        foreach (Containing part in Containing.All(plan))
        {
            capacity += part.Grams * HeatCapacities.BesideWater(part.Contents);
            sugar += part.Grams * part.Contents.SugarFraction;
        }
        // alkali without a taker gives no heat, and reacting fat no more than there is alkali for
        double reacting = Math.Min(balance.Hydroxide, balance.AllFatHydroxide + balance.AcidHydroxide), share = balance.Hydroxide > 0 ? reacting / balance.Hydroxide : 0;
        double dilution = (sodium * DissolvingHeat.Dilute(AlkaliKind.SodiumHydroxide)) + (potassium * DissolvingHeat.Dilute(AlkaliKind.PotassiumHydroxide)) - lye.Released(sodium, potassium);
        double low = reacting * Ester * 1000 / capacity, value = low + (Math.Max(0, dilution) * share * 1000 / capacity), sugarRise = sugar * Sugar * 1000 / capacity;
        double high = Math.Max(value, reacting * RuleOfThumb * 1000 / capacity) + sugarRise;
        return new(Temperature.FromDegreesCelsius(celsius), isInsulated, low, value, high, sugar, sugarRise, mould is null ? null : Cooling(mould));
    }

    /// <summary>Slowest mode of a box, 1/t = pi^2 a (1/x^2 + 1/y^2 + 1/z^2), or of a cylinder, 1/t = a ((2.405/r)^2 + (pi/h)^2); a the diffusivity.</summary>
    private static Figure<Duration>? Cooling(Mould mould)
    {
        if (!mould.HasSizes)
            return null;
        (double x, double y, double z) = mould.Block;
        (x, y, z) = (x / 100, y / 100, z / 100);
        double perArea = mould.IsBox
            ? Math.PI * Math.PI * ((1 / (x * x)) + (1 / (y * y)) + (1 / (z * z)))
            : (4 * 2.405 * 2.405 / (y * y)) + (Math.PI * Math.PI / (x * x));
        double least = 1 / (MostDiffusivity * perArea), most = 1 / (LeastDiffusivity * perArea);
        return new(Duration.FromSeconds((least + most) / 2), Evidence.Memory, ["memory"]) { Low = Duration.FromSeconds(least), High = Duration.FromSeconds(most), Note = "estimate: as if the skin were kept at room temperature" };
    }

    private Figure<T> Figure<T>(Func<double, T> make, double from) where T : struct =>
        new(make(from + _value), Evidence.Memory, ["computed", "crc-thermodynamics", "memory"]) { Low = make(from + _low), High = make(from + _high), Note = "bound: no heat lost" };
}
