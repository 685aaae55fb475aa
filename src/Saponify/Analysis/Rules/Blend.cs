namespace Saponify.Analysis.Rules;

/// <summary>Shares of the listed fats by mass. A fat without a profile counts as having none of any acid; waxes are no fat of the bar.</summary>
internal static class Blend
{
    private static readonly int s_lauric = FattyAcid.FromShorthand("C12:0").Index, s_linoleic = FattyAcid.FromShorthand("C18:2").Index, s_linolenic = FattyAcid.FromShorthand("C18:3").Index,
        s_conjugated = FattyAcid.FromShorthand("C18:3-conj").Index, s_ricinoleic = FattyAcid.FromShorthand("C18:1-OH").Index;

    internal static double Share(Formula formula, Func<Fat, double> of)
    {
        double sum = 0;
        foreach (FatPortion portion in formula.Fats)
            sum += portion.Grams * of(portion.Fat);
        return formula.ListedGrams > 0 ? sum / formula.ListedGrams : 0;
    }

    internal static FormulaPath[] Lines(Formula formula, Func<Fat, bool> which) =>
        [.. formula.Fats.Select((f, i) => (f.Fat, i)).Where(p => which(p.Fat)).Select(p => Places.Fat(formula, p.i))];

    /// <summary>Names of the fats meant, each once, in the order of the alphabet: whatever the order of the lines.</summary>
    internal static string Names(IEnumerable<string> names) => string.Join(", ", names.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    internal static double Lauric(Formula formula) => Share(formula, f => Of(f, s_lauric));

    internal static double Ricinoleic(Formula formula) => Share(formula, f => Of(f, s_ricinoleic));

    /// <summary>Linoleic and linolenic acid, conjugated ones included: what goes rancid first.</summary>
    internal static double Polyunsaturated(Formula formula) => Share(formula, Polyunsaturated);

    internal static double Polyunsaturated(Fat fat) => Of(fat, s_linoleic) + Of(fat, s_linolenic) + Of(fat, s_conjugated);

    /// <summary>Saturated acids from lauric upwards, which set hard.</summary>
    internal static double Hard(Formula formula) => Share(formula, Hard);

    internal static double Hard(Fat fat)
    {
        double sum = fat.Class == FatClass.Wax ? 1 : 0;
        foreach (FattyAcid acid in FattyAcid.All)
            sum += acid.IsSaturated && acid.Carbons >= 12 ? Of(fat, acid.Index) : 0;
        return sum;
    }

    private static double Of(Fat fat, int acid) => fat.Class == FatClass.Wax || fat.Profile is not { } profile ? 0 : profile.Shares[acid];
}
