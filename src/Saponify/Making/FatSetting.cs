using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Whether a fat of a batch sets at a temperature. Immutable; equality by content.</summary>
public sealed record FatSetting
{
    private FatSetting(FatPortion portion, Temperature temperature)
    {
        Portion = portion;
        if (portion.Fat.Figures.Melting is not { } melting)
        {
            Verdict = FatSettingVerdict.NoFigure;
            return;
        }
        double celsius = temperature.DegreesCelsius, low = FatHeating.LowEnd(melting), high = FatHeating.HighEnd(melting);
        Verdict = celsius >= high ? FatSettingVerdict.StaysLiquid : celsius < low ? FatSettingVerdict.Sets : FatSettingVerdict.MaySet;
    }

    /// <summary>The line of the formula.</summary>
    public FatPortion Portion { get; }

    /// <summary>Its melting range; null when none is on file.</summary>
    public Figure<Temperature>? Melting => Portion.Fat.Figures.Melting;

    /// <summary>What it does.</summary>
    public FatSettingVerdict Verdict { get; }

    /// <summary>Each fat at one temperature, in the order given.</summary>
    /// <param name="temperature">How warm it is.</param>
    /// <param name="fats">The fats.</param>
    /// <exception cref="ArgumentException">A null among them.</exception>
    public static ValueList<FatSetting> At(Temperature temperature, ValueList<FatPortion> fats) => [.. LineId.NoNull(fats, "The fats").Select(f => new FatSetting(f, temperature))];
}
