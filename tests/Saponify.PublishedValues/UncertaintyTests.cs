namespace Saponify.PublishedValues;

/// <summary>Standard uncertainties that published guides work out, found again in the margin of a plan with the same range.</summary>
public class UncertaintyTests
{
    /// <summary>
    /// Source: JCGM 100:2008, 4.3.7, example 1 (figures from memory, arithmetic verified): a value that is known to lie within 16.52 +/- 0.40 has
    /// u squared = 0.40^2/3 = 0.0533 and u = 0.23. The same figures as a saponification value of 165.2 +/- 4.0 of the only fat.
    /// </summary>
    [Fact]
    public void RectangularSpread_OfASaponificationValue_IsThatOfTheGuide()
    {
        Fat fat = new("exercise-fat", "exercise fat", FatClass.Triglyceride, new()
        {
            Saponification = new(Sv(165.2), Evidence.Handbook, ["the exercise"]) { Low = Sv(161.2), High = Sv(169.2) },
        });
        Margin margin = Given.Recipe(Given.PureFor(superfatPercent: 5), fat.Weighing(Mass.FromGrams(1000))).Plan().Margin(scale: null)!;
        double perUnit = (1 - margin.BestEstimate.DecimalFractions) / 165.2;
        double u = margin.StandardUncertainty.DecimalFractions / perUnit / 10;
        Given.Near(0.0533, u * u, 0.0001);
        Given.Near(0.23, u, 0.005);
    }

    /// <summary>Source: Eurachem/CITAC CG 4, example A2, table A2.1: a purity stated as 1.0000 +/- 0.0005 has u = 0.0005/sqrt(3) = 0.00029. A purity can't exceed 1 here, so the same range lies 0.0005 lower.</summary>
    [Fact]
    public void RectangularSpread_OfAPurity_IsThatOfTheGuide()
    {
        Alkali alkali = Alkali.SodiumHydroxide(Purity.Between(Ratio.FromPercent(99.9), Ratio.FromPercent(100)));
        Margin margin = Given.Recipe(AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), alkali), Given.FatOf(190).Weighing(Mass.FromGrams(1000))).Plan().Margin(scale: null)!;
        double perPurity = (1 - margin.BestEstimate.DecimalFractions) / 0.9995;
        Given.Near(0.00029, margin.StandardUncertainty.DecimalFractions / perPurity, 0.000005);
    }

    private static SaponificationValue Sv(double value) => SaponificationValue.FromMilligramsKohPerGram(value);
}
