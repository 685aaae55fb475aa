namespace Saponify.Tests.Support;

/// <summary>
/// What a batch really is when every stated doubt takes some true value: written down anew from the definitions, independent of the library's
/// own margin. Superfat = 1 - (n(alkali) - n(acid))/n(fat), in mol.
/// </summary>
public sealed class TrueBatch
{
    private readonly List<(int Fat, double Grams, double LeastShare, double MostShare)> _fats = [];
    private readonly List<(double Grams, double Least, double Most)> _acids = [];
    private readonly List<(double Grams, double Low, double High, double Molar)> _alkalis = [];
    private readonly List<(double Low, double High)> _values = [];
    private readonly List<Fat> _kinds = [];
    private readonly double _error;

    public TrueBatch(BatchPlan plan, Scale? scale)
    {
        _error = scale is null ? 0 : scale.Step.Grams / 2;
        foreach (FatPortion fat in plan.Formula.Fats)
            _fats.Add((Kind(fat.Fat), fat.Mass.Grams, 1, 1));
        LiquidPortion[] liquids = [.. plan.Formula.Liquids.HeldBack, .. plan.LyeLiquid is { } lye ? [lye] : Array.Empty<LiquidPortion>()];
        foreach ((Contents contents, double grams) in liquids.Select(l => (l.Liquid.Contents, l.Mass.Grams)).Concat(plan.Additives.Select(a => (a.Additive.Contents, a.Mass?.Grams ?? 0))))
        {
            if (grams > 0 && contents.FatKind?.Saponification is not null && contents.Fat.Value > 0)
                _fats.Add((Kind(contents.FatKind), grams, (contents.LeastFat ?? contents.Fat).DecimalFractions, (contents.MostFat ?? contents.Fat).DecimalFractions));
            if (grams > 0 && contents.AcidKind is { Protons: > 0 } acid && contents.Acid.Value > 0)
            {
                double perGram = acid.Protons / acid.MolarMass.GramsPerMole;
                _acids.Add((grams, (contents.LeastAcid ?? contents.Acid).DecimalFractions * perGram, (contents.MostAcid ?? contents.Acid).DecimalFractions * perGram));
            }
        }
        foreach (AlkaliPortion alkali in plan.Alkalis)
            _alkalis.Add((alkali.Mass.Grams, alkali.Alkali.Purity.Low.DecimalFractions, alkali.Alkali.Purity.High.DecimalFractions, alkali.Alkali.Kind == AlkaliKind.SodiumHydroxide ? 39.997 : 56.105));
    }

    /// <summary>How many doubts there are: one number from 0 to 1 for each makes a batch.</summary>
    public int Doubts => _values.Count + (2 * _fats.Count) + (2 * _acids.Count) + (2 * _alkalis.Count);

    /// <summary>The superfat when each doubt stands at a place from 0 (low end) to 1 (high end).</summary>
    public double Superfat(ReadOnlySpan<double> places)
    {
        int at = 0;
        Span<double> values = stackalloc double[_values.Count];
        for (int i = 0; i < values.Length; i++)
            values[i] = Between(_values[i].Low, _values[i].High, places[at++]) / 56105;
        double fat = 0, acid = 0, alkali = 0;
        foreach ((int kind, double grams, double least, double most) in _fats)
            fat += Weighed(grams, places[at++]) * Between(least, most, places[at++]) * values[kind];
        foreach ((double grams, double least, double most) in _acids)
            acid += Weighed(grams, places[at++]) * Between(least, most, places[at++]);
        foreach ((double grams, double low, double high, double molar) in _alkalis)
            alkali += Weighed(grams, places[at++]) * Between(low, high, places[at++]) / molar;
        return 1 - ((alkali - acid) / fat);
    }

    private double Weighed(double grams, double place) => Math.Max(0, grams + (_error * ((2 * place) - 1)));

    private static double Between(double low, double high, double place) => low + ((high - low) * place);

    private int Kind(Fat fat)
    {
        int index = _kinds.IndexOf(fat);
        if (index >= 0)
            return index;
        _kinds.Add(fat);
        _values.Add((fat.Saponification!.Low!.Value.MilligramsKohPerGram, fat.Saponification.High!.Value.MilligramsKohPerGram));
        return _kinds.Count - 1;
    }
}
