using System.Text;
using Saponify.Internals;

namespace Saponify;

/// <summary>A composition as text for people, by kind of part. Plain characters, invariant.</summary>
internal static class CompositionText
{
    private static readonly (PartKind Kind, string Title)[] s_titles =
    [
        (PartKind.Soap, "Soap"), (PartKind.Glycerol, "Glycerol"), (PartKind.UnreactedFat, "Unreacted fat"), (PartKind.Unsaponifiable, "Unsaponifiable and unaccounted"),
        (PartKind.Water, "Water"), (PartKind.AcidSalt, "Salts of acids"), (PartKind.Sugar, "Sugars"), (PartKind.Protein, "Protein"), (PartKind.OtherSolids, "Ash and other solids"),
        (PartKind.Alcohol, "Alcohol"), (PartKind.Additive, "Additives"), (PartKind.InertOfAlkali, "Inert part of the alkali"), (PartKind.AlkaliLeft, "Alkali left"),
    ];

    internal static string Of(BarComposition bar)
    {
        StringBuilder text = new();
        string unit = UnitTable.Name(UnitTable.Mass, bar.Unit) ?? "g";
        text.Append(bar.Name).Append(", ").Append(Text.Number(Stored.GramsIn(bar.BarMass.Grams, bar.Unit))).Append(' ').Append(unit).Append(" of bar\n\n");
        Row(text, bar.TotalFattyMatter.DecimalFractions, "total fatty matter (ISO 685)");
        Row(text, bar.Moisture.DecimalFractions, "moisture");
        text.Append('\n');
        foreach ((PartKind kind, string title) in s_titles)
        {
            CompositionPart[] parts = [.. bar.Parts.Where(p => p.Kind == kind)];
            if (parts.Length == 0)
                continue;
            Row(text, bar.ShareOf(kind).DecimalFractions, title);
            foreach (CompositionPart part in parts.Length == 1 && string.Equals(parts[0].Name, title, StringComparison.OrdinalIgnoreCase) ? [] : parts)
                Row(text, part.Share.DecimalFractions, "    " + part.Name);
        }
        if (bar.Remarks.Count > 0)
            text.Append('\n');
        foreach (string remark in bar.Remarks)
            text.Append("  - ").Append(remark).Append('\n');
        return text.ToString();
    }

    /// <summary>A share of the bar as percent with two decimals.</summary>
    internal static string Percent(double share) => share is > 0 and < 0.00005 ? "< 0.01 %" : Text.Fixed(share * 100, 2) + " %";

    private static void Row(StringBuilder text, double share, string what) => text.Append(Percent(share).PadLeft(10)).Append("  ").Append(what).Append('\n');
}
