using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// What goes into the lye jug and how warm: alkali, the liquid it is dissolved in, ice. Ice is a frozen portion:
/// <c>Liquid.Water.Weighing(mass).FrozenAt(temperature)</c>; ice above 0 degrees Celsius can't be made. Every liquid states its temperature.
/// Immutable; equality by content.
/// </summary>
public sealed record LyeJug
{
    /// <summary>The alkalis as weighed, solid or bought dissolved. Their pure part is taken at the top of the stated purity: the most heat.</summary>
    /// <exception cref="ArgumentException">The list holds a null.</exception>
    public required ValueList<AlkaliPortion> Alkalis { get; init => field = LineId.MakeUnique(value, "The alkalis"); }

    /// <summary>How warm the alkalis and the additives are, from -30 to 60 degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public required Temperature AlkaliTemperature { get; init => field = Temperature.FromDegreesCelsius(Stored.Celsius(value, -30, 60, "The temperature of the alkali")); }

    /// <summary>The liquids and the ice, each with its temperature.</summary>
    /// <exception cref="ArgumentException">The list holds a null or a portion without a temperature.</exception>
    public required ValueList<LiquidPortion> Liquids { get; init => field = WithTemperatures(LineId.MakeUnique(value, "The liquids"), nameof(value)); }

    /// <summary>What else dissolves in the jug before the alkali, by mass: acid, salt, sugar. An amount that is not known counts 0.</summary>
    /// <exception cref="ArgumentException">The list holds a null.</exception>
    public ValueList<AdditivePortion> Additives { get; init => field = LineId.MakeUnique(value, "The additives"); }

    /// <summary>The lye that comes out and the heat of it.</summary>
    public LyeSolution Dissolve() => new(this);

    /// <summary>The same jug with a share of each liquid frozen.</summary>
    /// <param name="share">Share of the mass, from 0 to 100 %.</param>
    /// <param name="ice">How cold the ice is, from -80 to 0 degrees Celsius.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public LyeJug WithIce(Ratio share, Temperature ice)
    {
        double part = Stored.Fraction(share, 0, 1, "The share of ice");
        Stored.Celsius(ice, ProcessSetup.IceLimits, "The temperature of ice");
        List<LiquidPortion> liquids = [];
        foreach (LiquidPortion portion in Liquids)
        {
            if (portion.IsFrozen || part == 0)
            {
                liquids.Add(portion);
                continue;
            }
            if (part < 1)
                liquids.Add(portion.Times(1 - part));
            liquids.Add(portion.Times(part).FrozenAt(ice));
        }
        return this with { Liquids = liquids.ToValueList() };
    }

    /// <summary>The same jug with every liquid that is not frozen at this temperature.</summary>
    /// <param name="temperature">From -10 to 100 degrees Celsius.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public LyeJug WithLiquidsAt(Temperature temperature) => this with { Liquids = [.. Liquids.Select(l => l.IsFrozen ? l : l.At(temperature))] };

    /// <summary>The same jug with so many times the liquids and the ice.</summary>
    /// <param name="factor">From 0 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public LyeJug WithLiquidsTimes(double factor)
    {
        Guard.InRange(factor, 0, 1000, "The factor of the liquids", "times");
        return this with { Liquids = [.. Liquids.Select(l => l.Times(factor))] };
    }

    /// <summary>The warmest liquid with which the peak stays at or below a temperature; null when none does that a liquid can have, or when there are no figures.</summary>
    /// <param name="peak">The peak that shall not be passed.</param>
    public Temperature? LiquidTemperatureFor(Temperature peak)
    {
        // the peak rises in a straight line with the temperature of the liquids
        double wanted = peak.DegreesCelsius;
        (double? cold, double? warm) = (WithLiquidsAt(Temperature.FromDegreesCelsius(0)).Dissolve().PeakCelsius, WithLiquidsAt(Temperature.FromDegreesCelsius(50)).Dissolve().PeakCelsius);
        if (cold is not { } low || warm is not { } high || !(high > low))
            return null;
        double celsius = Math.Min(100, (wanted - low) / (high - low) * 50);
        return celsius >= 0 ? Temperature.FromDegreesCelsius(celsius) : null;
    }

    /// <summary>The least share of the liquids to freeze so that the peak stays at or below a temperature; null when all of it as ice is not enough, or without figures.</summary>
    /// <param name="peak">The peak that shall not be passed.</param>
    /// <param name="ice">How cold the ice is, from -80 to 0 degrees Celsius.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Ratio? IceFor(Temperature peak, Temperature ice) =>
        Least(0, 1, share => WithIce(Stored.ToRatio(share), ice).Dissolve().PeakCelsius <= peak.DegreesCelsius) is { } least ? Stored.ToRatio(least) : null;

    /// <summary>
    /// By how much to multiply the liquids, at their temperatures, so that the peak stays at or below a temperature: 1 or more. Null when even ten
    /// times as much does not, or when there are no figures.
    /// </summary>
    /// <param name="peak">The peak that shall not be passed.</param>
    public double? MoreLiquidFor(Temperature peak) => Least(1, 10, factor => WithLiquidsTimes(factor).Dissolve().PeakCelsius <= peak.DegreesCelsius);

    internal static ValueList<LiquidPortion> WithTemperatures(ValueList<LiquidPortion> liquids, string argument)
    {
        foreach (LiquidPortion portion in liquids)
        {
            if (portion.Temperature is null)
                throw new ArgumentException($"The temperature of {portion.Line} is not stated; say At(...) or FrozenAt(...).", argument);
        }
        return liquids;
    }

    /// <summary>The least number that satisfies, where all above one do; to a thousandth of the range.</summary>
    internal static double? Least(double low, double high, Func<double, bool> satisfies)
    {
        if (satisfies(low))
            return low;
        if (!satisfies(high))
            return null;
        for (int i = 0; i < 40; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = satisfies(middle) ? (low, middle) : (middle, high);
        }
        return high;
    }
}
