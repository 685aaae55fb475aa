namespace Saponify.PublishedValues;

/// <summary>School and textbook exercises about glycerides of known acids.</summary>
public class SimpleTriglycerideTests
{
    /// <summary>Theory: C 12.011, H 1.008, O 15.999, K 39.098; one decimal printed.</summary>
    [Theory]
    [InlineData("C12:0", 263.4)]
    [InlineData("C16:0", 208.5)]
    [InlineData("C18:0", 188.8)]
    [InlineData("C18:1", 190.1)]
    [InlineData("C18:2", 191.4)]
    [InlineData("C4:0", 556.7)]
    public void SaponificationValue_OfATriglyceride_IsThatOfTheory(string shorthand, double expected)
    {
        Given.Near(expected, FattyAcid.FromShorthand(shorthand).SaponificationOfTriglyceride.MilligramsKohPerGram, 0.05);
        // the same by the path that a fat takes
        Given.Near(expected, FattyAcidProfile.Of((FattyAcid.FromShorthand(shorthand), Ratio.FromPercent(100))).SaponificationAsTriglyceride(Ratio.Zero).MilligramsKohPerGram, 0.05);
    }

    /// <summary>Theory with I 126.904, which is 3.2e-5 above our 126.90; one decimal printed.</summary>
    [Theory]
    [InlineData("C18:1", 86.0)]
    [InlineData("C18:2", 173.2)]
    [InlineData("C18:3", 261.6)]
    [InlineData("C22:1", 72.3)]
    public void IodineValue_OfATriglyceride_IsThatOfTheory(string shorthand, double expected) =>
        Given.Near(expected, FattyAcid.FromShorthand(shorthand).IodineValueOfTriglyceride.GramsPer100Grams, 0.05 + (3.2e-5 * expected));

    /// <summary>
    /// Source: Polish school chemistry portal Interklasa, worked example 1: which of four glycerides (806, 834, 862, 890 g/mol) has the
    /// largest saponification value? Printed answer: the lightest. Values 3 x 56.105/M with these whole numbers: 208.8, 201.8, 195.3, 189.1.
    /// Tolerance: the whole numbers (C 12, H 1, O 16) are 0.17 % below the molar masses, and half of the last digit.
    /// </summary>
    [Fact]
    public void SaponificationValue_OfFourGlycerides_FallsWithMolarMass()
    {
        double[] expected = [208.8, 201.8, 195.3, 189.1];
        double[] actual = [.. Enumerable.Range(0, 4).Select(PalmitoStearin)];
        Assert.Equal(actual.OrderDescending(), actual);
        for (int i = 0; i < 4; i++)
            Given.Near(expected[i], actual[i], 0.05 + (0.0018 * expected[i]));
    }

    /// <summary>
    /// Source: Vietnamese drill with published solution: a fat is the triester of one acid and holds the same acid free; saponification
    /// value 208.77, acid value 7. Printed answer: palmitic acid (R = 211). KOH 56 there moves both values by 0.2 %: 0.4 mg/g.
    /// </summary>
    [Fact]
    public void Acid_OfAFatWithKnownSaponificationAndAcidValue_IsPalmitic()
    {
        string[] fitting = [.. FattyAcid.All.Where(a => Math.Abs(WithFreeAcid(a, acidValue: 7) - 208.77) < 0.4).Select(a => a.Shorthand)];
        Assert.Equal(["C16:0"], fitting);
    }

    /// <summary>
    /// Source: Hoa hoc 12 (Vietnamese national textbook, grade 12), exercise 5, p. 16: tristearin for 720 kg of sodium stearate.
    /// Printed: 698.05 kg, with 306 and 890 g/mol. The true masses 306.466 and 891.501 are both larger by 0.16 %, apart by 0.02 %; half of the last digit.
    /// </summary>
    [Fact]
    public void Triglyceride_ForAMassOfSoap_FollowsFromTheMolarMasses()
    {
        FattyAcid stearic = FattyAcid.FromShorthand("C18:0");
        double moles = 720 / (3 * stearic.SoapMolarMass(AlkaliKind.SodiumHydroxide).GramsPerMole);
        Given.Near(698.05, moles * stearic.TriglycerideMolarMass.GramsPerMole, 0.005 + (0.0002 * 698.05));
    }

    /// <summary>A glyceride of so many stearic and, for the rest of three, palmitic acids.</summary>
    private static double PalmitoStearin(int stearic)
    {
        (FattyAcid light, FattyAcid heavy) = (FattyAcid.FromShorthand("C16:0"), FattyAcid.FromShorthand("C18:0"));
        (double palmitate, double stearate) = ((3 - stearic) * light.MolarMass.GramsPerMole, stearic * heavy.MolarMass.GramsPerMole);
        double sum = palmitate + stearate;
        FattyAcidProfile profile = FattyAcidProfile.Of((light, Ratio.FromDecimalFractions(palmitate / sum)), (heavy, Ratio.FromDecimalFractions(stearate / sum)));
        return profile.SaponificationAsTriglyceride(Ratio.Zero).MilligramsKohPerGram;
    }

    private static double WithFreeAcid(FattyAcid acid, double acidValue)
    {
        double free = acidValue / acid.SaponificationOfAcid.MilligramsKohPerGram;
        return (free * acid.SaponificationOfAcid.MilligramsKohPerGram) + ((1 - free) * acid.SaponificationOfTriglyceride.MilligramsKohPerGram);
    }
}
