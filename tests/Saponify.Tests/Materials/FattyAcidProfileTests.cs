namespace Saponify.Tests.Materials;

/// <summary>Profiles: scaling, raw sums, impossible shares, extremes.</summary>
public class FattyAcidProfileTests
{
    private static FattyAcid Acid(string shorthand) => FattyAcid.FromShorthand(shorthand);

    [Fact]
    public void Of_SumBelowAHundred_IsScaledAndTheRawSumKept()
    {
        FattyAcidProfile profile = FattyAcidProfile.Of((Acid("C16:0"), Ratio.FromPercent(38.4)), (Acid("C18:1"), Ratio.FromPercent(57.6)));
        Assert.Equal(96, profile.RawSum.Percent, 9);
        Assert.Equal(40, profile["C16:0"].Percent, 9);
        Assert.Equal(0, profile["C18:2"].Percent);
        Assert.False(profile.IsPartial || profile.IsWide);
        Assert.Equal(1 / ((0.4 / 256.430) + (0.6 / 282.468)), profile.MeanAcidMolarMass.GramsPerMole, 9);
    }

    [Theory]
    [InlineData(92.9, true, false)]
    [InlineData(93.1, false, false)]
    [InlineData(105, false, false)]
    [InlineData(105.1, false, true)]
    public void RawSum_DecidesPartialAndWide(double sum, bool partial, bool wide)
    {
        FattyAcidProfile profile = FattyAcidProfile.Of((Acid("C16:0"), Ratio.FromPercent(sum / 2)), (Acid("C18:1"), Ratio.FromPercent(sum / 2)));
        Assert.Equal((partial, wide), (profile.IsPartial, profile.IsWide));
    }

