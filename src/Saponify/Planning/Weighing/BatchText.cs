using System.Text;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>A batch on the bench for people. Plain characters, invariant.</summary>
internal static class BatchText
{
    private const int AmountWidth = 12;

    internal static string Of(WeighedBatch batch, Scale? scale, Scale? alkaliScale)
    {
        Rounding others = scale is null ? PlanSheet.ForPrint(batch.Planned.Plan(), PlanSheet.UsualUnit(batch.Formula)) : Rounding.Of(scale);
        Rounding alkali = alkaliScale is null ? others : Rounding.Of(alkaliScale);
        StringBuilder text = new();
        text.Append(batch.Formula.Name).Append(", on the bench: ").Append(batch.State switch
        {
            BatchState.Weighing => "weighing",
            BatchState.Mixed => "the alkali is in, only additions are possible",
            _ => "poured",
        }).Append("\n\n  ").Append("plan".PadLeft(AmountWidth)).Append("  ").Append("weighed".PadLeft(AmountWidth)).Append("  ").Append("off".PadLeft(8)).Append('\n');
        foreach (WeighedLine line in batch.Lines)
        {
            text.Append("  ").Append(Planned(line, others, alkali).PadLeft(AmountWidth)).Append("  ")
                .Append((line.Weighed is { } mass ? AmountWriter.Write(mass) : "not yet").PadLeft(AmountWidth)).Append("  ")
                .Append((line.Off is { } off ? Signed(off.Percent) + " %" : "").PadLeft(8)).Append("  ").Append(line.What).Append("  ").Append(line.Path).Append('\n');
        }
        text.Append('\n');
        foreach (string line in Standing(batch, others, alkali))
            text.Append("  ").Append(line).Append('\n');
        text.Append("\nWhat can be done\n");
        int number = 0;
        foreach (BatchChoice choice in scale is null ? batch.Choices : batch.ChoicesOn(scale, alkaliScale))
            text.Append("  ").Append((++number).ToString(System.Globalization.CultureInfo.InvariantCulture)).Append(". ").Append(choice).Append('\n');
        return number > 0 ? text.ToString() : text.Append("  weigh on\n").ToString();
    }

    /// <summary>Where the batch stands, in a few lines: the superfat, and what to weigh now.</summary>
    internal static IEnumerable<string> Standing(WeighedBatch batch, Rounding others, Rounding alkali)
    {
        LyeBalance now = batch.Balance;
        bool missing = batch.Missing.Count > 0;
        yield return now.OfAllFat is { } superfat
            ? $"Superfat of all fat {PlanText.Cut(superfat)}{(missing ? " so far, what is not weighed yet standing in at plan" : "")}{(superfat < 0 ? ": LYE-HEAVY" : "")}"
            : "No fat takes up lye: LYE-HEAVY";
        if (missing && batch.SuperfatIfTheRestNeverComes is { } without && without.DecimalFractions < now.OfAllFat - 5e-5)
            yield return $"If it never comes, apart from the alkali: {PlanText.Cut(without.DecimalFractions)}{(without.DecimalFractions < 0 ? ", LYE-HEAVY" : "")}";
        foreach (AlkaliPortion portion in batch.AlkaliToWeigh)
            yield return $"Weigh now {AmountWriter.Write(alkali.Down(portion.Grams))} {portion.Alkali} (cut, never rounded up)";
        if (batch.LiquidToWeigh is { } liquid)
            yield return $"Weigh now {others.Nearest(liquid.Grams)} {liquid.Liquid.Name} for the lye";
    }

    /// <summary>What the plan asks for: alkali cut, the rest to the nearest step.</summary>
    internal static string Planned(WeighedLine line, Rounding others, Rounding alkali) => IsAlkali(line) ? AmountWriter.Write(alkali.Down(line.PlannedGrams)) : others.Nearest(line.PlannedGrams);

    internal static bool IsAlkali(WeighedLine line) => line.Path.ToString().StartsWith("alkali.", StringComparison.Ordinal);

    internal static string Signed(double percent) => (percent >= 0.05 ? "+" : "") + Text.Fixed(Math.Abs(percent) < 0.05 ? 0 : percent, 1);
}
