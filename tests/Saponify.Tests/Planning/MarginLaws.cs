using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Planning;

/// <summary>Laws of the margin, against batches whose doubts take true values.</summary>
public class MarginLaws
{
    private static readonly Gen<Scale> s_scales = Gen.Elements(0.01, 0.1, 0.5, 1.0, 2.0, 2.8349523125).Select(g => new Scale(Mass.FromGrams(g)));

    [Law]
    public Property AnyTrueValues_InsideTheStatedRanges_GiveASuperfatInsideTheCorners() =>
        Prop.ForAll(Any.SoundFormulas.Arbitrary(), s_scales.Arbitrary(), Gen.Choose(0, int.MaxValue).Arbitrary(), (formula, scale, seed) =>
        {
            BatchPlan plan = formula.Plan();
            if (plan.Margin(scale) is not { } margin)
                return true;
            TrueBatch batch = new(plan, scale);
            Random random = new(seed);
            double[] places = new double[batch.Doubts];
            for (int run = 0; run < 20; run++)
            {
                for (int i = 0; i < places.Length; i++)
                    places[i] = run % 2 == 0 ? random.Next(2) : random.NextDouble();
                double superfat = batch.Superfat(places);
                if (superfat < margin.Worst.DecimalFractions - 1e-9 || superfat > margin.Best.DecimalFractions + 1e-9)
                    return false;
            }
            return true;
        });

    [Law]
    public Property TheFiguresOfAMargin_StandInOrder() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), s_scales.Arbitrary(), Any.Between(1, 99.9).Arbitrary(), (formula, scale, coverage) =>
    {
        if (formula.Plan().Margin(scale, null, Ratio.FromPercent(coverage)) is not { } margin)
            return true;
        double[] order = [margin.Worst.DecimalFractions, margin.Low.DecimalFractions, margin.BestEstimate.DecimalFractions, margin.High.DecimalFractions, margin.Best.DecimalFractions];
        return order.Zip(order.Skip(1)).All(p => p.First <= p.Second + 1e-12)
            && margin.ProbabilityOfLyeHeavy.DecimalFractions is >= 0 and <= 1
            && (margin.Worst.DecimalFractions < 0 || margin.ProbabilityOfLyeHeavy.DecimalFractions == 0)
            && (margin.Causes.Count == 0 || Near.Is(margin.Causes.Sum(c => c.ShareOfVariance.DecimalFractions), 1))
            && Near.Is(Math.Sqrt(margin.Causes.Sum(c => c.HalfWidth.DecimalFractions * c.HalfWidth.DecimalFractions / 3)), margin.StandardUncertainty.DecimalFractions);
    });

    [Law]
    public Property ACoarserScale_NeverNarrowsTheCorners() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0.01, 5).Arbitrary(), (formula, step) =>
    {
        BatchPlan plan = formula.Plan();
        if (plan.Margin(new Scale(Mass.FromGrams(step))) is not { } fine)
            return true;
        Margin coarse = plan.Margin(new Scale(Mass.FromGrams(step * 2)))!;
        return coarse.Worst.DecimalFractions <= fine.Worst.DecimalFractions && coarse.Best.DecimalFractions >= fine.Best.DecimalFractions
            && coarse.StandardUncertainty.DecimalFractions >= fine.StandardUncertainty.DecimalFractions;
    });

    [Law]
    public Property RoundingOnAnyScale_NeverLowersTheSuperfat() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), s_scales.Arbitrary(), s_scales.Arbitrary(), (formula, scale, alkaliScale) =>
    {
        BatchPlan plan = formula.Plan();
        if (!plan.Balance.CanBeWeighed)
            return true;
        ScalePlan rounded = plan.OnScale(scale, alkaliScale);
        bool steps = rounded.Lines.All(l => IsWhole(l.Mass.Grams / (l.Path.ToString().StartsWith("alkali", StringComparison.Ordinal) ? alkaliScale : scale).Step.Grams));
        return steps && !(rounded.Balance.SuperfatOfAllFat!.Value.DecimalFractions < plan.Balance.SuperfatOfAllFat!.Value.DecimalFractions - 1e-6);
    });

    private static bool IsWhole(double number) => Math.Abs(number - Math.Round(number)) < 1e-5;
}
