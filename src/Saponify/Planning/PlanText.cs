using Saponify.Internals;
using UnitsNet.Units;

namespace Saponify;

/// <summary>A plan for people, by vessel, as text or HTML; invariant.</summary>
internal static class PlanText
{
    internal static string Of(BatchPlan plan, MassUnit? unit, ISheet text) => Of(new PlanSheet(plan, unit), [], text);

    /// <param name="sheet">The plan in whole steps.</param>
    /// <param name="scale">What to say about the scale, after the superfats.</param>
    /// <param name="text">What it is written onto.</param>
    internal static string Of(PlanSheet sheet, IEnumerable<string> scale, ISheet text)
    {
        BatchPlan plan = sheet.Plan;
        text.Name(plan.Formula.Name);
        if (plan.Obstacles.Count > 0)
        {
            text.Title("This batch can't be weighed");
            foreach (Obstacle obstacle in plan.Obstacles)
                text.Line(obstacle.ToString());
            return text.ToString()!;
        }
        FatPot(text, sheet);
        LyeJug(text, sheet);
        HeldBack(text, sheet);
        AtTrace(text, sheet);
        text.Gap();
        text.Row(sheet.Nearest(plan.BatchMass), "batch, everything together");
        Superfats(text, sheet);
        foreach (string line in scale)
            text.Line(line);
        Uptake(text, sheet);
        Possible(text, sheet);
        Liquid(text, sheet);
        text.Title("Handling lye");
        foreach (string caution in LyeCautions.ForHandlingLye)
            text.Item(caution);
        return text.ToString()!;
    }

    private static void FatPot(ISheet text, PlanSheet sheet)
    {
        text.Title("Fat pot");
        double total = 0;
        int lines = 0;
        foreach (FatPortion fat in sheet.Printed.Fats)
        {
            if (fat.IsLate)
                continue;
            FatRow(text, sheet, fat);
            total += fat.Grams;
            lines++;
        }
        lines += AdditiveRows(text, sheet, Stage.Fats);
        if (lines > 1)
            text.Row(sheet.Nearest(total), "fats in the pot");
        if (lines == 0)
            text.Line("nothing");
    }

    private static void LyeJug(ISheet text, PlanSheet sheet)
    {
        text.Title("Lye jug");
        BatchPlan plan = sheet.Plan;
        if (plan.LyeLiquid is not null)
        {
            LiquidPortion liquid = sheet.Printed.Liquids.Weighed!;
            text.Row(sheet.Nearest(liquid.Grams), Describe(liquid));
        }
        AdditiveRows(text, sheet, Stage.LyeLiquid);
        foreach (AlkaliPortion alkali in ((WeighedAlkali)sheet.Printed.Alkali).Alkalis)
            text.Row(plan.Formula.Alkali is WeighedAlkali ? AmountWriter.Write(alkali.Mass) : sheet.Alkali(alkali.Grams), $"{alkali.Alkali}{(plan.Formula.Alkali is WeighedAlkali ? ", as weighed" : " (cut, never rounded up)")}");
        LyeBalance printed = sheet.Printed.Balance();
        Strength(text, printed.LyeConcentrationWhileDissolving, "lye while dissolving");
        Strength(text, printed.LyeConcentrationOfAllWater, "lye over all water");
    }

    private static void Strength(ISheet text, UnitsNet.Ratio? strength, string what)
    {
        if (strength is { } value)
            text.Row(Text.Fixed(value.DecimalFractions * 100, 1) + " %", what);
    }

    private static void HeldBack(ISheet text, PlanSheet sheet)
    {
        if (sheet.Printed.Liquids.HeldBack.Count == 0)
            return;
        text.Title("Held back, joins when the lye has cooled");
        foreach (LiquidPortion liquid in sheet.Printed.Liquids.HeldBack)
            text.Row(sheet.Nearest(liquid.Grams), Describe(liquid));
    }

    private static void AtTrace(ISheet text, PlanSheet sheet)
    {
        if (sheet.Printed.Fats.Any(f => f.IsLate) || Has(sheet, Stage.Trace))
        {
            text.Title("At trace");
            foreach (FatPortion fat in sheet.Printed.Fats)
            {
                if (fat.IsLate)
                    FatRow(text, sheet, fat);
            }
            AdditiveRows(text, sheet, Stage.Trace);
        }
        if (Has(sheet, Stage.Top))
        {
            text.Title("On top, in the mould");
            AdditiveRows(text, sheet, Stage.Top);
        }
    }

    private static bool Has(PlanSheet sheet, Stage stage) => sheet.Printed.Additives.Any(a => a.Stage == stage);

