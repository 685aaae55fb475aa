using System.Text.Json;
using Saponify.Internals;

namespace Saponify.Tests.Support;

/// <summary>The circumstances of a batch as the rule pages write them: <c>{ "scale": "5 g", "form": "bar", "excluded": ["milk"], "today": "2026-11-25" }</c>.</summary>
public static class Circumstances
{
    public static BatchSetup Read(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        BatchSetup setup = BatchSetup.Unknown;
        foreach (JsonProperty member in document.RootElement.EnumerateObject())
        {
            setup = member.Name switch
            {
                "scale" => setup with { Scale = Scale(member.Value) },
                "alkaliScale" => setup with { AlkaliScale = Scale(member.Value) },
                "form" => setup with { Form = Enum.Parse<ProductForm>(member.Value.GetString()!, ignoreCase: true) },
                "excluded" => setup with { Excluded = Texts(member.Value) },
                "fragranceLimits" => setup with { FragranceLimits = [.. member.Value.EnumerateArray().Select(Limit)] },
                "markets" => setup with { Markets = Texts(member.Value) },
                "today" => setup with { Today = DateOnly.ParseExact(member.Value.GetString()!, "yyyy-MM-dd", null) },
                _ => throw new InvalidDataException($"no circumstance is called {member.Name}"),
            };
        }
        return setup;
    }

    private static Scale Scale(JsonElement value) =>
        AmountReader.TryMass(value.GetString(), out Mass step, out string? fault) ? new Scale(step) : throw new InvalidDataException(fault);

    private static FragranceLimit Limit(JsonElement value) =>
        AmountReader.TryPercent(value.GetProperty("ofProduct").GetString(), out Ratio share, out string? fault)
            ? new FragranceLimit(value.GetProperty("additive").GetString()!, share, value.GetProperty("source").GetString()!)
            : throw new InvalidDataException(fault);

    private static ValueList<string> Texts(JsonElement list) => [.. list.EnumerateArray().Select(e => e.GetString()!)];
}
