namespace Saponify.PublishedValues;

/// <summary>
/// Published titrations run backwards: a fat with the printed value must take up the alkali that was titrated. Each source counts with
/// its own M(KOH); the ratio to 56.105 is put back, so that only the printed rounding of the value is left as tolerance.
/// </summary>
public class TitrationTests
{
    [Theory]
    // Simmons & Appleton, The Handbook of Soap Manufacture (1908), ch. X, p. 118
    [InlineData(1.8976, 196.6, 0.05, 6.65, 56.1)]
    // Engineering chemistry textbook (public textbook companion no. 1478, title not verified), ch. 3, ex. 3.7.1, 3.7.3, 3.7.4, 3.7.8
    [InlineData(5, 168, 0.5, 15, 56)]
    [InlineData(5, 196, 0.5, 17.5, 56)]
    [InlineData(2.5, 224, 0.5, 10, 56)]
    [InlineData(5, 179.2, 0.05, 16, 56)]
    // Vietnamese drill with published solution: 1 kg of fat and 3.572 L of 1 M KOH
    [InlineData(1000, 200, 0.5, 3572, 56)]
    // Romanian pupils' question page: 20 mL of fat of density 0.88
    [InlineData(17.6, 143.18, 0.005, 45, 56)]
    public void Demand_OfAFatWithThePrintedSaponificationValue_IsTheAlkaliTitrated(double grams, double printed, double halfDigit, double millimoles, double koh)
    {
        double demand = 1000 * Given.DemandOf(Given.FatOf(printed).Weighing(Mass.FromGrams(grams)));
        Given.Near(millimoles, demand * Given.Koh / koh, millimoles * halfDigit / printed);
    }

    /// <summary>Source: Simmons & Appleton (1908), p. 118: saponification equivalent 285.3 g of fat per mole of alkali, cut after one decimal.</summary>
    [Fact]
    public void SaponificationEquivalent_OfTheSameFat_IsThePrintedOne()
    {
        double demand = Given.DemandOf(Given.FatOf(196.6).Weighing(Mass.FromGrams(1.8976)));
        // 0.1 for the cut digit; 0.05 of 196.6 and 56.1 for 56.105 are 0.1 more
        Given.Near(285.3, 1.8976 / demand, 0.2);
    }

    /// <summary>Source: Simmons & Appleton (1908), p. 118: 7.72 % of free acid as oleic, M 282, takes 5.2 mL of 0.1 N; the acid value is 15.3. Both are cut, not rounded.</summary>
    [Fact]
    public void FreeOleicAcid_OfTheSameFat_TakesTheAlkaliTitrated()
    {
        double demand = 1000 * Given.DemandOf(Given.FreeAcid("C18:1").Weighing(Mass.FromGrams(0.0772 * 1.8976)));
        // 0.01 of 7.72 is 0.13 %; 282.468 for 282 is 0.17 %
        Given.Near(0.52, demand, 0.52 * 0.0030);
        Given.Near(15.3, 0.0772 * FattyAcid.FromShorthand("C18:1").SaponificationOfAcid.MilligramsKohPerGram, 0.1);
    }

    /// <summary>
    /// Source: engineering chemistry textbook as above, ex. 3.7.9: 16 g of castor oil (192) in mineral oil take 45 - 31.5 mL of 0.45 N KOH.
    /// Printed: 11.07 % castor oil, saponification value of the blend 21.26.
    /// </summary>
    [Fact]
    public void Demand_OfCastorInMineralOil_IsTheAlkaliTitrated()
    {
        double demand = 1000 * Given.DemandOf(
            Given.FatOf(192, "castor").Weighing(Mass.FromGrams(0.1107 * 16)),
            Given.FatOf(0, "mineral-oil").Weighing(Mass.FromGrams(0.8893 * 16)));
        Given.Near(0.45 * 13.5, demand * Given.Koh / 56, 0.45 * 13.5 * 0.005 / 11.07);
        Given.Near(21.26, demand * Given.Koh / 16, 21.26 * ((0.005 / 11.07) + (0.105 / 56)));
    }

    /// <summary>Source: engineering chemistry textbook as above, ex. 3.7.13: 5 mL of oil, 0.92 g/mL, acid value 0.243, take 2 mL of 0.01 N KOH.</summary>
    [Fact]
    public void Demand_OfAnOilMeasuredByVolume_IsTheAlkaliTitrated()
    {
        FatFigures figures = new() { Density = new(Density.FromGramsPerMilliliter(0.92), Evidence.Measured, ["the exercise"]) };
        Fat oil = new Fat("oil", "Oil", FatClass.Triglyceride, figures)
            .WithLot(new Lot { Name = "exercise", Source = "the exercise", Saponification = SaponificationValue.FromMilligramsKohPerGram(0.243) });
        double demand = 1000 * Given.DemandOf(oil.Pouring(Volume.FromMilliliters(5)));
        Given.Near(0.02, demand * Given.Koh / 56, 0.02 * 0.0005 / 0.243);
    }

    /// <summary>
    /// Source: Hoa hoc 12 (Vietnamese national textbook, grade 12), exercise 4, p. 11: 2.8 g of fat need 3.0 mL of 0.1 M KOH for its free
    /// acid; printed acid value 6 (exact with KOH 56). Only the free acid reacts, which is how the library counts a wax.
    /// </summary>
    [Fact]
    public void FreeAcid_OfAFatWithAcidValue6_TakesTheAlkaliTitrated() =>
        Given.Near(0.3, 1000 * Given.DemandOf(OnlyFreeAcid(6).Weighing(Mass.FromGrams(2.8))) * Given.Koh / 56, 1e-9);

    /// <summary>
    /// Source: Vietnamese drill with published solution: NaOH for the free acid of 15 g of fat with acid value 7. Printed: 0.075 g,
    /// with 40/56 = 0.7143 for 0.7129, which is 0.2 %, and half of the last digit.
    /// </summary>
    [Fact]
    public void SodiumHydroxide_ForTheFreeAcidOfAFat_IsThePrintedMass()
    {
        LyeBalance balance = Given.Recipe(Given.PureFor(superfatPercent: 0), OnlyFreeAcid(7).Weighing(Mass.FromGrams(15))).Balance();
        Given.Near(0.075, balance.AlkaliAsWeighed.Grams, 0.0005);
        Given.Near(0.0749, balance.AlkaliAsWeighed.Grams, 0.00005 + 1e-5);
    }

    private static Fat OnlyFreeAcid(double acidValue)
    {
        SaponificationValue value = SaponificationValue.FromMilligramsKohPerGram(acidValue);
        return new("exercise", "Exercise", FatClass.Wax, new FatFigures { AcidValue = new(value, Evidence.Measured, ["the exercise"]) { Low = value, High = value } });
    }
}
