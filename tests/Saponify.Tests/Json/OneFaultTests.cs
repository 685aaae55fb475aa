using System.Text.Json.Nodes;

namespace Saponify.Tests.Json;

/// <summary>One fault, one finding: whatever single member is misspelt, of the wrong type, nonsense or missing, nothing else is reported because of it.</summary>
public class OneFaultTests
{
    /// <summary>Files in which every member of the format stands at least once.</summary>
    private static readonly string[] s_files =
    [
        """
        {
          "format": "saponify-formula/1", "writtenBy": "hand", "data": "2026.11", "name": "All members",
          "fats": [
            { "line": "a", "fat": "olive-oil", "mass": "420 g", "stage": "fats", "saponificationValue": "188 mg KOH/g",
              "lot": { "name": "L-17", "source": "certificate", "saponificationValue": "188 mg KOH/g", "date": "2026-03-01" } },
            { "line": "b", "fat": "coconut-oil", "volume": "8 fl oz", "stage": "trace" }
          ],
          "alkali": {
            "superfat": "6 %", "of": "listedFats",
            "alkalis": [
              { "line": "soda", "alkali": "sodium-hydroxide", "purity": "98 %", "certificate": "2231", "boundWater": "1 %", "shareOfHydroxide": "60 %" },
              { "line": "potash", "alkali": "potassium-hydroxide", "purity": "85 to 91 %", "shareOfHydroxide": "40 %" }
            ]
          },
          "liquids": {
            "lyeConcentration": "31 %",
            "lyeLiquid": { "liquid": "milk-goat", "temperature": "-18 °C", "frozen": true,
              "label": { "source": "carton", "water": "85 %", "fat": "4 %", "sugar": "4 %", "protein": "3 %", "acid": "0 %", "alcohol": "0 %", "ash": "1 %" } },
            "heldBack": [ { "line": "cream", "liquid": "heavy-cream", "mass": "1 lb 3 oz", "temperature": "5 °C", "frozen": false } ]
          },
          "additives": [
            { "line": "clay", "additive": "kaolin", "ofFats": "1 %", "stage": "trace" },
            { "line": "salt", "additive": "sucrose", "mass": "12 g" },
            { "line": "scent", "additive": "glycerin", "amount": "unknown" }
          ],
          "setup": {
            "scale": { "step": "1 g", "minimumLoad": "5 g", "capacity": "5 kg", "accuracy": "0.1 %", "tared": true }, "alkaliScale": { "step": "0.1 g" },
            "form": "bar", "excluded": [ "tree-nut" ], "markets": [ "EU" ], "today": "2026-11-25",
            "fragranceLimits": [ { "additive": "fragrance-oil", "ofProduct": "2.5 %", "source": "certificate of lot 7" } ],
            "process": {
              "room": "21 °C", "water": "17 °C", "alkali": "19 °C", "heldBack": "5 °C", "fats": "100 °F", "lye": "35 °C", "mixed": "36 °C", "milkLimit": "38 °C",
              "ice": { "share": "20 %", "temperature": "-18 °C" },
              "vessel": { "material": "polypropylene", "volume": "1.5 L", "diameter": "12 cm", "mass": "140 g" },
              "surroundings": { "ownFigures": { "temperature": "12 °C", "leastTransfer": "60 W/(m2 K)", "mostTransfer": "90 W/(m2 K)" } }, "leastHeadspace": "40 %"
            },
            "mould": { "box": { "length": "25 cm", "width": "9 cm", "height": "7 cm", "lining": "1 mm", "filledTo": "6 cm" } }, "moulds": 2,
            "cut": { "thickness": "1 in", "across": "8 cm", "kerf": "1 mm", "ends": "5 mm", "samples": 1 },
            "pour": "38 °C", "insulated": true, "leftInPot": "1 %", "wantedBars": 16, "pouredOn": "2026-09-01", "soldFrom": "2026-11-01",
            "cure": { "bar": "7", "poured": "131 g", "scale": { "step": "0.1 g" }, "weighings": [ { "date": "2026-09-03", "mass": "128 g" }, { "date": "2026-09-10", "mass": "124 g" } ] },
            "ready": { "weeklyLossBelow": "1 %" }, "curedBars": [ "101 g", "3.5 oz" ], "declaredMass": "98 g"
          },
          "suppressions": [ { "rule": "SFY2015", "path": "additives[clay]", "reason": "tried last year", "author": "the maker", "until": "2027-01-31" } ]
        }
        """,
        """
        {
          "format": "saponify-formula/1", "name": "Weighed",
          "fats": [ { "fat": "olive-oil", "mass": "420 g" } ],
          "setup": { "mould": { "cylinder": { "diameter": "7 cm", "height": "30 cm", "lining": "1 mm", "filledTo": "28 cm" } }, "process": { "surroundings": { "bath": "ice" } }, "ready": { "withinOfFinal": "0.5 %" } },
          "alkali": { "alkalis": [ { "alkali": "sodium-hydroxide", "purity": "98 %", "mass": "30 g" }, { "alkali": "potassium-hydroxide", "purity": "90 %", "mass": "40 g" } ] },
          "liquids": { "lyeLiquid": { "line": "jug", "liquid": "water", "volume": "150 mL" } }
        }
        """,
        """
        {
          "format": "saponify-formula/1", "name": "Shares of the mass",
          "setup": { "mould": { "slab": { "length": "40 cm", "width": "30 cm", "height": "4 cm" } }, "process": { "surroundings": { "stillAir": "12 °C" } } },
          "fats": [ { "fat": "olive-oil", "mass": "420 g" } ],
          "alkali": { "superfat": "6 %", "alkalis": [ { "alkali": "sodium-hydroxide", "purity": "98 %", "shareOfMass": "30 %" }, { "alkali": "potassium-hydroxide", "purity": "90 %", "shareOfMass": "70 %" } ] },
          "liquids": { "waterToAlkali": "2.2 : 1" }
        }
        """,
        """
        {
          "format": "saponify-formula/1", "name": "Water to fats",
          "setup": { "mould": { "cavities": { "count": 6, "each": "95 mL" } } },
          "fats": [],
          "alkali": { "superfat": "6 %", "alkalis": [ { "alkali": "sodium-hydroxide-solution", "purity": "at least 45 %" } ] },
          "liquids": { "waterToFats": "33 %", "lyeLiquid": { "liquid": "water" } }
        }
        """,
        """
        {
          "format": "saponify-formula/1", "name": "Total water",
          "setup": { "mould": { "volume": "1.2 L" } },
          "fats": [ { "fat": "olive-oil", "mass": "420 g" } ],
          "alkali": { "superfat": "6 %", "alkalis": [ { "alkali": "sodium-hydroxide", "purity": "98 %" } ] },
          "liquids": { "totalWater": "8 oz" }
        }
        """,
    ];