    [Fact]
    public void Shares_Impossible_CannotBeMade()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FattyAcidProfile.Of((Acid("C16:0"), Ratio.FromPercent(101))));
        Assert.Throws<ArgumentOutOfRangeException>(() => FattyAcidProfile.Of((Acid("C16:0"), Ratio.FromPercent(-1))));
        Assert.Throws<ArgumentException>(() => FattyAcidProfile.Of((Acid("C16:0"), Ratio.Zero)));
        Assert.Throws<ArgumentException>(() => FattyAcidProfile.Of());
        Assert.Throws<ArgumentException>(() => FattyAcidProfile.Of((Acid("C16:0"), Ratio.FromPercent(50)), (Acid("C16:0"), Ratio.FromPercent(50))));
        Assert.Throws<ArgumentException>(() => FattyAcidProfile.FromRanges((Acid("C16:0"), Ratio.FromPercent(60), Ratio.FromPercent(50))));
        Assert.Throws<ArgumentException>(() => FattyAcid.FromShorthand("C19:7"));
    }

    [Fact]
    public void PossibleRange_HoldsEveryProfileInsideTheRanges()
    {
        Fat olive = Pantry.Reference.Fat("olive-oil");
        (double low, double high) = olive.Profile!.PossibleKoh(FatClass.Triglyceride)!.Value;
        Assert.True(low < olive.Profile.SaponificationAsTriglyceride(Ratio.Zero).MilligramsKohPerGram);
        Assert.True(high > olive.Profile.SaponificationAsTriglyceride(Ratio.Zero).MilligramsKohPerGram);
        Random random = new(20261125);
        var published = olive.Profile.Published.ToArray();
        int tried = 0;
        while (tried < 2000)
        {
            (FattyAcid Acid, Ratio Share)[] lot = [.. published.Select(p => (p.Acid, Ratio.FromDecimalFractions(p.Low.DecimalFractions + (random.NextDouble() * (p.High.DecimalFractions - p.Low.DecimalFractions)))))];
            // make it add up by the largest acid, and keep the lot only if that one stays inside its range too
            int main = Array.FindIndex(lot, l => l.Acid.Shorthand == "C18:1");
            double rest = 1 - lot.Where((_, i) => i != main).Sum(l => l.Share.DecimalFractions);
            if (rest < published[main].Low.DecimalFractions || rest > published[main].High.DecimalFractions)
                continue;
            lot[main].Share = Ratio.FromDecimalFractions(rest);
            Assert.InRange(FattyAcidProfile.Of(lot).SaponificationAsTriglyceride(Ratio.Zero).MilligramsKohPerGram, low - 1e-9, high + 1e-9);
            tried++;
        }
    }

    [Fact]
    public void EveryAcid_HasItsOwnShorthandAndIsFoundInAnyCase()
    {
        Assert.Equal(FattyAcid.All.Count, FattyAcid.All.Select(a => a.Shorthand).Distinct().Count());
        foreach (FattyAcid acid in FattyAcid.All)
        {
            Assert.Same(acid, FattyAcid.FromShorthand(acid.Shorthand.ToLowerInvariant()));
            Assert.Equal(acid.Index, FattyAcid.All.AsSpan().IndexOf(acid));
            Assert.StartsWith(FormattableString.Invariant($"C{acid.Carbons}:{acid.DoubleBonds}"), acid.Shorthand, StringComparison.Ordinal);
        }
        Assert.Equal(FattyAcid.All.Order().Select(a => a.Shorthand), FattyAcid.All.Select(a => a.Shorthand));
    }

    [Fact]
    public void FreeAcids_HaveTheSaponificationValueOfTheirMeanMass()
    {
        FattyAcidProfile profile = FattyAcidProfile.Of((Acid("C16:0"), Ratio.FromPercent(40)), (Acid("C18:1"), Ratio.FromPercent(60)));
        double mean = 1 / ((0.4 / 256.430) + (0.6 / 282.468));
        Assert.Equal(56105 / mean, profile.SaponificationAsFreeAcid.MilligramsKohPerGram, 6);
        Assert.Equal(3 * 56105 / ((3 * mean) + 38.049), profile.SaponificationAsTriglyceride(Ratio.Zero).MilligramsKohPerGram, 6);
        Assert.Equal(3 * 56105 / ((3 * mean) + 38.049) * 0.98, profile.SaponificationAsTriglyceride(Ratio.FromPercent(2)).MilligramsKohPerGram, 6);
        Assert.Equal((profile.SaponificationAsFreeAcid.MilligramsKohPerGram, profile.SaponificationAsTriglyceride(Ratio.Zero).MilligramsKohPerGram), (profile.Koh(FatClass.FreeAcid), profile.Koh(FatClass.Triglyceride)));
        // AOCS factors 0.860 and 0.8986 for oleic, none for palmitic. Source: aocs-cd-1c-85
        Assert.Equal((0.6 * 86, 0.6 * 89.86), (Math.Round(profile.IodineValueAsTriglyceride.GramsPer100Grams, 9), Math.Round(profile.IodineValueAsFreeAcid.GramsPer100Grams, 9)));
    }

    [Fact]
    public void PossibleRange_OfFreeAcids_IsByHand()
    {
        FattyAcidProfile profile = FattyAcidProfile.FromRanges((Acid("C12:0"), Ratio.FromPercent(20), Ratio.FromPercent(40)), (Acid("C18:1"), Ratio.FromPercent(60), Ratio.FromPercent(80)));
        (double low, double high) = profile.PossibleKoh(FatClass.FreeAcid)!.Value;
        double Koh(double lauric) => 56105 * ((lauric / 200.322) + ((1 - lauric) / 282.468));
        Assert.Equal((Koh(0.2), Koh(0.4)), (low, high), (one, other) => Math.Abs(one.Item1 - other.Item1) < 1e-6 && Math.Abs(one.Item2 - other.Item2) < 1e-6);
    }

    [Theory]
    [InlineData(55, 60, 50, 60, false)]   // at least 105 %
    [InlineData(30, 40, 50, 59, false)]   // at most 99 %
    [InlineData(40, 45, 50, 55, true)]    // just 100 % at the high ends
    [InlineData(45, 50, 55, 60, true)]    // just 100 % at the low ends
    public void PossibleRange_IsNone_WhenTheRangesCanNotAddUp(double lowOne, double highOne, double lowTwo, double highTwo, bool possible)
    {
        FattyAcidProfile profile = FattyAcidProfile.FromRanges(
            (Acid("C16:0"), Ratio.FromPercent(lowOne), Ratio.FromPercent(highOne)), (Acid("C18:1"), Ratio.FromPercent(lowTwo), Ratio.FromPercent(highTwo)));
        Assert.Equal(possible, profile.PossibleKoh(FatClass.Triglyceride) is not null);
    }

    [Fact]
    public void Profiles_EqualByTheirRanges_AndShowThem()
    {
        FattyAcidProfile Ranges(double low, double high) => FattyAcidProfile.FromRanges((Acid("C16:0"), Ratio.FromPercent(low), Ratio.FromPercent(high)), (Acid("C18:1"), Ratio.Zero, Ratio.FromPercent(90)));
        Support.EqualityContract.Test(Ranges(10, 20), Ranges(10, 20), Ranges(10, 21), Ranges(9, 20), Ranges(9, 21));
        Assert.NotEqual(Ranges(10, 20).GetHashCode(), Ranges(10, 22).GetHashCode());
        Assert.Equal([("C16:0", 10.0, 20.0), ("C18:1", 0.0, 90.0)], Ranges(10, 20).Published.Select(p => (p.Acid.Shorthand, Math.Round(p.Low.Percent, 9), Math.Round(p.High.Percent, 9))));
        Assert.Equal(15 / 0.6 / 100, Ranges(10, 20)[Acid("C16:0")].DecimalFractions, 9);
    }

    [Fact]
    public void Refusals_SayWhy()
    {
        Assert.Contains("C16:0 has a low end of 60 % above its high end of 50 %", Assert.Throws<ArgumentException>(() => FattyAcidProfile.FromRanges((Acid("C16:0"), Ratio.FromPercent(60), Ratio.FromPercent(50)))).Message, StringComparison.Ordinal);
        Assert.Contains("C16:0 is given twice", Assert.Throws<ArgumentException>(() => FattyAcidProfile.Of((Acid("C16:0"), Ratio.FromPercent(50)), (Acid("C16:0"), Ratio.FromPercent(50)))).Message, StringComparison.Ordinal);
        Assert.Contains("at least one acid", Assert.Throws<ArgumentException>(() => FattyAcidProfile.Of()).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => FattyAcidProfile.Of(null!));
        Assert.Throws<ArgumentNullException>(() => FattyAcidProfile.FromRanges(null!));
        Assert.Throws<ArgumentNullException>(() => FattyAcidProfile.Of((null!, Ratio.FromPercent(50))));
        Assert.Throws<ArgumentNullException>(() => FattyAcidProfile.Of((Acid("C16:0"), Ratio.FromPercent(50)))[(FattyAcid)null!]);
    }
}
