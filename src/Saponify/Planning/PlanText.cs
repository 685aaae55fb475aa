using System.Text;
using Saponify.Internals;
using UnitsNet.Units;

namespace Saponify;

/// <summary>A plan as text for people, by vessel. Plain characters, invariant, no colours.</summary>
internal static class PlanText
{
    private const int AmountWidth = 14;

    internal static string Of(BatchPlan plan, MassUnit? unit) => Of(new PlanSheet(plan, unit), null);

    /// <param name="sheet">The plan in whole steps.</param>
    /// <param name="scale">What to say about the scale, after the superfats; null when there is none.</param>
    internal static string Of(PlanSheet sheet, string? scale)
    {
        BatchPlan plan = sheet.Plan;
        StringBuilder text = new();
        text.Append(plan.Formula.Name).Append('\n');
        if (plan.Obstacles.Count > 0)
        {
            Title(text, "This batch can't be weighed");
            foreach (Obstacle obstacle in plan.Obstacles)
                text.Append("  ").Append(obstacle.Path).Append(": ").Append(obstacle.Reason).Append('\n');
            return text.ToString();
        }
        FatPot(text, sheet);
        LyeJug(text, sheet);
        HeldBack(text, sheet);
        AtTrace(text, sheet);
        text.Append('\n');
        Row(text, sheet.Nearest(plan.BatchMass), "batch, everything together");
        Superfats(text, sheet);
        text.Append(scale);
        Uptake(text, sheet);
        Possible(text, sheet);
        Liquid(text, sheet);
        Title(text, "Handling lye");
        foreach (string caution in LyeCautions.ForHandlingLye)
            text.Append("  - ").Append(caution).Append('\n');
        return text.ToString();
    }

    private static void FatPot(StringBuilder text, PlanSheet sheet)
    {
        Title(text, "Fat pot");
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
            Row(text, sheet.Nearest(total), "fats in the pot");
        if (lines == 0)
            text.Append("  nothing\n");
    }

    private static void LyeJug(StringBuilder text, PlanSheet sheet)
    {
        Title(text, "Lye jug");
        BatchPlan plan = sheet.Plan;
        if (plan.LyeLiquid is not null)
        {
            LiquidPortion liquid = sheet.Printed.Liquids.Weighed!;
            Row(text, sheet.Nearest(liquid.Grams), Describe(liquid));
        }
        AdditiveRows(text, sheet, Stage.LyeLiquid);
        foreach (AlkaliPortion alkali in ((WeighedAlkali)sheet.Printed.Alkali).Alkalis)
            Row(text, plan.Formula.Alkali is WeighedAlkali ? AmountWriter.Write(alkali.Mass) : sheet.Alkali(alkali.Grams), $"{alkali.Alkali}{(plan.Formula.Alkali is WeighedAlkali ? ", as weighed" : " (cut, never rounded up)")}");
        LyeBalance printed = sheet.Printed.Balance();
        Strength(text, printed.LyeConcentrationWhileDissolving, "lye while dissolving");
        Strength(text, printed.LyeConcentrationOfAllWater, "lye over all water");
    }

    private static void Strength(StringBuilder text, UnitsNet.Ratio? strength, string what)
    {
        if (strength is { } value)
            Row(text, Text.Fixed(value.DecimalFractions * 100, 1) + " %", what);
    }

    private static void HeldBack(StringBuilder text, PlanSheet sheet)
    {
        if (sheet.Printed.Liquids.HeldBack.Count == 0)
            return;
        Title(text, "Held back, joins when the lye has cooled");
        foreach (LiquidPortion liquid in sheet.Printed.Liquids.HeldBack)
            Row(text, sheet.Nearest(liquid.Grams), Describe(liquid));
    }

    private static void AtTrace(StringBuilder text, PlanSheet sheet)
    {
        StringBuilder rows = new();
        foreach (FatPortion fat in sheet.Printed.Fats)
        {
            if (fat.IsLate)
                FatRow(rows, sheet, fat);
        }
        AdditiveRows(rows, sheet, Stage.Trace);
        if (rows.Length > 0)
        {
            Title(text, "At trace");
            text.Append(rows);
        }
        rows.Clear();
        AdditiveRows(rows, sheet, Stage.Top);
        if (rows.Length > 0)
        {
            Title(text, "On top, in the mould");
            text.Append(rows);
        }
    }

