using Saponify.Internals;

namespace Saponify.Analysis.Rules;

/// <summary>What several rules ask of a saponification value that its owner gave, for a lot or for a fat of the owner's making. One fault of a value, one rule.</summary>
internal static class LotValues
{
    /// <summary>Above the simple triglyceride of butyric acid (556.7 mg KOH/g) and above the acid itself (636.8): computed from the formulas.</summary>
    internal const double MostOfTriglyceride = 560, MostOfFreeAcid = 640;

    /// <summary>How far a lot may lie from the middle of a narrow published range: common practice, no source.</summary>
    internal const double Near = 0.03;

    private const double NaohPerKoh = Molar.SodiumHydroxide / Molar.PotassiumHydroxide;

    private static readonly (double Factor, string How)[] s_units =
    [
        (1 / NaohPerKoh, "it looks like mg of sodium hydroxide per g"), (NaohPerKoh, "it looks like mg of potassium hydroxide per g that was converted as if it were sodium hydroxide"),
        (1000, "it looks like g of potassium hydroxide per g"), (1000 / NaohPerKoh, "it looks like g of sodium hydroxide per g"),
    ];

    /// <summary>The owner's own value in mg KOH per g; null when the table's is used.</summary>
    internal static double? Own(Fat fat) => fat.Lot?.Saponification?.MilligramsKohPerGram ?? (fat.Figures.Saponification is { IsOwn: true } own ? own.Value.MilligramsKohPerGram : null);

    internal static double Most(Fat fat) => fat.Class == FatClass.FreeAcid ? MostOfFreeAcid : MostOfTriglyceride;

    internal static bool IsImpossible(Fat fat) => fat.Class != FatClass.Wax && Own(fat) is { } own && !(own <= Most(fat)) && Unit(fat) is null;

    /// <summary>The value that was meant and why, when the own one fits the published range only in another unit.</summary>
    internal static (double Factor, string How)? Unit(Fat fat)
    {
        if (Own(fat) is not { } own || Published(fat) is not var (low, high) || !double.IsFinite(high) || IsNear(own, low, high))
            return null;
        foreach ((double factor, string how) in s_units)
        {
            if (own * factor >= low && own * factor <= high)
                return (factor, how);
        }
        return null;
    }

    /// <summary>True inside a published range, or within a few per cent of its middle.</summary>
    internal static bool IsNear(double value, double low, double high, double near = Near) => value >= Math.Min(low, (low + high) / 2 * (1 - near)) && value <= Math.Max(high, (low + high) / 2 * (1 + near));

    /// <summary>What the tables say of the fat whatever its lot; null for a wax, for a fat of the owner's making, and without figures.</summary>
    internal static (double Low, double High)? Published(Fat fat)
    {
        if (fat.Class == FatClass.Wax || UsedSaponification.Of(fat.Class, fat.Figures with { NeedsOwnSaponification = false }, null) is not { IsOwn: false } usual)
            return null;
        double high = fat.Figures.Saponification is { High: null } ? double.PositiveInfinity : usual.High!.Value.MilligramsKohPerGram;
        return (usual.Low!.Value.MilligramsKohPerGram, high);
    }

    /// <summary>Goes back to the value of the table; nothing when there is none fit for lye.</summary>
    internal static FixOffer[] UseTheTable(string rule, Formula formula, int index)
    {
        Fat fat = formula.Fats[index].Fat;
        return fat.Lot is { } lot && fat.WithLot(lot with { Saponification = null }) is { Saponification: { } table } usual
            ? [new($"{rule}.UseTheTable", $"Use the table's {Text.Number(table.Value.MilligramsKohPerGram)} mg KOH/g for {fat.Name}", FixEffect.ChangesProduct, f => WithFat(f, index, usual))]
            : [];
    }

    internal static Formula WithFat(Formula formula, int index, Fat fat)
    {
        FatPortion old = formula.Fats[index];
        FatPortion changed = (old.Poured is { } volume ? fat.Pouring(volume) : fat.Weighing(old.Mass)) with { Line = old.Line };
        return formula with { Fats = Places.Replace(formula.Fats, index, old.IsLate ? changed.AtTrace() : changed) };
    }
}
