using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Saponify.Analysis;
using Saponify.Tests.Support;

namespace Saponify.Tests.Analysis;

/// <summary>SARIF logs against the schema that the OASIS committee publishes (errata 01, as in the MIT-licensed package of the SARIF tools).</summary>
public class SarifTests
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(Repository.Read("tests", "Saponify.Tests", "Schemas", "sarif-2.1.0.json"));

    private const string Faulty = """
        {
          "format": "saponify-formula/1",
          "name": "Faulty",
          "fats": [ { "fat": "coconut-oil", "mass": "460 g" }, { "fat": "lard", "mass": "270 g" }, { "fat": "lard", "mass": "0 g" } ],
          "alkali": { "superfat": "0.5 %", "alkalis": [ { "alkali": "potassium-hydroxide", "purity": "at least 85 %" } ] },
          "liquids": { "lyeConcentration": "60 %" },
          "suppressions": [ { "rule": "SFY1105", "reason": "weighed in two bowls" } ]
        }
        """;

    private static AnalysisReport Report(params FormulaRule[] more) => FormulaAnalyzer.Default.With(more).Analyze(FormulaFile.Read(Faulty, Pantry.Reference));

    private static bool IsValid(byte[] log) => s_schema.Evaluate(JsonDocument.Parse(log).RootElement, new EvaluationOptions { OutputFormat = OutputFormat.Flag }).IsValid;

    [Fact]
    public void Log_OfFindings_IsValid_AndTheApprovedOne()
    {
        byte[] log = SarifLog.Write(Report(), "batches/fäulty #1.json");
        Assert.True(IsValid(log));
        Golden.Matches(Encoding.UTF8.GetString(log), "sarif", "faulty.sarif");
    }

    [Theory]
    [InlineData("version")]
    [InlineData("runs/0/results/0/level")]
    [InlineData("runs/0/results/0/kind")]
    public void BrokenLog_IsToldApart(string member)
    {
        JsonNode log = JsonNode.Parse(SarifLog.Write(Report()))!;
        JsonNode at = log;
        string[] steps = member.Split('/');
        foreach (string step in steps[..^1])
            at = int.TryParse(step, out int index) ? at[index]! : at[step]!;
        at[steps[^1]] = "nonsense";
        Assert.False(IsValid(Encoding.UTF8.GetBytes(log.ToJsonString())));
    }

    [Fact]
    public void Log_OfACleanFormula_OfAFailedRule_AndOfNothing_AreValid()
    {
        Formula clean = FormulaFile.Read(File.ReadAllBytes(Repository.Path("data", "examples", "market-day-bar.json")), Pantry.Reference).Formula!;
        Assert.True(IsValid(SarifLog.Write(FormulaAnalyzer.Default.Analyze(clean))));
        Assert.True(IsValid(SarifLog.Write([])));
        byte[] failed = SarifLog.Write(Report(new Throw()));
        Assert.True(IsValid(failed));
        using JsonDocument json = JsonDocument.Parse(failed);
        JsonElement run = json.RootElement.GetProperty("runs")[0];
        Assert.False(run.GetProperty("invocations")[0].GetProperty("executionSuccessful").GetBoolean());
        Assert.DoesNotContain(run.GetProperty("results").EnumerateArray(), r => r.GetProperty("ruleId").GetString() == "SFY0001");
    }

    [Fact]
    public void Results_SayKindLevelPlaceAndSuppression()
    {
        using JsonDocument json = JsonDocument.Parse(SarifLog.Write(Report(), "faulty.json"));
        JsonElement[] results = [.. json.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray()];
        JsonElement water = results.Single(r => r.GetProperty("ruleId").GetString() == "SFY2006");
        Assert.Equal(("fail", "error"), (water.GetProperty("kind").GetString(), water.GetProperty("level").GetString()));
        Assert.Equal(6, water.GetProperty("locations")[0].GetProperty("physicalLocation").GetProperty("region").GetProperty("startLine").GetInt32());
        JsonElement review = results.Single(r => r.GetProperty("ruleId").GetString() == "SFY2003");
        Assert.Equal(("review", "none"), (review.GetProperty("kind").GetString(), review.GetProperty("level").GetString()));
        JsonElement accepted = results.Single(r => r.GetProperty("ruleId").GetString() == "SFY1105");
        Assert.Equal("weighed in two bowls", accepted.GetProperty("suppressions")[0].GetProperty("justification").GetString());
    }

    [Fact]
    public void EqualInput_GivesEqualBytes_InEveryCulture()
    {
        byte[] one = SarifLog.Write(Report(), "a.json");
        foreach (string culture in InCulture.Names)
            Assert.Equal(one, InCulture.Run(culture, () => SarifLog.Write(new FormulaAnalyzer(FormulaAnalyzer.BuiltInRules.Reverse()).Analyze(FormulaFile.Read(Faulty, Pantry.Reference)), "a.json")));
    }
}
