using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Scoring;

/// <summary>A blend as one fat.</summary>
public class BlendFiguresTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    private static FatBlend Of(params (string Fat, double Percent)[] parts) => FatBlend.Of([.. parts.Select(p => (s_pantry.Fat(p.Fat), Ratio.FromPercent(p.Percent)))]);

    [Fact]
    public void OneFat_IsItself()
    {
        Fat olive = s_pantry.Fat("olive-oil");
        BlendFigures figures = Of(("olive-oil", 100)).Figures();
        Assert.All(FattyAcid.All, a => Assert.Equal(olive.Profile![a].DecimalFractions, figures.Profile![a].DecimalFractions, 12));
        Assert.Equal(olive.Profile!.MeanAcidMolarMass.GramsPerMole, figures.MeanAcidMolarMass!.Value.GramsPerMole, 9);
        Assert.Equal(olive.Saponification!.Value, figures.Saponification!.Value);
        Assert.Equal((olive.Saponification.Low, olive.Saponification.High, olive.Saponification.Evidence), (figures.Saponification.Low, figures.Saponification.High, figures.Saponification.Evidence));
        Assert.Equal(olive.Profile.IodineValueAsTriglyceride.GramsPer100Grams, figures.Iodine!.Value.GramsPer100Grams, 9);
        Assert.Equal(100, figures.Known.Percent, 9);
    }

    [Fact]
    public void TwoSimpleGlycerides_AreMixedByTheMassOfTheirAcids()
    {
        // trilaurin 639.015 g/mol with 3 x 200.322 of acid, tristearin 891.501 with 3 x 284.484: worked out by hand, half and half by mass
        FattyAcid lauric = FattyAcid.FromShorthand("C12:0"), stearic = FattyAcid.FromShorthand("C18:0");
        BlendFigures figures = FatBlend.Of((AnyBlend.Own("trilaurin", (lauric, 1)), Ratio.FromPercent(50)), (AnyBlend.Own("tristearin", (stearic, 1)), Ratio.FromPercent(50))).Figures();
        double ofLauric = 3 * 200.322 / 639.015, ofStearic = 3 * 284.484 / 891.501;
        Assert.Equal(ofLauric / (ofLauric + ofStearic), figures.Profile![lauric].DecimalFractions, 9);
        Assert.Equal((ofLauric + ofStearic) / ((3 / 639.015) + (3 / 891.501)), figures.MeanAcidMolarMass!.Value.GramsPerMole, 6);
        Assert.Equal(0.5 * 3 * 56105 * ((1 / 639.015) + (1 / 891.501)), figures.Saponification!.Value.MilligramsKohPerGram, 6);
        Assert.Equal(100, figures.Saturated!.Value.Percent, 9);
        Assert.Equal([12, 18], figures.ChainLengths.Select(c => c.Carbons));
        Assert.Equal(0, figures.Iodine!.Value.GramsPer100Grams);
    }

    [Law]
    public Property Shares_AddUp_AndTheBlendAgreesWithItself() => Prop.ForAll(AnyBlend.Scored.Arbitrary(), blend =>
    {
        BlendFigures figures = blend.Figures();
        double chains = figures.ChainLengths.Sum(c => c.Share.DecimalFractions), saturated = FattyAcid.All.Where(a => a.IsSaturated).Sum(a => figures.Profile![a].DecimalFractions);
        bool whole = blend.Shares.All(s => s.Fat.Profile is { IsPartial: false } && s.Fat.Saponification is not null);
        return Near.Is(chains, 1) && Near.Is(saturated, figures.Saturated!.Value.DecimalFractions)
            && figures.ChainLengths.Select(c => c.Carbons).SequenceEqual(figures.ChainLengths.Select(c => c.Carbons).Order())
            && (!whole || Near.Is(figures.Known.DecimalFractions, 1));
    });

    [Law]
    public Property MeanMolarMass_IsThatOfTheProfile_WhenEveryProfileIsWhole() => Prop.ForAll(AnyBlend.Scored.Arbitrary(), blend =>
        blend.Shares.Any(s => s.Fat.Profile is not { IsPartial: false } || s.Fat.Lot is not null)
        || Near.Is(blend.Figures().MeanAcidMolarMass!.Value.GramsPerMole, blend.Figures().Profile!.MeanAcidMolarMass.GramsPerMole, 1e-9));

    [Law]
    public Property SaponificationValue_GivesTheLyeOfAFormula() => Prop.ForAll(AnyBlend.Any.Arbitrary(), blend =>
    {
        if (blend.Figures().Saponification is not { } figure)
            return blend.Shares.Any(s => s.Fat.Saponification is null);
        Formula formula = new("Blend")
        {
            Fats = blend.Weighing(Mass.FromGrams(1000)),
            Alkali = AlkaliPlan.ForSuperfat(Ratio.Zero, Alkali.PotassiumHydroxide(Ratio.FromPercent(100))),
            Liquids = LiquidPlan.TotalWater(Mass.FromGrams(400)),
        };
        return Near.Is(formula.Balance().AlkaliAsWeighed.Grams, figure.Value.MilligramsKohPerGram);
    });

    [Law]
    public Property AnyBlend_HasFiguresWithoutThrowing() => Prop.ForAll(AnyBlend.Any.Arbitrary(), blend =>
    {
        BlendFigures figures = blend.Figures();
        return figures.Known.Percent is >= 0 and <= 100 && (figures.Profile is null == (figures.ChainLengths.Count == 0))
            && figures.MeanAcidMolarMass?.GramsPerMole is null or (> 60 and < 400);
    });

    [Fact]
    public void WhatAFatLacks_TheBlendLacks()
    {
        BlendFigures figures = Of(("olive-oil", 80), ("shea-butter", 20)).Figures();
        Assert.Null(figures.Saponification);                                     // shea butter needs its lot's own value
        Assert.NotNull(figures.Iodine);
        BlendFigures unknown = Of(("olive-oil", 80), ("mare-milk-fat", 20)).Figures();
        Assert.Null(unknown.Saponification);
        Assert.Null(unknown.MeanAcidMolarMass);
        Assert.Null(unknown.Iodine);
        Assert.InRange(unknown.Known.Percent, 78, 80);
        BlendFigures wax = Of(("beeswax", 100)).Figures();
        Assert.Null(wax.Profile);
        Assert.Null(wax.Saturated);
        Assert.Null(wax.MeanAcidMolarMass);
    }

    [Fact]
    public void TheValueOfABlend_IsAsDoubtfulAsItsWorstFat()
    {
        static Fat Of(string id, Evidence evidence, bool isOwn) => new(id, id, FatClass.Triglyceride, new() { Saponification = new(SaponificationValue.FromMilligramsKohPerGram(190), evidence, ["made up for this test"]) { IsOwn = isOwn } });
        static Figure<SaponificationValue> Mean(params Fat[] fats) => FatBlend.Of([.. fats.Select(f => (f, Ratio.FromPercent(100.0 / fats.Length)))]).Figures().Saponification!;
        Fat standard = Of("standard", Evidence.Standard, false), measured = Of("measured", Evidence.Measured, true), memory = Of("memory", Evidence.Memory, false);
        Assert.Equal((Evidence.Memory, true, "mean of the fats by mass"), (Mean(memory, measured, standard) is var all ? all.Evidence : default, all.IsOwn, all.Note));
        Assert.Equal((Evidence.Measured, true), (Mean(standard, measured, Of("another", Evidence.Measured, true)) is var twice ? twice.Evidence : default, twice.IsOwn));
        Assert.False(Mean(standard, memory).IsOwn);
    }

    [Fact]
    public void NoTitre_IsOffered() => Assert.DoesNotContain(typeof(BlendFigures).GetProperties(), p => p.Name.Contains("Titre", StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void Formula_GivesItsListedFatsAsABlend()
    {
        Formula formula = Formulas.FormulaTests.Plain(s_pantry.Fat("olive-oil").Weighing(Mass.FromGrams(300)), s_pantry.Fat("lard").Weighing(Mass.FromOunces(100 / 28.349523125)).AtTrace());
        FatBlend blend = formula.Blend()!;
        Assert.Equal([75, 25], blend.Shares.Select(s => Math.Round(s.Share.Percent, 9)));
        Assert.Null(Formulas.FormulaTests.Plain().Blend());
    }
}
