using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Saponify.Internals;
using S = Saponify.FormulaShapes;

namespace Saponify;

/// <summary>From a formula to JSON, by the table of members.</summary>
internal static class FormulaWriter
{
    private static readonly JsonWriterOptions s_options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static byte[] Write(Formula formula, Pantry pantry) => Written(json => Write(json, formula, pantry));

    /// <summary>What is written, indented, with a closing line feed.</summary>
    internal static byte[] Written(Action<Utf8JsonWriter> write)
    {
        ArrayBufferWriter<byte> buffer = new(1024);
        using (Utf8JsonWriter json = new(buffer, s_options))
            write(json);
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    internal static void Write(Utf8JsonWriter json, Formula formula, Pantry pantry)
    {
        json.WriteStartObject();
        json.WriteString(S.FormatMember.Name, S.Format);
        json.WriteString(S.WrittenBy.Name, LibraryVersion.Name);
        json.WriteString(S.Data.Name, pantry.Version);
        json.WriteString(S.Name.Name, formula.Name);
        json.WriteStartArray(S.Fats.Name);
        foreach (FatPortion fat in formula.Fats)
            Write(json, fat);
        json.WriteEndArray();
        Write(json, formula.Alkali);
        Write(json, formula.Liquids);
        if (formula.Additives.Count > 0)
        {
            json.WriteStartArray(S.Additives.Name);
            foreach (AdditivePortion additive in formula.Additives)
                Write(json, additive);
            json.WriteEndArray();
        }
        if (formula.Suppressions.Count > 0)
        {
            json.WriteStartArray(S.Suppressions.Name);
            foreach (Suppression suppression in formula.Suppressions)
                Write(json, suppression);
            json.WriteEndArray();
        }
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, FatPortion fat)
    {
        json.WriteStartObject();
        WriteLine(json, fat.Line, fat.Fat.Id);
        json.WriteString(S.FatId.Name, fat.Fat.Id);
        if (fat.Poured is { } volume)
            json.WriteString(S.Volume.Name, AmountWriter.Write(volume));
        else
            json.WriteString(S.Mass.Name, AmountWriter.Write(fat.Mass));
        if (fat.IsLate)
            json.WriteString(S.FatStage.Name, "trace");
        if (fat.Fat.Saponification is { } used)
            json.WriteString(S.FatSaponification.Name, SpecialAmounts.Write(used.Value));
        if (fat.Fat.Lot is { } lot)
        {
            json.WriteStartObject(S.FatLot.Name);
            json.WriteString(S.LotName.Name, lot.Name);
            json.WriteString(S.LotSource.Name, lot.Source);
            if (lot.Saponification is { } own)
                json.WriteString(S.LotSaponification.Name, SpecialAmounts.Write(own));
            if (lot.Date is { } date)
                json.WriteString(S.LotDate.Name, date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
            json.WriteEndObject();
        }
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, AlkaliPlan plan)
    {
        json.WriteStartObject(S.AlkaliMember.Name);
        if (plan is SuperfatTarget target)
        {
            json.WriteString(S.Superfat.Name, AmountWriter.Percent(target.SuperfatFraction));
            if (target.Basis == SuperfatBasis.ListedFats)
                json.WriteString(S.SuperfatOf.Name, "listedFats");
            json.WriteStartArray(S.Alkalis.Name);
            foreach (AlkaliShare share in target.Alkalis)
            {
                json.WriteStartObject();
                WriteAlkali(json, share.Line, share.Alkali);
                if (target.Alkalis.Count > 1 || share.Basis == AlkaliShareBasis.MassAsWeighed || share.Fraction != 1)
                    json.WriteString((share.Basis == AlkaliShareBasis.Hydroxide ? S.ShareOfHydroxide : S.ShareOfMass).Name, AmountWriter.Percent(share.Fraction));
                json.WriteEndObject();
            }
        }
        else
        {
            json.WriteStartArray(S.Alkalis.Name);
            foreach (AlkaliPortion portion in ((WeighedAlkali)plan).Alkalis)
            {
                json.WriteStartObject();
                WriteAlkali(json, portion.Line, portion.Alkali);
                json.WriteString(S.Mass.Name, AmountWriter.Write(portion.Mass));
                json.WriteEndObject();
            }
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteAlkali(Utf8JsonWriter json, string line, Alkali alkali)
    {
        WriteLine(json, line, alkali.Id);
        json.WriteString(S.AlkaliId.Name, alkali.Id);
        json.WriteString(S.Purity.Name, SpecialAmounts.Write(alkali.Purity));
        if (alkali.Certificate is { } certificate)
            json.WriteString(S.Certificate.Name, certificate);
        if (alkali.BoundWaterFraction != alkali.UsualBoundWater)
            json.WriteString(S.BoundWater.Name, AmountWriter.Percent(alkali.BoundWaterFraction));
    }

    private static void Write(Utf8JsonWriter json, LiquidPlan plan)
    {
        json.WriteStartObject(S.LiquidsMember.Name);
        switch (plan.Rule)
        {
            case WaterRule.LyeConcentration:
                json.WriteString(S.LyeConcentration.Name, AmountWriter.Percent(plan.Fraction));
                break;
            case WaterRule.WaterToAlkali:
                json.WriteString(S.WaterToAlkali.Name, SpecialAmounts.WriteParts(plan.Fraction));
                break;
            case WaterRule.WaterToFats:
                json.WriteString(S.WaterToFats.Name, AmountWriter.Percent(plan.Fraction));
                break;
            case WaterRule.TotalWater:
                json.WriteString(S.TotalWater.Name, AmountWriter.Write(plan.Mass!.Value));
                break;
        }
        if (plan.Weighed is { } weighed)
        {
            json.WriteStartObject(S.LyeLiquid.Name);
            Write(json, weighed);
            json.WriteEndObject();
        }
        else if (!plan.LyeLiquid.Equals(LyeLiquid.PlainWater))
        {
            json.WriteStartObject(S.LyeLiquid.Name);
            json.WriteString(S.LiquidId.Name, plan.LyeLiquid.Liquid.Id);
            WriteForm(json, plan.LyeLiquid.Liquid, plan.LyeLiquid.Temperature, plan.LyeLiquid.IsFrozen);
            json.WriteEndObject();
        }
        if (plan.HeldBack.Count > 0)
        {
            json.WriteStartArray(S.HeldBack.Name);
            foreach (LiquidPortion portion in plan.HeldBack)
            {
                json.WriteStartObject();
                Write(json, portion);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, LiquidPortion portion)
    {
        WriteLine(json, portion.Line, portion.Liquid.Id);
        json.WriteString(S.LiquidId.Name, portion.Liquid.Id);
        if (portion.Poured is { } volume)
            json.WriteString(S.Volume.Name, AmountWriter.Write(volume));
        else
            json.WriteString(S.Mass.Name, AmountWriter.Write(portion.Mass));
        WriteForm(json, portion.Liquid, portion.Temperature, portion.IsFrozen);
    }

    private static void WriteForm(Utf8JsonWriter json, Liquid liquid, UnitsNet.Temperature? temperature, bool frozen)
    {
        if (temperature is { } at)
            json.WriteString(S.Temperature.Name, AmountWriter.Write(at));
        if (frozen)
            json.WriteBoolean(S.Frozen.Name, true);
        if (liquid.LabelSource is not { } source)
            return;
        Contents contents = liquid.Contents;
        json.WriteStartObject(S.LiquidLabel.Name);
        json.WriteString(S.LabelSource.Name, source);
        json.WriteString(S.LabelWater.Name, AmountWriter.Percent(contents.WaterFraction));
        json.WriteString(S.LabelFat.Name, AmountWriter.Percent(contents.FatFraction));
        json.WriteString(S.LabelSugar.Name, AmountWriter.Percent(contents.SugarFraction));
        json.WriteString(S.LabelProtein.Name, AmountWriter.Percent(contents.ProteinFraction));
        json.WriteString(S.LabelAcid.Name, AmountWriter.Percent(contents.AcidFraction));
        json.WriteString(S.LabelAlcohol.Name, AmountWriter.Percent(contents.AlcoholFraction));
        json.WriteString(S.LabelAsh.Name, AmountWriter.Percent(contents.AshFraction));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, AdditivePortion additive)
    {
        json.WriteStartObject();
        WriteLine(json, additive.Line, additive.Additive.Id);
        json.WriteString(S.AdditiveId.Name, additive.Additive.Id);
        if (additive.Mass is { } mass)
            json.WriteString(S.Mass.Name, AmountWriter.Write(mass));
        else if (additive.OfFatsFraction is { } fraction)
            json.WriteString(S.OfFats.Name, AmountWriter.Percent(fraction));
        else
            json.WriteString(S.Amount.Name, "unknown");
        json.WriteString(S.AdditiveStage.Name, additive.Stage.InFile());
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Suppression suppression)
    {
        json.WriteStartObject();
        json.WriteString(S.SuppressionRule.Name, suppression.RuleId);
        if (suppression.Path.Length > 0)
            json.WriteString(S.SuppressionPath.Name, suppression.Path);
        json.WriteString(S.SuppressionReason.Name, suppression.Reason);
        if (suppression.Author is { } author)
            json.WriteString(S.SuppressionAuthor.Name, author);
        if (suppression.Until is { } until)
            json.WriteString(S.SuppressionUntil.Name, Text.Day(until));
        json.WriteEndObject();
    }

    private static void WriteLine(Utf8JsonWriter json, string line, string material)
    {
        if (line != material)
            json.WriteString(S.Line.Name, line);
    }
}
