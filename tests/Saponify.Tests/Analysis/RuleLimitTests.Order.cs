namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    private static readonly Formula s_rich = s_plain with
    {
        Fats = [Fat("olive-oil", 400), Fat("tallow", 150), Fat("stearic-acid-50", 20), Fat("almond-oil", 100), Fat("coconut-oil", 150)],
        Liquids = s_plain.Liquids.DissolvingInFrozen(s_pantry.Liquid("almond-drink-unsweetened"), Temperature.FromDegreesCelsius(-18)).HoldingBack(Held("milk-goat", 30)),
        Additives = [Dose("honey", 1), Dose("kaolin", 1)],
    };

    private static BatchSetup Without(params string[] excluded) => new() { Excluded = [.. excluded] };

    private static string[] Places(string id, BatchSetup setup) => [.. Find(id, s_rich, setup).Select(d => d.Path.ToString())];

    [Fact]
    public void SFY6001_Animals_AreFoundWhereverTheyGoIn()
    {
        Assert.Equal(["additives[honey]", "fats[tallow]", "liquids.heldBack[milk-goat]"], Places("SFY6001", Without(" Animal ")).Order(StringComparer.Ordinal));
        Assert.Equal(["fats[stearic-acid-50]"], Places("SFY6004", Without("animal")));
        Assert.Equal(["animals", "animals", "insects"], Find("SFY6001", s_rich, Without("animal")).Select(d => d.Args.Single(a => a.Name == "origin").Text).Order(StringComparer.Ordinal));
        Assert.Empty(Places("SFY6001", Without("milk")));
        Assert.Empty(Find("SFY6001", s_rich));
    }

    [Fact]
    public void SFY6001_Fixes_LeaveThemOut_OneAfterTheOther()
    {
        Formula vegan = FormulaAnalyzer.Default.ApplyFixes(s_rich, d => d.Id == "SFY6001" && d.Fixes.Count > 0 ? d.Fixes[0] : null, Without("animal"));
        Assert.Empty(Find("SFY6001", vegan, Without("animal")));
        Assert.Equal((4, 0, 1), (vegan.Fats.Count, vegan.Liquids.HeldBack.Count, vegan.Additives.Count));
    }

    [Fact]
    public void SFY6001_WhatTheSoapCannotDoWithout_HasNoFix()
    {
        Formula tallow = s_plain with { Fats = [Fat("tallow", 700)] };
        Assert.Empty(Assert.Single(Find("SFY6001", tallow, Without("animal"))).Fixes);
        Formula weighed = s_rich with { Alkali = AlkaliPlan.Weighed(Alkali.SodiumHydroxide(Ratio.FromPercent(98)).Weighing(Mass.FromGrams(110))) };
        Assert.Empty(Find("SFY6001", weighed, Without("animal")).Single(d => d.Path.ToString() == "fats[tallow]").Fixes);
    }

    [Fact]
    public void SFY6002_AllergenClasses_OfMaterialsAndOfTheFatInLiquids()
    {
        Assert.Equal(["fats[almond-oil]", "liquids.lyeLiquid"], Places("SFY6002", Without("tree-nut")));
        Formula water = FormulaAnalyzer.Default.ApplyFixes(s_rich, d => d.Id == "SFY6002" && d.Fixes.Count > 0 ? d.Fixes[0] : null, Without("Tree-Nut"));
        Assert.Equal(("water", false), (water.Liquids.LyeLiquid.Liquid.Id, water.Fats.Any(f => f.Fat.Id == "almond-oil")));
        Liquid own = new("own", "Own drink", new() { Water = Ratio.FromPercent(95), Fat = Ratio.FromPercent(3), FatKind = s_pantry.Fat("hazelnut-oil") });
        Assert.Single(Find("SFY6002", s_plain with { Liquids = s_plain.Liquids.HoldingBack(own.Weighing(Mass.FromGrams(20))) }, Without("tree-nut")));
    }

    /// <summary>A creamer of milk with nut oil belongs to both classes, and who excludes the oil, or animals, means what is inside too; so wherever it goes in.</summary>
    [Theory]
    [InlineData("hazelnut-oil", "milk", "SFY6002", "milk")]
    [InlineData("hazelnut-oil", "tree-nut", "SFY6002", "tree-nut")]
    [InlineData("hazelnut-oil", "Hazelnut oil", "SFY6003", null)]
    [InlineData("tallow", "animal", "SFY6001", null)]
    [InlineData("tallow", "peanut", null, null)]
    public void SFY6001_To_SFY6004_SeeTheFatInside(string inside, string excluded, string? id, string? allergen)
    {
        Contents contents = new() { Water = Ratio.FromPercent(60), Fat = Ratio.FromPercent(30), FatKind = s_pantry.Fat(inside) };
        Liquid creamer = new Liquid("own", "Own creamer", contents) with { Allergen = "milk" };
        Additive powder = new Additive("own", "Own powder", AdditiveKind.Other, Stage.Trace, contents) with { Allergen = "milk" };
        Formula[] formulas =
        [
            s_plain with { Liquids = s_plain.Liquids.DissolvingIn(creamer) }, s_plain with { Liquids = s_plain.Liquids.HoldingBack(creamer.Weighing(Mass.FromGrams(20))) },
            s_plain with { Additives = [powder.ShareOfFats(Ratio.FromPercent(1))] },
        ];
        foreach (Formula formula in formulas)
        {
            Diagnostic[] found = [.. FormulaAnalyzer.Default.Analyze(formula, Without(excluded)).Diagnostics.Where(d => d.Id.StartsWith("SFY60", StringComparison.Ordinal))];
            Assert.Equal(id is null ? [] : [id], found.Select(d => d.Id));
            Assert.Equal(allergen, found.SelectMany(d => d.Args).FirstOrDefault(a => a.Name == "allergen").Text);
        }
    }

    [Fact]
    public void SFY6003_AFatOfNothing_IsNoFault()
    {
        Assert.Empty(Find("SFY6003", s_plain with { Fats = [.. s_plain.Fats, Fat("lard", 0)] }, Without("lard")));
        Assert.Empty(Find("SFY6003", s_plain with { Liquids = s_plain.Liquids.HoldingBack(Held("oat-drink", 0)) }, Without("oat-drink")));
    }

    [Fact]
    public void SFY6003_Materials_ByIdNameOrAlias()
    {
        Assert.Equal(["additives[kaolin]"], Places("SFY6003", Without("kaolin")));
        Assert.Equal(["additives[kaolin]"], Places("SFY6003", Without("White Clay")));
        Assert.Equal(["fats[almond-oil]", "liquids.lyeLiquid"], Places("SFY6003", Without("almond oil")));
        Assert.Empty(Places("SFY6003", Without("palm-oil")));
    }

    [Fact]
    public void OneIngredient_IsExcludedOnce()
    {
        BatchSetup all = Without("animal", "milk", "milk-goat");
        Assert.Contains("liquids.heldBack[milk-goat]", Places("SFY6001", all));
        Assert.Empty(Places("SFY6002", all));
        Assert.Empty(Places("SFY6003", all));
        Assert.Equal(["liquids.heldBack[milk-goat]"], Places("SFY6002", Without("milk", "milk-goat")));
    }

    [Fact]
    public void SFY6004_OwnMaterials_SayNothingOfTheirOrigin()
    {
        Additive own = new("own", "Own powder", AdditiveKind.Other, Stage.Trace, Contents.None);
        Formula formula = s_plain with { Additives = [own.ShareOfFats(Ratio.FromPercent(1))] };
        Assert.Equal("NotStated", Assert.Single(Find("SFY6004", formula, Without("animal"))).Template.Name);
        Assert.Empty(Find("SFY6004", s_plain with { Additives = [(own with { Origin = "mineral" }).ShareOfFats(Ratio.FromPercent(1))] }, Without("animal")));
        Assert.Empty(Find("SFY6004", formula, Without("milk")));
    }

    [Theory]
    [InlineData("Vegan", "animal")]
    [InlineData("dairy", "milk")]
    [InlineData("gluten", "wheat, barley and oat")]
    public void SFY6005_WordsThatExcludeNothing_AreToldTheirClass(string word, string classes) =>
        Assert.Equal($"\"{word}\" excludes nothing; write {classes}", Assert.Single(Find("SFY6005", s_plain, Without(word))).ToMessage());

    [Theory]
    [InlineData("animal")]
    [InlineData("tree-nut")]
    [InlineData("lard")]
    public void SFY6005_ClassesAndMaterials_AreNotDoubted(string word) => Assert.Empty(Find("SFY6005", s_plain, Without(word)));
}
