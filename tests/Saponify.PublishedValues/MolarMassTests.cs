namespace Saponify.PublishedValues;

/// <summary>
/// Source: IUPAC Commission on Isotopic Abundances and Atomic Weights (CIAAW), abridged standard atomic weights 2021:
/// H 1.0080, C 12.011, O 15.999, Na 22.990, K 39.098, I 126.90. The sums are exact, so the tolerance is that of a double.
/// </summary>
public class MolarMassTests
{
    private const double Exact = 1e-9;

    [Fact]
    public void Ratio_SodiumToPotassiumHydroxide_IsThatOfMolarMasses()
    {
        // 39.997/56.105 = 0.712895; six digits as stated, so half of the last one
        Given.Near(0.712895, SaponificationValue.FromMilligramsKohPerGram(1000).GramsNaohPerGram, 0.5e-6);
        Given.Near(200, SaponificationValue.FromGramsNaohPerGram(0.2 * 0.712895).MilligramsKohPerGram, 200 * 0.5e-6 / 0.712895);
    }

    [Theory]
    [InlineData(false, 39.997)] // 22.990 + 15.999 + 1.0080
    [InlineData(true, 56.105)] // 39.098 + 15.999 + 1.0080
    public void Hydroxide_OneMolarMassWeighed_SuppliesOneMole(bool potassium, double gramsPerMole)
    {
        Alkali alkali = potassium ? Given.PurePotassiumHydroxide : Given.PureSodiumHydroxide;
        LyeBalance balance = Given.Recipe(AlkaliPlan.Weighed(alkali.Weighing(Mass.FromGrams(gramsPerMole))), Given.FatOf(200).Weighing(Mass.FromGrams(1000))).Balance();
        Given.Near(1, balance.HydroxideSupplied.Moles, Exact);
        Given.Near(gramsPerMole, balance.PureAlkali.Grams, Exact);
    }

    [Fact]
    public void Soap_OfEveryAcid_HasTheMetalInPlaceOfOneHydrogen()
    {
        foreach (FattyAcid acid in FattyAcid.All)
        {
            double rest = acid.MolarMass.GramsPerMole - 1.0080;
            Given.Near(rest + 22.990, acid.SoapMolarMass(AlkaliKind.SodiumHydroxide).GramsPerMole, Exact);
            Given.Near(rest + 39.098, acid.SoapMolarMass(AlkaliKind.PotassiumHydroxide).GramsPerMole, Exact);
        }
    }

    [Fact]
    public void Triglyceride_OfEveryAcid_IsThreeAcidsAndGlycerolLessThreeWaters()
    {
        // glycerol C3H8O3 92.094, water 18.015
        foreach (FattyAcid acid in FattyAcid.All)
            Given.Near((3 * acid.MolarMass.GramsPerMole) + 92.094 - (3 * 18.015), acid.TriglycerideMolarMass.GramsPerMole, Exact);
    }

    [Fact]
    public void SaponificationValue_OfEveryAcid_IsOneOrThreeMolesOfPotassiumHydroxide()
    {
        foreach (FattyAcid acid in FattyAcid.All)
        {
            Given.Near(56_105, acid.SaponificationOfAcid.MilligramsKohPerGram * acid.MolarMass.GramsPerMole, 1e-6);
            Given.Near(168_315, acid.SaponificationOfTriglyceride.MilligramsKohPerGram * acid.TriglycerideMolarMass.GramsPerMole, 1e-6);
        }
    }

    [Fact]
    public void IodineValue_OfEveryAcid_IsOneIodineMoleculeForEachDoubleBond()
    {
        // I2 253.80; iodine value is per 100 g
        foreach (FattyAcid acid in FattyAcid.All)
        {
            Given.Near(25_380 * acid.DoubleBonds, acid.IodineValueOfAcid.GramsPer100Grams * acid.MolarMass.GramsPerMole, 1e-6);
            Given.Near(76_140 * acid.DoubleBonds, acid.IodineValueOfTriglyceride.GramsPer100Grams * acid.TriglycerideMolarMass.GramsPerMole, 1e-6);
        }
    }
}
