using System.Text;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>What the formula file refuses, where and in which words.</summary>
public class FormulaFileTests
{
    private const string Whole = """
        {
          "format": "saponify-formula/1",
          "name": "Test",
          "fats": [ { "fat": "olive-oil", "mass": "420 g" } ],
          "alkali": { "superfat": "6 %", "alkalis": [ { "alkali": "sodium-hydroxide", "purity": "98 %" } ] },
          "liquids": { "lyeConcentration": "31 %" }
        }
        """;

    public static TheoryData<string, string, string, string> Faults => new()
    {
        // replaced, by, id, JSON pointer
        { "420 g", "-420 g", "SFY1007", "/fats/0/mass" },
        { "420 g", "1e12 g", "SFY1007", "/fats/0/mass" },
        { "420 g", "NaN g", "SFY1006", "/fats/0/mass" },
        { "420 g", "1e999 g", "SFY1006", "/fats/0/mass" },
        { "420 g", "420", "SFY1006", "/fats/0/mass" },
        { "420 g", "420 mL", "SFY1006", "/fats/0/mass" },
        { "420 g", "1,5 kg", "SFY1006", "/fats/0/mass" },
        { "420 g", "1 kg 3 oz", "SFY1006", "/fats/0/mass" },
        { "\"420 g\"", "420", "SFY1005", "/fats/0/mass" },
        { "olive-oil", "olive-oli", "SFY1008", "/fats/0/fat" },
        { "\"mass\"", "\"mas\"", "SFY1002", "/fats/0/mas" },
        { "\"mass\": \"420 g\"", "\"mass\": \"420 g\", \"mass\": \"430 g\"", "SFY1003", "/fats/0/mass" },
        { "\"mass\": \"420 g\"", "\"mass\": \"420 g\", \"volume\": \"420 mL\"", "SFY1010", "/fats/0/volume" },
        { ", \"mass\": \"420 g\"", "", "SFY1004", "/fats/0/mass" },
        { "98 %", "0 %", "SFY1006", "/alkali/alkalis/0/purity" },
        { "98 %", "101 %", "SFY1006", "/alkali/alkalis/0/purity" },
        { "98 %", "0.98", "SFY1006", "/alkali/alkalis/0/purity" },
        { "\"superfat\": \"6 %\", ", "", "SFY1004", "/alkali/superfat" },
        { "6 %", "6", "SFY1006", "/alkali/superfat" },
        { "6 %", "600 %", "SFY1007", "/alkali/superfat" },
        { "sodium-hydroxide", "lye", "SFY1009", "/alkali/alkalis/0/alkali" },
        { "\"purity\": \"98 %\"", "\"purity\": \"98 %\", \"shareOfHydroxide\": \"60 %\"", "SFY1011", "/alkali/alkalis" },
        { "31 %", "310 %", "SFY1007", "/liquids/lyeConcentration" },
        { "\"lyeConcentration\": \"31 %\"", "", "SFY1004", "/liquids/lyeConcentration" },
        { "\"lyeConcentration\": \"31 %\"", "\"lyeConcentration\": \"31 %\", \"totalWater\": \"1 kg\"", "SFY1010", "/liquids/totalWater" },
        { "formula/1", "formula/9", "SFY1012", "/format" },
        { "\"name\": \"Test\",", "", "SFY1004", "/name" },
        { "\"Test\"", "\"  \"", "SFY1006", "/name" },
        { "\"Test\"", "\"\\ud800\"", "SFY1001", "" },
        { "\"Test\",", "\"Test\"", "SFY1001", "" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Read_OneFault_NamesItsIdAndPlace(string replaced, string by, string id, string pointer)
    {
        string json = Whole.Replace(replaced, by, StringComparison.Ordinal);
        Assert.NotEqual(Whole, json);
        FormulaFile file = FormulaFile.Read(json, Pantry.Reference);
        Assert.Null(file.Formula);
        Problem problem = Assert.Single(file.Problems);
        Assert.Equal((id, pointer), (problem.Id, problem.Pointer));
        Assert.False(problem.Text.EndsWith('.'));
    }

    [Fact]
    public void Read_AWholeFile_GivesTheFormula()
    {
        FormulaFile file = FormulaFile.Read(Whole, Pantry.Reference);
        Assert.Empty(file.Problems);
        Assert.Empty(file.Notices);
        Assert.Equal(420, file.Formula!.Fats[0].Mass.Grams);
    }

    [Fact]
    public void Read_AMisspeltFat_SuggestsTheNearest()
    {
        Problem problem = Assert.Single(FormulaFile.Read(Whole.Replace("olive-oil", "olive-oli", StringComparison.Ordinal), Pantry.Reference).Problems);
        Assert.Equal("the pantry has no fat \"olive-oli\"", problem.Text);
        Assert.StartsWith("nearest: olive-oil", problem.Expected, StringComparison.Ordinal);
        Assert.Equal((4, 22), (problem.Place.Line, problem.Place.Column));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("\uFEFF")]
    public void Read_AnEmptyFile_SaysSo(string text)
    {
        Problem problem = Assert.Single(FormulaFile.Read(text, Pantry.Reference).Problems);
        Assert.Equal("SFY1001", problem.Id);
        Assert.Equal(1, problem.Place.Line);
    }

    [Fact]
    public void Read_WithByteOrderMarkAndCarriageReturns_KeepsPlacesRight()
    {
        string json = "\uFEFF" + Whole.Replace("420 g", "420", StringComparison.Ordinal).ReplaceLineEndings("\r\n");
        Problem problem = Assert.Single(FormulaFile.Read(json, Pantry.Reference).Problems);
        Assert.Equal((4, 43), (problem.Place.Line, problem.Place.Column));
        Assert.Empty(FormulaFile.Read("\uFEFF" + Whole.ReplaceLineEndings("\r\n"), Pantry.Reference).Problems);
    }

    [Fact]
    public void Read_BeyondOneMegabyte_IsRefusedUnread()
    {
        Problem problem = Assert.Single(FormulaFile.Read(new byte[FormulaFile.LargestBytes + 1], Pantry.Reference).Problems);
        Assert.Equal("SFY1014", problem.Id);
    }

    [Fact]
    public void Read_DeeperThanSixteen_IsAFaultOfSyntax()
    {
        string deep = new string('[', 17) + new string(']', 17);
        Assert.Equal("SFY1001", Assert.Single(FormulaFile.Read(deep, Pantry.Reference).Problems).Id);
    }

    [Fact]
    public void Read_AnotherSaponificationValueThanTheTables_TakesTheLowerAndSaysSo()
    {
        string lower = Whole.Replace("\"mass\": \"420 g\"", "\"mass\": \"420 g\", \"saponificationValue\": \"188 mg KOH/g\"", StringComparison.Ordinal);
        FormulaFile file = FormulaFile.Read(lower, Pantry.Reference);
        Assert.Equal("SFY1015", Assert.Single(file.Notices).Id);
        Assert.Equal(188, file.Formula!.Fats[0].Fat.Saponification!.Value.MilligramsKohPerGram);

        string higher = lower.Replace("188", "195", StringComparison.Ordinal);
        file = FormulaFile.Read(higher, Pantry.Reference);
        Assert.Equal("SFY1015", Assert.Single(file.Notices).Id);
        Assert.Equal(Pantry.Reference.Fat("olive-oil"), file.Formula!.Fats[0].Fat);
    }

    [Fact]
    public void Read_AVolume_KeepsWhatWasPouredAndSaysThatItWasConverted()
    {
        FormulaFile file = FormulaFile.Read(Whole.Replace("\"mass\": \"420 g\"", "\"volume\": \"450 mL\"", StringComparison.Ordinal), Pantry.Reference);
        Assert.Equal("SFY1016", Assert.Single(file.Notices).Id);
        FatPortion fat = file.Formula!.Fats[0];
        Assert.Equal(450, fat.Poured!.Value.Milliliters);
        Assert.InRange(fat.Mass.Grams, 450 * 0.91, 450 * 0.92);
    }

    [Fact]
    public void Locate_GivesTheLineAndColumnOfAValue()
    {
        FormulaFile file = FormulaFile.Read(Whole, Pantry.Reference);
        Place place = file.Locate(FormulaPath.Root.Member("fats").Item(0, "olive-oil").Member("mass"))!.Value;
        Assert.Equal((4, 43), (place.Line, place.Column));
        Assert.Equal("\"420 g\"", Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(Whole).AsSpan(place.Offset, place.Length)));
        Assert.Null(file.Locate(FormulaPath.Root.Member("additives")));
    }

    [Fact]
    public void Examples_AllReadAndCanBeWeighed()
    {
        string[] examples = [.. Repository.Examples];
        Assert.Equal(5, examples.Length);
        foreach (string path in examples)
        {
            FormulaFile file = FormulaFile.Read(File.ReadAllBytes(path), Pantry.Reference);
            Assert.Empty(file.Problems);
            Assert.Empty(file.Formula!.Plan().Obstacles);
        }
    }
}
