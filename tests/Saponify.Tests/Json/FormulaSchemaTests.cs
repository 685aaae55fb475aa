using System.Text;
using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using global::Json.Schema;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>The published schema follows the table of members, takes what the library writes, and refuses what the reader calls a fault of structure.</summary>
public class FormulaSchemaTests
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(FormulaSchema.Text());

    /// <summary>Ids of problems that a schema can tell; the others need ranges, sums, the pantry, or the text itself.</summary>
    private static readonly HashSet<string> s_structural = ["SFY1002", "SFY1004", "SFY1005", "SFY1006", "SFY1009", "SFY1010", "SFY1012"];

    /// <summary>A number that is too large is well-formed: no pattern tells it.</summary>
    private static bool IsOfStructure(Problem problem) => s_structural.Contains(problem.Id)
        && !problem.Text.Contains("out of range", StringComparison.Ordinal) && !problem.Text.Contains("computed with", StringComparison.Ordinal);

    private static bool Accepts(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip });
        return s_schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.Flag }).IsValid;
    }

    [Fact]
    public void ThePublishedSchema_FollowsTheTable() => Golden.MatchesFile(FormulaSchema.Text(), "docs", "schema", "formula-1.schema.json");

    [Law]
    public Property WhatTheLibraryWrites_IsAccepted() => Prop.ForAll(Any.Formulas.Arbitrary(), formula =>
    {
        string written = Encoding.UTF8.GetString(FormulaFile.Write(formula, Pantry.Reference));
        return Accepts(written).Label(written);
    });

    [Fact]
    public void WhatTheExamplesSay_IsAccepted() => Assert.All(Repository.Examples, path => Assert.True(Accepts(File.ReadAllText(path)), path));

    [Fact]
    public void EverySpoiltMember_IsRefusedWhereTheReaderSeesAFaultOfStructure()
    {
        Dictionary<string, int> refused = [];
        IEnumerable<(string, string)> planted = FormulaFileTests.Faults.Select(f => f.Data).Where(f => f.Item3 != "SFY1001")
            .Select(f => ($"{f.Item1} by {f.Item2}", FormulaFileTests.Whole.Replace(f.Item1, f.Item2, StringComparison.Ordinal)));
        foreach ((string what, string json) in OneFaultTests.SpoiltFiles().Concat(planted))
        {
            ValueList<Problem> problems = FormulaFile.Read(json, Pantry.Reference).Problems;
            bool accepts = Accepts(json);
            if (problems.Count == 0)
                Assert.True(accepts, $"{what}\n{json}");
            foreach (string id in problems.Where(IsOfStructure).Select(p => p.Id).Distinct())
            {
                Assert.False(accepts, $"{what}\n{problems[0]}\n{json}");
                refused[id] = refused.GetValueOrDefault(id) + 1;
            }
        }
        Assert.Equal(s_structural.Order(), refused.Keys.Order());
    }

    [Theory]
    [InlineData("420 g", true)]
    [InlineData("1 lb 3 oz", true)]
    [InlineData("1lb3.5oz", true)]
    [InlineData(".5 kg", true)]
    [InlineData("1e3 g", true)]
    [InlineData("1,5 kg", false)]
    [InlineData("-1 g", false)]
    [InlineData("420 mL", false)]
    [InlineData("1 kg 3 oz", false)]
    [InlineData("420", false)]
    public void AMassInASchema_IsTheMassOfTheReader(string mass, bool isRight)
    {
        string json = File.ReadAllText(Repository.Path("data", "examples", "market-day-bar.json")).Replace("460 g", mass, StringComparison.Ordinal);
        Assert.Equal(isRight, Accepts(json));
        Assert.Equal(isRight, FormulaFile.Read(json, Pantry.Reference).Formula is not null);
    }
}
