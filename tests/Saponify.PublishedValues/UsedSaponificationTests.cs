namespace Saponify.PublishedValues;

/// <summary>
/// The value that lye is computed from errs on the side of less lye: never above the middle of the published range, never above what
/// the fatty acids can take up.
/// </summary>
public class UsedSaponificationTests
{
    public static TheoryData<string> WithAcidsAndRange => [.. CodexFatTable.Read.Where(f => f.MeanAcid is not null).Select(f => f.Id)];

    /// <summary>Both worked out from the standard apart from the library. Tolerance: the mean molar mass has two decimals, 0.005/280 of the value.</summary>
    [Theory]
    [MemberData(nameof(WithAcidsAndRange))]
    public void Used_OfACodexFat_IsTheLowerOfThePublishedMiddleAndTheAcids(string id)
    {
        CodexFat codex = CodexFatTable.Of(id);
        Figure<SaponificationValue> used = Pantry.Reference.Fat(id).Saponification!;
        double lower = Math.Min(codex.MiddleOfPublished, codex.FromMeanAcid!.Value);
        Given.Near(lower, used.Value.MilligramsKohPerGram, lower * 0.005 / 200);
        Given.Near(Math.Min(codex.SaponificationLow, lower), used.Low!.Value.MilligramsKohPerGram, lower * 0.005 / 200);
        Assert.True(used.Low <= used.Value);
    }

    /// <summary>
    /// Oils whose published middle is above anything their acids can take up (walnut: any profile inside the acid ranges of CXS 210 has 192.0 to
    /// 192.9 before unsaponifiable matter, the middle of 189 to 198 is 193.5): lye computed from the middle would be too much.
    /// </summary>
    [Theory]
    [InlineData("walnut-oil", 193.5, 192.9)]
    [InlineData("hazelnut-oil", 193.0, 192.1)]
    public void Used_WhereThePublishedMiddleIsOutOfReach_IsBelowWhatTheAcidsCanTakeUp(string id, double middle, double most)
    {
        Fat fat = Pantry.Reference.Fat(id);
        Given.Near(middle, fat.Figures.Saponification!.Value.MilligramsKohPerGram, 1e-9);
        Assert.True(fat.Saponification!.Value.MilligramsKohPerGram < most);
    }

    [Fact]
    public void Used_OfEveryFat_IsNeverAboveThePublishedMiddle()
    {
        int seen = 0;
        foreach (Fat fat in Usable())
        {
            if (fat.Figures.Saponification is not { } published)
                continue;
            seen++;
            double middle = ((published.Low ?? published.Value).MilligramsKohPerGram + (published.High ?? published.Value).MilligramsKohPerGram) / 2;
            Assert.True(fat.Saponification!.Value.MilligramsKohPerGram <= middle + 1e-9, fat.Id);
            Assert.True(fat.Saponification.Low <= published.Low || published.Low is null, fat.Id);
        }
        Assert.True(seen > 50);
    }

    [Fact]
    public void Used_OfEveryFat_IsNeverAboveWhatItsAcidsTakeUp()
    {
        int seen = 0;
        foreach (Fat fat in Usable())
        {
            if (fat.Profile is not { IsPartial: false } profile || fat.Class == FatClass.Wax)
                continue;
            seen++;
            Ratio unsaponifiable = fat.Figures.Unsaponifiable?.Value ?? Ratio.Zero;
            double most = fat.Class == FatClass.FreeAcid
                ? profile.SaponificationAsFreeAcid.MilligramsKohPerGram * (1 - unsaponifiable.DecimalFractions)
                : profile.SaponificationAsTriglyceride(unsaponifiable).MilligramsKohPerGram;
            Assert.True(fat.Saponification!.Value.MilligramsKohPerGram <= most + 1e-9, fat.Id);
        }
        Assert.True(seen > 50);
    }

    [Fact]
    public void Used_OfEveryFat_LiesInTheRangeForMargins() =>
        Assert.All(Usable(), fat => Assert.True(fat.Saponification is { } used && used.Low <= used.Value && !(used.High < used.Value), fat.Id));

    /// <summary>
    /// Acid values, low end: beeswax 17 (British Pharmacopoeia), candelilla 12 (National Formulary), carnauba 2 (JECFA, FAO Food and Nutrition
    /// Paper 52 Add. 6), wool fat a bare upper limit of 0.8 (European Pharmacopoeia), jojoba none on file.
    /// </summary>
    [Theory]
    [InlineData("beeswax", 17)]
    [InlineData("candelilla-wax", 12)]
    [InlineData("carnauba-wax", 2)]
    [InlineData("lanolin", 0)]
    [InlineData("jojoba-oil", 0)]
    public void Used_OfAWax_IsTheLowEndOfItsAcidValue(string id, double expected) =>
        Assert.Equal(expected, Pantry.Reference.Fat(id).Saponification!.Value.MilligramsKohPerGram);

    [Theory]
    [InlineData("shea-butter")]
    [InlineData("avocado-oil")]
    [InlineData("karanja-oil")]
    public void Used_WherePublishedValuesScatterTooMuch_IsNoneUntilTheLotGivesIt(string id)
    {
        Fat fat = Pantry.Reference.Fat(id);
        Assert.Null(fat.Saponification);
        Fat lot = fat.WithLot(new Lot { Name = "L-1", Source = "certificate", Saponification = SaponificationValue.FromMilligramsKohPerGram(178) });
        Assert.Equal(178, lot.Saponification!.Value.MilligramsKohPerGram);
    }

    private static IEnumerable<Fat> Usable() => Pantry.Reference.Fats.Where(f => f.Saponification is not null);
}
