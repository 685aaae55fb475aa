using Saponify.Tests.Formulas;
using Saponify.Tests.Support;
using UnitsNet.Units;

namespace Saponify.Tests.Planning;

/// <summary>What can't be planned, weighed or printed, and what is said instead.</summary>
public class PlanRefusalTests
{
    private static readonly Alkali s_soda = Alkali.SodiumHydroxide(Ratio.FromPercent(98));
    private static readonly Fat s_olive = Pantry.Reference.Fat("olive-oil"), s_unknown = new("unknown", "Unknown oil", FatClass.Triglyceride, new());
    private static readonly BatchPlan s_plan = FormulaTests.Plain(s_olive.Weighing(Mass.FromGrams(500))).Plan();
    private static readonly WeighedBatch s_batch = WeighedBatch.Start(s_plan);
    private static readonly Scale s_scale = new(Mass.FromGrams(1));

    [Fact]
    public void WhatCannotBePlannedOrWeighed_IsRefusedWithAReason() => new Refusals()
        .Of(() => default(Formula)!.Balance())
        .Of(() => default(Formula)!.Plan())
        .Of(() => default(BatchPlan)!.Margin(null))
        .Of(() => s_plan.Margin(s_scale, s_scale, Ratio.FromPercent(100)))
        .Of(() => default(BatchPlan)!.OnScale(s_scale))
        .Of(() => s_plan.OnScale(null!))
        .Of(() => s_plan.OnScale(s_scale, null!))
        .Of(() => s_plan.OnScale(s_scale).ListedFatsFor(Ratio.Zero))
        .Of(() => s_plan.ToText(MassUnit.Stone))
        .Of(() => new Scale(Mass.Zero))
        .Of(() => new Scale(Mass.FromGrams(-1)))
        .Of(() => new Scale(Mass.FromGrams(1)) { MinimumLoad = Mass.FromGrams(-1) })
        .Of(() => new Scale(Mass.FromGrams(1)) { Capacity = Mass.FromGrams(-1) })
        .Of(() => new Scale(Mass.FromGrams(1)) { Accuracy = Ratio.FromPercent(21) })
        .Of(() => WeighedBatch.Start(null!))
        .Of(() => WeighedBatch.Start(FormulaTests.Plain(s_unknown.Weighing(Mass.FromGrams(500))).Plan()))
        .Of(() => s_batch.Weigh(null!, Mass.FromGrams(500)))
        .Of(() => s_batch.Weigh("fats[coconut-oil]", Mass.FromGrams(500)))
        .Of(() => s_batch.Weigh("fats[olive-oil]", Mass.FromGrams(-1)))
        .Of(() => s_batch.Doubled("fats[coconut-oil]"))
        .Of(() => s_batch.FatWas("fats[coconut-oil]", s_olive))
        .Of(() => s_batch.FatWas("fats[olive-oil]", null!))
        .Of(() => s_batch.AlkaliWas("alkali.alkalis[lye]", s_soda))
        .Of(() => s_batch.AlkaliWas("alkali.alkalis[sodium-hydroxide]", null!))
        .Of(() => s_batch.LyeLiquidWas(null!))
        .Of(() => s_batch.ToText(null!))
        .Match("plans");
}