    private static void Superfats(StringBuilder text, PlanSheet sheet)
    {
        Title(text, "Superfat, as a share of the lye demand, for the masses printed above");
        LyeBalance printed = sheet.Printed.Balance();
        SuperfatTarget? target = sheet.Plan.Formula.Alkali as SuperfatTarget;
        Superfat(text, printed.OfAllFat, "of all fat", target is { Basis: SuperfatBasis.AllFat } ? target : null);
        Superfat(text, printed.OfListedFats, "of the listed fats, as if liquids and additives had none", target is { Basis: SuperfatBasis.ListedFats } ? target : null);
        Superfat(text, printed.BeforeLateFats, "in the pot before the late fats", null);
        if (printed.OfAllFat is < 0)
            text.Append("  LYE-HEAVY: more alkali than all fat can take up. Do not make this.\n");
        else if (sheet.Plan.IsSafeOnlyByUnlistedFat)
            text.Append("  Beware: the listed fats alone can't take up this alkali; only the fat of a liquid or an additive makes up for it.\n");
    }

    private static void Superfat(StringBuilder text, double? superfat, string what, SuperfatTarget? target)
    {
        if (superfat is { } value)
            Row(text, Cut(value), target is null ? what : $"{what} (planned for {AmountWriter.Percent(target.SuperfatFraction)})");
    }

    private static void Uptake(StringBuilder text, PlanSheet sheet)
    {
        BatchPlan plan = sheet.Plan;
        Title(text, "Who takes up lye, in the alkali as weighed");
        double total = 0;
        foreach (LyeUptake line in plan.LyeUptake)
        {
            Row(text, sheet.Nearest(line.AsAlkali), line.What + (line.Taker == LyeTaker.LateFat ? " (late)" : "") + Why(plan.Formula, line));
            total += line.AsAlkali.Grams;
        }
        Row(text, sheet.Nearest(total), "alkali in all, before cutting");
    }

    private static string Why(Formula formula, LyeUptake line)
    {
        if (line.Taker is not (LyeTaker.Fat or LyeTaker.LateFat))
            return "";
        Figure<SaponificationValue> figure = formula.Fats.First(f => line.Path.Equals(FormulaPath.Fats.Item(formula.Fats.AsSpan().IndexOf(f), f.Line))).Fat.Saponification!;
        string range = figure.Low == figure.High ? "" : $", range {Text.Number(figure.Low?.MilligramsKohPerGram ?? 0)} to {Text.Number(figure.High?.MilligramsKohPerGram ?? 0)}";
        return $": {figure.Value}{range}, {(figure.IsOwn ? figure.Note ?? "own figure" : EvidenceText.Of(figure.Evidence))}";
    }

    private static void Possible(StringBuilder text, PlanSheet sheet)
    {
        if (sheet.Plan.PossibleUptake.Count == 0)
            return;
        Title(text, "Not counted; if it takes up lye after all, the superfat is higher");
        foreach (PossibleUptake line in sheet.Plan.PossibleUptake)
            Row(text, line.AtMost is { } most ? sheet.Nearest(most) : "?", $"{line.What}: {line.Why}");
    }

    private static void Liquid(StringBuilder text, PlanSheet sheet)
    {
        Title(text, $"Lye liquid you may choose instead ({sheet.Plan.Formula.Liquids.LyeLiquid.Liquid.Name}, all else equal)");
        LiquidWindow window = sheet.Plan.LiquidWindow;
        Row(text, window.LeastToDissolve is { } least ? sheet.Nearest(least) : "none", "the least that dissolves the alkali at 20 °C");
        Row(text, window.At40Percent is { } strong ? sheet.Nearest(strong) : "none", "for a lye of 40 % over all water");
        Row(text, window.At25Percent is { } weak ? sheet.Nearest(weak) : "none", "for a lye of 25 % over all water");
    }

    private static int AdditiveRows(StringBuilder text, PlanSheet sheet, Stage stage)
    {
        int rows = 0;
        foreach (AdditivePortion additive in sheet.Printed.Additives)
        {
            if (additive.Stage != stage)
                continue;
            Row(text, additive.IsAmountUnknown ? "?" : sheet.Nearest(additive.GramsFor(0)), additive.Additive.Name);
            rows++;
        }
        return rows;
    }

    private static void FatRow(StringBuilder text, PlanSheet sheet, FatPortion fat) =>
        Row(text, sheet.Nearest(fat.Grams), fat.Fat.Name + (fat.Fat.Lot is { } lot ? $", lot {lot.Name}" : ""));

    private static string Describe(LiquidPortion liquid)
    {
        string form = liquid.IsFrozen ? ", frozen" : "";
        return liquid.Temperature is { } temperature ? $"{liquid.Liquid.Name}{form}, {AmountWriter.Write(temperature)}" : liquid.Liquid.Name + form;
    }

    /// <summary>A superfat as percent, cut to two decimals so that it is never shown too high.</summary>
    internal static string Cut(double superfat) => Text.Fixed(Math.Floor((superfat * 10_000) + 1e-5) / 100, 2) + " %";

    private static void Title(StringBuilder text, string title) => text.Append('\n').Append(title).Append('\n');

    private static void Row(StringBuilder text, string amount, string what) => text.Append("  ").Append(amount.PadLeft(AmountWidth)).Append("  ").Append(what).Append('\n');
}
