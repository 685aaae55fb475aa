using System.Text.Json;
using Saponify.Internals;
using UnitsNet;
using S = Saponify.FormulaShapes;

namespace Saponify;

/// <summary>From the alkali of a file to an alkali plan: for a superfat, or weighed already.</summary>
internal sealed class AlkaliBinder(ShapeReader reader)
{
    internal AlkaliPlan? Bind(BoundObject plan)
    {
        Ratio? superfat = plan.Percent(S.Superfat);
        string? basis = plan.Choice(S.SuperfatOf);
        int before = reader.Problems.Count;
        List<BoundObject?> items = plan.List(S.Alkalis);
        if (plan.At(S.Alkalis) is { Kind: JsonTokenType.StartArray, Items.Count: 0 })
            plan.Report(ProblemIds.MissingMember, S.Alkalis, "no alkali is listed", "list at least one");
        if (plan.IsMeant(S.Superfat))
            return Target(plan, superfat, basis == "listedFats", items, before);
        if (items.Count > 0 && !items.Exists(i => i is null || HasMass(i)))
        {
            plan.Missing(S.Superfat, "neither a superfat nor the masses of the alkalis are given", "write the superfat wanted, or what was weighed");
            foreach (BoundObject? item in items)
                _ = (OneAlkali(item!), item!.Percent(S.ShareOfHydroxide), item.Percent(S.ShareOfMass));
            return null;
        }
        if (basis is not null)
            plan.Report(ProblemIds.Conflict, S.SuperfatOf, "\"of\" stands without a superfat", "write the superfat, or leave \"of\" out");
        return Weighed(items);
    }

    private SuperfatTarget? Target(BoundObject plan, Ratio? superfat, bool ofListedFats, List<BoundObject?> items, int before)
    {
        if (items.Find(i => i is not null && i.Has(S.AlkaliMass)) is { } weighed)
            weighed.Report(ProblemIds.Conflict, S.AlkaliMass, "a mass stands beside a superfat", "leave out the superfat if the alkali is weighed already, or the masses if they are to be computed");
        List<AlkaliShare> shares = [];
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (BoundObject? item in items)
        {
            if (item is null)
                continue;
            Alkali? alkali = OneAlkali(item);
            Ratio? ofHydroxide = item.Percent(S.ShareOfHydroxide), ofMass = item.Percent(S.ShareOfMass);
            if (!item.IsMeant(S.ShareOfHydroxide) && !item.IsMeant(S.ShareOfMass) && !HasMass(item))
            {
                if (items.Exists(other => other is not null && other != item))
                    item.Missing(S.ShareOfHydroxide, "several alkalis need shares", "write shareOfHydroxide or shareOfMass for each");
                ofHydroxide = Ratio.FromDecimalFractions(1);
            }
            AlkaliShare? share = alkali is null ? null : ofHydroxide is { } hydroxide ? alkali.ShareOfHydroxide(hydroxide) : ofMass is { } mass ? alkali.ShareOfMass(mass) : null;
            if (FormulaBinder.Named(item, share, ids) is { } named)
                shares.Add(named);
        }
        // only shares that were all understood can be said not to add up
        if (reader.Problems.Count != before || shares.Count < items.Count || shares.Count == 0)
            return null;
        if (SuperfatTarget.SharesFault(shares.ToValueList()) is { } fault)
        {
            plan.Report(ProblemIds.SharesOff, S.Alkalis, $"{char.ToLowerInvariant(fault[0])}{fault.AsSpan(1).TrimEnd('.')}");
            return null;
        }
        if (superfat is not { } wanted)
            return null;
        SuperfatTarget made = AlkaliPlan.ForSuperfat(wanted, [.. shares]);
        return ofListedFats ? made.OfListedFats() : made;
    }

    private static WeighedAlkali? Weighed(List<BoundObject?> items)
    {
        List<AlkaliPortion> portions = [];
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (BoundObject item in items.OfType<BoundObject>())
        {
            Member? share = item.Has(S.ShareOfHydroxide) ? S.ShareOfHydroxide : item.Has(S.ShareOfMass) ? S.ShareOfMass : null;
            if (!HasMass(item))
                item.Missing(S.AlkaliMass, "this alkali has no mass, and there is no superfat", "write what was weighed");
            else if (share is not null && !item.Has(S.AlkaliMass))
                item.Report(ProblemIds.Conflict, share, "a share stands beside a weighed alkali", "write the superfat, or the mass of each alkali");
            Alkali? alkali = OneAlkali(item);
            if (FormulaBinder.Named(item, item.Mass(S.AlkaliMass) is { } mass ? alkali?.Weighing(mass) : null, ids) is { } portion)
                portions.Add(portion);
        }
        return portions.Count == 0 || portions.Count < items.Count ? null : AlkaliPlan.Weighed([.. portions]);
    }

    /// <summary>True when an alkali is meant to be weighed already, even if its mass is written wrongly.</summary>
    private static bool HasMass(BoundObject item) => item.IsMeant(S.AlkaliMass) || item.Has(S.AlkaliPoured);

    private static Alkali? OneAlkali(BoundObject item)
    {
        (string? id, Purity? purity, Ratio? water, string? certificate) = (item.Choice(S.AlkaliId), item.Purity(S.Purity), item.Percent(S.BoundWater), item.Text(S.Certificate));
        if (id is null || purity is null)
            return null;
        Alkali alkali = id switch
        {
            "sodium-hydroxide" => Alkali.SodiumHydroxide(purity),
            "potassium-hydroxide" => Alkali.PotassiumHydroxide(purity),
            "sodium-hydroxide-solution" => Alkali.SodiumHydroxideSolution(purity),
            _ => Alkali.PotassiumHydroxideSolution(purity),
        };
        if (certificate is not null)
            alkali = alkali with { Certificate = certificate };
        if (water is not { } bound)
            return alkali;
        if (bound.DecimalFractions > alkali.MostBoundWater)
        {
            item.Report(ProblemIds.OutOfRange, S.BoundWater, $"{Text.Number(bound.Percent)} % of bound water leaves no room for {purity} of alkali", "water and alkali together make at most 100 %");
            return null;
        }
        return alkali with { BoundWater = bound };
    }
}
