using System.Diagnostics;
using Saponify.Tests.Support;

namespace Saponify.Tests.Reference;

/// <summary>Look-up and filters.</summary>
public class PantryTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    [Fact]
    public void Reference_IsSharedAndLoadedOnce()
    {
        Pantry[] seen = new Pantry[16];
        Parallel.For(0, seen.Length, i => seen[i] = Pantry.Reference);
        Assert.All(seen, p => Assert.Same(s_pantry, p));
        Assert.Equal("2026.11", s_pantry.Version);
    }

    [Theory]
    [InlineData("maize-oil", "corn oil")]
    [InlineData("maize-oil", "Maize_Oil")]
    [InlineData("canola-oil", "rapeseed oil")]
    [InlineData("peanut-oil", "groundnut oil")]
    [InlineData("flaxseed-oil", "linseed oil")]
    [InlineData("olive-oil", "OLIVE-OIL")]
    [InlineData("olive-oil", "  Olive   Oil ")]
    [InlineData("olive-oil", "olea europaea fruit oil")]
    [InlineData("shea-butter", "Karité butter")]
    [InlineData("shea-butter", "karite\u0301 butter")]
    [InlineData("palm-kernel-oil", "Palm Kernel Oil")]
    public void Fat_IsFound_WithoutCaseAccentsAndHyphens(string id, string name) => Assert.Equal(id, s_pantry.Fat(name).Id);

    [Theory]
    [InlineData("creme-fraiche-light", "CREME FRAICHE")]
    [InlineData("creme-fraiche-light", "crème fraîche")]
    [InlineData("cucumber-puree", "cucumber purée, with peel")]
    [InlineData("milk-goat", "goats milk")]
    [InlineData("milk-goat", "Goat’s Milk")]
    public void Liquid_IsFound_WithoutCaseAccentsAndApostrophes(string id, string name) => Assert.Equal(id, s_pantry.Liquid(name).Id);

    [Theory]
    [InlineData("vanillin", "121-33-5")]
    [InlineData("citric-acid-monohydrate", "Citric acid")]
    public void Additive_IsFound_ByNumberAndAlias(string id, string name) => Assert.Equal(id, s_pantry.Additive(name).Id);

    [Fact]
    public void LookUp_IsTheSameInEveryCulture()
    {
        string[] names = ["LIQUID", "OLIVE-OIL", "Illipe butter", "ILLIPE-BUTTER", "kari̇te butter", "İllipe Butter"];
        bool[] expected = [.. names.Select(n => s_pantry.TryGetFat(n, out _))];
        Assert.Equal([false, true, true, true, true, true], expected);
        foreach (string culture in InCulture.Names)
            Assert.Equal(expected, InCulture.Run(culture, () => names.Select(n => s_pantry.TryGetFat(n, out _)).ToArray()));
    }

    [Fact]
    public void AListedName_ThatSeveralShare_LeadsToNone_AndNamesThem()
    {
        Assert.False(s_pantry.TryGetFat("Helianthus Annuus Seed Oil", out _));
        KeyNotFoundException fault = Assert.Throws<KeyNotFoundException>(() => s_pantry.Fat("Helianthus Annuus Seed Oil"));
        Assert.Contains("sunflower-oil, sunflower-oil-high-oleic, sunflower-oil-mid-oleic", fault.Message, StringComparison.Ordinal);
        Assert.Throws<KeyNotFoundException>(() => s_pantry.Fat("Butyrospermum Parkii Butter"));
    }

    [Fact]
    public void Unknown_NamesTheNearest()
    {
        KeyNotFoundException fault = Assert.Throws<KeyNotFoundException>(() => s_pantry.Fat("cocconut-oil"));
        Assert.Contains("Nearest: coconut-oil", fault.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("Nearest", Assert.Throws<KeyNotFoundException>(() => s_pantry.Liquid("zzzzzzzz")).Message, StringComparison.Ordinal);
        Assert.Throws<KeyNotFoundException>(() => s_pantry.Additive("olive-oil"));
        Assert.Throws<ArgumentNullException>(() => s_pantry.Fat(null!));
        Assert.Throws<ArgumentNullException>(() => s_pantry.TryGetFat(null!, out _));
        Assert.False(s_pantry.TryGetFat("unobtainium", out _));
        Assert.False(s_pantry.TryGetFat("", out _));
        Assert.False(s_pantry.TryGetFat("---", out _));
    }

    [Fact]
    public void Suggestions_StayQuick_OnHostileNames()
    {
        // ten thousand names as long as they are looked at, each as near as possible without being one: what a file of 1 MB can hold
        Random random = new(4);
        string[] names = [.. Enumerable.Range(0, 10_000).Select(i => new string([.. s_pantry.Fats[i % s_pantry.Fats.Count].Id.OrderBy(_ => random.Next())]).PadRight(20, 'o') + random.Next(10))];
        Stopwatch watch = Stopwatch.StartNew();
        int found = names.Sum(n => s_pantry.NearestFats(n).Count);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(20), $"{watch.Elapsed}");
        Assert.InRange(found, 0, names.Length);
        Assert.Empty(s_pantry.NearestFats(new string('o', 1_000_000)));
        Assert.Equal(["olive-oil"], s_pantry.NearestFats("olvie-oil"));
    }

    [Fact]
    public void Lists_AreSortedById()
    {
        Assert.Equal(s_pantry.Fats.Select(f => f.Id).Order(StringComparer.Ordinal), s_pantry.Fats.Select(f => f.Id));
        Assert.Equal(s_pantry.Liquids.Select(f => f.Id).Order(StringComparer.Ordinal), s_pantry.Liquids.Select(f => f.Id));
        Assert.Equal(s_pantry.Additives.Select(f => f.Id).Order(StringComparer.Ordinal), s_pantry.Additives.Select(f => f.Id));
        Assert.Equal(s_pantry.EssentialOils.Select(f => f.Id).Order(StringComparer.Ordinal), s_pantry.EssentialOils.Select(f => f.Id));
        Assert.Equal(s_pantry.FragranceAllergens.Select(f => f.Id).Order(StringComparer.Ordinal), s_pantry.FragranceAllergens.Select(f => f.Id));
        Assert.Equal(s_pantry.Acids.Select(f => f.Id).Order(StringComparer.Ordinal), s_pantry.Acids.Select(f => f.Id));
        Assert.Equal(s_pantry.Sources.Select(f => f.Key).Order(StringComparer.Ordinal), s_pantry.Sources.Select(f => f.Key));
    }

    [Fact]
    public void Filters_NarrowTheList()
    {
        Assert.Equal(s_pantry.Fats, s_pantry.FindFats(new()));
        Assert.Equal(["beeswax", "candelilla-wax", "carnauba-wax", "jojoba-oil", "lanolin"], s_pantry.FindFats(new() { Class = FatClass.Wax }).Select(f => f.Id));
        Assert.Equal(["candelilla-wax", "carnauba-wax", "jojoba-oil"], s_pantry.FindFats(new() { Class = FatClass.Wax, VeganOnly = true }).Select(f => f.Id));
        ValueList<Fat> without = s_pantry.FindFats(new() { WithoutAllergens = ["tree-nut", "milk"] });
        Assert.DoesNotContain(without, f => f.Allergen is "tree-nut" or "milk");
        Assert.Contains(without, f => f.Allergen == "sesame");
        Assert.All(s_pantry.FindFats(new() { AtLeast = Evidence.Handbook }), f => Assert.True(f.Evidence <= Evidence.Handbook));
        Assert.All(s_pantry.FindFats(new() { FitForLye = true }), f => Assert.NotNull(f.Saponification));
        Assert.Equal(["palm-kernel-oil", "palm-kernel-olein", "palm-kernel-stearin"], s_pantry.FindFats(new() { Text = "Kernel PALM" }).Select(f => f.Id));
        Assert.Contains("olive-oil", s_pantry.FindFats(new() { Text = "sodium olivate" }).Select(f => f.Id));
        Assert.All(s_pantry.FindLiquids(new() { VeganOnly = true, WithoutAllergens = ["soy"] }), l => Assert.True(l.IsVegan && l.Allergen != "soy"));
        Assert.Contains("beeswax", s_pantry.Fats.Except(s_pantry.FindFats(new() { VeganOnly = true })).Select(f => f.Id));
        Assert.Contains("honey", s_pantry.Additives.Except(s_pantry.FindAdditives(new() { VeganOnly = true })).Select(f => f.Id));
        // a typing error must not let everything pass
        Assert.Throws<ArgumentException>(() => s_pantry.FindFats(new() { WithoutAllergens = ["nuts"] }));
        Assert.Throws<ArgumentNullException>(() => s_pantry.FindFats(null!));
    }

    [Fact]
    public void AnOriginThatIsNotStated_IsNotVegan()
    {
        Assert.False(Fat.Own("x", "X", SaponificationValue.FromMilligramsKohPerGram(190), "certificate").IsVegan);
        Assert.False(new Liquid("x", "X", Contents.PureWater).IsVegan);
    }

    [Fact]
    public void Acids_AreInReach_ForOwnLiquids() => Assert.Equal((3.0, 0.0), (s_pantry.Acid("citric").Protons, s_pantry.Acid("Citric acid").ProtonsInDoubt));

    [Fact]
    public void PlainWater_InTheTables_IsTheLibrarysOwn() => Assert.Equal(Contents.PureWater, s_pantry.Liquid("water").Contents);
}
