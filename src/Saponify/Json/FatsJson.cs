using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Saponify;

/// <summary>Fats as JSON, for programs: <c>"format": "saponify-fats/1"</c>, UTF-8, LF. Null means not known.</summary>
internal static class FatsJson
{
    private static readonly JsonWriterOptions s_options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static byte[] Write(Pantry pantry, ValueList<Fat> fats)
    {
        ArrayBufferWriter<byte> buffer = new(4096);
        using (Utf8JsonWriter json = new(buffer, s_options))
        {
            json.WriteStartObject();
            json.WriteString("format", "saponify-fats/1");
            json.WriteString("data", pantry.Version);
            json.WriteStartArray("fats");
            foreach (Fat fat in fats)
                Write(json, fat);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    private static void Write(Utf8JsonWriter json, Fat fat)
    {
        json.WriteStartObject();
        json.WriteString("id", fat.Id);
        json.WriteString("name", fat.Name);
        json.WriteString("class", JsonNamingPolicy.CamelCase.ConvertName(fat.Class.ToString()));
        json.WriteString("origin", fat.Origin);
        json.WriteBoolean("vegan", fat.IsVegan);
        json.WriteString("allergen", fat.Allergen);
        json.WriteBoolean("own", fat.IsOwn);
        json.WriteString("evidence", fat.Evidence is { } evidence ? JsonNamingPolicy.CamelCase.ConvertName(evidence.ToString()) : null);
        Koh(json, "saponificationValueMilligramsKohPerGram", fat.Saponification?.Value);
        Koh(json, "lowMilligramsKohPerGram", (fat.Saponification ?? fat.Figures.Saponification)?.Low);
        Koh(json, "highMilligramsKohPerGram", (fat.Saponification ?? fat.Figures.Saponification)?.High);
        json.WriteBoolean("needsLotsOwnValue", fat.Saponification is null);
        json.WriteStartArray("sources");
        foreach (string key in fat.Saponification?.Sources ?? default)
            json.WriteStringValue(key);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Koh(Utf8JsonWriter json, string name, SaponificationValue? value)
    {
        if (value is { } known)
            json.WriteNumber(name, known.MilligramsKohPerGram);
        else
            json.WriteNull(name);
    }
}
