using Saponify.Internals;

namespace Saponify;

/// <summary>One member of the formula file. The table of them (<see cref="FormulaShapes"/>) drives reader, writer and schema.</summary>
internal sealed record Member(string Name, MemberKind Kind, string Description)
{
    internal bool Required { get; init; }

    /// <summary>Least and greatest value, in the unit of <see cref="RangeUnit"/>; they are those of the constructors.</summary>
    internal double Low { get; init; } = double.NegativeInfinity;

    internal double High { get; init; } = double.PositiveInfinity;

    /// <summary>Both at once, from the type whose constructor has them.</summary>
    internal Limits Limits
    {
        init => (Low, High) = (value.Low, value.High);
    }

    internal string[] Choices { get; init; } = [];

    internal Shape? Shape { get; init; }

    /// <summary>Why this member is never right here; null for a member that is.</summary>
    internal string? Refusal { get; init; }

    /// <summary>What to say of a volume that stands where this mass should, when there is more to say than that.</summary>
    internal string? OfVolume { get; init; }

    internal string RangeUnit => Kind switch
    {
        MemberKind.Mass or MemberKind.Masses => "g",
        MemberKind.Volume => "mL",
        MemberKind.Percent or MemberKind.Purity => "%",
        MemberKind.Temperature => "°C",
        MemberKind.Length => "cm",
        MemberKind.HeatTransfer => SpecialAmounts.HeatTransfer,
        MemberKind.Count => "",
        MemberKind.Saponification => "mg KOH/g",
        _ => "parts",
    };

    /// <summary>What would be right here.</summary>
    internal string Wanted => Kind switch
    {
        MemberKind.Mass => "write a mass such as \"420 g\" or \"14.5 oz\"",
        MemberKind.Volume => "write a volume such as \"250 mL\" or \"8 fl oz\"",
        MemberKind.Percent => "write a share such as \"6 %\"",
        MemberKind.Parts => "write parts of water to one part of pure alkali such as \"2.2 : 1\"",
        MemberKind.Temperature => "write a temperature such as \"38 °C\" or \"100 °F\"",
        MemberKind.Length => "write a length such as \"25 cm\" or \"9.5 in\"",
        MemberKind.HeatTransfer => $"write a heat transfer such as \"50 {SpecialAmounts.HeatTransfer}\"",
        MemberKind.Count => "write a whole number such as 12, without quotation marks",
        MemberKind.Saponification => "write a saponification value such as \"192.4 mg KOH/g\" or \"0.1372 g NaOH/g\"",
        MemberKind.Purity => "write a purity such as \"98 %\", \"97 to 100 %\" or \"at least 85 %\"",
        MemberKind.Date => "write a date such as \"2026-11-25\"",
        MemberKind.Flag => "write true or false",
        MemberKind.Object => "write an object { ... }",
        MemberKind.List => "write a list [ ... ]",
        MemberKind.Texts => "write a list of texts such as [\"...\"]",
        MemberKind.Masses => "write a list of masses such as [\"104 g\", \"3.7 oz\"]",
        MemberKind.Choice => "write one of: " + string.Join(", ", Choices.Select(c => $"\"{c}\"")),
        _ => "write a text",
    };
}
