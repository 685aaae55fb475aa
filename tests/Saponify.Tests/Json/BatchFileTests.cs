using System.Text;
using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>A batch on the bench is stopped, stored and taken up again.</summary>
public class BatchFileTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;
    private static readonly Formula s_formula = FormulaFile.Read(File.ReadAllBytes(Repository.Path("data", "examples", "oat-and-cream.json")), s_pantry).Formula!;

    private static WeighedBatch Start() => WeighedBatch.Start(s_formula.Plan());

    private static void ReadsBack(WeighedBatch batch)
    {
        byte[] written = BatchFile.Write(batch, s_pantry);
        BatchFile read = BatchFile.Read(written, s_pantry);
        Assert.Empty(read.Problems);
        Assert.Empty(read.Notices);
        Assert.Equal(batch, read.Batch);
        Assert.Equal(written, BatchFile.Write(read.Batch!, s_pantry));
    }

    private static ValueList<Problem> Problems(string json, Formula? formula = null)
    {
        BatchFile file = BatchFile.Read(Encoding.UTF8.GetBytes(json), s_pantry, formula);
        Assert.Null(file.Batch);
        return file.Problems;
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void EveryExample_IsStoredAndReadBack_AtEachStep(string path)
    {
        WeighedBatch batch = WeighedBatch.Start(FormulaFile.Read(File.ReadAllBytes(path), s_pantry).Formula!.Plan());
        ReadsBack(batch);
        foreach (WeighedLine line in batch.Lines)
        {
            batch = batch.Weigh(line.Path.ToString(), line.Planned * 1.013);
            ReadsBack(batch);
        }
        ReadsBack(batch.WithAlkaliIn());
        ReadsBack(batch.WhenPoured());
    }

    public static TheoryData<string> Examples => [.. Repository.Examples];

    [Fact]
    public void WhatWasAddedOrFoundOut_IsKept()
    {
        WeighedBatch heavy = Start().Weigh("alkali.alkalis[sodium-hydroxide]", Mass.FromOunces(5.25)).WithAlkaliIn();
        ReadsBack(heavy.Choices.First(c => c.Kind == BatchChoiceKind.AddFat).Apply());
        ReadsBack(heavy.AlkaliWas("alkali.alkalis[sodium-hydroxide]", Alkali.PotassiumHydroxide(Purity.Certified(Ratio.FromPercent(90)))));
        ReadsBack(heavy.FatWas("fats[olive-oil]", s_pantry.Fat("rapeseed-oil")));
        ReadsBack(heavy.LyeLiquidWas(s_pantry.Liquid("milk-cow-whole")));
        WeighedBatch mild = Start().Weigh("alkali.alkalis[sodium-hydroxide]", Mass.FromOunces(2)).WithAlkaliIn();
        ReadsBack(mild.Choices.First(c => c.Kind == BatchChoiceKind.AddLye).Apply());
    }

    [Fact]
    public void AFileOfWeightsAlone_GoesWithTheFormulaAtHand()
    {
        BatchFile file = BatchFile.Read("""{ "format": "saponify-batch/1", "weights": [ { "line": "fats[olive-oil]", "mass": "15 oz" } ] }"""u8, s_pantry, s_formula);
        Assert.Empty(file.Problems);
        Assert.Equal(Start().Weigh("fats[olive-oil]", Mass.FromOunces(15)), file.Batch);
    }

    [Fact]
    public void EveryFault_IsToldAtItsPlace()
    {
        ValueList<Problem> problems = Problems("""
            {
              "format": "saponify-batch/1",
              "state": "curing",
              "weights": [
                { "line": "fats[olive-oil]", "mass": "15" },
                { "lines": "fats[coconut-oil]", "mass": "9 oz" },
                { "line": "liquids.lyeLiquid", "mass": "-1 oz" }
              ]
            }
            """, s_formula);
        Assert.Equal(["(3,12): SFY1009", "(5,42): SFY1006", "(6,7): SFY1002", "(7,44): SFY1007"], problems.Select(p => p.ToString()[..p.ToString().IndexOf(": ", 8, StringComparison.Ordinal)]));
    }

    [Fact]
    public void AnUnknownLine_AndOneThatStandsTwice_AreTold()
    {
        ValueList<Problem> problems = Problems("""
            { "format": "saponify-batch/1", "weights": [
              { "line": "fats[oliv-oil]", "mass": "15 oz" },
              { "line": "fats[coconut-oil]", "mass": "9 oz" },
              { "line": "fats[coconut-oil]", "mass": "8 oz" } ] }
            """, s_formula);
        Assert.Equal([ProblemIds.WrongLine, ProblemIds.WrongLine], problems.Select(p => p.Id));
        Assert.StartsWith("the batch has no line \"fats[oliv-oil]\"", problems[0].Text, StringComparison.Ordinal);
        Assert.Contains("liquids.lyeLiquid", problems[0].Expected, StringComparison.Ordinal);
        Assert.Equal("the line \"fats[coconut-oil]\" stands twice", problems[1].Text);
    }

    [Fact]
    public void WithoutAFormula_OrWithAnother_ItIsRefused()
    {
        Problem missing = Assert.Single(Problems("""{ "format": "saponify-batch/1" }"""));
        Assert.Equal((ProblemIds.MissingMember, "/formula"), (missing.Id, missing.Pointer));
        byte[] stored = BatchFile.Write(Start(), s_pantry);
        Problem other = Assert.Single(BatchFile.Read(stored, s_pantry, s_formula with { Name = "Another" }).Problems);
        Assert.Equal((ProblemIds.Conflict, "/formula"), (other.Id, other.Pointer));
        Assert.NotNull(BatchFile.Read(stored, s_pantry, s_formula).Batch);
    }

    [Fact]
    public void ABenchThatIsNotWorkedOut_AndAFormulaThatCantBeWeighed_AreRefused()
    {
        string formula = Encoding.UTF8.GetString(FormulaFile.Write(s_formula, s_pantry));
        Problem bench = Assert.Single(Problems($$"""{ "format": "saponify-batch/1", "formula": {{formula}}, "bench": {{formula}} }"""));
        Assert.Equal((ProblemIds.Conflict, "/bench"), (bench.Id, bench.Pointer));
        byte[] obstacle = FormulaFile.Write(s_formula with { Fats = [s_pantry.Fat("shea-butter").Weighing(Mass.FromGrams(500))] }, s_pantry);
        Problem problem = Assert.Single(Problems($$"""{ "format": "saponify-batch/1", "formula": {{Encoding.UTF8.GetString(obstacle)}} }"""));
        Assert.Equal(ProblemIds.OutOfRange, problem.Id);
        Assert.StartsWith("the formula can't be weighed: Shea butter", problem.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{ \"format\": \"saponify-formula/1\" }")]
    [InlineData("{ \"format\": \"saponify-batch/1\", \"formula\": 3, \"weights\": {} }")]
    public void WhatIsNoBatch_IsToldSo(string json) => Assert.NotEmpty(Problems(json));

    [Law]
    public Property AnyBatch_ReadsBack() => Prop.ForAll(Any.Formulas.Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        if (!plan.Balance.CanBeWeighed)
            return true;
        WeighedBatch batch = WeighedBatch.Start(plan);
        foreach (WeighedLine line in batch.Lines.Where((_, i) => i % 2 == 0))
            batch = batch.Weigh(line.Path.ToString(), line.Planned * 0.97);
        return batch.Equals(BatchFile.Read(BatchFile.Write(batch, s_pantry), s_pantry).Batch);
    });

    [Law]
    public Property AnyBytes_GiveProblemsOrABatch_NeverAnException()
    {
        byte[] sound = BatchFile.Write(Start().Weigh("fats[olive-oil]", Mass.FromOunces(15)), s_pantry);
        return Prop.ForAll(Gen.Choose(0, sound.Length - 1).Arbitrary(), Gen.Choose(0, 255).Arbitrary(), (at, value) =>
        {
            byte[] broken = [.. sound];
            broken[at] = (byte)value;
            BatchFile file = BatchFile.Read(broken, s_pantry);
            return (file.Batch is null) == (file.Problems.Count > 0);
        });
    }
}
