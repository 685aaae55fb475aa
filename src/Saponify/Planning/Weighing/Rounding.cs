using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>Masses in whole steps of a unit: alkali is cut, what takes up lye goes up, the rest to the nearest step.</summary>
internal sealed class Rounding
{
    private readonly MassUnit _unit;
    private readonly double _step;
    private readonly int _decimals;

    private Rounding(MassUnit unit, double step, int decimals) => (_unit, _step, _decimals) = (unit, step, decimals);

    internal MassUnit Unit => _unit;

    internal string UnitText => UnitTable.Name(UnitTable.Mass, _unit) ?? "g";

    /// <summary>Steps of a power of ten: so many decimals of the unit.</summary>
    internal static Rounding Decimal(MassUnit unit, int decimals) => new(unit, Math.Pow(10, -decimals), decimals);

    /// <summary>The steps of a scale, in the unit its step is stated in.</summary>
    internal static Rounding Of(Scale scale)
    {
        double step = Stored.GramsIn(scale.StepGrams, scale.Unit);
        int decimals = 0;
        while (decimals < 6 && Math.Abs((step * Math.Pow(10, decimals)) - Math.Round(step * Math.Pow(10, decimals))) > 1e-6)
            decimals++;
        return new(scale.Unit, step, decimals);
    }

    // a hair of slack, so that 420 g stays 420 g where the conversion leaves a rounding error
    internal Mass Up(double grams) => FromSteps(Math.Ceiling(InSteps(grams) - 1e-6));

    internal Mass Down(double grams) => FromSteps(Math.Floor(InSteps(grams) + 1e-9));

    /// <summary>A mass to the nearest step, as text; a mass that is not nothing never reads as 0.</summary>
    internal string Nearest(double grams)
    {
        double steps = Math.Round(InSteps(grams), MidpointRounding.AwayFromZero);
        return steps == 0 && grams > 0 ? "< " + Show(1) : Show(steps);
    }

    private string Show(double steps) => Text.Fixed(steps * _step, _decimals) + " " + UnitText;

    private double InSteps(double grams) => Stored.GramsIn(grams, _unit) / _step;

    private Mass FromSteps(double steps) => Mass.From(Math.Round(Math.Max(0, steps) * _step, 9), _unit);
}
