using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Scoring;

/// <summary>Laws of the scores.</summary>
public class ScoreLaws
{
    private static BarScores Soda(FatBlend blend) => blend.Scores(Ratio.FromPercent(5), Ratio.Zero);

    private static bool Same(BarScores one, BarScores other, double tolerance) =>
        one.IsScored == other.IsScored && one.All.Zip(other.All).All(p => Math.Abs(p.First.Value - p.Second.Value) <= tolerance);

    [Law]
    public Property EveryScore_LiesBetween0And100_ForAnyMixtureOfAcids() => Prop.ForAll(AnyBlend.Acids.Arbitrary(), Any.Between(-100, 100).Arbitrary(), Any.Between(0, 100).Arbitrary(), (acids, superfat, potassium) =>
    {
        BarScores scores = FatBlend.Of((AnyBlend.Own("own", acids), Ratio.FromPercent(100))).Scores(Ratio.FromPercent(superfat), Ratio.FromPercent(potassium));
        return scores.All.Count == 7 && scores.All.All(s => s.Value is >= 0 and <= 100);
    });

    [Law]
    public Property Fats_AndAcids_BringTheWholeScore() => Prop.ForAll(AnyBlend.Scored.Arbitrary(), Any.Between(0, 30).Arbitrary(), Any.Between(0, 100).Arbitrary(), (blend, superfat, potassium) =>
        blend.Scores(Ratio.FromPercent(superfat), Ratio.FromPercent(potassium)).All.All(s =>
            Near.Is(s.ByFat.Sum(f => f.Points), s.Value, 1e-12, 1e-10) && Near.Is(s.ByAcid.Sum(a => a.Points), s.Value, 1e-12, 1e-10)
            && Near.Is(s.ByFat.Sum(f => f.Share.DecimalFractions), 1) && Near.Is(s.ByAcid.Sum(a => a.Share.DecimalFractions), 1)
            && s.ByFat.All(f => f.Points >= 0) && s.ByAcid.All(a => a.Points >= 0)));

    [Law]
    public Property ScalingAProfile_ChangesNothing() => Prop.ForAll(AnyBlend.Acids.Arbitrary(), Any.Between(0.94, 1).Arbitrary(), (acids, factor) =>
    {
        double sum = acids.Sum(a => a.Share);
        BarScores Of(double total) => Soda(FatBlend.Of((AnyBlend.Own("own", [.. acids.Select(a => (a.Acid, a.Share * total / sum))]), Ratio.FromPercent(100))));
        return Same(Of(1), Of(factor), 1e-9);
    });

    [Law]
    public Property ScalingAFormula_ChangesNothing() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0.01, 100).Arbitrary(), (formula, factor) =>
        Same(formula.Scores(), formula.ScaledBy(factor).Scores(), 1e-6));

    [Law]
    public Property OrderOfTheFats_ChangesNothing() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
        Same(formula.Scores(), (formula with { Fats = [.. formula.Fats.Reverse()] }).Scores(), 1e-9));

    [Law]
    public Property SplittingAFat_ChangesNothing() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0, 1).Arbitrary(), (formula, part) =>
    {
        FatPortion first = formula.Fats[0];
        double grams = first.Mass.Grams;
        Formula split = formula with { Fats = [first with { Mass = Mass.FromGrams(grams * part) }, (first with { Mass = Mass.FromGrams(grams * (1 - part)) }).AtTrace(), .. formula.Fats.Skip(1)] };
        return Same(formula.Scores(), split.Scores(), 1e-6);
    });

    [Law]
    public Property Scores_AreContinuous() => Prop.ForAll(AnyBlend.Scored.Arbitrary(), Any.Between(0, 0.999).Arbitrary(), (blend, share) =>
    {
        // the steepest curve, lather volume at no quick acid, has 1250 points per share; a lauric fat has up to twice the acids of a mixed one
        string id = blend.Shares[0].Fat.Id;
        BarScores At(double s) => Soda(blend.WithShare(id, Ratio.FromDecimalFractions(s)));
        return blend.Shares.All(s => s.Fat.Id == id) || Same(At(share), At(share + 1e-7), 1e-3);
    });

    [Law]
    public Property OneLinearScore_OfABlend_LiesBetweenThoseOfItsFats() => Prop.ForAll(AnyBlend.Scored.Arbitrary(), blend =>
    {
        BarScores whole = Soda(blend);
        return new[] { ScoreKind.Hardness, ScoreKind.WearResistance, ScoreKind.LatherStability, ScoreKind.Cleansing, ScoreKind.Conditioning, ScoreKind.OxidationRisk }.All(kind =>
        {
            double[] single = [.. blend.Shares.Select(s => Soda(FatBlend.Of((s.Fat, Ratio.FromPercent(100))))[kind]!.Value)];
            return whole[kind]!.Value >= single.Min() - 1e-9 && whole[kind]!.Value <= single.Max() + 1e-9;
        });
    });

    [Law]
    public Property ABlend_AndAFormulaOfIt_HaveTheSameScores() => Prop.ForAll(AnyBlend.Any.Arbitrary(), Any.Between(0, 25).Arbitrary(), Any.Between(0, 1).Arbitrary(), (blend, superfat, potassium) =>
    {
        // without a usable value of one fat there is no superfat to compare
        if (blend.Shares.Any(s => s.Fat.Saponification is null) || blend.Shares.All(s => s.Fat.Saponification!.Value == default))
            return true;
        Formula formula = new("Blend")
        {
            Fats = blend.Weighing(Mass.FromGrams(800)),
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(superfat), Alkali.PotassiumHydroxide(Ratio.FromPercent(90)).ShareOfHydroxide(Ratio.FromDecimalFractions(potassium)),
                Alkali.SodiumHydroxide(Ratio.FromPercent(99)).ShareOfHydroxide(Ratio.FromDecimalFractions(1 - potassium))),
            Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(31)),
        };
        return Same(blend.Scores(Ratio.FromPercent(superfat), Ratio.FromDecimalFractions(potassium)), formula.Scores(), 1e-6);
    });

    [Law]
    public Property AnyFormula_IsScoredOrSaysWhyNot_AndNeverThrows() => Prop.ForAll(Any.Formulas.Arbitrary(), formula =>
    {
        BarScores scores = formula.Scores();
        bool whole = scores.All.All(s => s.Value is >= 0 and <= 100 && Near.Is(s.ByFat.Sum(f => f.Points), s.Value, 1e-9, 1e-9));
        return scores.IsScored == scores.WhyNotScored is null && scores.IsScored == (scores.All.Count == 7) && whole
            && scores.Unknown.Percent is >= 0 and <= 100 && scores.Unscored.All(u => u.Share.Percent is > 0 and < 100.0001)
            && scores.ToString().Length > 0 && BarComparison.Of(formula, formula).ToString().Length > 0;
    });

    [Law]
    public Property EveryCulture_GivesTheSameText() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Gen.Elements(InCulture.Names).ToArbitrary(), (formula, culture) =>
    {
        string All() => formula.Scores().ToString() + formula.Composition() + BarComparison.Of(formula, formula);
        return All() == InCulture.Run(culture, All);
    });
}
