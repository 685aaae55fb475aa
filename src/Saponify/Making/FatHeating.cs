using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>How far to warm fats so that all of them are clear, and how much heat that takes. Immutable; equality by content.</summary>
public sealed record FatHeating
{
    /// <summary>Fats are warmed no further, in degrees Celsius.</summary>
    internal const double Warmest = 200;

    /// <summary>Looks at fats.</summary>
    /// <param name="fats">The fats.</param>
    /// <exception cref="ArgumentException">A null among them.</exception>
    public FatHeating(ValueList<FatPortion> fats)
    {
        Fats = LineId.NoNull(fats, "The fats");
        List<Fat> without = [];
        foreach (FatPortion portion in fats)
        {
            if (portion.Grams <= 0)
                continue;
            if (portion.Fat.Figures.Melting is not { } melting)
                without.Add(portion.Fat);
            else if (!(HighEnd(melting) <= (ClearFrom?.DegreesCelsius ?? double.NegativeInfinity)))
                (ClearFrom, DecidedBy) = (Temperature.FromDegreesCelsius(HighEnd(melting)), portion.Fat);
        }
        WithoutFigure = without.ToValueList();
    }

    /// <summary>The fats.</summary>
    public ValueList<FatPortion> Fats { get; }

    /// <summary>From here every fat with a melting range is liquid: the highest upper end. Null when none has one.</summary>
    public Temperature? ClearFrom { get; }

    /// <summary>The fat that decides it.</summary>
    public Fat? DecidedBy { get; }

    /// <summary>Fats without a melting range on file: look at them.</summary>
    public ValueList<Fat> WithoutFigure { get; }

    /// <summary>
    /// Heat to warm the fats, an estimate: 2.01 J/(g K), and for melting 105 J/g of coconut oil within 11, from nothing to 228 J/g for other fats
    /// that are not liquid to begin with. Sources: geankoplis, kahwaji-white-2019, charbonnet-singleton-1947.
    /// </summary>
    /// <param name="from">How warm they are.</param>
    /// <param name="to">How warm they shall be; not below <paramref name="from"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside -50 to 200 degrees Celsius, the second below the first, or not a number.</exception>
    public Figure<Energy> HeatFor(Temperature from, Temperature to)
    {
        double start = Stored.Celsius(from, -50, Warmest, "The temperature of the fats"), end = Stored.Celsius(to, start, Warmest, "The temperature to warm to");
        double low = 0, high = 0;
        foreach (FatPortion portion in Fats)
        {
            double warming = portion.Grams * HeatCapacities.Fat * (end - start);
            low += warming;
            high += warming;
            if (portion.Fat.Figures.Melting is { } melting && start >= HighEnd(melting))
                continue;
            bool isCoconut = portion.Fat.Id == "coconut-oil";
            bool melts = portion.Fat.Figures.Melting is { } range && start < LowEnd(range) && end >= HighEnd(range);
            low += isCoconut && melts ? portion.Grams * (HeatCapacities.MeltingOfCoconutOil - HeatCapacities.MeltingOfCoconutOilError) : 0;
            high += portion.Grams * (isCoconut ? HeatCapacities.MeltingOfCoconutOil + HeatCapacities.MeltingOfCoconutOilError : HeatCapacities.MeltingOfTristearin);
        }
        return new(Energy.FromJoules((low + high) / 2), Evidence.Memory, ["charbonnet-singleton-1947", "geankoplis", "kahwaji-white-2019"]) { Low = Energy.FromJoules(low), High = Energy.FromJoules(high) };
    }

    internal static double LowEnd(Figure<Temperature> melting) => (melting.Low ?? melting.Value).DegreesCelsius;

    internal static double HighEnd(Figure<Temperature> melting) => (melting.High ?? melting.Value).DegreesCelsius;
}
