using System.Text;
using Saponify.Cli;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>A file with thirteen planted faults gives thirteen findings, each at its exact place, however the file is spaced.</summary>
public class ThirteenFaultsTests
{
    /// <summary>Id, JSON pointer, and the text at whose start the fault stands.</summary>
    private static readonly (string Id, string Pointer, string At)[] s_planted =
    [
        ("SFY1012", "/format", "\"saponify-formula/2\""),
        ("SFY1008", "/fats/0/fat", "\"olive-oli\""),
        ("SFY1006", "/fats/1/mass", "\"250 ml\""),
        ("SFY1006", "/fats/2/mass", "\"1,5 kg\""),
        ("SFY1003", "/fats/3/mass", "\"mass\": \"60 g\""),
        ("SFY1004", "/fats/4/mass", "{ \"fat\": \"lard\" }"),
        ("SFY1009", "/fats/5/stage", "\"tracing\""),
        ("SFY1013", "/fats/6/line", "\"tallow at trace\", \"fat\": \"hazelnut-oil\""),
        ("SFY1011", "/alkali/alkalis", "[\n      { \"alkali\": \"sodium-hydroxide\""),
        ("SFY1005", "/liquids/heldBack/0/mass", "120, \"temperature\""),
        ("SFY1007", "/liquids/heldBack/1/mass", "\"-40 g\""),
        ("SFY1010", "/additives/0/ofFats", "\"1 %\" },\n    { \"additive\": \"sucrose\""),
        ("SFY1002", "/additives/1/ofFat", "\"ofFat\""),
    ];

    public static TheoryData<string, bool, bool> Spacings => new()
    {
        // what stands in place of a blank, CR LF, byte order mark
        { " ", false, false },
        { " ", true, false },
        { " ", false, true },
        { "\t", true, true },
        { "/* für 石鹸 🧼 */", false, false },
        { "/* für 石鹸 🧼 */\t", true, true },
        { "\n", false, false },
        { " // 🧼\r", false, true },
    };

    [Theory]
    [MemberData(nameof(Spacings))]
    public void EachFault_IsFoundOnceAtItsPlace(string blank, bool carriageReturns, bool byteOrderMark)
    {
        string text = Spaced(FileText, blank, carriageReturns);
        byte[] bytes = [.. byteOrderMark ? "\uFEFF"u8 : [], .. Encoding.UTF8.GetBytes(text)];
        FormulaFile file = FormulaFile.Read(bytes, Pantry.Reference);
        Assert.Null(file.Formula);
        Assert.Equal(
            s_planted.Select(p => (p.Id, p.Pointer, PlaceOf(text, Spaced(p.At, blank, carriageReturns)))),
            file.Problems.Select(p => (p.Id, p.Pointer, (p.Place.Line, p.Place.Column))));
        // offset and length are in bytes and cut out what is wrong
        Assert.Equal("\"1,5 kg\"", Encoding.UTF8.GetString(bytes.AsSpan(file.Problems[3].Place.Offset, file.Problems[3].Place.Length)));
    }

    [Fact]
    public void EachFault_IsPrintedAsCompilersDo()
    {
        StringWriter output = new() { NewLine = "\n" }, errors = new() { NewLine = "\n" };
        int exit = CommandLine.Run(["plan", "-"], new StringReader(FileText), output, errors);
        Assert.Equal((2, ""), (exit, output.ToString()));
        Golden.Matches(errors.ToString().Replace("standard input(", "thirteen-faults.json(", StringComparison.Ordinal), "formula-file", "thirteen-faults.txt");
    }

    private static string FileText => Repository.Read("tests", "Saponify.Tests", "Json", "thirteen-faults.json").ReplaceLineEndings("\n");

    /// <summary>The text with its blanks between a colon and a value replaced, so that texts stay what they are.</summary>
    private static string Spaced(string text, string blank, bool carriageReturns) =>
        (carriageReturns ? text.ReplaceLineEndings("\r\n") : text).Replace("\": ", "\":" + blank, StringComparison.Ordinal);

    /// <summary>Line and column counted on the text itself, in UTF-16 units: another way than the reader's.</summary>
    private static (int Line, int Column) PlaceOf(string text, string at)
    {
        int place = text.IndexOf(at, StringComparison.Ordinal);
        Assert.True(place >= 0 && text.IndexOf(at, place + 1, StringComparison.Ordinal) < 0, at);
        string[] lines = text[..place].Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        return (lines.Length, lines[^1].Length + 1);
    }
}
