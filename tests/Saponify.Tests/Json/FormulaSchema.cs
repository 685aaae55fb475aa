using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Saponify.Internals;
using S = Saponify.FormulaShapes;

namespace Saponify.Tests.Json;

/// <summary>
/// The JSON schema (draft 2020-12) of the formula file, made from the table of members. It is for editors and other programs; the reader
/// of the library knows more: ranges, materials, sums, ids that stand twice.
/// </summary>
internal static class FormulaSchema
{
    private const string Number = @"([0-9]+(\.[0-9]+)?|\.[0-9]+)([eE][+-]?[0-9]+)?";

    private static readonly JsonSerializerOptions s_options = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static string Text()
    {
        JsonObject defs = [];
        foreach (Shape shape in FormulaShapesText.AllShapes)
            defs[shape.Name] = OfShape(shape);
        JsonObject schema = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = "urn:saponify:formula:1",
            ["title"] = $"Soap formula, {S.Format}",
            ["$ref"] = "#/$defs/" + S.Formula.Name,
            ["$defs"] = defs,
        };
        return schema.ToJsonString(s_options) + "\n";
    }

    private static JsonObject OfShape(Shape shape)
    {
        Member[] members = [.. shape.Members.Where(m => m.Refusal is null)];
        JsonObject schema = new() { ["description"] = shape.Description, ["type"] = "object" };
        if (members.Length > 0)
            schema["properties"] = new JsonObject(members.Select(m => KeyValuePair.Create(m.Name, (JsonNode?)OfMember(m))));
        if (Array.Exists(members, m => m.Required))
            schema["required"] = Names(members.Where(m => m.Required));
        schema["additionalProperties"] = false;
        JsonArray rules = [.. shape.OneOf.Select(OfAlternatives), .. Across(shape)];
        if (rules.Count > 0)
            schema["allOf"] = rules;
        return schema;
    }

    private static JsonObject OfMember(Member member)
    {
        JsonObject schema = member.Kind switch
        {
            MemberKind.Object => new() { ["$ref"] = "#/$defs/" + member.Shape!.Name },
            MemberKind.List => new() { ["type"] = "array", ["items"] = new JsonObject { ["$ref"] = "#/$defs/" + member.Shape!.Name } },
            MemberKind.Texts => new() { ["type"] = "array", ["items"] = new JsonObject { ["type"] = "string", ["pattern"] = @"\S" } },
            MemberKind.Masses => new() { ["type"] = "array", ["items"] = new JsonObject { ["type"] = "string", ["pattern"] = MassPattern(member) } },
            MemberKind.Count => new() { ["type"] = "integer" },
            MemberKind.Flag => new() { ["type"] = "boolean" },
            MemberKind.Choice => new() { ["enum"] = new JsonArray([.. member.Choices.Select(c => (JsonNode)c)]) },
            _ => new() { ["type"] = "string" },
        };
        schema.Insert(0, "description", member.Description);
        if (Pattern(member) is { } pattern)
            schema["pattern"] = pattern;
        if (member.Kind == MemberKind.LineId)
            schema["maxLength"] = LineId.LongestId;
        if (member == S.Alkalis || member == SetupShapes.Weighings)
            schema["minItems"] = 1;
        return schema;
    }

    private static string? Pattern(Member member)
    {
        string number = Signed(member);
        return member.Kind switch
        {
            MemberKind.Text => @"\S",
            MemberKind.LineId => @"^[^\s\[\]/~]([^\[\]/~\u0000-\u001f]*[^\s\[\]/~])?$",
            MemberKind.Mass => MassPattern(member),
            MemberKind.Length => $"^{number} *({Units(UnitTable.Length)})$",
            MemberKind.HeatTransfer => $"^{number} *{Regex.Escape(SpecialAmounts.HeatTransfer).Replace("\\ ", " ", StringComparison.Ordinal)}$",
            MemberKind.Volume => $"^{number} *({Units(UnitTable.Volume)})$",
            MemberKind.Temperature => $"^{number} *({Units(UnitTable.Temperature)})$",
            MemberKind.Percent => $"^{number} *%$",
            MemberKind.Parts => $"^{number} *: *1$",
            MemberKind.Saponification => $"^{number} *(mg KOH/g|g NaOH/g)$",
            MemberKind.Purity => $"^(({SpecialAmounts.AtLeast})?{Number} *%|{Number} *%? +to +{Number} *%)$",
            MemberKind.Date => "^[0-9]{4}-[0-9]{2}-[0-9]{2}$",
            _ => null,
        };
    }

    private static string Signed(Member member) => (member.Low >= 0 ? @"\+?" : "[+-]?") + Number;

    private static string MassPattern(Member member) =>
        $"^{Signed(member)} *({Units(UnitTable.Mass)}|({Units(UnitTable.Mass.Where(u => u.Unit == UnitsNet.Units.MassUnit.Pound))}) *{Number} *({Units(UnitTable.Mass.Where(u => u.Unit == UnitsNet.Units.MassUnit.Ounce))}))$";

    private static string Units<T>(IEnumerable<(string Text, T Unit)> units) => string.Join('|', units.Select(u => Regex.Escape(u.Text).Replace("\\ ", " ", StringComparison.Ordinal)));

    private static JsonNode OfAlternatives(Alternatives alternatives) => alternatives.Missing is null
        ? new JsonObject { ["not"] = AnyOf(from one in alternatives.Members from other in alternatives.Members where Array.IndexOf(alternatives.Members, one) < Array.IndexOf(alternatives.Members, other) select Needs(one, other)) }
        : new JsonObject { ["oneOf"] = new JsonArray([.. alternatives.Members.Select(m => Needs(m))]) };

    /// <summary>What the reader knows of members of different objects.</summary>
    private static IEnumerable<JsonNode> Across(Shape shape)
    {
        if (shape == S.AlkaliPlan)
        {
            // for a superfat, with shares if there are several; or each weighed, without a superfat
            yield return If(Needs(S.Superfat), then: EachAlkali(new JsonObject { ["not"] = Needs(S.AlkaliMass) }), otherwise: EachAlkali(Needs(S.AlkaliMass)));
            yield return If(
                new JsonObject { ["required"] = Names([S.Superfat]), ["properties"] = new JsonObject { [S.Alkalis.Name] = new JsonObject { ["minItems"] = 2 } } },
                then: EachAlkali(AnyOf([Needs(S.ShareOfHydroxide), Needs(S.ShareOfMass)])));
            yield return If(Needs(S.SuperfatOf), then: Needs(S.Superfat));
        }
        else if (shape == S.Liquids)
        {
            JsonObject weighed = new() { ["required"] = Names([S.LyeLiquid]), ["properties"] = new JsonObject { [S.LyeLiquid.Name] = AnyOf([Needs(S.Mass), Needs(S.Volume)]) } };
            yield return If(weighed,
                then: new JsonObject { ["not"] = AnyOf(S.Liquids.OneOf[0].Members.Select(m => Needs(m))) },
                otherwise: AnyOf(S.Liquids.OneOf[0].Members.Select(m => Needs(m))));
        }
        else if (shape == S.LyeLiquidObject || shape == S.HeldBackLine)
        {
            yield return If(
                new JsonObject { ["required"] = Names([S.Frozen]), ["properties"] = new JsonObject { [S.Frozen.Name] = new JsonObject { ["const"] = true } } },
                then: Needs(S.Temperature));
            if (shape == S.LyeLiquidObject)
                yield return If(Needs(S.Line), then: AnyOf([Needs(S.Mass), Needs(S.Volume)]));
        }
    }

    private static JsonObject EachAlkali(JsonNode schema) => new() { ["properties"] = new JsonObject { [S.Alkalis.Name] = new JsonObject { ["items"] = schema } } };

    private static JsonObject If(JsonNode condition, JsonNode then, JsonNode? otherwise = null)
    {
        JsonObject schema = new() { ["if"] = condition, ["then"] = then };
        if (otherwise is not null)
            schema["else"] = otherwise;
        return schema;
    }

    private static JsonObject AnyOf(IEnumerable<JsonNode> schemas) => new() { ["anyOf"] = new JsonArray([.. schemas]) };

    private static JsonObject Needs(params Member[] members) => new() { ["required"] = Names(members) };

    private static JsonArray Names(IEnumerable<Member> members) => [.. members.Select(m => (JsonNode)m.Name)];
}
