using System.Globalization;
using System.Text.Json;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>An object whose members are found by the table. Each getter gives null when the member is missing or wrong; a wrong one is reported.</summary>
internal sealed class BoundObject(ShapeReader reader, JsonPiece piece, Shape shape, JsonPiece?[] found, uint misspelt)
{
    private delegate bool Parser<T>(ReadOnlySpan<char> text, out T value, out string? fault);

    internal JsonPiece Piece => piece;

    internal JsonPiece? At(Member member) => found[shape.IndexOf(member)];

    internal bool Has(Member member) => At(member) is not null;

    /// <summary>True when the member is there, under its name or a misspelt one that is reported already.</summary>
    internal bool IsMeant(Member member) => Has(member) || (misspelt >> shape.IndexOf(member) & 1) != 0;

    internal void Report(string id, Member member, string text, string? expected = null) => reader.Report(id, At(member) ?? piece, text, expected);

    internal void Notice(string id, Member member, string text, string? expected = null) => reader.Notice(id, At(member) ?? piece, text, expected);

    internal void Missing(Member member, string text, string? expected) => reader.Missing(piece, member, text, expected);

    /// <summary>A text; one that is required or means something is not blank, and the id of a line can stand in a path.</summary>
    internal string? Text(Member member)
    {
        if (StringOf(member) is not { } text)
            return null;
        if (member.Kind == MemberKind.LineId && LineId.Fault(text) is { } fault)
            Report(ProblemIds.WrongLine, member, $"\"{ShapeReader.Short(text)}\" is no id: it {fault.TrimEnd('.')}");
        else if (member.Kind != MemberKind.Note && string.IsNullOrWhiteSpace(text))
            Report(ProblemIds.WrongAmount, member, $"\"{member.Name}\" is blank", member.Wanted);
        else
            return text;
        return null;
    }

    internal string? Choice(Member member)
    {
        if (StringOf(member) is not { } text)
            return null;
        if (Array.IndexOf(member.Choices, text) >= 0)
            return text;
        Report(ProblemIds.UnknownChoice, member, $"\"{ShapeReader.Short(text)}\" is no {member.Name}", member.Wanted);
        return null;
    }

    internal bool? Flag(Member member)
    {
        if (At(member) is not { } value)
            return null;
        if (value.Kind is JsonTokenType.True or JsonTokenType.False)
            return value.Kind == JsonTokenType.True;
        reader.WrongType(value, member);
        return null;
    }

