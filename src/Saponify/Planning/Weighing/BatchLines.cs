using UnitsNet;

namespace Saponify;

/// <summary>The lines of a worked-out formula, in which every mass stands: weighed alkali, weighed lye liquid, additives by mass.</summary>
internal static class BatchLines
{
    internal const string LyeLiquid = "liquids.lyeLiquid";

    private static readonly FormulaPath s_alkalis = FormulaPath.Alkali.Member("alkalis");

    internal static IEnumerable<(FormulaPath Path, string What, double Grams)> Of(Formula formula)
    {
        for (int i = 0; i < formula.Fats.Count; i++)
            yield return (FormulaPath.Fats.Item(i, formula.Fats[i].Line), formula.Fats[i].Fat.Name, formula.Fats[i].Grams);
        if (formula.Liquids.Weighed is { Grams: > 0 } lye)
            yield return (FormulaPath.LyeLiquid, lye.Liquid.Name, lye.Grams);
        ValueList<AlkaliPortion> alkalis = ((WeighedAlkali)formula.Alkali).Alkalis;
        for (int i = 0; i < alkalis.Count; i++)
            yield return (s_alkalis.Item(i, alkalis[i].Line), alkalis[i].Alkali.ToString(), alkalis[i].Grams);
        for (int i = 0; i < formula.Liquids.HeldBack.Count; i++)
            yield return (FormulaPath.HeldBack.Item(i, formula.Liquids.HeldBack[i].Line), formula.Liquids.HeldBack[i].Liquid.Name, formula.Liquids.HeldBack[i].Grams);
        for (int i = 0; i < formula.Additives.Count; i++)
            yield return (FormulaPath.Additives.Item(i, formula.Additives[i].Line), formula.Additives[i].Additive.Name, formula.Additives[i].GramsFor(formula.ListedGrams));
    }

    /// <summary>The formula with other masses; null leaves a line as it is.</summary>
    internal static Formula With(Formula formula, Func<string, Mass?> weighed)
    {
        FatPortion[] fats = [.. formula.Fats.Select((f, i) => weighed(FormulaPath.Fats.Item(i, f.Line).ToString()) is { } mass ? f with { Mass = mass } : f)];
        AlkaliPortion[] alkalis = [.. ((WeighedAlkali)formula.Alkali).Alkalis.Select((a, i) => weighed(s_alkalis.Item(i, a.Line).ToString()) is { } mass ? a with { Mass = mass } : a)];
        LiquidPortion lye = formula.Liquids.Weighed!;
        if (weighed(LyeLiquid) is { } poured)
            lye = lye with { Mass = poured };
        LiquidPortion[] held = [.. formula.Liquids.HeldBack.Select((h, i) => weighed(FormulaPath.HeldBack.Item(i, h.Line).ToString()) is { } mass ? h with { Mass = mass } : h)];
        AdditivePortion[] additives = [.. formula.Additives.Select((a, i) => weighed(FormulaPath.Additives.Item(i, a.Line).ToString()) is { } mass ? a with { Mass = mass } : a)];
        return formula with
        {
            Fats = new(fats),
            Alkali = AlkaliPlan.Weighed(alkalis),
            Liquids = LiquidPlan.WeighedLyeLiquid(lye).HoldingBack(held),
            Additives = new(additives),
        };
    }

    internal static ValueList<FatPortion> Replace(ValueList<FatPortion> fats, string line, Fat actual)
    {
        ArgumentNullException.ThrowIfNull(actual);
        int index = IndexOf(fats.Count, i => FormulaPath.Fats.Item(i, fats[i].Line), line);
        FatPortion old = fats[index];
        FatPortion other = actual.Weighing(old.Mass) with { Line = old.Line };
        return [.. fats.Take(index), old.IsLate ? other.AtTrace() : other, .. fats.Skip(index + 1)];
    }

    internal static WeighedAlkali Replace(WeighedAlkali plan, string line, Alkali actual)
    {
        ArgumentNullException.ThrowIfNull(actual);
        int index = IndexOf(plan.Alkalis.Count, i => s_alkalis.Item(i, plan.Alkalis[i].Line), line);
        AlkaliPortion other = actual.Weighing(plan.Alkalis[index].Mass) with { Line = plan.Alkalis[index].Line };
        return AlkaliPlan.Weighed([.. plan.Alkalis.Take(index), other, .. plan.Alkalis.Skip(index + 1)]);
    }

    private static int IndexOf(int count, Func<int, FormulaPath> path, string line)
    {
        for (int i = 0; i < count; i++)
        {
            if (path(i).ToString() == line)
                return i;
        }
        throw NoLine(line, Enumerable.Range(0, count).Select(i => path(i).ToString()));
    }

    internal static ArgumentException NoLine(string line, IEnumerable<string> lines) => new($"The batch has no line \"{line}\"; there are {string.Join(", ", lines)}.", nameof(line));
}
