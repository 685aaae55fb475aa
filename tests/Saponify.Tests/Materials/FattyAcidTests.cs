using Saponify.Tests.Support;

namespace Saponify.Tests.Materials;

/// <summary>Single acids, reckoned from formula and atomic masses: C 12.011, H 1.008, O 15.999, Na 22.990, K 39.098, I 126.90 (conventional values, rounded).</summary>
public class FattyAcidTests
{
    private static readonly FattyAcid s_oleic = FattyAcid.FromShorthand("C18:1");

    [Theory]
    [InlineData("C4:0", 88.106)]       // C4H8O2
    [InlineData("C12:0", 200.322)]     // C12H24O2
    [InlineData("C18:1", 282.468)]     // C18H34O2
    [InlineData("C18:1-OH", 298.467)]  // C18H34O3
    [InlineData("C18:3-conj", 278.436)] // C18H30O2
    [InlineData("C22:6", 328.496)]     // C22H32O2
    public void MolarMass_FollowsFromTheFormula(string shorthand, double expected) =>
        Assert.Equal(expected, FattyAcid.FromShorthand(shorthand).MolarMass.GramsPerMole, 3);

    [Fact]
    public void Oleic_AsTriolein_AsSoap_AndItsTwoCharacteristicValues()
    {
        // triolein C57H104O6
        double triolein = (57 * 12.011) + (104 * 1.008) + (6 * 15.999);
        Assert.Equal(triolein, s_oleic.TriglycerideMolarMass.GramsPerMole, 6);
        Assert.Equal(304.450, s_oleic.SoapMolarMass(AlkaliKind.SodiumHydroxide).GramsPerMole, 6);
        Assert.Equal(320.558, s_oleic.SoapMolarMass(AlkaliKind.PotassiumHydroxide).GramsPerMole, 6);
        Assert.Throws<ArgumentOutOfRangeException>(() => s_oleic.SoapMolarMass((AlkaliKind)7));
        Assert.Equal(3 * 56105 / triolein, s_oleic.SaponificationOfTriglyceride.MilligramsKohPerGram, 6);
        Assert.Equal(56105 / 282.468, s_oleic.SaponificationOfAcid.MilligramsKohPerGram, 6);
        Assert.Equal(300 * 253.80 / triolein, s_oleic.IodineValueOfTriglyceride.GramsPer100Grams, 6);
        Assert.Equal(25380 / 282.468, s_oleic.IodineValueOfAcid.GramsPer100Grams, 6);
        // linolenic takes three times the iodine
        Assert.Equal(3 * 25380 / 278.436, FattyAcid.FromShorthand("C18:3").IodineValueOfAcid.GramsPer100Grams, 6);
    }

    [Fact]
    public void Kinds_AreToldApart()
    {
        Assert.Equal(["C18:1-OH"], FattyAcid.All.Where(a => a.IsHydroxy).Select(a => a.Shorthand));
        Assert.Equal(["C18:3-conj"], FattyAcid.All.Where(a => a.IsConjugated).Select(a => a.Shorthand));
        Assert.Equal(FattyAcid.All.Where(a => a.Shorthand.EndsWith(":0", StringComparison.Ordinal)), FattyAcid.All.Where(a => a.IsSaturated));
    }

    /// <summary>Trivial names as organic chemistry has them (from memory).</summary>
    [Theory]
    [InlineData("C8:0", "caprylic")]
    [InlineData("C10:0", "capric")]
    [InlineData("C12:0", "lauric")]
    [InlineData("C14:0", "myristic")]
    [InlineData("C16:0", "palmitic")]
    [InlineData("C18:0", "stearic")]
    [InlineData("C18:1", "oleic")]
    [InlineData("C18:1-OH", "ricinoleic")]
    [InlineData("C18:2", "linoleic")]
    [InlineData("C18:3", "linolenic")]
    [InlineData("C20:0", "arachidic")]
    [InlineData("C22:0", "behenic")]
    [InlineData("C22:1", "erucic")]
    public void Names_AreTheTrivialOnes(string shorthand, string name) => Assert.Equal(name, FattyAcid.FromShorthand(shorthand).Name);

    /// <summary>Factors of the iodine value calculated from a composition. Source: aocs-cd-1c-85; beyond its six acids one iodine molecule for each double bond.</summary>
    [Theory]
    [InlineData("C16:1", 95.0, 99.76)]
    [InlineData("C18:1", 86.0, 89.86)]
    [InlineData("C18:2", 173.2, 181.0)]
    [InlineData("C18:3", 261.6, 273.5)]
    [InlineData("C20:1", 78.5, 81.75)]
    [InlineData("C22:1", 72.3, 74.97)]
    [InlineData("C16:0", 0, 0)]
    [InlineData("C18:1-OH", 300 * 253.80 / ((3 * 298.467) + 38.049), 25380 / 298.467)]
    [InlineData("C22:6", 1800 * 253.80 / ((3 * 328.496) + 38.049), 6 * 25380 / 328.496)]
    public void Iodine_OfAPureProfile_IsTheFactorOfItsAcid(string shorthand, double asTriglyceride, double asFreeAcid)
    {
        FattyAcidProfile profile = FattyAcidProfile.Of((FattyAcid.FromShorthand(shorthand), Ratio.FromPercent(100)));
        Assert.Equal(asTriglyceride, profile.IodineValueAsTriglyceride.GramsPer100Grams, 6);
        Assert.Equal(asFreeAcid, profile.IodineValueAsFreeAcid.GramsPer100Grams, 6);
    }

    [Fact]
    public void Acids_EqualOnlyThemselves_AndComeByLengthAndDoubleBonds()
    {
        EqualityContract.Test(s_oleic, s_oleic, FattyAcid.FromShorthand("C18:2"));
        Assert.NotEqual(s_oleic.GetHashCode(), FattyAcid.FromShorthand("C18:2").GetHashCode());
        Assert.True(s_oleic.CompareTo(null) > 0);
        Assert.True(s_oleic.CompareTo(FattyAcid.FromShorthand("C18:2")) < 0);
        Assert.Equal("C18:1", s_oleic.ToString());
    }

    [Fact]
    public void Unknown_IsRefusedWithTheKnownOnes()
    {
        ArgumentException fault = Assert.Throws<ArgumentException>(() => FattyAcid.FromShorthand("C19:7"));
        Assert.StartsWith("\"C19:7\" is no fatty acid of the library. Known: C4:0, C6:0,", fault.Message, StringComparison.Ordinal);
        Assert.False(FattyAcid.TryFromShorthand("C19:7", out _));
        Assert.Throws<ArgumentNullException>(() => FattyAcid.TryFromShorthand(null!, out _));
    }
}
