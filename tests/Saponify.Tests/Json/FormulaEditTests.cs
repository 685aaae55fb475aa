using System.Text;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>What an edit in place leaves of a maker's own file.</summary>
public class FormulaEditTests
{
    private const string Own = """
        // Grandmother's bar, do not scale!
        {
          "format": "saponify-formula/1",  "name":"Bar",
          "fats": [
            { "fat": "olive-oil",   "mass": "420 g" },   // the good one
            { "fat": "coconut-oil", "mass": "250 g" },   /* hard */
            { "fat": "castor-oil",  "volume": "50 mL" }  // little
          ],
          "alkali": { "superfat": "6 %", "alkalis": [ { "alkali": "sodium-hydroxide", "purity": "98 %" } ] },
          "liquids": { "lyeConcentration": "31 %" },
          "setup": { "scale": { "step": "1 g" } }
        }
        """;

    private static readonly Pantry s_pantry = Pantry.Reference;

    /// <summary>The text after an edit; fails unless it reads back as the changed formula.</summary>
    private static string Edit(string json, Func<Formula, Formula> change)
    {
        FormulaFile file = FormulaFile.Read(json, s_pantry);
        Assert.Empty(file.Problems);
        Formula changed = change(file.Formula!);
        string edited = Encoding.UTF8.GetString(file.Edit(changed));
        Assert.Equal(changed, FormulaFile.Read(edited, s_pantry).Formula);
        return edited;
    }

    private static Formula WithFats(Formula formula, params FatPortion[] fats) => formula with { Fats = [.. fats] };

    private static FatPortion Castor => s_pantry.Fat("castor-oil").Weighing(Mass.FromGrams(50));

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void AChangedMass_ReplacesItsText(string newline)
    {
        string own = Own.ReplaceLineEndings(newline);
        string edited = Edit(own, f => WithFats(f, f.Fats[0] with { Mass = Mass.FromOunces(14.5) }, f.Fats[1], f.Fats[2]));
        Assert.Equal(own.Replace("420 g", "14.5 oz", StringComparison.Ordinal), edited);
    }

    [Fact]
    public void AVolumeThatBecomesAMass_ReplacesTheMember() =>
        Assert.Equal(
            Own.Replace("\"volume\": \"50 mL\"", "\"mass\": \"48 g\"", StringComparison.Ordinal),
            Edit(Own, f => WithFats(f, f.Fats[0], f.Fats[1], f.Fats[2] with { Mass = Mass.FromGrams(48) })));

    [Fact]
    public void ASuperfatTarget_ThatIsWeighed_ChangesThePlanAlone() =>
        Assert.Equal(
            Own.Replace("\"superfat\": \"6 %\", ", "", StringComparison.Ordinal).Replace("\"98 %\" }", "\"98 %\", \"mass\": \"101 g\" }", StringComparison.Ordinal),
            Edit(Own, f => f with { Alkali = AlkaliPlan.Weighed(Alkali.SodiumHydroxide(Ratio.FromPercent(98)).Weighing(Mass.FromGrams(101))) }));

    [Fact]
    public void AnotherWaterRule_TakesThePlaceOfTheOld() =>
        Assert.Equal(
            Own.Replace("\"lyeConcentration\": \"31 %\"", "\"totalWater\": \"8 oz\"", StringComparison.Ordinal),
            Edit(Own, f => f with { Liquids = LiquidPlan.TotalWater(Mass.FromOunces(8)) }));

    [Fact]
    public void ALineInTheMiddle_GoesWithItsComma_AndItsNeighboursCommentStays() =>
        Assert.Equal(
            Own.Replace("    { \"fat\": \"coconut-oil\", \"mass\": \"250 g\" },   /* hard */\n", "    /* hard */\n", StringComparison.Ordinal),
            Edit(Own, f => WithFats(f, f.Fats[0], f.Fats[2])));

    [Fact]
    public void TheLastLine_GoesWithTheCommaBeforeIt() =>
        Assert.Equal(
            Own.Replace("\"250 g\" },   /* hard */\n    { \"fat\": \"castor-oil\",  \"volume\": \"50 mL\" }  // little", "\"250 g\" }   /* hard */\n    // little", StringComparison.Ordinal),
            Edit(Own, f => WithFats(f, f.Fats[0], f.Fats[1])));