    internal DateOnly? Date(Member member)
    {
        if (StringOf(member) is not { } text)
            return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date))
            return date;
        Report(ProblemIds.WrongAmount, member, $"\"{ShapeReader.Short(text)}\" is no date", member.Wanted);
        return null;
    }

    internal Mass? Mass(Member member) => Amount<Mass>(member, AmountReader.TryMass, Stored.ToGrams);

    internal Volume? Volume(Member member) => Amount<Volume>(member, AmountReader.TryVolume, static v => v.Milliliters);

    internal Ratio? Percent(Member member) => Amount<Ratio>(member, AmountReader.TryPercent, static r => r.DecimalFractions);

    internal Temperature? Temperature(Member member) => Amount<Temperature>(member, AmountReader.TryTemperature, static t => t.DegreesCelsius);

    internal Length? Length(Member member) => Amount<Length>(member, AmountReader.TryLength, static l => l.Centimeters);

    internal HeatTransferCoefficient? HeatTransfer(Member member) => Amount<HeatTransferCoefficient>(member, SpecialAmounts.TryHeatTransfer, static h => h.WattsPerSquareMeterKelvin);

    /// <summary>A whole number, written as a number: a count has no unit.</summary>
    internal int? Count(Member member)
    {
        if (At(member) is not { } value)
            return null;
        if (value.Kind != JsonTokenType.Number)
            reader.WrongType(value, member);
        else if (!double.TryParse(value.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) || number != Math.Floor(number))
            Report(ProblemIds.WrongAmount, member, $"\"{member.Name}\": {ShapeReader.Short(value.Text)} is no whole number", member.Wanted);
        else if (IsInRange(value, member, number))
            return (int)number;
        return null;
    }

    /// <summary>The masses of a list; null when it is missing or one of them is wrong.</summary>
    internal ValueList<Mass>? Masses(Member member)
    {
        if (ItemsOf(member) is not { } items)
            return null;
        List<Mass> masses = new(items.Count);
        foreach (JsonPiece item in items)
        {
            if (item.Kind != JsonTokenType.String)
                reader.Report(ProblemIds.WrongType, item, $"\"{member.Name}\" holds {item.KindName}", member.Wanted);
            else if (Amount<Mass>(item, member, AmountReader.TryMass, Stored.ToGrams) is { } mass)
                masses.Add(mass);
        }
        return masses.Count == items.Count ? masses.ToValueList() : null;
    }

    internal Ratio? Parts(Member member) => Amount<Ratio>(member, SpecialAmounts.TryParts, static r => r.DecimalFractions);

    internal SaponificationValue? Saponification(Member member) => Amount<SaponificationValue>(member, SpecialAmounts.TrySaponification, static v => v.MilligramsKohPerGram);

    internal Purity? Purity(Member member)
    {
        if (StringOf(member) is not { } text)
            return null;
        if (SpecialAmounts.TryPurity(text, out Purity? purity, out string? fault))
            return purity;
        Report(ProblemIds.WrongAmount, member, $"\"{member.Name}\": {fault}", member.Wanted);
        return null;
    }

    internal BoundObject? Object(Member member) => At(member) is { } value ? reader.Read(value, member.Shape!) : null;

    /// <summary>The objects of a list; a null stands for one that is no object.</summary>
    internal List<BoundObject?> List(Member member)
    {
        if (ItemsOf(member) is not { } pieces)
            return [];
        List<BoundObject?> items = new(pieces.Count);
        foreach (JsonPiece item in pieces)
            items.Add(reader.Read(item, member.Shape!));
        return items;
    }

    /// <summary>The texts of a list; null when it is missing or one of them is wrong.</summary>
    internal ValueList<string>? Texts(Member member)
    {
        if (ItemsOf(member) is not { } items)
            return null;
        bool sound = true;
        foreach (JsonPiece item in items)
        {
            if (item.Kind == JsonTokenType.String && !string.IsNullOrWhiteSpace(item.Text))
                continue;
            sound = false;
            if (item.Kind == JsonTokenType.String)
                reader.Report(ProblemIds.WrongAmount, item, $"a text of \"{member.Name}\" is blank", member.Wanted);
            else
                reader.Report(ProblemIds.WrongType, item, $"\"{member.Name}\" holds {item.KindName}", member.Wanted);
        }
        return sound ? [.. items.Select(i => i.Text)] : null;
    }

    private List<JsonPiece>? ItemsOf(Member member)
    {
        if (At(member) is not { } value)
            return null;
        if (value.Kind == JsonTokenType.StartArray)
            return value.Items;
        reader.WrongType(value, member);
        return null;
    }

    private string? StringOf(Member member)
    {
        if (At(member) is not { } value)
            return null;
        if (value.Kind == JsonTokenType.String)
            return value.Text;
        reader.WrongType(value, member);
        return null;
    }

    private T? Amount<T>(Member member, Parser<T> parse, Func<T, double> size) where T : struct =>
        StringOf(member) is null ? null : Amount(At(member)!, member, parse, size);

    private T? Amount<T>(JsonPiece piece, Member member, Parser<T> parse, Func<T, double> size) where T : struct
    {
        string text = piece.Text;
        if (!parse(text, out T value, out string? fault))
        {
            if (member.OfVolume is not null && AmountReader.IsVolume(text))
                fault = member.OfVolume;
            reader.Report(ProblemIds.WrongAmount, piece, $"\"{member.Name}\": {fault}", member.Wanted);
            return null;
        }
        return IsInRange(piece, member, size(value)) ? value : null;
    }

    private bool IsInRange(JsonPiece piece, Member member, double at)
    {
        if (at >= member.Low && at <= member.High)
            return true;
        double scale = member.Kind == MemberKind.Percent ? 100 : 1;
        reader.Report(ProblemIds.OutOfRange, piece, $"\"{ShapeReader.Short(piece.Text)}\" is out of range",
            $"{member.Name} goes from {Internals.Text.Exact(member.Low * scale)} to {Internals.Text.Exact(member.High * scale)} {member.RangeUnit}".TrimEnd());
        return false;
    }
}
