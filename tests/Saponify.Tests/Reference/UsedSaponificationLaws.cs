using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Reference;

/// <summary>
/// The rule for the saponification value used errs on the safe side: whatever a lot's true value at or above it, the true superfat is not
/// below the planned one; below it, it loses at most (used - true)/used.
/// </summary>
public class UsedSaponificationLaws
{
    private static readonly Gen<(Fat Fat, double Fraction, double Superfat, Alkali Alkali)> s_cases =
        from fat in Any.UsableFat
        from fraction in Any.Between(0, 1)
        from superfat in Any.Between(0, 25)
        from alkali in Any.Alkalis
        select (fat, fraction, superfat, alkali);

    [Law]
    public Property ATrueValueAtOrAbove_NeverLowersTheSuperfat() => Prop.ForAll(s_cases.ToArbitrary(), c =>
    {
        double used = c.Fat.Saponification!.Value.MilligramsKohPerGram;
        return TrueSuperfat(c, used + (c.Fraction * (600 - used))) >= (c.Superfat / 100) - 1e-12;
    });

    [Law]
    public Property ATrueValueBelow_LosesAtMostItsShare() => Prop.ForAll(s_cases.ToArbitrary(), c =>
    {
        double used = c.Fat.Saponification!.Value.MilligramsKohPerGram, low = c.Fat.Saponification.Low!.Value.MilligramsKohPerGram;
        double truth = low + (c.Fraction * (used - low));
        // (1 - s) x used/true is taken up of the true demand: the loss is (1 - s)(used - true)/true
        double expected = 1 - ((1 - (c.Superfat / 100)) * used / truth);
        return Near.Is(TrueSuperfat(c, truth), expected, 1e-9, 1e-9) && FatText.PointsAtLowEnd(c.Fat) / 100 >= 1 - (low / used) - 1e-9;
    });

    [Law]
    public Property AWholeBlend_IsAsSafeAsItsFats() => Prop.ForAll(Gen.NonEmptyListOf(s_cases).Resize(6).ToArbitrary(), cases =>
    {
        Formula planned = Planned(cases[0].Superfat, cases[0].Alkali, [.. cases.Select((c, i) => c.Fat.Weighing(Mass.FromGrams(50 + (37 * i))))]);
        if (!planned.Plan().Balance.CanBeWeighed)
            return true;
        Formula truth = planned with { Fats = [.. planned.Fats.Select((f, i) => True(f.Fat, f.Fat.Saponification!.Value.MilligramsKohPerGram * (1 + cases[i].Fraction)).Weighing(f.Mass))], Alkali = AlkaliPlan.Weighed(planned.Plan().Alkalis[0].Alkali.Weighing(planned.Balance().AlkaliAsWeighed)) };
        return truth.Balance().SuperfatOfAllFat!.Value.DecimalFractions >= (cases[0].Superfat / 100) - 1e-9;
    });

    private static double TrueSuperfat((Fat Fat, double Fraction, double Superfat, Alkali Alkali) c, double truth)
    {
        Formula planned = Planned(c.Superfat, c.Alkali, c.Fat.Weighing(Mass.FromGrams(500)));
        Formula real = planned with { Fats = [True(c.Fat, truth).Weighing(Mass.FromGrams(500))], Alkali = AlkaliPlan.Weighed(c.Alkali.Weighing(planned.Balance().AlkaliAsWeighed)) };
        return real.Balance().SuperfatOfAllFat!.Value.DecimalFractions;
    }

    private static Fat True(Fat fat, double koh) => fat.WithLot(new() { Name = "true", Source = "nature", Saponification = SaponificationValue.FromMilligramsKohPerGram(Math.Min(1000, koh)) });

    private static Formula Planned(double superfat, Alkali alkali, params FatPortion[] fats) => new("Planned")
    {
        Fats = [.. fats],
        Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(superfat), alkali),
        Liquids = LiquidPlan.TotalWater(Mass.FromGrams(600)),
    };
}
