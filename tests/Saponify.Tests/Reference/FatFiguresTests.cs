using System.Globalization;

namespace Saponify.Tests.Reference;

/// <summary>The figures of every fat against each other.</summary>
public class FatFiguresTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    [Fact]
    public void Outliers_AreExactlyTheOnesWithAReason()
    {
        List<Dictionary<string, string>> explained = CsvText.Table("checks", "outliers.csv");
        Assert.Equal(explained.Select(r => $"{r["fat"]} {r["check"]}"), FatChecks.Outliers().Select(o => $"{o.Fat} {o.Check}"));
        Assert.All(explained, r => Assert.InRange(r["reason"].Length, 20, 300));
    }

    [Fact]
    public void Used_LiesInItsRange_BelowTheMiddleAndBelowTheAcids()
    {
        int seen = 0;
        foreach (Fat fat in s_pantry.Fats.Where(f => f.Saponification is not null))
        {
            (double low, double used, double high) = (fat.Saponification!.Low!.Value.MilligramsKohPerGram, fat.Saponification.Value.MilligramsKohPerGram, fat.Saponification.High!.Value.MilligramsKohPerGram);
            Assert.True(low <= used && used <= high, fat.Id);
            if (fat.Class == FatClass.Wax)
                continue;
            if (fat.Figures.Saponification is { } published)
            {
                Assert.True(used <= published.Value.MilligramsKohPerGram + 1e-9, fat.Id);
                Assert.Equal(Math.Min(published.Low?.MilligramsKohPerGram ?? used, used), low, 9);
            }
            if (fat.Profile is { IsPartial: false })
                Assert.True(used <= FatChecks.Computed(fat) + 1e-9, fat.Id);
            seen++;
        }
        Assert.InRange(seen, 90, 200);
    }

    [Fact]
    public void Profiles_AreScaledTo100_AndKeepTheirRawSum()
    {
        foreach (Fat fat in s_pantry.Fats.Where(f => f.Profile is not null))
        {
            FattyAcidProfile profile = fat.Profile!;
            Assert.Equal(100, FattyAcid.All.Sum(a => profile[a].Percent), 9);
            double raw = fat.Provenance.Where(f => FattyAcid.TryFromShorthand(f.Name, out _)).Sum(f => ((f.Low ?? 0) + (f.High ?? f.Low!.Value)) / 2);
            Assert.Equal(raw, profile.RawSum.Percent, 9);
            Assert.Equal(raw < 93, profile.IsPartial);
            Assert.Equal(raw > 105, profile.IsWide);
        }
        Assert.Equal(["almond-oil", "babassu-oil", "flaxseed-oil", "rapeseed-oil-high-erucic"], s_pantry.Fats.Where(f => f.Profile is { IsWide: true }).Select(f => f.Id));
    }

    [Fact]
    public void PartialProfiles_GiveNoValue()
    {
        string[] partial = [.. s_pantry.Fats.Where(f => f.Profile is { IsPartial: true }).Select(f => f.Id)];
        Assert.Equal(["baobab-oil", "cupuacu-butter", "karanja-oil", "laurel-berry-oil", "neem-oil", "rosehip-seed-oil", "sea-buckthorn-pulp-oil"], partial);
        Assert.All(partial, id => Assert.Null(s_pantry.Fat(id).Saponification));
    }

    [Fact]
    public void NoFat_LosesMoreThanFivePoints_WhereBothRangeAndAcidsAllowIt()
    {
        // a bar of 5 % superfat stays free of spare lye at the low end; what could lose more must need its lot's value
        string[] risky = [.. s_pantry.Fats.Where(f => FatChecks.LowestByBoth(f) is { } low && f.Saponification!.Value.MilligramsKohPerGram > 0 && 1 - (low / f.Saponification.Value.MilligramsKohPerGram) > 0.05).Select(f => f.Id)];
        // the exception is only found inside egg; its low end counts a third of it, the phospholipids, as nothing
        Assert.Equal(["egg-yolk-fat"], risky);
    }

    [Fact]
    public void FatsThatNeedTheirLotsValue_AreTheKnownOnes() => Assert.Equal(
        [
            "avocado-oil", "baobab-oil", "black-cumin-seed-oil", "camelina-oil", "cupuacu-butter", "hydrogenated-coconut-oil", "hydrogenated-rapeseed-oil", "hydrogenated-tallow", "karanja-oil",
            "laurel-berry-oil", "mare-milk-fat", "murumuru-butter", "neem-oil", "nutmeg-butter", "oat-oil", "passion-fruit-seed-oil", "rapeseed-oil-high-erucic", "rosehip-seed-oil", "rosin",
            "sea-buckthorn-pulp-oil", "sea-buckthorn-seed-oil", "shea-butter", "shea-olein", "tamanu-oil", "tucuma-kernel-butter", "ucuuba-butter", "unspecified-vegetable-oil",
        ],
        s_pantry.Fats.Where(f => f.Saponification is null).Select(f => f.Id));

    [Fact]
    public void NothingWithoutAnUnsaponifiableFigure_UsesTheBareValueOfItsAcids()
    {
        // leaving the figure out would mean more lye; a free acid has none to speak of
        string[] bare = [.. FatChecks.WithWholeProfile.Where(f => f.Class == FatClass.Triglyceride && f.Figures.Unsaponifiable is null && f.Saponification is { } used && used.Value.MilligramsKohPerGram > FatChecks.Computed(f) - 0.005).Select(f => f.Id)];
        Assert.Empty(bare);
    }

    [Fact]
    public void ValuesThatRestOnMemory_SayMemory()
    {
        // whatever input moves the value by 1 % or more decides its evidence
        Assert.Equal(Evidence.Memory, s_pantry.Fat("shea-butter-refined").Saponification!.Evidence);
        Assert.Equal(Evidence.Memory, s_pantry.Fat("mowrah-butter").Saponification!.Evidence);
        Assert.Equal(Evidence.Memory, s_pantry.Fat("tallow").Saponification!.Evidence);
        Assert.Equal(Evidence.Computed, s_pantry.Fat("goose-fat").Saponification!.Evidence);
        Assert.Equal(Evidence.Compilation, s_pantry.Fat("olive-oil").Saponification!.Evidence);
        Assert.Contains("memory", s_pantry.Fat("goose-fat").Saponification!.Sources);
    }

    [Theory]
    [InlineData("olive-oil", 0.913 * 0.9982)]       // 0.910 to 0.916 at 20 degC against water of 20 degC
    [InlineData("castor-oil", 0.959 * 0.9970)]      // 0.953 to 0.965 against water of 25 degC
    [InlineData("shea-butter", 0.945)]              // g/mL already
    public void RelativeDensities_AreTurnedIntoGramsPerMillilitre(string id, double expected)
    {
        // source of the density of water: water-density-table
        Assert.Equal(expected, s_pantry.Fat(id).Figures.Density!.Value.GramsPerMilliliter, 6);
    }

    [Fact]
    public void Provenance_HasEveryRowOfTheTables()
    {
        foreach ((string table, string key, Func<string, ValueList<SourcedFigure>> of) in ((string, string, Func<string, ValueList<SourcedFigure>>)[])
            [("fat-figures.csv", "fat", id => s_pantry.Fat(id).Provenance), ("liquid-figures.csv", "liquid", id => s_pantry.Liquid(id).Provenance), ("additive-figures.csv", "additive", id => s_pantry.Additive(id).Provenance)])
        {
            foreach (IGrouping<string, Dictionary<string, string>> rows in CsvText.Table(table).GroupBy(r => r[key]))
            {
                Assert.Equal(
                    rows.Select(r => $"{r["figure"]}|{r["low"]}|{r["high"]}|{r["unit"]}|{r["basis"]}|{r["source"]}|{r["place"]}|{r["evidence"]}|{r["note"]}"),
                    of(rows.Key).Select(f => $"{f.Name}|{f.Low?.ToString(CultureInfo.InvariantCulture)}|{f.High?.ToString(CultureInfo.InvariantCulture)}|{f.Unit}|{f.Basis}|{string.Join(';', f.Sources)}|{f.Place}|{f.Evidence.ToString().ToLowerInvariant()}|{f.Note}"));
            }
        }
    }

    [Fact]
    public void EverySourceOfEveryFigure_IsInReach()
    {
        IEnumerable<string> keys = s_pantry.Fats.SelectMany(f => f.Provenance).Concat(s_pantry.Liquids.SelectMany(l => l.Provenance)).Concat(s_pantry.Additives.SelectMany(a => a.Provenance))
            .Concat(s_pantry.EssentialOils.SelectMany(o => o.Constituents.Select(c => c.Figure))).SelectMany(f => f.Sources)
            .Concat(s_pantry.FragranceAllergens.SelectMany(a => a.Sources)).Concat(s_pantry.Fats.SelectMany(f => f.Saponification?.Sources ?? default));
        Assert.All(keys.Distinct(), key => Assert.Equal(key, s_pantry.Source(key).Key));
    }
}
