using System.Reflection;
using Saponify.Tests.Packaging;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>docs/formula-file.md says all of the format: its tables are made from the table of members. SAPONIFY_APPROVE=1 writes them anew.</summary>
[Collection(DocTests.Together)]
public class FormulaDocTests
{
    private static readonly string[] s_path = ["docs", "formula-file.md"];

    [Fact]
    public void TheTables_FollowTheTableOfMembers()
    {
        string document = Repository.Read(s_path).ReplaceLineEndings("\n");
        Golden.MatchesFile(With(With(document, "units", FormulaShapesText.Units()), "members", FormulaShapesText.Members()), s_path);
    }

    [Fact]
    public void EveryIdOfAProblem_IsExplained()
    {
        string document = Repository.Read(s_path);
        string[] ids = [.. typeof(ProblemIds).GetFields(BindingFlags.Static | BindingFlags.NonPublic).Select(f => (string)f.GetRawConstantValue()!)];
        Assert.InRange(ids.Length, 15, 100);
        Assert.All(ids, id => Assert.Contains($"| {id} |", document, StringComparison.Ordinal));
        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    private static string With(string document, string name, string text)
    {
        string start = $"<!-- {name}: made by FormulaDocTests -->\n", end = $"<!-- end of {name} -->";
        int from = document.IndexOf(start, StringComparison.Ordinal), to = document.IndexOf(end, StringComparison.Ordinal);
        Assert.True(from >= 0 && to > from, $"the document has no place for the {name}");
        return document[..(from + start.Length)] + text + "\n" + document[to..];
    }
}
