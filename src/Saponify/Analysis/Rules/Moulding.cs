using Saponify.Internals;

namespace Saponify.Analysis.Rules;

/// <summary>What the rules on moulds have in common.</summary>
internal static class Moulding
{
    internal static string? WhyNoFill(FormulaFacts facts) =>
        facts.Setup.Mould is null ? "no mould is given" : !facts.Balance.CanBeWeighed ? "the batch can't be weighed" : facts.Fill is null ? "the density of the batter can't be told" : null;

    /// <summary>Why the mould can't be cut so, or null.</summary>
    internal static string? WhyNotCut(Mould mould, CuttingPlan cut) => mould.Shape switch
    {
        MouldShape.Slab when cut.Across is null => "a slab is cut both ways, and the second size of the bars is not given",
        MouldShape.Cylinder when cut.Across is not null => "a cylinder is cut one way only, into discs",
        _ => null,
    };

    /// <summary>The bars of one mould; null when it is not said how it is cut, or when it can't be cut so.</summary>
    internal static BarLayout? Layout(BatchSetup setup) =>
        setup.Mould is not { } mould ? null
        : !mould.HasSizes ? mould.Unmould(setup.Cut?.Samples ?? 0)
        : setup.Cut is { } cut && WhyNotCut(mould, cut) is null ? mould.Cut(cut) : null;

    /// <summary>Scales the formula so that it fills the moulds, by a factor that is rounded down: rather a little low than over the rim.</summary>
    internal static FixOffer[] Scale(string rule, FormulaFacts facts)
    {
        int moulds = facts.Setup.Moulds;
        double factor = Scaling.Down(facts.Fill!.FactorToFill(moulds));
        return [Scaling.By($"{rule}.Scale", facts, factor, $", which fills {(moulds == 1 ? "the mould" : $"{Text.Number(moulds)} moulds")}")];
    }
}
