using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>A plan as JSON, for programs. Numbers are doubles in the unit their name says, not rounded; with obstacles nothing is offered to weigh.</summary>
public static class PlanJson
{
    private static readonly JsonWriterOptions s_options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes a plan: <c>"format": "saponify-plan/1"</c>, UTF-8, LF.</summary>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    public static byte[] Write(BatchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArrayBufferWriter<byte> buffer = new(2048);
        using (Utf8JsonWriter json = new(buffer, s_options))
            Write(json, plan);
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    private static void Write(Utf8JsonWriter json, BatchPlan plan)
    {
        LyeBalance balance = plan.Balance;
        json.WriteStartObject();
        json.WriteString("format", "saponify-plan/1");
        json.WriteString("writtenBy", LibraryVersion.Name);
        json.WriteString("name", plan.Formula.Name);
        json.WriteBoolean("canBeWeighed", balance.CanBeWeighed);
        List(json, "obstacles", plan.Obstacles, o =>
        {
            Path(json, o.Path);
            json.WriteString("reason", o.Reason);
        });
        List(json, "alkalis", plan.Alkalis, a =>
        {
            json.WriteString("line", a.Line);
            json.WriteString("alkali", a.Alkali.Id);
            json.WriteString("purity", SpecialAmounts.Write(a.Alkali.Purity));
            json.WriteNumber("massGrams", a.Grams);
        });
        if (plan.LyeLiquid is { } liquid)
        {
            json.WriteStartObject("lyeLiquid");
            json.WriteString("liquid", liquid.Liquid.Id);
            json.WriteNumber("massGrams", liquid.Grams);
            json.WriteEndObject();
        }
        json.WriteStartObject("superfatFraction");
        Number(json, "ofAllFat", balance.OfAllFat);
        Number(json, "ofListedFats", balance.OfListedFats);
        Number(json, "beforeLateFats", balance.BeforeLateFats);
        json.WriteEndObject();
        json.WriteBoolean("safeOnlyByUnlistedFat", plan.IsSafeOnlyByUnlistedFat);
        json.WriteStartObject("lyeConcentrationFraction");
        Number(json, "whileDissolving", balance.LyeConcentrationWhileDissolving?.DecimalFractions);
        Number(json, "ofAllWater", balance.LyeConcentrationOfAllWater?.DecimalFractions);
        json.WriteEndObject();
        json.WriteNumber("hydroxideMoles", balance.Hydroxide);
        json.WriteNumber("pureAlkaliGrams", balance.PureAlkaliGrams);
        json.WriteNumber("allWaterGrams", balance.AllWaterGrams);
        json.WriteNumber("batchGrams", balance.BatchGrams);
        json.WriteStartObject("lyeLiquidWindowGrams");
        Number(json, "leastToDissolve", plan.LiquidWindow.LeastToDissolve?.Grams);
        Number(json, "at40Percent", plan.LiquidWindow.At40Percent?.Grams);
        Number(json, "at25Percent", plan.LiquidWindow.At25Percent?.Grams);
        json.WriteEndObject();
        List(json, "lyeUptake", plan.LyeUptake, u =>
        {
            Path(json, u.Path);
            json.WriteString("taker", Name(u.Taker));
            json.WriteString("what", u.What);
            json.WriteNumber("hydroxideMoles", u.Hydroxide.Moles);
            json.WriteNumber("asAlkaliGrams", u.AsAlkali.Grams);
        });
        List(json, "possibleUptake", plan.PossibleUptake, u =>
        {
            Path(json, u.Path);
            json.WriteString("what", u.What);
            json.WriteString("why", u.Why);
            Number(json, "atMostGrams", u.AtMost?.Grams);
        });
        List(json, "water", plan.Water, w =>
        {
            Path(json, w.Path);
            json.WriteString("what", w.What);
            json.WriteNumber("waterGrams", w.Water.Grams);
            json.WriteBoolean("whileDissolving", w.IsWhileDissolving);
        });
        List(json, "fats", plan.Formula.Fats, f =>
        {
            json.WriteString("line", f.Line);
            json.WriteString("fat", f.Fat.Id);
            json.WriteNumber("massGrams", f.Grams);
            if (f.Fat.Saponification is { } used)
            {
                json.WriteNumber("saponificationValueMilligramsKohPerGram", used.Value.MilligramsKohPerGram);
                json.WriteString("evidence", used.IsOwn ? "own" : Name(used.Evidence));
            }
        });
        List(json, "additives", plan.Additives, a =>
        {
            json.WriteString("line", a.Line);
            json.WriteString("additive", a.Additive.Id);
            Number(json, "massGrams", a.Mass?.Grams);
        });
        List(json, "cautions", LyeCautions.ForHandlingLye, null);
        json.WriteEndObject();
    }

    private static void List<T>(Utf8JsonWriter json, string name, ValueList<T> items, Action<T>? write) where T : IEquatable<T>
    {
        json.WriteStartArray(name);
        for (int i = 0; i < items.Count; i++)
        {
            if (write is null)
            {
                json.WriteStringValue(items[i].ToString());
                continue;
            }
            json.WriteStartObject();
            write(items[i]);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Path(Utf8JsonWriter json, FormulaPath path)
    {
        json.WriteString("path", path.ToString());
        json.WriteString("pointer", path.ToJsonPointer());
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
            json.WriteNumber(name, number);
        else
            json.WriteNull(name);
    }

    private static string Name<T>(T value) where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());
}
