using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>The tables of a plan, made from its formula and its numbers when they are asked for.</summary>
internal static class PlanTables
{
    /// <summary>
    /// mol of hydroxide that one gram of milk protein may bind above pH 12 (lysine and tyrosine side chains): an upper bound.
    /// Computed from the amino acids in usda-sr28 with dissociation constants from memory.
    /// </summary>
    internal const double ProteinHydroxidePerGram = 0.85e-3;

    internal static AlkaliPortion[] Alkalis(BatchPlan plan)
    {
        if (plan.Formula.Alkali is WeighedAlkali weighed)
            return [.. weighed.Alkalis];
        var target = (SuperfatTarget)plan.Formula.Alkali;
        double hydroxide = plan.Balance.Hydroxide;
        double massTotal = 0;
        foreach (AlkaliShare share in target.Alkalis)
            massTotal += share.Fraction * share.Alkali.HydroxidePerGram;
        var portions = new AlkaliPortion[target.Alkalis.Count];
        for (int i = 0; i < portions.Length; i++)
        {
            AlkaliShare share = target.Alkalis[i];
            double grams = share.Basis == AlkaliShareBasis.Hydroxide
                ? hydroxide * share.Fraction / share.Alkali.HydroxidePerGram
                : hydroxide * share.Fraction / massTotal;
            portions[i] = new AlkaliPortion(share.Alkali, Mass.FromGrams(grams)) { Line = share.Line };
        }
        return portions;
    }

    internal static LiquidPortion LyeLiquid(BatchPlan plan)
    {
        LiquidPlan liquids = plan.Formula.Liquids;
        return liquids.Weighed
            ?? new LiquidPortion(liquids.LyeLiquid.Liquid, Mass.FromGrams(plan.Balance.LyeLiquidGrams))
                .WithTemperature(liquids.LyeLiquid.StoredTemperature, liquids.LyeLiquid.IsFrozen);
    }

    internal static AdditivePortion[] Additives(Formula formula) =>
        [.. formula.Additives.Select(a => a.OfFatsFraction is null ? a : a with { Mass = Mass.FromGrams(a.GramsFor(formula.ListedGrams)) })];

    internal static LyeUptake[] LyeUptake(BatchPlan plan)
    {
        List<LyeUptake> lines = [];
        LyeBalance balance = plan.Balance;
        Formula formula = plan.Formula;

        void Add(FormulaPath path, LyeTaker taker, string what, double hydroxide)
        {
            if (hydroxide != 0)
                lines.Add(new(path, taker, what, hydroxide, plan.GramsAsAlkali(hydroxide)));
        }

        for (int late = 0; late < 2; late++)
        {
            for (int i = 0; i < formula.Fats.Count; i++)
            {
                FatPortion portion = formula.Fats[i];
                if (portion.IsLate == (late == 1))
                    Add(FormulaPath.Fats.Item(i, portion.Line), late == 1 ? LyeTaker.LateFat : LyeTaker.Fat, portion.Fat.Name, portion.Hydroxide);
            }
        }
        foreach (Containing part in Containing.All(plan))
            Add(part.Path, LyeTaker.FatInOther, "fat in " + part.Name, part.Grams * part.Contents.FatHydroxidePerGram);
        foreach (Containing part in Containing.All(plan))
        {
            string what = part.Contents.AcidFraction > 0.5 ? part.Name : (part.Contents.AcidKind?.Name ?? "acid") + " in " + part.Name;
            Add(part.Path, LyeTaker.Acid, what, part.Grams * part.Contents.AcidHydroxidePerGram);
        }
        Add(FormulaPath.Alkali, LyeTaker.Superfat, "superfat, lye not given", -(balance.AllFatHydroxide + balance.AcidHydroxide - balance.Hydroxide));
        return [.. lines];
    }

    internal static WaterShare[] Water(BatchPlan plan)
    {
        List<WaterShare> lines = [];
        double bound = plan.Balance.Hydroxide * plan.Formula.Alkali.Mix.WaterPerMole;
        foreach (Containing part in Containing.All(plan))
        {
            double water = part.Grams * part.Contents.WaterFraction;
            if (water > 0)
                lines.Add(new(part.Path, part.Name, water, part.IsWhileDissolving));
        }
        if (bound > 0)
            lines.Add(new(FormulaPath.Alkali, "water of the alkali", bound, true));
        return [.. lines];
    }

    internal static LiquidWindow Window(Formula formula)
    {
        LyeSolver solver = new(formula);
        return new(solver.LeastToDissolve(), solver.LiquidForConcentration(0.40), solver.LiquidForConcentration(0.25));
    }

    internal static PossibleUptake[] PossibleUptake(BatchPlan plan)
    {
        List<PossibleUptake> lines = [];
        foreach (Containing part in Containing.All(plan))
        {
            Contents contents = part.Contents;
            if (part.IsUnknown)
            {
                if (contents.FatHydroxidePerGram + contents.AcidHydroxidePerGram > 0 || contents.AcidFraction + contents.FatFraction > 0)
                    lines.Add(new(part.Path, part.Name, "its amount is not known", null));
                continue;
            }
            double grams = part.Grams;
            if (grams <= 0)
                continue;
            if (contents.FatFraction > 0 && contents.FatKind?.Saponification is null)
                lines.Add(new(part.Path, "fat in " + part.Name, contents.FatKind is null ? "its fat is of unknown kind" : "its fat has no usable saponification value", null));
            if (contents.AcidFraction > 0 && contents.AcidKind is null)
                lines.Add(new(part.Path, "acid in " + part.Name, "its acid is of unknown kind", null));
            if (contents.AcidKind is { ProtonsInDoubt: > 0 } acid)
                lines.Add(new(part.Path, acid.Name + " in " + part.Name, "not every proton is given up in soap", plan.GramsAsAlkali(grams * contents.AcidFraction * acid.HydroxideInDoubtPerGram)));
            if (contents.ProteinFraction > 0)
                lines.Add(new(part.Path, "protein in " + part.Name, "side chains may bind lye for a time", plan.GramsAsAlkali(grams * contents.ProteinFraction * ProteinHydroxidePerGram)));
        }
        return [.. lines];
    }
}