    private static void Superfats(ISheet text, PlanSheet sheet)
    {
        text.Title("Superfat, as a share of the lye demand, for the masses printed above");
        LyeBalance printed = sheet.Printed.Balance();
        SuperfatTarget? target = sheet.Plan.Formula.Alkali as SuperfatTarget;
        Superfat(text, printed.OfAllFat, "of all fat", target is { Basis: SuperfatBasis.AllFat } ? target : null);
        Superfat(text, printed.OfListedFats, "of the listed fats, as if liquids and additives had none", target is { Basis: SuperfatBasis.ListedFats } ? target : null);
        Superfat(text, printed.BeforeLateFats, "in the pot before the late fats", null);
        if (printed.OfAllFat is < 0)
            text.Beware("LYE-HEAVY: more alkali than all fat can take up. Do not make this.");
        else if (sheet.Plan.IsSafeOnlyByUnlistedFat)
            text.Beware("Beware: the listed fats alone can't take up this alkali; only the fat of a liquid or an additive makes up for it.");
    }

    private static void Superfat(ISheet text, double? superfat, string what, SuperfatTarget? target)
    {
        if (superfat is { } value)
            text.Row(Cut(value), target is null ? what : $"{what} (planned for {AmountWriter.Percent(target.SuperfatFraction)})");
    }

    private static void Uptake(ISheet text, PlanSheet sheet)
    {
        BatchPlan plan = sheet.Plan;
        text.Title("Who takes up lye, in the alkali as weighed");
        double total = 0;
        foreach (LyeUptake line in plan.LyeUptake)
        {
            text.Row(sheet.Nearest(line.AsAlkali), line.What + (line.Taker == LyeTaker.LateFat ? " (late)" : "") + Why(plan.Formula, line));
            total += line.AsAlkali.Grams;
        }
        text.Row(sheet.Nearest(total), "alkali in all, before cutting");
    }

    private static string Why(Formula formula, LyeUptake line)
    {
        if (line.Taker is not (LyeTaker.Fat or LyeTaker.LateFat))
            return "";
        Figure<SaponificationValue> figure = formula.Fats.First(f => line.Path.Equals(FormulaPath.Fats.Item(formula.Fats.AsSpan().IndexOf(f), f.Line))).Fat.Saponification!;
        string range = figure.Low == figure.High ? "" : $", range {Text.Number(figure.Low?.MilligramsKohPerGram ?? 0)} to {Text.Number(figure.High?.MilligramsKohPerGram ?? 0)}";
        return $": {figure.Value}{range}, {(figure.IsOwn ? figure.Note : EvidenceText.Of(figure.Evidence))}";
    }

    private static void Possible(ISheet text, PlanSheet sheet)
    {
        if (sheet.Plan.PossibleUptake.Count == 0)
            return;
        text.Title("Not counted; if it takes up lye after all, the superfat is higher");
        foreach (PossibleUptake line in sheet.Plan.PossibleUptake)
            text.Row(line.AtMost is { } most ? sheet.Nearest(most) : "?", $"{line.What}: {line.Why}");
    }

    private static void Liquid(ISheet text, PlanSheet sheet)
    {
        text.Title($"Lye liquid you may choose instead ({sheet.Plan.Formula.Liquids.LyeLiquid.Liquid.Name}, all else equal)");
        LiquidWindow window = sheet.Plan.LiquidWindow;
        text.Row(window.LeastToDissolve is { } least ? sheet.Nearest(least) : "none", "the least that dissolves the alkali at 20 °C");
        text.Row(window.At40Percent is { } strong ? sheet.Nearest(strong) : "none", "for a lye of 40 % over all water");
        text.Row(window.At25Percent is { } weak ? sheet.Nearest(weak) : "none", "for a lye of 25 % over all water");
    }

    private static int AdditiveRows(ISheet text, PlanSheet sheet, Stage stage)
    {
        int rows = 0;
        foreach (AdditivePortion additive in sheet.Printed.Additives)
        {
            if (additive.Stage != stage)
                continue;
            text.Row(additive.IsAmountUnknown ? "?" : sheet.Nearest(additive.GramsFor(0)), additive.Additive.Name);
            rows++;
        }
        return rows;
    }

    private static void FatRow(ISheet text, PlanSheet sheet, FatPortion fat) =>
        text.Row(sheet.Nearest(fat.Grams), fat.Fat.Name + (fat.Fat.Lot is { } lot ? $", lot {lot.Name}" : ""));

    private static string Describe(LiquidPortion liquid)
    {
        string form = liquid.IsFrozen ? ", frozen" : "";
        return liquid.Temperature is { } temperature ? $"{liquid.Liquid.Name}{form}, {AmountWriter.Write(temperature)}" : liquid.Liquid.Name + form;
    }

    /// <summary>A superfat as percent, cut to two decimals so that it is never shown too high.</summary>
    internal static string Cut(double superfat) => Text.Fixed(Math.Floor((superfat * 10_000) + 1e-5) / 100, 2) + " %";
}
