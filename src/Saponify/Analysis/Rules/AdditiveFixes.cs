using Saponify.Internals;
using UnitsNet;

namespace Saponify.Analysis.Rules;

/// <summary>Changes of additive lines that several rules offer.</summary>
internal static class AdditiveFixes
{
    internal static FixOffer Move(string rule, int index, AdditivePortion portion, Stage stage) => new($"{rule}.Move", $"Add {portion.Additive.Name} {Where(stage)}", FixEffect.KeepsProduct,
        f => f with { Additives = Places.Replace(f.Additives, index, f.Additives[index].At(stage)) });

    internal static FixOffer Remove(string rule, int index, AdditivePortion portion) => new($"{rule}.Remove", $"Leave out {portion.Additive.Name}", FixEffect.ChangesProduct,
        f => f with { Additives = Places.Without(f.Additives, index) });

    /// <summary>Every additive that is meant times a factor below 1, cut to two decimals.</summary>
    internal static FixOffer Scale(string key, string title, Func<Additive, bool> which, double factor) => new(key, title, FixEffect.ChangesProduct,
        f => f with { Additives = [.. f.Additives.Select(p => which(p.Additive) ? Times(p, factor) : p)] });

    internal static string Where(Stage stage) => stage switch
    {
        Stage.LyeLiquid => "to the lye liquid",
        Stage.Fats => "to the fat pot",
        Stage.Trace => "at trace",
        _ => "on top",
    };

    private static AdditivePortion Times(AdditivePortion portion, double factor) => portion.Mass is { } mass
        ? portion with { Mass = Mass.From(Cut(mass.Value * factor), mass.Unit) }
        : portion.OfFats is { } share ? portion with { OfFats = Ratio.FromPercent(Cut(share.Percent * factor)) } : portion;

    private static double Cut(double value) => Math.Floor(value * 100) / 100;
}
