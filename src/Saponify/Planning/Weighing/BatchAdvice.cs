using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>What to weigh now, and what can be done with a batch as it stands.</summary>
internal static class BatchAdvice
{
    /// <summary>A superfat this near to the one wanted needs no correction: a thousandth of a point.</summary>
    private const double Near = 1e-5;

    internal static ValueList<AlkaliPortion> AlkaliToWeigh(WeighedBatch batch)
    {
        ValueList<AlkaliPortion> alkalis = ((WeighedAlkali)batch.Planned.Alkali).Alkalis;
        string[] paths = [.. BatchLines.Of(batch.Planned).Select(l => l.Path.ToString()).Where(p => p.StartsWith("alkali.", StringComparison.Ordinal))];
        double weighed = 0, planned = 0;
        for (int i = 0; i < alkalis.Count; i++)
        {
            if (batch.WeightOf(paths[i]) is { } weight)
                weighed += weight.Grams * alkalis[i].Alkali.HydroxidePerGram;
            else
                planned += alkalis[i].Grams * alkalis[i].Alkali.HydroxidePerGram;
        }
        if (planned <= 0 || Wanted(batch, batch.Balance) is not { } wanted)
            return default;
        double factor = Math.Max(0, wanted - weighed) / planned;
        return [.. alkalis.Where((_, i) => batch.WeightOf(paths[i]) is null).Select(a => a with { Mass = Mass.FromGrams(a.Grams * factor) })];
    }

    /// <summary>The lye liquid by the formula's own water rule, all other masses as they are on the bench.</summary>
    internal static LiquidPortion? LiquidToWeigh(WeighedBatch batch)
    {
        if (batch.Planned.Liquids.Weighed is not { Grams: > 0 } lye)
            return null;
        LiquidPlan rule = batch.Formula.Liquids;
        if (rule.Weighed is not null || rule.LyeLiquid.Liquid != lye.Liquid)
            return lye;
        Formula bench = batch.AsWeighed;
        AlkaliPlan alkali = Target(batch) is { } target ? target : bench.Alkali;
        LyeBalance balance = (bench with { Alkali = alkali, Liquids = rule.HoldingBack([.. bench.Liquids.HeldBack]) }).Balance();
        return lye with { Mass = Mass.FromGrams(balance.LyeLiquidGrams) };
    }

    /// <summary>What can be done; on scales in their whole steps, without them exactly, and only printed rounded.</summary>
    internal static IEnumerable<BatchChoice> Choices(WeighedBatch batch, Rounding? others, Rounding? alkali)
    {
        LyeBalance now = batch.Balance;
        double? superfat = batch.Basis == SuperfatBasis.AllFat ? now.OfAllFat : now.OfListedFats;
        bool heavy = batch.IsLyeHeavy;
        if (batch.State == BatchState.Poured)
        {
            yield return heavy ? Discard(batch) : Accept(batch);
            yield break;
        }
        if (!heavy)
            yield return Accept(batch);
        if (batch.Target is not { } target || (superfat is { } near && Math.Abs(near - target) <= Near))
            yield break;
        // without fat no alkali is right, and only fat helps
        if (superfat is not null && batch.State == BatchState.Weighing && WeighAlkali(batch, now, alkali) is { } weigh)
            yield return weigh;
        if (superfat is null || superfat < target)
        {
            bool any = false;
            foreach (BatchChoice add in AddFat(batch, now, target, others))
            {
                any = true;
                yield return add;
            }
            if (!any && batch.State == BatchState.Mixed && heavy)
                yield return Discard(batch);
        }
        else if (batch.State == BatchState.Mixed && AddLye(batch, now, others, alkali) is { } lye)
        {
            yield return lye;
        }
    }

    private static BatchChoice Accept(WeighedBatch batch) => new(BatchChoiceKind.Accept, "Leave it as it is.", batch);

    private static BatchChoice Discard(WeighedBatch batch) =>
        new(BatchChoiceKind.Discard, "Don't use this batch: it holds more alkali than its fats and acids can take up, and nothing can be stirred in evenly any more.", batch);

    /// <summary>Alkali anew: all of it, for the fats and acids as weighed. What stands in a cup can still be changed.</summary>
    private static BatchChoice? WeighAlkali(WeighedBatch batch, in LyeBalance now, Rounding? scale)
    {
        if (Wanted(batch, now) is not { } wanted || now.Hydroxide <= 0)
            return null;
        double factor = wanted / now.Hydroxide;
        ValueList<AlkaliPortion> alkalis = ((WeighedAlkali)batch.AsWeighed.Alkali).Alkalis;
        AlkaliPortion[] anew = [.. alkalis.Select(a => a with { Mass = scale?.Down(a.Grams * factor) ?? Mass.FromGrams(a.Grams * factor) })];
        if (scale is not null && anew.All(a => a.Grams == 0))
            return null;
        WeighedBatch result = batch.Found(batch.Planned with { Alkali = AlkaliPlan.Weighed(anew) });
        foreach (WeighedLine line in batch.Lines)
        {
            if (line.Path.ToString().StartsWith("alkali.", StringComparison.Ordinal))
                result = result.Unweigh(line.Path.ToString());
        }
        return new(BatchChoiceKind.WeighAlkali, $"Weigh the alkali anew: {string.Join(" and ", anew.Select(a => $"{AmountWriter.Write((scale ?? Printed(batch)).Down(a.Grams))} {a.Alkali}"))}.", result, anew.Sum(a => a.Grams));
    }

