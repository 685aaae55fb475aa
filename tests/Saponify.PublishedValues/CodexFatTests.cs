namespace Saponify.PublishedValues;

/// <summary>
/// Two independent paths to one number: what the acids of a fat give, and what the Codex allows. The profile is the middle of ranges, not
/// an oil, so the test asks only that it lies inside the published range; what does not is pinned with its reason.
/// </summary>
public class CodexFatTests
{
    private const string Before = "saponification value before unsaponifiable";
    private const string After = "saponification value";
    private const string Iodine = "iodine value";

    /// <summary>What lies outside the published range, and why. A new exception fails the test, and so does one that is gone.</summary>
    private static readonly (string Fat, string Figure, double Value, string Reason)[] s_exceptions =
    [
        ("babassu-oil", Before, 244.4, "0.6 below: wide ranges, the middles add up to 107 %"),
        ("babassu-oil", After, 242.9, "2.1 below: the same, less 0.6 % unsaponifiable"),
        ("babassu-oil", Iodine, 18.1, "0.1 above: the same"),
        ("rendered-pork-fat", Iodine, 58.5, "1.5 below: the standard has one column of acids for it and for lard, but another iodine value"),
        ("sunflower-oil-mid-oleic", Before, 191.0, "0.05 above a range of one unit, remembered only"),
        ("sunflower-oil-mid-oleic", After, 189.6, "0.4 below the same range"),
    ];

    private static readonly string[] s_withAcids = [.. CodexFatTable.Read.Where(f => f.MeanAcid is not null).Select(f => f.Id)];

    public static TheoryData<string> ReadIds => [.. CodexFatTable.Read.Select(f => f.Id)];

    public static TheoryData<string> WithAcids => [.. s_withAcids];

    [Fact]
    public void Pantry_FatsWithASaponificationValueOfTheCodex_AreThoseOfTheTable()
    {
        IEnumerable<string> actual = Pantry.Reference.Fats
            .Where(f => f.Figures.Saponification is { } figure && figure.Sources.Any(key => key.StartsWith("codex-", StringComparison.Ordinal)))
            .Select(f => f.Id);
        Assert.Equal(CodexFatTable.Read.Select(f => f.Id).Order(StringComparer.Ordinal), actual.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(ReadIds))]
    public void Figures_AreThoseOfTheStandard(string id)
    {
        (CodexFat codex, FatFigures figures) = (CodexFatTable.Of(id), Pantry.Reference.Fat(id).Figures);
        Assert.Equal(codex.SaponificationLow, figures.Saponification!.Low!.Value.MilligramsKohPerGram);
        Assert.Equal(codex.SaponificationHigh, figures.Saponification.High!.Value.MilligramsKohPerGram);
        Assert.Equal(codex.IodineLow, figures.Iodine!.Low?.GramsPer100Grams);
        Assert.Equal(codex.IodineHigh, figures.Iodine.High?.GramsPer100Grams);
        Given.Near(codex.UnsaponifiableHigh, figures.Unsaponifiable!.High!.Value.Percent, 1e-9);
        Given.Near((codex.UnsaponifiableLow + codex.UnsaponifiableHigh) / 2, figures.Unsaponifiable.Value.Percent, 1e-9);
    }

    /// <summary>Where the pantry departs from the remembered ranges, since a range that was read elsewhere wins over memory.</summary>
    [Fact]
    public void Figures_OfTheRememberedFats_DifferOnlyWhereAReadSourceWon()
    {
        List<(string, string)> different = [];
        foreach (CodexFat codex in CodexFatTable.Remembered)
        {
            FatFigures figures = Pantry.Reference.Fat(codex.Id).Figures;
            if (figures.Saponification!.Low?.MilligramsKohPerGram != codex.SaponificationLow || figures.Saponification.High?.MilligramsKohPerGram != codex.SaponificationHigh)
                different.Add((codex.Id, After));
            if (figures.Iodine!.Low?.GramsPer100Grams != codex.IodineLow || figures.Iodine.High?.GramsPer100Grams != codex.IodineHigh)
                different.Add((codex.Id, Iodine));
        }
        (string, string)[] pinned =
        [
            ("almond-oil", After), // 185 to 200, dealers' limits
            ("almond-oil", Iodine), // 95 to 110, dealers' limits
            ("lard", Iodine), // 45 to 70, Canada, Food and Drug Regulations, B.09.013
            ("premier-jus", Iodine), // 32 to 47, Malaysia, Food Regulations 1985, regulation 181
            ("rendered-pork-fat", Iodine), // 45 to 70, Canada, as for lard
        ];
        Assert.Equal(pinned.Order(), different.Order());
    }

    /// <summary>A wrong or missing acid of the table shows here, long before it moves a value out of its range.</summary>
    [Theory]
    [MemberData(nameof(WithAcids))]
    public void Profile_HasTheMeanMolarMassWorkedOutFromTheStandard(string id)
    {
        (CodexFat codex, FattyAcidProfile profile) = (CodexFatTable.Of(id), Pantry.Reference.Fat(id).Profile!);
        Given.Near(codex.MeanAcid!.Value, profile.MeanAcidMolarMass.GramsPerMole, 0.005 + 1e-9);
        Given.Near(codex.RawSum!.Value, profile.RawSum.Percent, 0.05 + 1e-9);
    }

    [Fact]
    public void Profile_OfEveryCodexFat_IsInsideThePublishedRangesButForTheExceptions()
    {
        List<(string Fat, string Figure, double Value)> outside = [];
        foreach (CodexFat codex in CodexFatTable.Read.Concat(CodexFatTable.Remembered))
        {
            Fat fat = Pantry.Reference.Fat(codex.Id);
            double before = fat.Profile!.SaponificationAsTriglyceride(Ratio.Zero).MilligramsKohPerGram;
            double after = fat.Profile.SaponificationAsTriglyceride(fat.Figures.Unsaponifiable!.Value).MilligramsKohPerGram;
            double iodine = fat.Profile.IodineValueAsTriglyceride.GramsPer100Grams;
            if (!codex.HasSaponification(before))
                outside.Add((codex.Id, Before, Math.Round(before, 1)));
            if (!codex.HasSaponification(after))
                outside.Add((codex.Id, After, Math.Round(after, 1)));
            if (!codex.HasIodine(iodine))
                outside.Add((codex.Id, Iodine, Math.Round(iodine, 1)));
        }
        Assert.Equal(s_exceptions.Select(e => (e.Fat, e.Figure, e.Value)).Order(), outside.Order());
    }

    [Fact]
    public void Exceptions_AreOfFatsWhoseRangeIsFromMemory() =>
        Assert.All(s_exceptions, e => Assert.Contains(CodexFatTable.Remembered, f => f.Id == e.Fat && f.Source.Contains("memory", StringComparison.Ordinal)));
}