    [Fact]
    public void ALineWithALineToItself_LeavesNoEmptyLine()
    {
        string plain = Own.Replace("   /* hard */", "", StringComparison.Ordinal);
        Assert.Equal(plain.Replace("    { \"fat\": \"coconut-oil\", \"mass\": \"250 g\" },\n", "", StringComparison.Ordinal), Edit(plain, f => WithFats(f, f.Fats[0], f.Fats[2])));
    }

    [Fact]
    public void ANewLine_LooksLikeItsNeighbours() =>
        Assert.Equal(
            Own.Replace("// the good one\n", "// the good one\n    { \"fat\": \"lard\", \"mass\": \"2 lb\", \"saponificationValue\": \"" + Text(s_pantry.Fat("lard")) + "\" },\n", StringComparison.Ordinal),
            Edit(Own, f => WithFats(f, f.Fats[0], s_pantry.Fat("lard").Weighing(Mass.FromPounds(2)), f.Fats[1], f.Fats[2])));

    [Fact]
    public void ANewLastLine_PutsTheCommaBeforeTheComment()
    {
        string edited = Edit(Own, f => WithFats(f, f.Fats[0], f.Fats[1], f.Fats[2], s_pantry.Fat("shea-butter").Weighing(Mass.FromGrams(30)).AtTrace()));
        Assert.Equal(Own.Replace("\"50 mL\" }  // little", "\"50 mL\" },  // little\n    { \"fat\": \"shea-butter\", \"mass\": \"30 g\", \"stage\": \"trace\" }", StringComparison.Ordinal), edited);
    }

    [Fact]
    public void ASwappedFat_StaysInItsLine() =>
        Assert.Contains("{ \"fat\": \"shea-butter\", \"mass\": \"250 g\" },   /* hard */",
            Edit(Own, f => WithFats(f, f.Fats[0], s_pantry.Fat("shea-butter").Weighing(Mass.FromGrams(250)), f.Fats[2])), StringComparison.Ordinal);

    [Fact]
    public void AMovedLine_TakesItsTextAlong() =>
        Assert.Equal(
            Own.Replace("{ \"fat\": \"olive-oil\",   \"mass\": \"420 g\" },   // the good one\n    ", "// the good one\n    ", StringComparison.Ordinal)
                .Replace("\"50 mL\" }  // little", "\"50 mL\" },  // little\n    { \"fat\": \"olive-oil\",   \"mass\": \"420 g\" }", StringComparison.Ordinal),
            Edit(Own, f => WithFats(f, f.Fats[1], f.Fats[2], f.Fats[0])));

    [Fact]
    public void ALotsFigures_StandInTheLine() =>
        Assert.Contains("\"mass\": \"420 g\", \"saponificationValue\": \"187.5 mg KOH/g\", \"lot\": { \"name\": \"L-17\", \"source\": \"certificate\", \"saponificationValue\": \"187.5 mg KOH/g\" } },   // the good one",
            Edit(Own, f => WithFats(f,
                f.Fats[0].Fat.WithLot(new() { Name = "L-17", Source = "certificate", Saponification = SaponificationValue.FromMilligramsKohPerGram(187.5) }).Weighing(f.Fats[0].Mass), f.Fats[1], f.Fats[2])),
            StringComparison.Ordinal);

    [Fact]
    public void AListThatWasNotThere_ComesInTheOrderOfTheTable() =>
        Assert.Equal(
            Own.Replace("\"31 %\" },\n", "\"31 %\" },\n  \"additives\": [\n    { \"additive\": \"kaolin\", \"ofFats\": \"2 %\", \"stage\": \"trace\" }\n  ],\n", StringComparison.Ordinal),
            Edit(Own, f => f with { Additives = [s_pantry.Additive("kaolin").ShareOfFats(Ratio.FromPercent(2)).At(Stage.Trace)] }));