    /// <summary>So much of a fat of the formula that the alkali leaves the superfat wanted.</summary>
    private static IEnumerable<BatchChoice> AddFat(WeighedBatch batch, LyeBalance now, double target, Rounding? scale)
    {
        double part = 1 - target;
        if (part <= 0)
            yield break;
        double demand = batch.Basis == SuperfatBasis.AllFat ? now.AllFatHydroxide : now.ListedHydroxide;
        double lacking = ((now.Hydroxide - now.AcidHydroxide) / part) - demand;
        foreach (Fat fat in batch.Planned.Fats.Select(f => f.Fat).Distinct())
        {
            double grams = fat.HydroxidePerGram > 0 ? lacking / fat.HydroxidePerGram : double.PositiveInfinity;
            if (!(grams > 0 && grams <= Guard.LargestGrams) || fat.Class == FatClass.Wax)
                continue;
            Mass mass = scale?.Up(grams) ?? Mass.FromGrams(grams);
            if (mass.Grams > Guard.LargestGrams)
                continue;
            FatPortion portion = new FatPortion(fat, mass) with { Line = "added " + fat.Id };
            WeighedBatch result = batch.Found(batch.Planned with { Fats = [.. batch.Planned.Fats, batch.State == BatchState.Mixed ? portion.AtTrace() : portion] });
            yield return new(BatchChoiceKind.AddFat, $"Add {AmountWriter.Write((scale ?? Printed(batch)).Up(grams))} of {fat.Name}, melted and warm.", result, mass.Grams, fat);
        }
    }

    /// <summary>Lye for the superfat wanted, as a solution of the strength the plan has: solid alkali never goes into the pot.</summary>
    private static BatchChoice? AddLye(WeighedBatch batch, in LyeBalance now, Rounding? others, Rounding? scale)
    {
        if (Wanted(batch, now) is not { } wanted || now.LyeConcentrationOfAllWater is not { } strength)
            return null;
        double lacking = wanted - now.Hydroxide;
        AlkaliKind kind = ((WeighedAlkali)batch.Planned.Alkali).Alkalis[0].Alkali.Kind;
        double concentration = Math.Min(strength.DecimalFractions, 0.33);
        Alkali solution = kind == AlkaliKind.SodiumHydroxide ? Alkali.SodiumHydroxideSolution(Ratio.FromDecimalFractions(concentration)) : Alkali.PotassiumHydroxideSolution(Ratio.FromDecimalFractions(concentration));
        double exact = lacking * Molar.Hydroxide(kind), pure = scale?.Down(exact).Grams ?? exact, grams = pure / solution.Purity.HighFraction;
        if (!(pure > 0 && grams <= Guard.LargestGrams))
            return null;
        AlkaliPortion portion = solution.Weighing(Mass.FromGrams(grams)) with { Line = "added lye" };
        WeighedBatch result = batch.Found(batch.Planned with { Alkali = AlkaliPlan.Weighed([.. ((WeighedAlkali)batch.Planned.Alkali).Alkalis, portion]) });
        Rounding printed = scale ?? Printed(result);
        return new(BatchChoiceKind.AddLye, $"Add {AmountWriter.Write(printed.Down(grams))} of cooled lye of {Text.Number(concentration * 100)} %: {AmountWriter.Write(printed.Down(pure))} of pure {(kind == AlkaliKind.SodiumHydroxide ? "sodium" : "potassium")} hydroxide dissolved in {(others ?? printed).Nearest(grams - pure)} of water, never solid.", result, grams);
    }

    /// <summary>Amounts to print: in the formula's own unit, alkali cut, fat up.</summary>
    private static Rounding Printed(WeighedBatch batch) => PlanSheet.ForPrint(batch.Planned.Plan(), PlanSheet.UsualUnit(batch.Formula));

    /// <summary>Hydroxide for the superfat wanted with the fats and acids as they are.</summary>
    private static double? Wanted(WeighedBatch batch, in LyeBalance now) => batch.Target is { } target
        ? now.AcidHydroxide + ((1 - target) * (batch.Basis == SuperfatBasis.AllFat ? now.AllFatHydroxide : now.ListedHydroxide))
        : null;

    /// <summary>The superfat wanted as a plan for the alkalis of the batch, in their present proportion.</summary>
    private static SuperfatTarget? Target(WeighedBatch batch)
    {
        if (batch.Target is not { } target || batch.Lines.Any(l => l.Weighed is not null && l.Path.ToString().StartsWith("alkali.", StringComparison.Ordinal)))
            return null;
        ValueList<AlkaliPortion> alkalis = ((WeighedAlkali)batch.Planned.Alkali).Alkalis;
        double total = alkalis.Sum(a => a.Grams * a.Alkali.HydroxidePerGram);
        if (total <= 0)
            return null;
        SuperfatTarget plan = AlkaliPlan.ForSuperfat(Stored.ToRatio(target), [.. alkalis.Select(a => new AlkaliShare(a.Alkali, a.Grams * a.Alkali.HydroxidePerGram / total, AlkaliShareBasis.Hydroxide))]);
        return batch.Basis == SuperfatBasis.ListedFats ? plan.OfListedFats() : plan;
    }
}
