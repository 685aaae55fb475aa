using System.Text;

namespace Saponify.Tests.Json;

/// <summary>Files that were made to hurt: a clear refusal, in work that grows no faster than the file.</summary>
public class HostileFileTests
{
    private const string Start = """{ "format": "saponify-formula/1", "name": "x", "alkali": { "superfat": "6 %", "alkalis": [ { "alkali": "sodium-hydroxide", "purity": "98 %" } ] }, "liquids": { "lyeConcentration": "31 %" }, """;

    /// <summary>Each with the number of copies of its part; all below 1 MB at ten thousand.</summary>
    private static readonly Dictionary<string, Func<int, string>> s_shapes = new()
    {
        ["unknown members"] = n => Start + Copies(n, i => $"\"massss{i}\": 1") + ", \"fats\": [] }",
        ["one member over and over"] = n => Start + Copies(n, _ => "\"fats\": []") + "}",
        ["unknown fats"] = n => Start + "\"fats\": [" + Copies(n, i => $"{{\"fat\":\"olive-oil-{i}\",\"mass\":\"1 g\"}}") + "] }",
        ["lines with one id"] = n => Start + "\"fats\": [" + Copies(n, _ => "{\"line\":\"a\",\"fat\":\"olive-oil\",\"mass\":\"1 g\"}") + "] }",
        ["lines of one fat"] = n => Start + "\"fats\": [" + Copies(n, _ => "{\"fat\":\"olive-oil\",\"mass\":\"1 g\"}") + "] }",
        ["poured lines"] = n => Start + "\"fats\": [" + Copies(n, _ => "{\"fat\":\"olive-oil\",\"volume\":\"1 mL\"}") + "] }",
        ["empty lines"] = n => Start + "\"fats\": [" + Copies(n, _ => "{}") + "] }",
        ["numbers for lines"] = n => Start + "\"fats\": [" + Copies(n, i => "7") + "] }",
        ["huge exponents"] = n => Start + "\"fats\": [" + Copies(n, i => $"{{\"fat\":\"olive-oil\",\"mass\":\"1e{i}99999999 g\"}}") + "] }",
        ["unknown members of one line"] = n => Start + "\"fats\": [ {" + Copies(n, i => $"\"m{i}\":\"\"") + "} ] }",
        ["alkalis"] = n => """{ "format": "saponify-formula/1", "name": "x", "fats": [], "liquids": { "lyeConcentration": "31 %" }, "alkali": { "superfat": "6 %", "alkalis": [""" + Copies(n, _ => "{\"alkali\":\"x\",\"purity\":\"9\"}") + "] } }",
    };

    public static TheoryData<string> Shapes => [.. s_shapes.Keys];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void TenThousandOfIt_TakeTenTimesTheWorkOfAThousand(string shape)
    {
        (long few, _) = Work(s_shapes[shape](1_000));
        (long many, FormulaFile file) = Work(s_shapes[shape](10_000));
        Assert.InRange(many, 1, 15 * few);
        Assert.InRange(file.Problems.Count, 0, 1001);
        Assert.True(file.Problems.Count > 0 || file.Formula is not null);
        Assert.True(file.Problems.Count <= 1000 || file.Problems[1000].Text == "there is more than this; after 1000 the rest is not listed");
    }