    [Fact]
    public void ACompactFile_StaysCompact()
    {
        const string Compact = """{"format":"saponify-formula/1","name":"Bar","fats":[],"alkali":{"superfat":"6 %","alkalis":[{"alkali":"sodium-hydroxide","purity":"98 %"}]},"liquids":{"lyeConcentration":"31 %"}}""";
        string edited = Edit(Compact, f => WithFats(f, Castor) with { Liquids = f.Liquids.HoldingBack(s_pantry.Liquid("milk-goat").Weighing(Mass.FromGrams(9))) });
        Assert.Equal(Compact.Replace("[]", "[{\"fat\":\"castor-oil\",\"mass\":\"50 g\",\"saponificationValue\":\"" + Text(Castor.Fat) + "\"}]", StringComparison.Ordinal)
            .Replace("\"31 %\"", "\"31 %\",\"heldBack\":[{\"liquid\":\"milk-goat\",\"mass\":\"9 g\"}]", StringComparison.Ordinal), edited);
    }

    [Fact]
    public void AFileOfTheLibrary_StaysLikeIt()
    {
        Formula formula = FormulaFile.Read(Own, s_pantry).Formula!;
        byte[] written = FormulaFile.Write(formula, s_pantry);
        Formula changed = formula with { Fats = [.. formula.Fats, s_pantry.Fat("lard").Weighing(Mass.FromGrams(70))], Name = "Lard bar" };
        Assert.Equal(Encoding.UTF8.GetString(FormulaFile.Write(changed, s_pantry)), Encoding.UTF8.GetString(FormulaFile.Read(written, s_pantry).Edit(changed)));
    }

    [Fact]
    public void AValueOfOtherTables_StaysUntilItIsChanged()
    {
        string old = Own.Replace("\"name\":\"Bar\"", "\"name\":\"Bar\", \"data\": \"2019.1\"", StringComparison.Ordinal)
            .Replace("\"420 g\"", "\"420 g\", \"saponificationValue\": \"0.1 g NaOH/g\"", StringComparison.Ordinal);
        FatPortion olive = FormulaFile.Read(old, s_pantry).Formula!.Fats[0];
        Assert.Equal("formula file, tables 2019.1", olive.Fat.Lot!.Source);
        // another mass leaves the value as it stands
        Assert.Equal(old.Replace("420 g", "400 g", StringComparison.Ordinal), Edit(old, f => WithFats(f, olive with { Mass = Mass.FromGrams(400) }, f.Fats[1], f.Fats[2])));
        // the pantry's fat brings the pantry's value
        Assert.Equal(old.Replace("0.1 g NaOH/g", Text(s_pantry.Fat("olive-oil")), StringComparison.Ordinal), Edit(old, f => WithFats(f, s_pantry.Fat("olive-oil").Weighing(olive.Mass), f.Fats[1], f.Fats[2])));
        // the same lot on another fat is written out
        Assert.Contains("\"lot\": { \"name\": \"as in the file\", \"source\": \"formula file, tables 2019.1\"",
            Edit(old, f => WithFats(f, s_pantry.Fat("lard").WithLot(olive.Fat.Lot).Weighing(olive.Mass), f.Fats[1], f.Fats[2])), StringComparison.Ordinal);
    }

    [Fact]
    public void AFileWithProblems_CannotBeEdited()
    {
        FormulaFile file = FormulaFile.Read(Own.Replace("6 %", "6", StringComparison.Ordinal), s_pantry);
        Assert.Throws<InvalidOperationException>(() => file.Edit(FormulaFile.Read(Own, s_pantry).Formula!));
    }

    [Fact]
    public void AMaterialThatThePantryLacks_IsRefused()
    {
        FormulaFile file = FormulaFile.Read(Own, s_pantry);
        Fat own = new("emu-oil-of-mine", "Emu oil", FatClass.Triglyceride, new FatFigures { Saponification = new(SaponificationValue.FromMilligramsKohPerGram(191), Evidence.Measured, ["own"]) });
        Assert.Throws<ArgumentException>(() => file.Edit(WithFats(file.Formula!, own.Weighing(Mass.FromGrams(10)))));
    }

    private static string Text(Fat fat) => fat.Saponification!.Value.MilligramsKohPerGram.ToString(System.Globalization.CultureInfo.InvariantCulture) + " mg KOH/g";
}
