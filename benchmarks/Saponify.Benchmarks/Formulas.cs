using UnitsNet;

namespace Saponify.Benchmarks;

/// <summary>The formulas that are measured.</summary>
internal static class Formulas
{
    /// <summary>The lines of all tables of a plan, which are made when they are asked for.</summary>
    internal static int Tables(BatchPlan plan) =>
        plan.Alkalis.Count + plan.LyeUptake.Count + plan.PossibleUptake.Count + plan.Water.Count + plan.Additives.Count + (plan.LiquidWindow.At25Percent is null ? 0 : 1);

    /// <summary>Six fats, one of them late, frozen milk as the lye liquid, an acid dosed by the fats.</summary>
    internal static Formula SixFatsAndMilk()
    {
        Pantry pantry = Pantry.Reference;
        return new("Six fats and milk")
        {
            Fats =
            [
                pantry.Fat("olive-oil").Weighing(Mass.FromGrams(420)), pantry.Fat("coconut-oil").Weighing(Mass.FromGrams(250)), pantry.Fat("castor-oil").Weighing(Mass.FromGrams(90)),
                pantry.Fat("cocoa-butter").Weighing(Mass.FromGrams(60)), pantry.Fat("lard").Weighing(Mass.FromGrams(110)), pantry.Fat("hazelnut-oil").Weighing(Mass.FromGrams(40)).AtTrace(),
            ],
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), Alkali.SodiumHydroxide(Ratio.FromPercent(98))),
            Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(28)).DissolvingInFrozen(pantry.Liquid("milk-goat"), Temperature.FromDegreesCelsius(-18)),
            Additives = [pantry.Additive("citric-acid-monohydrate").ShareOfFats(Ratio.FromPercent(1))],
        };
    }
}
