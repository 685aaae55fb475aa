namespace Saponify.Tests.Scoring;

/// <summary>The table of weights and the grounds of the scores.</summary>
public class ScoreWeightTests
{
    [Fact]
    public void EveryWeight_NamesSourcesOfTheTable_AndHowItWasSet()
    {
        Assert.Equal(18 * 9, ScoreWeights.All.Count);
        Assert.All(ScoreWeights.All, w =>
        {
            Assert.NotEmpty(w.Sources);
            Assert.All(w.Sources, key => Assert.Equal(key, Pantry.Reference.Source(key).Key));
            Assert.NotEmpty(w.Why);
            Assert.InRange(w.Value, 0, w.Kind == WeightKind.Oxidation ? 21.6 : 1);
        });
        Assert.All(ScoreDefinition.All.SelectMany(d => d.Sources), key => Assert.Equal(key, Pantry.Reference.Source(key).Key));
    }

    [Fact]
    public void WhatRestsOnMemory_SaysSo()
    {
        Assert.All(ScoreWeights.All.Where(w => w.Basis == WeightBasis.Memory), w => Assert.Contains(w.Sources, key => Pantry.Reference.Source(key).Evidence == Evidence.Memory));
        Assert.Equal([WeightKind.Hardness, WeightKind.Wear, WeightKind.Cleansing, WeightKind.Oxidation], ScoreWeights.All.Where(w => w.Basis == WeightBasis.Memory).Select(w => w.Kind).Distinct());
    }

    [Theory]
    [InlineData(WeightKind.Hardness, 20)]
    [InlineData(WeightKind.Wear, 38)]
    public void HardnessAndWear_AreTheCrystallineShareAtTheStatedTemperature(WeightKind kind, double celsius)
    {
        // Krafft temperatures from memory, as the weights say
        (string Acid, double Krafft)[] known = [("C14:0", 45), ("C16:0", 60), ("C18:0", 71), ("C18:1", 10), ("C22:1", 35)];
        Assert.All(known, k =>
        {
            double share = 1 / (1 + Math.Exp(-(k.Krafft - celsius) / 8));
            Assert.Equal(share, ScoreWeights.Of(FattyAcid.FromShorthand(k.Acid), kind)!.Value, 0.026);
        });
    }

    [Fact]
    public void SolubilityOrder_OfTheSaturatedSoaps_IsKept()
    {
        // jce-soap, mcbain-sierichs-1948: laurate dissolves before myristate, palmitate, stearate
        string[] acids = ["C10:0", "C12:0", "C14:0", "C16:0", "C18:0"];
        double[] hardness = [.. acids.Select(a => ScoreWeights.Of(FattyAcid.FromShorthand(a), WeightKind.Hardness)!.Value)];
        double[] wear = [.. acids.Select(a => ScoreWeights.Of(FattyAcid.FromShorthand(a), WeightKind.Wear)!.Value)];
        Assert.Equal(hardness.Order(), hardness);
        Assert.Equal(wear.Order(), wear);
    }

    [Fact]
    public void AcidWithoutWeights_HasNone()
    {
        Assert.Null(ScoreWeights.Of(FattyAcid.FromShorthand("C18:3-conj"), WeightKind.Hardness));
        Assert.Throws<ArgumentOutOfRangeException>(() => ScoreWeights.Of(FattyAcid.FromShorthand("C18:1"), (WeightKind)9));
        Assert.Throws<ArgumentNullException>(() => ScoreWeights.Of(null!, WeightKind.Hardness));
        Assert.Equal(1, ScoreWeights.Version);
    }
}
