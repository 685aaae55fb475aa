using System.Diagnostics.CodeAnalysis;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Amounts that only the formula file has: parts to one, saponification values, purities, heat transfer.</summary>
internal static class SpecialAmounts
{
    internal const string AtLeast = "at least ";
    internal const string HeatTransfer = "W/(m2 K)";
    private const string To = " to ";

    internal static bool TryParts(ReadOnlySpan<char> text, out Ratio parts, out string? fault)
    {
        parts = default;
        if (!AmountReader.TryNumber(text, out double number, out ReadOnlySpan<char> rest, out fault))
            return false;
        if (rest is not [':', ..] || !rest[1..].Trim().SequenceEqual("1"))
        {
            fault = $"\"{text.Trim()}\" does not read as parts to one";
            return false;
        }
        parts = Ratio.FromDecimalFractions(number);
        return true;
    }

    internal static bool TryHeatTransfer(ReadOnlySpan<char> text, out HeatTransferCoefficient transfer, out string? fault)
    {
        transfer = default;
        if (!AmountReader.TryNumber(text, out double number, out ReadOnlySpan<char> unit, out fault))
            return false;
        if (!unit.SequenceEqual(HeatTransfer))
        {
            fault = $"\"{text.Trim()}\" is no heat transfer in {HeatTransfer}";
            return false;
        }
        transfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(number);
        return true;
    }

    internal static bool TrySaponification(ReadOnlySpan<char> text, out SaponificationValue value, out string? fault)
    {
        value = default;
        if (!AmountReader.TryNumber(text, out double number, out ReadOnlySpan<char> rest, out fault))
            return false;
        bool koh = rest.SequenceEqual("mg KOH/g");
        if (!koh && !rest.SequenceEqual("g NaOH/g"))
        {
            fault = $"the unit \"{rest}\" does not say which alkali";
            return false;
        }
        double high = koh ? 1000 : 0.7129;
        if (!(number >= 0 && number <= high))
        {
            fault = $"{Text.Exact(number)} {rest} is out of range, 0 to {Text.Exact(high)}";
            return false;
        }
        value = koh ? SaponificationValue.FromMilligramsKohPerGram(number) : SaponificationValue.FromGramsNaohPerGram(number);
        return true;
    }

    internal static bool TryPurity(ReadOnlySpan<char> text, [NotNullWhen(true)] out Purity? purity, out string? fault)
    {
        purity = null;
        text = text.Trim();
        int to = text.IndexOf(To);
        if (text.StartsWith(AtLeast))
        {
            if (!TryShare(text[AtLeast.Length..], true, out Ratio least, out fault))
                return false;
            purity = Purity.AtLeast(least);
            return true;
        }
        if (to < 0)
        {
            if (!TryShare(text, true, out Ratio certified, out fault))
                return false;
            purity = Purity.Certified(certified);
            return true;
        }
        if (!TryShare(text[..to], false, out Ratio low, out fault) || !TryShare(text[(to + To.Length)..], true, out Ratio high, out fault))
            return false;
        if (low.DecimalFractions > high.DecimalFractions)
        {
            fault = $"\"{text}\" runs from the higher to the lower end";
            return false;
        }
        purity = Purity.Between(low, high);
        return true;
    }

    internal static string Write(Purity purity) => purity.Kind switch
    {
        PurityKind.Certified => AmountWriter.Percent(purity.HighFraction),
        PurityKind.Range => $"{AmountWriter.Percent(purity.LowFraction)}{To}{AmountWriter.Percent(purity.HighFraction)}",
        _ => AtLeast + AmountWriter.Percent(purity.LowFraction),
    };

    internal static string Write(SaponificationValue value) => Text.Exact(value.MilligramsKohPerGram) + " mg KOH/g";

    internal static string WriteParts(double parts) => Text.Exact(parts) + " : 1";

    private static bool TryShare(ReadOnlySpan<char> text, bool needsSign, out Ratio share, out string? fault)
    {
        if (!AmountReader.TryPercent(text, needsSign, out share, out fault))
            return false;
        if (share.DecimalFractions is >= 1e-6 and <= 1)
            return true;
        fault = $"\"{text.Trim()}\" is out of range: a purity is above 0 and at most 100 %";
        return false;
    }
}
