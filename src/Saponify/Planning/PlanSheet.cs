using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>
/// A plan as it is printed or weighed: in whole steps, alkali cut and everything that takes up lye rounded up, with the superfat that comes
/// out of those figures.
/// </summary>
internal sealed class PlanSheet
{
    /// <summary>Printed alkali is cut by at most one part in so many.</summary>
    private const double FinestPart = 200;

    private readonly Rounding _rounding;
    private readonly Rounding _alkali;

    /// <summary>As printed, in the unit given or the formula's own, with as many decimals as the alkali needs.</summary>
    internal PlanSheet(BatchPlan plan, MassUnit? unit)
        : this(plan, ForPrint(plan, unit ?? UsualUnit(plan.Formula)))
    {
    }

    /// <summary>As weighed on a scale, the alkali perhaps on another one.</summary>
    internal PlanSheet(BatchPlan plan, Scale scale, Scale? alkaliScale)
        : this(plan, Rounding.Of(scale), alkaliScale is null ? null : Rounding.Of(alkaliScale))
    {
    }

    private PlanSheet(BatchPlan plan, Rounding rounding, Rounding? alkali = null)
    {
        Plan = plan;
        _rounding = rounding;
        _alkali = alkali ?? rounding;
        Printed = Round();
    }

    internal BatchPlan Plan { get; }

    /// <summary>The formula with every mass as printed and the alkali as weighed; its superfat is the one shown.</summary>
    internal Formula Printed { get; }

    /// <summary>Any mass, to the nearest step.</summary>
    internal string Nearest(double grams) => _rounding.Nearest(grams);

    internal string Nearest(Mass mass) => _rounding.Nearest(mass.Grams);

    /// <summary>Alkali that was cut to whole steps.</summary>
    internal string Alkali(double grams) => _alkali.Nearest(grams);

    internal static Rounding ForPrint(BatchPlan plan, MassUnit unit)
    {
        double smallest = double.PositiveInfinity;
        foreach (AlkaliPortion alkali in plan.Alkalis)
        {
            if (alkali.Grams > 0)
                smallest = Math.Min(smallest, Stored.GramsIn(alkali.Grams, unit));
        }
        return Rounding.Decimal(unit, double.IsFinite(smallest) ? Math.Clamp((int)Math.Ceiling(Math.Log10(FinestPart / smallest)), 0, 6) : 1);
    }

    private Formula Round()
    {
        Formula formula = Plan.Formula;
        if (!Plan.Balance.CanBeWeighed)
            return formula;
        LiquidPortion lye = Plan.LyeLiquid ?? new LiquidPortion(formula.Liquids.LyeLiquid.Liquid, Mass.Zero);
        return formula with
        {
            Fats = [.. formula.Fats.Select(f => f with { Mass = _rounding.Up(f.Grams) })],
            Alkali = formula.Alkali is WeighedAlkali ? formula.Alkali : AlkaliPlan.Weighed([.. Plan.Alkalis.Select(a => a with { Mass = _alkali.Down(a.Grams) })]),
            Liquids = LiquidPlan.WeighedLyeLiquid(lye with { Mass = _rounding.Up(lye.Grams) }).HoldingBack([.. formula.Liquids.HeldBack.Select(h => h with { Mass = _rounding.Up(h.Grams) })]),
            Additives = [.. Plan.Additives.Select(a => a.IsAmountUnknown ? a : a with { Mass = _rounding.Up(a.GramsFor(formula.ListedGrams)) })],
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
