namespace Saponify.Tests.Reference;

/// <summary>Essential oils and fragrance allergens: tables and look-up.</summary>
public class ScentTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    [Theory]
    [InlineData("linalool", "LINALOOL")]
    [InlineData("linalool", "78-70-6")]
    [InlineData("citral", "Geranial")]
    [InlineData("eugenia-caryophyllus-oil", "Eugenia Caryophyllus Bud Oil")]
    [InlineData("rose-ketones", "delta damascone", false)]
    [InlineData("rose-ketones", "Rose ketone 3 (delta-Damascone)")]
    public void Allergen_IsFound_ByNameNumberAndWhatItCovers(string id, string name, bool found = true)
    {
        Assert.Equal(found, s_pantry.TryGetFragranceAllergen(name, out FragranceAllergen? allergen));
        Assert.Equal(found ? id : null, allergen?.Id);
    }

    [Fact]
    public void ANumberThatTwoOilsShare_LeadsToNone()
    {
        // 8028-48-6 stands in the entries of the flower oil and of the peel oil (eu-2023-1545, entries 350 and 351)
        KeyNotFoundException fault = Assert.Throws<KeyNotFoundException>(() => s_pantry.FragranceAllergen("8028-48-6"));
        Assert.Contains("citrus-aurantium-flower-oil, citrus-aurantium-peel-oil", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Listing_CountsThoseToBeNamed()
    {
        Assert.Equal(81, s_pantry.FragranceAllergens.Count(a => !a.IsProhibited));
        Assert.Equal(["butylphenyl-methylpropional", "hydroxyisohexyl-3-cyclohexene-carboxaldehyde"], s_pantry.FragranceAllergens.Where(a => a.IsProhibited).Select(a => a.Id));
        Assert.Equal(26, s_pantry.FragranceAllergens.Count(a => a.Listing == FragranceListing.First26));
        Assert.Equal(s_pantry.FragranceAllergens.Count, s_pantry.FragranceAllergens.Select(a => a.AnnexEntry).Distinct().Count());
    }

    [Fact]
    public void Oil_HasItsConstituents_WithSources()
    {
        EssentialOil clove = s_pantry.EssentialOil("clove oil");
        Assert.Equal((true, 356), (clove.Tints, clove.AnnexEntry));
        OilConstituent eugenol = Assert.Single(clove.Constituents, c => c.Allergen.Id == "eugenol");
        Assert.Equal((75, 88, "ema-clove-2011"), (eugenol.Low.Percent, eugenol.High.Percent, eugenol.Figure.Sources.Single()));
        Assert.Equal("Eugenol 75 to 88 %", eugenol.ToString());
    }

    [Fact]
    public void Oils_HoldNoMoreThanThemselves()
    {
        foreach (EssentialOil oil in s_pantry.EssentialOils)
        {
            Assert.True(oil.Constituents.Sum(c => c.Low.Percent) <= 100, oil.Id);
            Assert.True(oil.Density!.Low <= oil.Density.Value && oil.Density.Value <= oil.Density.High, oil.Id);
            Assert.All(oil.InciSources.Concat(oil.FlashPoint?.Sources ?? default).Concat(oil.Density.Sources), k => Assert.Equal(k, s_pantry.Source(k).Key));
        }
    }
}
