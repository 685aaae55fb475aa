namespace Saponify.Tests.Reference;

/// <summary>Look-up in the reference tables.</summary>
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
    [InlineData("peanut-oil", "groundnut oil")]
    [InlineData("flaxseed-oil", "linseed oil")]
    [InlineData("olive-oil", "OLIVE-OIL")]
    public void Fat_IsFoundByAlias_InAnyCase(string id, string name) => Assert.Equal(id, s_pantry.Fat(name).Id);

    [Fact]
    public void Unknown_NamesTheNearest()
    {
        KeyNotFoundException fault = Assert.Throws<KeyNotFoundException>(() => s_pantry.Fat("cocconut-oil"));
        Assert.Contains("Nearest: coconut-oil", fault.Message, StringComparison.Ordinal);
        Assert.Throws<KeyNotFoundException>(() => s_pantry.Liquid("zzzzzzzz"));
        Assert.Throws<KeyNotFoundException>(() => s_pantry.Additive("olive-oil"));
        Assert.Throws<ArgumentNullException>(() => s_pantry.Fat(null!));
        Assert.False(s_pantry.TryGetFat("unobtainium", out _));
    }

    [Fact]
    public void Lists_AreSortedById()
    {
        Assert.Equal(s_pantry.Fats.Select(f => f.Id).Order(StringComparer.Ordinal), s_pantry.Fats.Select(f => f.Id));
        Assert.Equal(s_pantry.Liquids.Select(f => f.Id).Order(StringComparer.Ordinal), s_pantry.Liquids.Select(f => f.Id));
        Assert.Equal(s_pantry.Additives.Select(f => f.Id).Order(StringComparer.Ordinal), s_pantry.Additives.Select(f => f.Id));
    }

    [Fact]
    public void EverySourceOfAMaterial_IsInTheTableOfSources()
    {
        IEnumerable<string> keys = s_pantry.Fats.SelectMany(f => f.Saponification?.Sources ?? default)
            .Concat(s_pantry.Liquids.SelectMany(l => l.Sources)).Concat(s_pantry.Additives.SelectMany(a => a.Sources));
        Assert.All(keys.Distinct(), key => Assert.Equal(key, s_pantry.Source(key).Key));
    }

    [Fact]
    public void PlainWater_InTheTables_IsTheLibrarysOwn() => Assert.Equal(Contents.PureWater, s_pantry.Liquid("water").Contents);
}
