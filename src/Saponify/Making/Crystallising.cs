namespace Saponify;

/// <summary>
/// Below which temperature lye drops crystals: a liquidus with a hump, not one rising curve. NaOH.3.5H2O makes lye of 35 to 43 %
/// crystallise below 11 to 16 degrees Celsius, although one of 46 % stays clear.
/// </summary>
internal static class Crystallising
{
    private static readonly Lazy<SourcedCurve> s_sodium = new(() => new(MakingTables.Curves[("sodium-hydroxide", "crystallises")].Select(Fraction), smooth: false)),
        s_potassium = new(() => new(MakingTables.Curves[("potassium-hydroxide", "crystallises")].Select(Fraction), smooth: false));

    /// <summary>Degrees Celsius with error and support; a point of minus infinity to 0 for weaker lye than the table has; null for stronger.</summary>
    internal static CurvePoint? At(AlkaliKind kind, double w)
    {
        SourcedCurve curve = (kind == AlkaliKind.SodiumHydroxide ? s_sodium : s_potassium).Value;
        return w < curve.Least
            ? curve.At(curve.Least)! with { At = w, Low = double.NegativeInfinity, High = 0, Note = "at 0 °C or below; no figures there" }
            : curve.At(w);
    }

    private static CurvePoint Fraction(CurvePoint row) => row with { At = row.At / 100 };
}
