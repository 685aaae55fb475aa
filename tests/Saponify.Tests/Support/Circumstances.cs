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
                "today" => setup with { Today = Day(member.Value.GetString()!) },
                "process" => setup with { Process = Process(member.Value) },
                "box" => setup with { Mould = Box(Lengths(member.Value)) },
                "slab" => setup with { Mould = Slab(Lengths(member.Value)) },
                "cavities" => setup with { Mould = Saponify.Mould.Cavities(member.Value.GetProperty("count").GetInt32(), Volume(member.Value.GetProperty("each"))) },
                "moulds" => setup with { Moulds = member.Value.GetInt32() },
                "cut" => setup with { Cut = Cut(Lengths(member.Value)) },
                "pour" => setup with { Pour = Degrees(member.Value) },
                "insulated" => setup with { IsInsulated = member.Value.GetBoolean() },
                "pouredOn" => setup with { PouredOn = Day(member.Value.GetString()!) },
                "soldFrom" => setup with { SoldFrom = Day(member.Value.GetString()!) },
                "cure" => setup with { Cure = new("bar 1", [.. member.Value.EnumerateObject().Select(w => new BarWeighing(Day(w.Name), Mass(w.Value)))]) },
                "readyWeeklyLoss" => setup with { Ready = ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(member.Value.GetDouble())) },
                "curedBars" => setup with { CuredBars = [.. member.Value.EnumerateArray().Select(b => Mass(b))] },
                "declared" => setup with { DeclaredMass = Mass(member.Value) },
                "wantedBars" => setup with { WantedBars = member.Value.GetInt32() },
                _ => throw new InvalidDataException($"no circumstance is called {member.Name}"),
            };
        }
        return setup;
    }

    private static ProcessSetup Process(JsonElement value)
    {
        ProcessSetup setup = ProcessSetup.Unknown;
        foreach (JsonProperty member in value.EnumerateObject())
        {
            setup = member.Name switch
            {
                "room" => setup with { Room = Degrees(member.Value) },
                "water" => setup with { Water = Degrees(member.Value) },
                "heldBack" => setup with { HeldBack = Degrees(member.Value) },
                "fats" => setup with { Fats = Degrees(member.Value) },
                "lye" => setup with { Lye = Degrees(member.Value) },
                "milkLimit" => setup with { MilkLimit = Degrees(member.Value) },
                "vessel" => setup with
                {
                    Vessel = new(VesselMaterial.Of(member.Value.GetProperty("material").GetString()!), Volume(member.Value.GetProperty("volume")), Lengths(member.Value.GetProperty("diameter"))[0], Mass(member.Value.GetProperty("mass"))),
                },
                _ => throw new InvalidDataException($"no temperature is called {member.Name}"),
            };
        }
        return setup;
    }

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", null);

    private static Mould Box(Length[] sizes) => Saponify.Mould.Box(sizes[0], sizes[1], sizes[2]);

    private static Mould Slab(Length[] sizes) => Saponify.Mould.Slab(sizes[0], sizes[1], sizes[2]);

    private static CuttingPlan Cut(Length[] sizes) => new() { Thickness = sizes[0], Across = sizes.Length > 1 ? sizes[1] : null };

    /// <summary>Lengths in cm: <c>"25 cm, 9 cm, 7 cm"</c>.</summary>
    private static Length[] Lengths(JsonElement value) => [.. value.GetString()!.Split(',').Select(Length)];

    private static Length Length(string text) => AmountReader.TryNumber(text.Trim(), out double number, out ReadOnlySpan<char> unit, out string? fault) && unit is "cm"
        ? UnitsNet.Length.FromCentimeters(number) : throw new InvalidDataException(fault ?? $"{text} is no length in cm");

    private static Temperature Degrees(JsonElement value) =>
        AmountReader.TryTemperature(value.GetString(), out Temperature temperature, out string? fault) ? temperature : throw new InvalidDataException(fault);

    private static Volume Volume(JsonElement value) =>
        AmountReader.TryVolume(value.GetString(), out Volume volume, out string? fault) ? volume : throw new InvalidDataException(fault);

    private static Scale Scale(JsonElement value) => new(Mass(value));

    private static Mass Mass(JsonElement value) =>
        AmountReader.TryMass(value.GetString(), out Mass mass, out string? fault) ? mass : throw new InvalidDataException(fault);

    private static FragranceLimit Limit(JsonElement value) =>
        AmountReader.TryPercent(value.GetProperty("ofProduct").GetString(), out Ratio share, out string? fault)
            ? new FragranceLimit(value.GetProperty("additive").GetString()!, share, value.GetProperty("source").GetString()!)
            : throw new InvalidDataException(fault);

    private static ValueList<string> Texts(JsonElement list) => [.. list.EnumerateArray().Select(e => e.GetString()!)];
}
