using System.Text;
using Saponify.Tests.Support;

namespace Saponify.Tests.Reference;

/// <summary>Own tables of fats on top of the reference tables: a supplier's certificate, a mill's analysis.</summary>
public class OwnTableTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    private static Pantry With(string csv)
    {
        PantryFile file = s_pantry.With(csv);
        Assert.True(file.Faults.Count == 0, string.Join("\n", file.Faults));
        return file.Pantry!;
    }

    private static string[] Faults(string csv) => [.. s_pantry.With(csv).Faults.Select(f => f.ToString())];

    [Fact]
    public void ACertificate_BeatsTheTable_AndKeepsTheRest()
    {
        Pantry own = With("id,name,SV,source,lot,date\nolive-oil,,187.4,\"Mill certificate, 118\",K-77,2026-02-11\n");
        Fat fat = own.Fat("virgin olive oil");
        Assert.Equal(187.4, fat.Saponification!.Value.MilligramsKohPerGram);
        Assert.Equal((fat.Saponification.Value, fat.Saponification.Value), (fat.Saponification.Low, fat.Saponification.High));
        Assert.True(fat.Saponification.IsOwn && fat.IsOwn);
        Assert.Equal(new Lot { Name = "K-77", Source = "Mill certificate, 118", Date = new(2026, 2, 11), Saponification = fat.Saponification.Value }, fat.Lot);
        Fat table = s_pantry.Fat("olive-oil");
        Assert.Equal(table.Profile, fat.Profile);
        Assert.Equal(table.Figures.Saponification, fat.Figures.Saponification);
        Assert.Equal((table.Name, table.Inci, table.Origin, table.Note), (fat.Name, fat.Inci, fat.Origin, fat.Note));
        SourcedFigure first = fat.Provenance[0];
        Assert.Equal(("SV", true, "lot K-77"), (first.Name, first.IsOwn, first.Place));
        Assert.Equal(Evidence.Measured, own.Source("Mill certificate, 118").Evidence);
        Assert.Equal("2026.11+own", own.Version);
        Assert.Equal("2026.11+own", own.With("id,name,SV,source\nx,X,190,y\n").Pantry!.Version);
        // the tables themselves stay as they are
        Assert.False(s_pantry.Fat("olive-oil").IsOwn);
    }

    [Fact]
    public void ACertificate_MakesAFatUsable_ThatNeedsOne()
    {
        Assert.Null(s_pantry.Fat("shea-butter").Saponification);
        Assert.Equal(178, With("id,name,SV,source\nshea-butter,,178,supplier's certificate\n").Fat("shea-butter").Saponification!.Value.MilligramsKohPerGram);
    }

    [Fact]
    public void ASpecification_FollowsTheRule_AndDoesNotLiftTheNeedOfALot()
    {
        Pantry own = With("id,name,SV,source,SV_low,SV_high\nolive-oil,,,sheet 4,184,190\nshea-butter,,,sheet 5,170,190\ncoconut-oil,,,sheet 6,250,262\n");
        Fat olive = own.Fat("olive-oil");
        Assert.Equal((187, 184, 190), (olive.Saponification!.Value.MilligramsKohPerGram, olive.Saponification.Low!.Value.MilligramsKohPerGram, olive.Saponification.High!.Value.MilligramsKohPerGram));
        Assert.True(olive.Saponification.IsOwn);
        Assert.Null(olive.Lot);
        Assert.Null(own.Fat("shea-butter").Saponification);
        // the middle of 256 is above what the acids give: the lower counts
        Assert.Equal(s_pantry.Fat("coconut-oil").Saponification!.Value, own.Fat("coconut-oil").Saponification!.Value);
    }

    [Fact]
    public void ASpecificationWithALot_CountsByItsLowEnd() =>
        Assert.Equal(172, With("id,name,SV,source,lot,SV_low,SV_high\nshea-butter,,,certificate,L-1,172,176\n").Fat("shea-butter").Saponification!.Value.MilligramsKohPerGram);

    [Fact]
    public void FourColumns_AreEnoughForANewFat_AndWhatIsNotKnownStaysUnknown()
    {
        Pantry own = With("id,name,SV,source\nkiwi-seed-oil,Kiwi seed oil,190,lab report 5\n");
        Assert.Equal(s_pantry.Fats.Count + 1, own.Fats.Count);
        Fat fat = own.Fat("Kiwi seed oil");
        Assert.Equal((190, FatClass.Triglyceride), (fat.Saponification!.Value.MilligramsKohPerGram, fat.Class));
        Assert.True(fat.Profile is null && fat.Figures.Iodine is null && fat.Figures.Density is null && fat.Origin is null && !fat.IsVegan);
        Assert.Throws<InvalidOperationException>(() => fat.Pouring(Volume.FromMilliliters(100)));
        Assert.Contains("nothing that rests on them can be computed", own.Describe("kiwi-seed-oil"), StringComparison.Ordinal);
        Assert.Equal(own.Fats.Select(f => f.Id).Order(StringComparer.Ordinal), own.Fats.Select(f => f.Id));
    }

    [Fact]
    public void OwnFigures_AreMarkedDownstream()
    {
        Pantry own = With("id,name,SV,source,lot,C18:1,C18:2,C16:0,IV,density,unsaponifiable\nhazelnut-oil,,189.5,press 9,H-3,79,13,7,88,0.912,0.4\n");
        Fat fat = own.Fat("hazelnut-oil");
        Assert.True(fat.Figures.IsProfileOwn && fat.Figures.Iodine!.IsOwn && fat.Figures.Density!.IsOwn && fat.Figures.Unsaponifiable!.IsOwn);
        Assert.Equal(["press 9"], fat.Figures.ProfileSources);
        Assert.Equal(79 / 99.0, fat.Profile!["C18:1"].DecimalFractions, 12);
        Assert.DoesNotContain(fat.Provenance, f => !f.IsOwn && (f.Name.StartsWith('C') || f.Name is "IV" or "unsaponifiable"));
        Formula formula = new("Own") { Fats = [fat.Weighing(Mass.FromGrams(300))], Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(7), Alkali.SodiumHydroxide(Ratio.FromPercent(99))), Liquids = LiquidPlan.TotalWater(Mass.FromGrams(110)) };
        Assert.Contains("Hazelnut oil: 189.5 mg KOH/g, lot H-3", formula.Plan().ToString(), StringComparison.Ordinal);
        Assert.Contains("\"evidence\": \"own\"", Encoding.UTF8.GetString(PlanJson.Write(formula.Plan())), StringComparison.Ordinal);
        Assert.Contains("with figures of your own", own.Describe("hazelnut-oil"), StringComparison.Ordinal);
    }

    [Fact]
    public void ALotFromAnOwnTable_TravelsInTheFormulaFile()
    {
        Pantry own = With("id,name,SV,source,lot\nshea-butter,,178,certificate,L-17\n");
        Formula formula = new("Travels") { Fats = [own.Fat("shea-butter").Weighing(Mass.FromGrams(200))], Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(9), Alkali.SodiumHydroxide(Ratio.FromPercent(99))), Liquids = LiquidPlan.TotalWater(Mass.FromGrams(60)) };
        byte[] file = FormulaFile.Write(formula, own);
        FormulaFile elsewhere = FormulaFile.Read(file, s_pantry);
        Assert.Empty(elsewhere.Problems);
        Assert.Equal(178, elsewhere.Formula!.Fats[0].Fat.Saponification!.Value.MilligramsKohPerGram);
        Assert.Equal(formula.Balance().AlkaliAsWeighed.Grams, elsewhere.Formula.Balance().AlkaliAsWeighed.Grams);
    }

    [Fact]
    public void AWax_TakesUpLyeByItsAcidValue_NeverByItsSaponificationValue()
    {
        Pantry own = With("id,name,SV,source,AV,class,lot\nbeeswax,,96,certificate,19,,B-2\nberry-wax,Berry wax,210,sheet,12,wax,\nrice-wax,Rice bran wax,90,sheet,,wax,\n");
        Assert.Equal(19, own.Fat("beeswax").Saponification!.Value.MilligramsKohPerGram);
        Assert.Equal(12, own.Fat("berry-wax").Saponification!.Value.MilligramsKohPerGram);
        Assert.Equal(0, own.Fat("rice-wax").Saponification!.Value.MilligramsKohPerGram);
    }

    [Fact]
    public void TenFaults_GiveTenMessages_WithLineAndColumn()
    {
        string[] faults = Faults("""
            id,name,SV,source,lot,date,class,origin,allergen,C18:1,density
            olive-oil,,190,,,,,,,,
            a,A,,sheet,,,,,,,
            b,B,"190,5",sheet,,,,,,,
            c,C,0.134,sheet,,,,,,,
            d,,190,sheet,,,,,,,
            e,E,190,sheet,,1.2.2026,,,,,
            f,F,190,sheet,,,,,nuts,,
            g,G,190,sheet,,,,,,120,
            corn oil,H,190,sheet,,,,,,,
            i,I,95,sheet,,,,,,,
            """.ReplaceLineEndings("\n"));
        Assert.Equal(
            ["own table(2, source)", "own table(3, SV)", "own table(4, SV)", "own table(5, SV)", "own table(6, name)", "own table(7, date)", "own table(8, allergen)", "own table(9, C18:1)", "own table(10, id)", "own table(11, class)"],
            faults.Select(f => f[..(f.IndexOf(')', StringComparison.Ordinal) + 1)]));
    }

    [Theory]
    [InlineData("id,name,source\na,A,s\n", "the column is missing")]
    [InlineData("id,name,SV,source,colour\na,A,190,s,red\n", "there is no such column")]
    [InlineData("id;name;SV;source\na;A;190;s\n", "semicolons")]
    [InlineData("id,name,SV,source\na,A,190,memory\n", "is no source")]
    [InlineData("id,name,SV,source\na,A,190,common-practice\n", "is no source")]
    [InlineData("id,name,SV,source\na,A,1900,s\n", "outside 0 to 1000")]
    [InlineData("id,name,SV,source\na,A,700,s\n", "more than any fat")]
    [InlineData("id,name,SV,source\na,A,190,s\nA,B,191,s\n", "stands in line 2 already")]
    [InlineData("id,name,SV,source\na,Coconut fat,190,s\n", "is a name of coconut-oil")]
    [InlineData("id,name,SV,source\nOlive-Oil,,190,s\n", "write olive-oil")]
    [InlineData("id,name,SV,source,aliases\na,A,190,s,b\nb,B,190,s,\n", "is a name of a already")]
    [InlineData("id,name,SV,source\na/b,A,190,s\n", "an id must not hold")]
    [InlineData("id,name,SV,source\n--,A,190,s\n", "needs a letter")]
    [InlineData("id,name,SV,source,SV_low\na,A,,s,180\n", "a range needs both ends")]
    [InlineData("id,name,SV,source,SV_low,SV_high\na,A,,s,190,180\n", "above the high end")]
    [InlineData("id,name,SV,source,SV_low,SV_high\na,A,185,s,180,190\n", "exclude each other")]
    [InlineData("id,name,SV,source,class\nolive-oil,,190,s,wax\n", "of another class")]
    [InlineData("id,name,SV,source,class\na,A,190,s,oil\n", "is none of")]
    [InlineData("id,name,SV,source,C18:1\na,A,190,s,120\n", "outside 0 to 100")]
    [InlineData("id,name,SV,source,C18:1,C18:2\na,A,190,s,80,60\n", "add up to 140")]
    [InlineData("id,name,SV,source,C18:1\na,A,190,s,0\n", "add up to 0")]
    [InlineData("id,name,SV,source\na,A,190,\"s\n", "quotes")]
    public void Faults_SayWhatIsWrong(string csv, string expected)
    {
        PantryFile file = s_pantry.With(csv);
        Assert.Null(file.Pantry);
        Assert.Empty(file.Fats);
        Assert.Contains(file.Faults, f => f.Reason.Contains(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void TextThatIsNotUtf8_OrTooLarge_IsRefused()
    {
        Assert.Contains("UTF-8", Assert.Single(s_pantry.With([0xE9, 0x2C, 0x0A]).Faults).Reason, StringComparison.Ordinal);
        Assert.Contains("at most", Assert.Single(s_pantry.With(new byte[PantryFile.LargestBytes + 1]).Faults).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void ByteOrderMark_CarriageReturns_AndHeadersInAnyCase_AreFine() =>
        Assert.Equal(181, With("\uFEFFSource,ID,Name,sv\r\n\"a \"\"b\"\"\r\nc\",x,X,181\r\n\r\n").Fat("x").Saponification!.Value.MilligramsKohPerGram);

    [Fact]
    public void AHeaderAlone_ChangesNothing() => Assert.Equal(s_pantry.Fats, With("id,name,SV,source\n").Fats);

    [Fact]
    public void MoreLyeThanAnythingOnFile_IsNoted()
    {
        PantryFile file = s_pantry.With("id,name,SV,source\nolive-oil,,257,certificate\nlard,,199,certificate\n");
        Assert.NotNull(file.Pantry);
        TableFault notice = Assert.Single(file.Notices);
        Assert.Equal((2, "SV"), (notice.Line, notice.Column));
        Assert.Contains("257 is above 196, the most on file for Olive oil", notice.Reason, StringComparison.Ordinal);
        Assert.Equal(["lard", "olive-oil"], file.Fats.Select(f => f.Id));
    }

    [Fact]
    public void OwnMaterials_JoinThePantry_ThatFilesAreReadWith()
    {
        Liquid drink = new("barista-oat", "Oat drink, barista", new() { Water = Ratio.FromPercent(89), Fat = Ratio.FromPercent(3), FatKind = s_pantry.Fat("canola-oil"), Sugar = Ratio.FromPercent(4) }) { Sources = ["carton"], Allergen = "oat" };
        Pantry own = s_pantry.With(drink).With(Fat.Own("tiger-nut-oil", "Tiger nut oil", SaponificationValue.FromMilligramsKohPerGram(189), "certificate"));
        Assert.Same(drink, own.Liquid("oat drink, barista"));
        Formula formula = new("Carton") { Fats = [own.Fat("tiger-nut-oil").Weighing(Mass.FromGrams(400))], Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), Alkali.SodiumHydroxide(Ratio.FromPercent(98))), Liquids = LiquidPlan.WaterToAlkali(Ratio.FromDecimalFractions(2.4)).HoldingBack(drink.Weighing(Mass.FromGrams(50))) };
        Assert.Equal(formula, FormulaFile.Read(FormulaFile.Write(formula, own), own).Formula);
        Assert.Throws<ArgumentException>(() => s_pantry.With(new Liquid("x", "X", Contents.PureWater)));
        Assert.Throws<ArgumentException>(() => s_pantry.With(new Additive("x", "X", AdditiveKind.Other, Stage.Trace, Contents.None)));
        Assert.Throws<ArgumentException>(() => s_pantry.With(s_pantry.Fat("lard")));
        Assert.Equal("x", s_pantry.With(new Additive("x", "X", AdditiveKind.Other, Stage.Trace, Contents.None) { Sources = ["label"] }).Additive("X").Id);
    }

    [Fact]
    public void Reading_IsTheSameInEveryCulture()
    {
        const string Csv = "id,name,SV,source,density\nx,X,190.5,s,0.915\ny,Y,\"190,5\",s,\n";
        string[] expected = Faults(Csv);
        Assert.Single(expected);
        foreach (string culture in InCulture.Names)
            Assert.Equal(expected, InCulture.Run(culture, () => Faults(Csv)));
    }
}
