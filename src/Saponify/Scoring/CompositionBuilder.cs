using Saponify.Internals;

namespace Saponify;

/// <summary>
/// Follows the hydroxide of a plan through acids, free fatty acids and glycerides, and writes down what comes out. Every gram that goes in
/// comes out in one part.
/// </summary>
internal sealed class CompositionBuilder
{
    private readonly BatchPlan _plan;
    private readonly LyeBalance _balance;
    private readonly AlkaliMix _mix;
    private readonly List<(PartKind Kind, string Name, double Grams, FattyAcid? Acid, AlkaliKind? Cation)> _parts = [];
    private readonly List<string> _remarks = [];
    private readonly List<(string Name, FatMakeup Makeup)> _fats = [];
    private readonly Containing[] _containing;
    private readonly double[,] _soap = new double[2, FattyAcid.Count];
    private double _fattyMatter;
    private double _waterFormed;

    internal CompositionBuilder(BatchPlan plan)
    {
        _plan = plan;
        _balance = plan.Balance;
        _mix = plan.Formula.Alkali.Mix;
        _containing = [.. Containing.All(plan)];
        foreach (FatPortion portion in plan.Formula.Fats)
            AddFat(portion.Fat.Name, portion.Fat, portion.Grams);
        foreach (Containing part in _containing)
        {
            if (part.Contents.FatFraction > 0)
                AddFat("fat in " + part.Name, part.Contents.FatKind, part.Grams * part.Contents.FatFraction);
        }
    }

    internal BarComposition Build()
    {
        double left = _balance.Hydroxide;
        double acids = Reacting(ref left, _balance.AcidHydroxide);
        double freeAcids = Reacting(ref left, _fats.Where(f => f.Makeup.Class != FatClass.Triglyceride).Sum(f => f.Makeup.Moles));
        double glycerideMoles = _fats.Where(f => f.Makeup.Class == FatClass.Triglyceride).Sum(f => f.Makeup.Moles);
        double glycerides = Reacting(ref left, glycerideMoles);

        foreach ((string name, FatMakeup makeup) in _fats)
            React(name, makeup, makeup.Class == FatClass.Triglyceride ? glycerides : freeAcids);
        NamedSoap();
        Put(PartKind.Glycerol, "glycerol", glycerideMoles * glycerides / 3 * Molar.Glycerol);
        Contained(acids);
        Alkali(left);
        Water();
        return new(_plan.Formula.Name, PlanSheet.UsualUnit(_plan.Formula), Merged(), _fattyMatter, _remarks.ToValueList());
    }

    /// <summary>The part of a demand that the hydroxide left can meet; what it takes is taken off.</summary>
    private static double Reacting(ref double left, double demand)
    {
        double taken = Math.Min(left, demand);
        left -= taken;
        return demand > 0 ? taken / demand : 0;
    }

    private void AddFat(string name, Fat? fat, double grams)
    {
        if (!(grams > 0))
            return;
        if (fat?.Saponification is null)
        {
            _remarks.Add(fat is null ? $"The {name} is of unknown kind; it is taken as unreacted." : $"The {name} has no usable saponification value; it is taken as unreacted.");
            Put(PartKind.UnreactedFat, "fat of unknown kind", grams);
            _fattyMatter += grams;
            return;
        }
        FatMakeup makeup = FatMakeup.Of(fat, grams);
        if (makeup.Contradicts)
            _remarks.Add($"The saponification value of {name} leaves less than nothing for unsaponifiable matter; the molar mass of its acids follows from that value.");
        else if (makeup.Acids is null && makeup.Class != FatClass.Wax)
            _remarks.Add($"The acids of {name} are not known; its soap is one line, and their molar mass follows from its saponification value.");
        _fats.Add((name, makeup));
    }

    private void React(string name, in FatMakeup makeup, double reacted)
    {
        _fattyMatter += makeup.RestGrams + (makeup.CarrierGrams * (1 - reacted));
        if (makeup.Class != FatClass.Triglyceride)
            _waterFormed += makeup.Moles * reacted * Molar.Water;
        if (makeup.Class == FatClass.Wax)
        {
            Put(PartKind.Unsaponifiable, name + ", with the cations it takes up", makeup.Grams + (makeup.Moles * reacted * CationLessProton));
            return;
        }
        Put(PartKind.Unsaponifiable, "unsaponifiable and unaccounted", makeup.RestGrams);
        Put(PartKind.UnreactedFat, makeup.Class == FatClass.FreeAcid ? "unreacted fatty acid" : "unreacted glyceride", makeup.CarrierGrams * (1 - reacted));
        double moles = makeup.Moles * reacted, grams = makeup.AcidGrams * reacted;
        _fattyMatter += grams;
        for (int cation = 0; cation < 2; cation++)
        {
            double part = cation == 0 ? _mix.SodiumShare : 1 - _mix.SodiumShare, gained = Gained(cation);
            if (part <= 0)
                continue;
            if (makeup.Acids is not { } acids)
            {
                Put(PartKind.Soap, $"{CationName(cation)} soap of {name}", part * (grams + (moles * gained)), null, (AlkaliKind)cation);
                continue;
            }
            for (int i = 0; i < FattyAcid.Count; i++)
            {
                // moles of this acid, by mass in the profile: share x M(mean)/M(acid)
                double ofMoles = acids.Shares[i] * acids.AcidGramsPerMole / FattyAcid.All[i].GramsPerMole;
                _soap[cation, i] += part * ((grams * acids.Shares[i]) + (moles * ofMoles * gained));
            }
        }
    }

