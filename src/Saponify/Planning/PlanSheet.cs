using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>
/// A plan as it is printed: one unit, so many decimals, alkali cut and everything that takes up lye rounded up, and the superfat that
/// comes out of the printed figures.
/// </summary>
internal sealed class PlanSheet
{
    /// <summary>Printed alkali is cut by at most one part in so many.</summary>
    private const double FinestPart = 200;

    private readonly MassUnit _unit;
    private readonly double _step;

    internal PlanSheet(BatchPlan plan, MassUnit? unit)
    {
        Plan = plan;
        _unit = unit ?? UsualUnit(plan.Formula);
        double smallest = double.PositiveInfinity;
        foreach (AlkaliPortion alkali in plan.Alkalis)
        {
            if (alkali.Grams > 0)
                smallest = Math.Min(smallest, Stored.GramsIn(alkali.Grams, _unit));
        }
        Decimals = double.IsFinite(smallest) ? Math.Clamp((int)Math.Ceiling(Math.Log10(FinestPart / smallest)), 0, 6) : 1;
        _step = Math.Pow(10, -Decimals);
        Printed = Round(plan);
    }

    internal BatchPlan Plan { get; }

    internal int Decimals { get; }

    /// <summary>The formula with every mass as printed and the alkali as weighed; its superfat is the one shown.</summary>
    internal Formula Printed { get; }

    internal string UnitText => UnitTable.Name(UnitTable.Mass, _unit) ?? "g";

    /// <summary>A mass that takes up no lye, to the nearest printed step.</summary>
    internal string Nearest(double grams)
    {
        double steps = Math.Round(InSteps(grams), MidpointRounding.AwayFromZero);
        return steps == 0 && grams > 0 ? "< " + Show(1) : Show(steps);
    }

    internal string Nearest(Mass mass) => Nearest(mass.Grams);

    /// <summary>A mass as it stands in the printed formula.</summary>
    internal string Exact(double grams) => Show(Math.Round(InSteps(grams)));

    private string Show(double steps) => Text.Fixed(steps * _step, Decimals) + " " + UnitText;

    private double InSteps(double grams) => Stored.GramsIn(grams, _unit) / _step;

    // a hair of slack, so that 420 g stays 420.0 g when the conversion leaves a rounding error
    private Mass Up(double grams) => FromSteps(Math.Ceiling(InSteps(grams) - 1e-6));

    private Mass Down(double grams) => FromSteps(Math.Floor(InSteps(grams) + 1e-9));

    private Mass FromSteps(double steps) => Mass.From(Math.Max(0, steps) * _step, _unit);

    private Formula Round(BatchPlan plan)
    {
        Formula formula = plan.Formula;
        if (!plan.Balance.CanBeWeighed)
            return formula;
        LiquidPortion lye = plan.LyeLiquid ?? new LiquidPortion(formula.Liquids.LyeLiquid.Liquid, Mass.Zero);
        return formula with
        {
            Fats = [.. formula.Fats.Select(f => f with { Mass = Up(f.Grams) })],
            Alkali = formula.Alkali is WeighedAlkali ? formula.Alkali : AlkaliPlan.Weighed([.. plan.Alkalis.Select(a => a with { Mass = Down(a.Grams) })]),
            Liquids = LiquidPlan.WeighedLyeLiquid(lye with { Mass = Up(lye.Grams) }).HoldingBack([.. formula.Liquids.HeldBack.Select(h => h with { Mass = Up(h.Grams) })]),
            Additives = [.. plan.Additives.Select(a => a.IsAmountUnknown ? a : a with { Mass = Up(a.GramsFor(formula.ListedGrams)) })],
        };
    }

    /// <summary>The unit that most fats were written in.</summary>
    internal static MassUnit UsualUnit(Formula formula)
    {
        MassUnit best = MassUnit.Gram;
        int most = 0;
        foreach (IGrouping<MassUnit, FatPortion> group in formula.Fats.GroupBy(f => f.Mass.Unit))
        {
            if (group.Count() > most && UnitTable.Name(UnitTable.Mass, group.Key) is not null)
                (best, most) = (group.Key, group.Count());
        }
        return best;
    }
}
