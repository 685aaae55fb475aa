using Saponify.Internals;

namespace Saponify;

/// <summary>
/// Heat that dissolving releases at 25 degrees Celsius, in kJ per mol of alkali, by the strength of the lye that comes out.
/// Basis of NBS 1982 (infinite dilution of NaOH -44.51 kJ/mol). The older Circular 500 has the solid 1.615 kJ/mol lower (-42.89); heats of
/// dilution are the same on both. The later basis is also the more heat, so the safer one for an upper bound.
/// </summary>
internal static class DissolvingHeat
{
    private static readonly Lazy<SourcedCurve> s_sodium = new(() => Curve(AlkaliKind.SodiumHydroxide)), s_potassium = new(() => Curve(AlkaliKind.PotassiumHydroxide));

    /// <summary>kJ/mol, positive; NaN beyond the strongest lye.</summary>
    internal static double Released(AlkaliKind kind, double w) => LyeFits.IsInRange(w) ? Of(kind).Value(w) : double.NaN;

    internal static CurvePoint? At(AlkaliKind kind, double w) => LyeFits.IsInRange(w) ? Of(kind).At(w) : null;

    /// <summary>kJ/mol at infinite dilution.</summary>
    internal static double Dilute(AlkaliKind kind) => Single(kind, "heat-released-dilute");

    /// <summary>kJ per mol of bound water that a solid has given off already, as NaOH.H2O or KOH.H2O: flakes release so much less.</summary>
    internal static double OfHydrate(AlkaliKind kind) => Single(kind, "heat-of-hydrate");

    internal static string Id(AlkaliKind kind) => kind == AlkaliKind.SodiumHydroxide ? "sodium-hydroxide" : "potassium-hydroxide";

    private static SourcedCurve Of(AlkaliKind kind) => (kind == AlkaliKind.SodiumHydroxide ? s_sodium : s_potassium).Value;

    private static double Single(AlkaliKind kind, string figure) => MakingTables.Curves[(Id(kind), figure)][0].Value;

    private static SourcedCurve Curve(AlkaliKind kind)
    {
        double grams = Molar.Hydroxide(kind);
        List<CurvePoint> points = [MakingTables.Curves[(Id(kind), "heat-released-dilute")][0] with { At = 0 }];
        foreach (CurvePoint row in MakingTables.Curves[(Id(kind), "heat-released")])
            points.Add(row with { At = grams / (grams + (row.At * Molar.Water)) });
        return new(points, smooth: true);
    }
}