    [Fact]
    public void UnknownNames_AreComparedWithThePantryOnlySoOften()
    {
        byte[] file = Encoding.UTF8.GetBytes(s_shapes["unknown fats"](10_000));
        ShapeReader reader = new(file);
        Assert.Null(new FormulaBinder(reader, Pantry.Reference).Bind(JsonPiece.Parse(file, out _, out _)!));
        Assert.Equal(ShapeReader.MostSuggestions, reader.Suggestions);
        ValueList<Problem> problems = reader.Problems.ToProblems();
        Assert.StartsWith("nearest: ", problems[0].Expected, StringComparison.Ordinal);
        Assert.StartsWith("look the id up", problems[ShapeReader.MostSuggestions].Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void AFileOfOneMegabyteOnOneLine_WithAThousandFaultsAtItsEnd_IsCountedOnce()
    {
        string json = $"/*{new string(' ', 950_000)}*/" + s_shapes["numbers for lines"](1_500);
        FormulaFile file = FormulaFile.Read(json, Pantry.Reference);
        Assert.Equal(1001, file.Problems.Count);
        Assert.Equal(json.IndexOf('7', StringComparison.Ordinal) + 1, file.Problems[0].Place.Column);
        Assert.Equal(file.Problems[0].Place.Column + (2 * 999), file.Problems[999].Place.Column);
    }

    [Theory]
    [InlineData(16, true)]
    [InlineData(17, false)]
    public void Depth_IsSixteen(int depth, bool isRead)
    {
        // the file is the first level, setup the second
        string setup = new string('[', depth - 2) + new string(']', depth - 2);
        FormulaFile file = FormulaFile.Read(Start + $"\"fats\": [], \"setup\": {{ \"a\": {setup} }} }}", Pantry.Reference);
        // what is read knows the member that is wrong, what is not read is a fault of syntax
        Assert.Equal(isRead ? ProblemIds.UnknownMember : ProblemIds.Syntax, file.Problems[0].Id);
    }

    [Theory]
    [InlineData("__proto__")]
    [InlineData("constructor")]
    [InlineData("$type")]
    [InlineData("$ref")]
    [InlineData("")]
    [InlineData("a/b~c")]
    [InlineData("\\u0000")]
    [InlineData("FATS")]
    public void NamesThatMeanSomethingElsewhere_MeanNothingHere(string name)
    {
        Problem problem = Assert.Single(FormulaFile.Read(Start + $"\"fats\": [], \"{name}\": {{}} }}", Pantry.Reference).Problems);
        Assert.Equal("SFY1002", problem.Id);
        Assert.StartsWith("/", problem.Pointer, StringComparison.Ordinal);
    }

    [Fact]
    public void APointer_EscapesWhatAPointerMust() =>
        Assert.Equal("/a~1b~0c", Assert.Single(FormulaFile.Read(Start + "\"fats\": [], \"a/b~c\": {} }", Pantry.Reference).Problems).Pointer);

    [Theory]
    [InlineData("\"\\ud800\"")]
    [InlineData("\"\\udc00\\ud800\"")]
    [InlineData("\"x\", \"\\ud83e\": 1")]
    public void HalfASurrogatePair_IsNoText(string name)
    {
        Problem problem = Assert.Single(FormulaFile.Read("{\n  \"name\": " + name + "\n}", Pantry.Reference).Problems);
        Assert.Equal(("SFY1001", 2), (problem.Id, problem.Place.Line));
        Assert.Contains("surrogate", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void HalfASurrogatePair_InAString_IsNotReplacedInSilence()
    {
        Problem problem = Assert.Single(FormulaFile.Read("{\n  \"name\": \"🧼\ud83e\" }", Pantry.Reference).Problems);
        Assert.Equal(("SFY1001", 2, 14), (problem.Id, problem.Place.Line, problem.Place.Column));
    }

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x7B, 0x00 }, 1)]                          // UTF-16
    [InlineData(new byte[] { 0x7B, 0x22, 0xB0, 0x43, 0x22 }, 3)]                    // a degree sign in Latin-1
    [InlineData(new byte[] { 0x7B, 0x22, 0xC0, 0xAF, 0x22 }, 3)]                    // an overlong slash
    [InlineData(new byte[] { 0x2F, 0x2A, 0xED, 0xA0, 0x80, 0x2A, 0x2F, 0x31 }, 3)]  // half a surrogate pair in a comment
    [InlineData(new byte[] { 0xC3, 0xA9, 0xF0, 0x9F, 0xA7 }, 2)]                    // cut in the middle of a character
    public void BytesThatAreNoUtf8_AreRefusedAtTheirPlace(byte[] bytes, int column)
    {
        Problem problem = Assert.Single(FormulaFile.Read(bytes, Pantry.Reference).Problems);
        Assert.Equal(("SFY1001", 1, column), (problem.Id, problem.Place.Line, problem.Place.Column));
        Assert.Equal("save the file as UTF-8", problem.Expected);
    }

    [Fact]
    public void ALongName_IsShownShort() =>
        Assert.InRange(Assert.Single(FormulaFile.Read(Start + $"\"fats\": [], \"{new string('x', 500_000)}\": 1 }}", Pantry.Reference).Problems).Text.Length, 1, 120);

    [Fact]
    public void TenThousandLines_CanBeEdited()
    {
        string json = s_shapes["lines of one fat"](10_000);
        FormulaFile file = FormulaFile.Read(json, Pantry.Reference);
        Formula formula = file.Formula!;
        Formula changed = formula with { Fats = [.. formula.Fats.Skip(1).Select(f => f with { Mass = Mass.FromGrams(2) }).Reverse()] };
        Assert.Equal(changed, FormulaFile.Read(file.Edit(changed), Pantry.Reference).Formula);
    }

    private static string Copies(int count, Func<int, string> part) => string.Join(",", Enumerable.Range(0, count).Select(part));

    /// <summary>Bytes allocated, which count the steps of a reading better than a clock does.</summary>
    private static (long Bytes, FormulaFile File) Work(string json)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(json);
        Assert.InRange(bytes.Length, 1, FormulaFile.LargestBytes);
        FormulaFile.Read(bytes, Pantry.Reference);
        long before = GC.GetAllocatedBytesForCurrentThread();
        FormulaFile file = FormulaFile.Read(bytes, Pantry.Reference);
        return (GC.GetAllocatedBytesForCurrentThread() - before, file);
    }
}