    /// <summary>Ways to spoil one member of an object, with the least and the most findings it may give.</summary>
    private static readonly (string Name, int Least, int Most, Action<JsonObject, string> Spoil)[] s_ways =
    [
        ("misspelt", 1, 1, (owner, member) => Rename(owner, member, member + "x")),
        ("without its last letter", 1, 1, (owner, member) => Rename(owner, member, member[..^1])),
        // nobody knows then what was meant, so that it may be missed as well
        ("under quite another name", 1, 2, (owner, member) => Rename(owner, member, "somethingElseAltogether")),
        // a count is one
        ("a number", 0, 1, (owner, member) => owner[member] = 17),
        ("null", 1, 1, (owner, member) => owner[member] = null),
        ("an empty list", 0, 1, (owner, member) => owner[member] = new JsonArray()),
        ("nonsense", 0, 1, (owner, member) => owner[member] = "???"),
        ("left out", 0, 1, (owner, member) => owner.Remove(member)),
        // an empty object misses each member that it needs
        ("an empty object", 0, 4, (owner, member) => owner[member] = new JsonObject()),
    ];

    [Fact]
    public void TheFiles_AreRight()
    {
        foreach (string file in s_files)
            Assert.Empty(FormulaFile.Read(file, Pantry.Reference).Problems);
        // and hold every member that is ever right
        HashSet<string> written = [.. s_files.SelectMany(f => Members(JsonNode.Parse(f)!, "")).Select(p => p[(p.LastIndexOf('/') + 1)..])];
        Assert.Empty(FormulaShapesText.AllShapes.SelectMany(s => s.Members).Where(m => m.Refusal is null).Select(m => m.Name).Except(written));
    }

    [Fact]
    public void EverySpoiltMember_GivesOneFinding()
    {
        List<string> faults = [];
        int count = 0;
        foreach (Spoilt spoilt in Spoil())
        {
            ValueList<Problem> problems = FormulaFile.Read(spoilt.Json, Pantry.Reference).Problems;
            if (problems.Count < spoilt.Least || problems.Count > spoilt.Most)
                faults.Add($"{spoilt.What}:\n{string.Join("\n", problems)}");
            count++;
        }
        Assert.True(faults.Count == 0, string.Join("\n\n", faults));
        Assert.InRange(count, 1000, 10_000);
    }

    /// <summary>Every spoilt file, for other tests.</summary>
    internal static IEnumerable<(string What, string Json)> SpoiltFiles() => Spoil().Select(s => (s.What, s.Json));

    private sealed record Spoilt(string What, string Json, int Least, int Most);

    private static IEnumerable<Spoilt> Spoil()
    {
        foreach (string json in s_files)
        {
            foreach (string pointer in Members(JsonNode.Parse(json)!, ""))
            {
                foreach ((string way, int least, int most, Action<JsonObject, string> spoil) in s_ways)
                {
                    JsonNode file = JsonNode.Parse(json)!;
                    string[] steps = pointer.Split('/')[1..];
                    JsonNode owner = steps[..^1].Aggregate(file, (at, step) => at is JsonArray list ? list[int.Parse(step)]! : at[step]!);
                    spoil((JsonObject)owner, steps[^1]);
                    yield return new($"{pointer} {way}", file.ToJsonString(), least, most);
                }
            }
        }
    }

    private static IEnumerable<string> Members(JsonNode node, string pointer) => node switch
    {
        JsonObject owner => owner.SelectMany(m => (m.Value is null ? [] : Members(m.Value, $"{pointer}/{m.Key}")).Prepend($"{pointer}/{m.Key}")),
        JsonArray list => list.SelectMany((item, i) => Members(item!, $"{pointer}/{i}")),
        _ => [],
    };

    private static void Rename(JsonObject owner, string member, string name)
    {
        JsonNode? value = owner[member];
        owner.Remove(member);
        owner[name] = value;
    }
}
