using System.Text;
using Saponify.Analysis;

namespace Saponify.Tests.Analysis;

/// <summary>Configurations as JSON: what is understood is applied, what is not is reported with its place.</summary>
public class ConfigFileTests
{
    private static AnalyzerConfigFile Read(string json) => AnalyzerConfigFile.Read(Encoding.UTF8.GetBytes(json));

    private static RuleDescriptor Rule(string id) => FormulaAnalyzer.BuiltInRules.Single(r => r.Descriptor.Id == id).Descriptor;

    [Fact]
    public void Whole_IsApplied()
    {
        AnalyzerConfigFile file = Read("""
            {
              "preset": "strict",
              "severity": { "SFY2015": "off", "structure": "info" },
              "options": { "SFY2013.highest": "2 %" },
              "suppressions": [ { "rule": "SFY2012", "reason": "we make soft bars", "until": "2027-01-31" } ]
            }
            """);
        Assert.Empty(file.Problems);
        Assert.Null(file.Config.SeverityOf(Rule("SFY2015")));
        Assert.Equal(Severity.Info, file.Config.SeverityOf(Rule("SFY1104")));
        Assert.Equal(Severity.Error, file.Config.SeverityOf(Rule("SFY2012")));
        Assert.Equal(2, file.Config.ValueOf("SFY2013", Rule("SFY2013").Options[0]));
        Assert.Equal(new DateOnly(2027, 1, 31), Assert.Single(file.Config.Suppressions).Until);
    }

    [Fact]
    public void Faults_AreAllReportedInPlace()
    {
        AnalyzerConfigFile file = Read("""
            {
              "preset": "lenient",
              "severity": { "SFY9999": "off", "SFY2001": "off", "SFY2015": "loud" },
              "options": { "SFY2013.lowest": "2 %", "SFY2013.highest": "2", "SFY2015.highest": "200 %", "SFY7777.x": "1 g" },
              "suppressions": [ { "path": "fats" }, { "rule": "SFY0", "reason": "r" } ],
              "rules": {}
            }
            """);
        Assert.Equal(
            ["/preset", "/severity/SFY9999", "/severity/SFY2001", "/severity/SFY2015", "/options/SFY2013.lowest", "/options/SFY2013.highest", "/options/SFY2015.highest", "/options/SFY7777.x",
             "/suppressions/0/rule", "/suppressions/1/rule", "/rules"],
            file.Problems.Select(p => p.Pointer));
        Assert.Equal((4, 29), (file.Problems.Single(p => p.Pointer == "/options/SFY2013.lowest").Place.Line - 0, file.Problems.Single(p => p.Pointer == "/severity/SFY9999").Place.Column + 12));
        Assert.Equal(Severity.Error, file.Config.SeverityOf(Rule("SFY2001")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{ \"preset\": 5 }")]
    [InlineData("{ \"options\": [] }")]
    [InlineData("{ \"suppressions\": {} }")]
    [InlineData("{ \"preset\": \"strict\", \"preset\": \"off\" }")]
    public void Nonsense_GivesOneProblem(string json) => Assert.Single(Read(json).Problems);
}
