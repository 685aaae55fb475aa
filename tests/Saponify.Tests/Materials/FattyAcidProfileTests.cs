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
}
