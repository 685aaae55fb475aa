namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    [Fact]
    public void SFY8001_FiguresFromMemory_AreOneFinding_NamingTheFats()
    {
        Formula formula = s_plain with { Fats = [Fat("olive-oil", 500), Fat("tallow", 100), Fat("babassu-oil", 100)] };
        Assert.StartsWith("the saponification values of Babassu oil, Tallow were", Assert.Single(Find("SFY8001", formula)).ToMessage(), StringComparison.Ordinal);
        Limit("SFY8001", grams => s_plain with { Fats = [Fat("olive-oil", 1000 - grams), Fat("tallow", grams)] }, 9.5, 10.5, "least", 2);
        Assert.False(Speaks("SFY8001", s_plain with { Fats = [Fat("olive-oil", 500), Lot("tallow", 200, 196)] }));
        Assert.True(Speaks("SFY8001", s_plain with { Liquids = s_plain.Liquids.HoldingBack(Held("milk-goat", 200)) }));
    }

    [Fact]
    public void SFY8002_FattyAcidsKnownInPart()
    {
        // flaxseed oil is given by wide ranges, hydrogenated castor oil without a profile
        Limit("SFY8002", grams => s_plain with { Fats = [Fat("olive-oil", 1000 - grams), Fat("flaxseed-oil", grams / 2), Fat("hydrogenated-castor-oil", grams / 2)] }, 150, 150.2, "highest", 16);
        Assert.False(Speaks("SFY8002", s_plain with { Fats = [Fat("olive-oil", 500), Fat("beeswax", 200)] }));
    }
}