    private void NamedSoap()
    {
        for (int cation = 0; cation < 2; cation++)
        {
            foreach (FattyAcid acid in FattyAcid.All)
                Put(PartKind.Soap, $"{CationName(cation)} {acid.Name[..^2]}ate", _soap[cation, acid.Index], acid, (AlkaliKind)cation);
        }
    }

    private void Contained(double reacted)
    {
        int firstAdditive = _containing.Length - _plan.Formula.Additives.Count;
        for (int i = 0; i < _containing.Length; i++)
        {
            Containing part = _containing[i];
            if (part.IsUnknown)
                _remarks.Add($"The amount of {part.Name} is not known; it is not in the bar.");
            Contents contents = part.Contents;
            Salt(part, reacted);
            Put(PartKind.Sugar, "sugars", part.Grams * contents.SugarFraction);
            Put(PartKind.Protein, "protein", part.Grams * contents.ProteinFraction);
            Put(PartKind.Alcohol, "alcohol", part.Grams * contents.AlcoholFraction);
            Put(PartKind.OtherSolids, "ash and other solids", part.Grams * contents.AshFraction);
            bool isAdditive = i >= firstAdditive;
            Put(isAdditive ? PartKind.Additive : PartKind.OtherSolids, isAdditive ? part.Name : "ash and other solids", part.Grams * contents.RestFraction);
        }
    }

    private void Salt(in Containing part, double reacted)
    {
        double grams = part.Grams * part.Contents.AcidFraction;
        if (!(grams > 0))
            return;
        double moles = part.Grams * part.Contents.AcidHydroxidePerGram * reacted;
        _waterFormed += moles * Molar.Water;
        string name = part.Contents.AcidKind?.Name ?? "acid of unknown kind";
        if (!(moles > 0))
        {
            Put(PartKind.AcidSalt, name, grams);
            return;
        }
        for (int cation = 0; cation < 2; cation++)
        {
            double share = cation == 0 ? _mix.SodiumShare : 1 - _mix.SodiumShare;
            Put(PartKind.AcidSalt, $"{name}, {CationName(cation)} salt", share * (grams + (moles * Gained(cation))), null, (AlkaliKind)cation);
        }
    }

    private void Alkali(double left)
    {
        Put(PartKind.InertOfAlkali, "inert part of the alkali", Math.Max(0, _balance.AlkaliGrams - _balance.PureAlkaliGrams - (_balance.Hydroxide * _mix.WaterPerMole)));
        // what rounding leaves is no alkali
        if (left <= _balance.Hydroxide * 1e-12)
            return;
        Put(PartKind.AlkaliLeft, "sodium hydroxide left", left * _mix.SodiumShare * Molar.SodiumHydroxide, null, AlkaliKind.SodiumHydroxide);
        Put(PartKind.AlkaliLeft, "potassium hydroxide left", left * (1 - _mix.SodiumShare) * Molar.PotassiumHydroxide, null, AlkaliKind.PotassiumHydroxide);
        _remarks.Add("LYE-HEAVY: more alkali than acids and fats can take up. Do not use this.");
    }

    private void Water()
    {
        LiquidPlan liquids = _plan.Formula.Liquids;
        double lye = _balance.LyeLiquidGrams * liquids.LyeLiquid.Liquid.WaterPerGram, alkali = _balance.Hydroxide * _mix.WaterPerMole;
        double additives = 0;
        foreach (AdditivePortion portion in _plan.Formula.Additives)
            additives += portion.GramsFor(_plan.Formula.ListedGrams) * portion.Additive.Contents.WaterFraction;
        Put(PartKind.Water, "water of the lye liquid", lye);
        Put(PartKind.Water, "water of held-back liquids", liquids.HeldBackWater);
        Put(PartKind.Water, "water of additives", additives);
        Put(PartKind.Water, "water of the alkali", alkali);
        Put(PartKind.Water, "water formed", _waterFormed);
    }

    /// <summary>g that one mole of acid gains when its proton gives way to a cation.</summary>
    private static double Gained(int cation) => (cation == 0 ? Molar.Na : Molar.K) - Molar.H;

    private double CationLessProton => (_mix.SodiumShare * Gained(0)) + ((1 - _mix.SodiumShare) * Gained(1));

    private static string CationName(int cation) => cation == 0 ? "sodium" : "potassium";

    private void Put(PartKind kind, string name, double grams, FattyAcid? acid = null, AlkaliKind? cation = null)
    {
        if (grams > 0)
            _parts.Add((kind, name, grams, acid, cation));
    }

    /// <summary>In the order in which they are shown; parts of one kind and name are one part, and what is only a rounding error is none.</summary>
    private List<(PartKind Kind, string Name, double Grams, FattyAcid? Acid, AlkaliKind? Cation)> Merged()
    {
        double least = _parts.Sum(p => p.Grams) * 1e-13;
        return
        [
            .. _parts.GroupBy(p => (p.Kind, p.Name)).Select(g => g.First() with { Grams = g.Sum(p => p.Grams) }).Where(p => p.Grams > least)
                .OrderBy(p => p.Kind).ThenBy(p => p.Cation).ThenBy(p => p.Acid?.Index ?? FattyAcid.Count),
        ];
    }
}
