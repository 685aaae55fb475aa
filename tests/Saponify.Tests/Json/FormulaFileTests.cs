using System.Text;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>What the formula file refuses, where and in which words.</summary>
public class FormulaFileTests
{
    internal const string Whole = """
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
        { "\"fats\": [", "\"fats\": [ 5, ", "SFY1005", "/fats/0" },
        { "\"alkalis\": [", "\"alkalis\": [ [], ", "SFY1005", "/alkali/alkalis/0" },
        { "\"alkalis\": [ { \"alkali\": \"sodium-hydroxide\", \"purity\": \"98 %\" } ]", "\"alkalis\": []", "SFY1004", "/alkali/alkalis" },
        { "\"98 %\" }", "\"98 %\" }, { \"alkali\": \"potassium-hydroxide\", \"purity\": \"90 %\", \"shareOfHydroxide\": \"40 %\" }", "SFY1004", "/alkali/alkalis/0/shareOfHydroxide" },
        { "\"98 %\"", "\"98 %\", \"mass\": \"100 g\"", "SFY1010", "/alkali/alkalis/0/mass" },
        { "\"98 %\"", "\"98 %\", \"boundWater\": \"3 %\"", "SFY1007", "/alkali/alkalis/0/boundWater" },
        { "\"superfat\": \"6 %\"", "\"of\": \"allFat\"", "SFY1004", "/alkali/superfat" },
        { "\"420 g\" }", "\"420 g\" }, { \"line\": \"olive-oil\", \"fat\": \"lard\", \"mass\": \"1 g\" }", "SFY1013", "/fats/1/line" },
        { "\"420 g\"", "\"420 g\", \"line\": \"a/b\"", "SFY1013", "/fats/0/line" },
        { "\"mass\": \"420 g\"", "\"volume\": \"420 g\"", "SFY1006", "/fats/0/volume" },
        { "\"31 %\"", "\"31 %\", \"lyeLiquid\": { \"liquid\": \"water\", \"line\": \"jug\" }", "SFY1010", "/liquids/lyeLiquid/line" },
        { "\"31 %\"", "\"31 %\", \"lyeLiquid\": { \"liquid\": \"water\", \"mass\": \"1 kg\" }", "SFY1010", "/liquids/lyeLiquid/mass" },
        { "\"31 %\"", "\"31 %\", \"lyeLiquid\": { \"liquid\": \"water\", \"frozen\": true }", "SFY1004", "/liquids/lyeLiquid/temperature" },
        { "\"31 %\"", "\"31 %\", \"lyeLiquid\": { \"liquid\": \"water\", \"temperature\": \"-18 °C\" }", "SFY1007", "/liquids/lyeLiquid/temperature" },
        { "\"31 %\"", "\"31 %\", \"lyeLiquid\": { \"liquid\": \"heavy-cream\", \"label\": { \"source\": \"carton\", \"fat\": \"60 %\", \"water\": \"58 %\" } }", "SFY1011", "/liquids/lyeLiquid/label" },
        { "\"31 %\"", "\"31 %\", \"lyeLiquid\": { \"liquid\": \"heavy-cream\", \"label\": { \"fat\": \"30 %\" } }", "SFY1004", "/liquids/lyeLiquid/label/source" },
        { "\"98 %\"", "\"98 %\", \"certificate\": \" \"", "SFY1006", "/alkali/alkalis/0/certificate" },
        { "\"name\": \"Test\"", "\"name\": \"Test\", \"setup\": 5", "SFY1005", "/setup" },
        { "\"name\": \"Test\"", "\"name\": \"Test\", \"setup\": { \"form\": \"bar\", \"form\": \"bar\" }", "SFY1003", "/setup/form" },
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

    [Theory]
    [InlineData("{\n  \"name\": \"x\",\n}", 3, 1, "a trailing comma")]
    [InlineData("{\n  \"name\" /* of it */: \"x\"\n}", 2, 10, "Expected a ':'")]
    [InlineData("{\n  \"name\": \"x\"\n", 3, 1, "open JSON object")]
    [InlineData("{\n  'name': \"x\"\n}", 2, 3, "is an invalid start")]
    [InlineData("{ \"name\": \"é🧼\" \"x\" }", 1, 17, "invalid after a value")]
    public void Read_AFaultOfSyntax_IsPlacedAndTellsNothingOfReaders(string json, int line, int column, string words)
    {
        Problem problem = Assert.Single(FormulaFile.Read(json, Pantry.Reference).Problems);
        Assert.Equal(("SFY1001", line, column), (problem.Id, problem.Place.Line, problem.Place.Column));
        Assert.Contains(words, problem.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("reader", problem.Text, StringComparison.Ordinal);
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

    [Theory]
    [InlineData("\"mass\": \"100 mL\"", "\"mass\": the volume of an alkali says too little")]
    [InlineData("\"volume\": \"100 mL\"", "the volume of an alkali says too little")]
    public void Read_AVolumeOfAlkali_IsRefusedInItsOwnWords(string amount, string words)
    {
        string json = Whole.Replace("\"superfat\": \"6 %\", ", "", StringComparison.Ordinal).Replace("\"98 %\"", "\"98 %\", " + amount, StringComparison.Ordinal);
        Problem problem = Assert.Single(FormulaFile.Read(json, Pantry.Reference).Problems);
        Assert.Equal("SFY1006", problem.Id);
        Assert.StartsWith(words, problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_AFileOfOtherTables_SaysSoEvenIfNoValueDiffers()
    {
        string json = Whole.Replace("\"name\": \"Test\"", "\"name\": \"Test\", \"data\": \"2019.1\"", StringComparison.Ordinal);
        FormulaFile file = FormulaFile.Read(json, Pantry.Reference);
        Problem notice = Assert.Single(file.Notices);
        Assert.Equal(("SFY1018", "/data"), (notice.Id, notice.Pointer));
        Assert.Contains("\"2019.1\"", notice.Text, StringComparison.Ordinal);
        Assert.Contains(Pantry.Reference.Version, notice.Text, StringComparison.Ordinal);
        Assert.NotNull(file.Formula);
        Assert.Empty(FormulaFile.Read(json.Replace("2019.1", Pantry.Reference.Version, StringComparison.Ordinal), Pantry.Reference).Notices);
    }

    [Fact]
    public void Read_ASetup_GivesTheCircumstances_AndAnEditKeepsIt()
    {
        string json = Whole.Replace("\"name\": \"Test\"", """
            "name": "Test", "setup": { "scale": { "step": "5 g", "capacity": "5 kg", "accuracy": "0.1 %", "tared": false }, "alkaliScale": { "step": "0.1 g", "minimumLoad": "1 g" },
            "form": "bar", "excluded": ["milk", "palm-oil"], "markets": ["EU"] }
            """, StringComparison.Ordinal);
        FormulaFile file = FormulaFile.Read(json, Pantry.Reference);
        Assert.Empty(file.Notices);
        Assert.Equal(new BatchSetup
        {
            Scale = new Scale(Mass.FromGrams(5)) { Capacity = Mass.FromKilograms(5), Accuracy = Ratio.FromPercent(0.1), IsTared = false },
            AlkaliScale = new Scale(Mass.FromGrams(0.1)) { MinimumLoad = Mass.FromGrams(1) },
            Form = ProductForm.Bar,
            Excluded = ["milk", "palm-oil"],
            Markets = ["EU"],
        }, file.Setup);
        string edited = Encoding.UTF8.GetString(file.Edit(file.Formula! with { Name = "Other" }));
        Assert.Equal(json.Replace("Test", "Other", StringComparison.Ordinal), edited);
        Assert.Equal(BatchSetup.Unknown, FormulaFile.Read(Whole, Pantry.Reference).Setup);
    }

    [Theory]
    [InlineData("""{ "scales": { "step": "1 g" } }""", "SFY1002", "/setup/scales")]
    [InlineData("""{ "scale": { } }""", "SFY1004", "/setup/scale/step")]
    [InlineData("""{ "scale": { "step": "0 g" } }""", "SFY1007", "/setup/scale/step")]
    [InlineData("""{ "form": "stick" }""", "SFY1009", "/setup/form")]
    [InlineData("""{ "excluded": "milk" }""", "SFY1005", "/setup/excluded")]
    [InlineData("""{ "excluded": ["milk", 3] }""", "SFY1005", "/setup/excluded/1")]
    [InlineData("""{ "markets": [" "] }""", "SFY1006", "/setup/markets/0")]
    public void Read_AFaultInASetup_IsToldAtItsPlace(string setup, string id, string pointer)
    {
        FormulaFile file = FormulaFile.Read(Whole.Replace("\"name\": \"Test\"", $"\"name\": \"Test\", \"setup\": {setup}", StringComparison.Ordinal), Pantry.Reference);
        Problem problem = Assert.Single(file.Problems);
        Assert.Equal((id, pointer), (problem.Id, problem.Pointer));
        Assert.Equal(BatchSetup.Unknown, file.Setup);
    }

    [Fact]
    public void Read_ALabel_StandsForTheTable_AndWaterMakesRoom()
    {
        string json = Whole.Replace("\"31 %\"", "\"31 %\", \"heldBack\": [ { \"liquid\": \"heavy-cream\", \"mass\": \"100 g\", \"label\": { \"source\": \"carton\", \"fat\": \"30 %\" } } ]", StringComparison.Ordinal);
        Liquid cream = FormulaFile.Read(json, Pantry.Reference).Formula!.Liquids.HeldBack[0].Liquid, table = Pantry.Reference.Liquid("heavy-cream");
        Assert.Equal("carton", cream.LabelSource);
        Assert.Equal("carton", Assert.Single(cream.Sources));
        Assert.Equal(30, cream.Contents.Fat.Percent, 12);
        Assert.Equal(table.Contents.Protein, cream.Contents.Protein);
        Assert.Equal(table.Contents.FatKind, cream.Contents.FatKind);
        // what the label has less of fat than the table is water
        Assert.Equal(table.Contents.Water.Percent + table.Contents.Fat.Percent - 30, cream.Contents.Water.Percent, 9);
    }

    [Fact]
    public void Read_ACertificate_TravelsWithTheAlkali()
    {
        FormulaFile file = FormulaFile.Read(Whole.Replace("\"98 %\"", "\"98 %\", \"certificate\": \"no. 2231\"", StringComparison.Ordinal), Pantry.Reference);
        Alkali alkali = Assert.IsType<SuperfatTarget>(file.Formula!.Alkali).Alkalis[0].Alkali;
        Assert.Equal("no. 2231", alkali.Certificate);
        EqualityContract.Test(alkali, Alkali.SodiumHydroxide(Ratio.FromPercent(98)) with { Certificate = "no. 2231" }, Alkali.SodiumHydroxide(Ratio.FromPercent(98)));
    }

    [Fact]
    public void Read_BoundWaterThatFillsUpThePurity_IsTheUsualOne()
    {
        // 1 - 0.9 is a little less than 0.1 as a double
        string json = Whole.Replace("sodium-hydroxide", "potassium-hydroxide", StringComparison.Ordinal).Replace("\"98 %\"", "\"90 %\", \"boundWater\": \"10 %\"", StringComparison.Ordinal);
        FormulaFile file = FormulaFile.Read(json, Pantry.Reference);
        Assert.Empty(file.Problems);
        Assert.Equal(Alkali.PotassiumHydroxide(Ratio.FromPercent(90)), Assert.IsType<SuperfatTarget>(file.Formula!.Alkali).Alkalis[0].Alkali);
    }

    [Fact]
    public void Label_OfALiquid_IsPartOfItsEquality_AndIsChecked()
    {
        Liquid cream = Pantry.Reference.Liquid("heavy-cream");
        Contents thinner = cream.Contents with { Fat = Ratio.FromPercent(30) };
        EqualityContract.Test(cream.WithLabel("carton", thinner), cream.WithLabel("carton", thinner), cream, cream.WithLabel("other carton", thinner), cream.WithLabel("carton", cream.Contents));
        Assert.Throws<ArgumentException>(() => cream.WithLabel(" ", thinner));
        Assert.Throws<ArgumentException>(() => cream.WithLabel("carton", thinner with { Fat = Ratio.FromPercent(80) }));
        Assert.Equal(cream.Contents.FatKind, cream.WithLabel("carton", new() { Fat = Ratio.FromPercent(30) }).Contents.FatKind);
    }

    [Fact]
    public void PlainWater_IsTheWaterOfTheTables() => Assert.Equal(Pantry.Reference.Liquid("water"), Liquid.Water);

    [Fact]
    public void Read_LinesOfOneMaterial_NumbersThem()
    {
        string json = Whole.Replace("\"420 g\" }", "\"420 g\" }, { \"fat\": \"olive-oil\", \"mass\": \"1 g\" }, { \"line\": \"last\", \"fat\": \"olive-oil\", \"mass\": \"1 g\" }", StringComparison.Ordinal);
        Assert.Equal(["olive-oil", "olive-oil-2", "last"], FormulaFile.Read(json, Pantry.Reference).Formula!.Fats.Select(f => f.Line));
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
