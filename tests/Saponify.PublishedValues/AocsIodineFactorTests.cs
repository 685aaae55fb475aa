namespace Saponify.PublishedValues;

/// <summary>
/// Source: AOCS Recommended Practice Cd 1c-85 (reapproved 2009), Calculated Iodine Value, calculations 1 (triglycerides) and
/// 2 (free fatty acids). The factors must be used exactly as printed; a profile of one acid shows its factor times 100.
/// </summary>
public class AocsIodineFactorTests
{
    [Theory]
    [InlineData("C16:1", 0.950, 0.9976)]
    [InlineData("C18:1", 0.860, 0.8986)]
    [InlineData("C18:2", 1.732, 1.810)]
    [InlineData("C18:3", 2.616, 2.735)]
    [InlineData("C20:1", 0.785, 0.8175)]
    [InlineData("C22:1", 0.723, 0.7497)]
    public void IodineValue_OfOneAcid_IsThePrintedFactor(string shorthand, double triglyceride, double freeAcid)
    {
        FattyAcidProfile pure = Pure(shorthand);
        Given.Near(100 * triglyceride, pure.IodineValueAsTriglyceride.GramsPer100Grams, 1e-9);
        Given.Near(100 * freeAcid, pure.IodineValueAsFreeAcid.GramsPer100Grams, 1e-9);
    }

    /// <summary>The printed factors and the atomic weights agree to the last printed digit of the factor (0.0005) and the rounding of iodine (3.6e-5).</summary>
    [Theory]
    [InlineData("C16:1", 0.950)]
    [InlineData("C18:1", 0.860)]
    [InlineData("C18:2", 1.732)]
    [InlineData("C18:3", 2.616)]
    [InlineData("C20:1", 0.785)]
    [InlineData("C22:1", 0.723)]
    public void IodineValue_FromTheAtomicWeights_AgreesWithThePrintedFactor(string shorthand, double factor) =>
        Given.Near(100 * factor, FattyAcid.FromShorthand(shorthand).IodineValueOfTriglyceride.GramsPer100Grams, 0.05 + (3.6e-5 * 100 * factor));

    /// <summary>Acids that the practice leaves out: factors derived the same way apart from the library, three decimals, I 126.90447.</summary>
    [Theory]
    [InlineData("C14:1", 1.062)]
    [InlineData("C17:1", 0.903)]
    [InlineData("C18:1-OH", 0.816)]
    [InlineData("C20:4", 3.201)]
    [InlineData("C20:5", 4.027)]
    [InlineData("C22:6", 4.464)]
    [InlineData("C24:1", 0.669)]
    public void IodineValue_OfAnAcidThePracticeLeavesOut_FollowsFromItsDoubleBonds(string shorthand, double factor) =>
        Given.Near(100 * factor, Pure(shorthand).IodineValueAsTriglyceride.GramsPer100Grams, 0.05 + (3.6e-5 * 100 * factor));

    [Fact]
    public void IodineValue_OfEverySaturatedAcid_IsZero()
    {
        foreach (FattyAcid acid in FattyAcid.All.Where(a => a.IsSaturated))
        {
            Assert.Equal(0, Pure(acid.Shorthand).IodineValueAsTriglyceride.GramsPer100Grams);
            Assert.Equal(0, Pure(acid.Shorthand).IodineValueAsFreeAcid.GramsPer100Grams);
        }
    }

    /// <summary>The equations of the practice for 1 % C16:1, 25 % C18:1, 60 % C18:2, the rest saturated; two decimals printed.</summary>
    [Fact]
    public void IodineValue_OfAMixture_IsTheSumOfThePractice()
    {
        FattyAcidProfile mixture = FattyAcidProfile.Of(Part("C16:1", 1), Part("C18:1", 25), Part("C18:2", 60), Part("C16:0", 14));
        Given.Near(126.37, mixture.IodineValueAsTriglyceride.GramsPer100Grams, 0.005);
        Given.Near(132.06, mixture.IodineValueAsFreeAcid.GramsPer100Grams, 0.005);
    }

    private static FattyAcidProfile Pure(string shorthand) => FattyAcidProfile.Of(Part(shorthand, 100));

    private static (FattyAcid Acid, Ratio Share) Part(string shorthand, double percent) => (FattyAcid.FromShorthand(shorthand), Ratio.FromPercent(percent));
}
