using Saponify.Tests.Formulas;
using Saponify.Tests.Support;

namespace Saponify.Tests.Scoring;

/// <summary>What can't be scored, compared or swapped, and what is said instead.</summary>
public class ScoringRefusalTests
{
    private static readonly Fat s_olive = Pantry.Reference.Fat("olive-oil"), s_coconut = Pantry.Reference.Fat("coconut-oil"), s_unknown = new("unknown", "Unknown oil", FatClass.Triglyceride, new());
    private static readonly Formula s_one = FormulaTests.Plain(s_olive.Weighing(Mass.FromGrams(500))), s_two = FormulaTests.Plain(s_olive.Weighing(Mass.FromGrams(500)), s_coconut.Weighing(Mass.FromGrams(200)));
    private static readonly FatBlend s_blend = FatBlend.Of((s_olive, Ratio.FromPercent(60)), (s_coconut, Ratio.FromPercent(40)));

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    [Fact]
    public void WhatCannotBeScored_IsRefusedWithAReason() => new Refusals()
        .Of(() => default(BatchPlan)!.Scores())
        .Of(() => default(FatBlend)!.Scores(Percent(5), Percent(0)))
        .Of(() => s_blend.Scores(Percent(101), Percent(0)))
        .Of(() => s_blend.Scores(Percent(5), Percent(101)))
        .Of(() => s_one.Scores()[(ScoreKind)99])
        .Of(() => ScoreDefinition.Of((ScoreKind)99))
        .Of(() => ScoreWeights.Of(null!, WeightKind.Hardness))
        .Of(() => ScoreWeights.Of(FattyAcid.FromShorthand("C18:1"), (WeightKind)99))
        .Of(() => default(FatBlend)!.Figures())
        .Of(() => default(Formula)!.Blend())
        .Of(() => default(BatchPlan)!.Composition())
        .Of(() => s_one.Composition()!.AtMoisture(Percent(90)))
        .Of(() => s_one.Composition()!.MassOf((PartKind)99))
        .Of(() => BarComparison.Of())
        .Of(() => BarComparison.Of(null!))
        .Of(() => BarComparison.Of([.. Enumerable.Repeat(s_one, 27)]))
        .Of(() => s_two.SwappingAtEqualMass("lard", s_olive))
        .Of(() => s_two.SwappingAtEqualMass("olive-oil", null!))
        .Of(() => s_two.SwappingAtEqualDemand(null!, s_olive))
        .Of(() => s_two.SwappingAtEqualDemand("olive-oil", null!))
        .Of(() => s_two.SwappingAtEqualDemand("olive-oil", s_unknown))
        .Of(() => default(Formula)!.WithShare("olive-oil", Percent(50)))
        .Of(() => s_two.WithShare("olive-oil", Percent(101)))
        .Of(() => s_one.WithShare("olive-oil", Percent(50)))
        .Of(() => default(FatBlend)!.WithShare("olive-oil", Percent(50)))
        .Of(() => s_blend.WithShare(null!, Percent(50)))
        .Of(() => s_blend.WithShare("lard", Percent(50)))
        .Of(() => s_blend.WithShare("olive-oil", Percent(101)))
        .Of(() => FatBlend.Of((s_olive, Percent(100))).WithShare("olive-oil", Percent(50)))
        .Of(() => s_two.VaryingShare("olive-oil", 1))
        .Match("scores");
}
