namespace Saponify.PublishedValues.Scoring;

/// <summary>The composition of bars against published exercises, a handbook and analyses of bars.</summary>
public class BarAnalysisTests
{
    private static readonly Pantry s_pantry = Pantry.Reference;

    private static Fat Simple(string acid) => new("simple", "Simple triglyceride", FatClass.Triglyceride, new() { Profile = FattyAcidProfile.Of((FattyAcid.FromShorthand(acid), Ratio.FromPercent(100))), ProfileSources = ["stoichiometry"] });

    private static Fat Own(string id, FatClass fatClass, double koh) => new(id, id, fatClass, new() { Saponification = new(SaponificationValue.FromMilligramsKohPerGram(koh), Evidence.Computed, ["exercise"]) });

    private static BarComposition Bar(AlkaliPlan alkali, params FatPortion[] fats) =>
        new Formula("Bar") { Fats = [.. fats], Alkali = alkali, Liquids = LiquidPlan.WaterToAlkali(Ratio.FromDecimalFractions(2.4)) }.Composition()!;

    private static BarComposition Soda(double superfat, params (string Fat, double Grams)[] fats) =>
        Bar(AlkaliPlan.ForSuperfat(Ratio.FromPercent(superfat), Alkali.SodiumHydroxide(Ratio.FromPercent(99))), [.. fats.Select(f => s_pantry.Fat(f.Fat).Weighing(Mass.FromGrams(f.Grams)))]);

    /// <summary>A fat with free acid, as the exercises have it: the acid value counts in mg KOH of 56 g/mol, all alkali reacts.</summary>
    private static BarComposition WithFreeAcid(double grams, double acidValue, double moles, Alkali pure)
    {
        double ofAcid = grams * acidValue / 56_000, acidGrams = ofAcid * 282.468, rest = grams - acidGrams;
        return Bar(AlkaliPlan.ForSuperfat(Ratio.Zero, pure),
            Own("free-acid", FatClass.FreeAcid, ofAcid * 56_105 / acidGrams).Weighing(Mass.FromGrams(acidGrams)),
            Own("glyceride", FatClass.Triglyceride, (moles - ofAcid) * 56_105 / rest).Weighing(Mass.FromGrams(rest)));
    }

    /// <summary>Stoichiometry with the molar masses of CIAAW 2021, worked out apart from the code: soda soap and glycerol, % of the triglyceride.</summary>
    [Theory]
    [InlineData("C4:0", 109.225, 30.458)]
    [InlineData("C8:0", 105.926, 19.566)]
    [InlineData("C12:0", 104.366, 14.412)]
    [InlineData("C14:0", 103.858, 12.735)]
    [InlineData("C16:0", 103.456, 11.407)]
    [InlineData("C18:0", 103.129, 10.330)]
    [InlineData("C18:1", 103.151, 10.401)]
    [InlineData("C18:2", 103.172, 10.472)]
    [InlineData("C18:3", 103.194, 10.545)]
    [InlineData("C18:1-OH", 102.989, 9.866)]
    [InlineData("C22:1", 102.648, 8.739)]
    public void SimpleTriglyceride_GivesSoapAndGlycerol(string acid, double soap, double glycerol)
    {
        BarComposition bar = Bar(AlkaliPlan.ForSuperfat(Ratio.Zero, Alkali.SodiumHydroxide(Ratio.FromPercent(100))), Simple(acid).Weighing(Mass.FromGrams(100)));
        Assert.Equal(soap, bar.MassOf(PartKind.Soap).Grams, 0.002);
        Assert.Equal(glycerol, bar.MassOf(PartKind.Glycerol).Grams, 0.002);
    }

    /// <summary>Source: Vietnamese exercises on lipids, published with solutions; 100 g of a fat of acid value 7 and 0.32 mol KOH. They use 56, 92 and 18 g/mol, which moves the soap by 0.024 g.</summary>
    [Fact]
    public void PotashSoap_OfAFatWithFreeAcid()
    {
        BarComposition bar = WithFreeAcid(100, 7, 0.32, Alkali.PotassiumHydroxide(Ratio.FromPercent(100)));
        Assert.Equal(108.265, bar.MassOf(PartKind.Soap).Grams, 0.03);
        Assert.Equal(0.1025, bar.MassOf(PartKind.Glycerol).Grams / 92.094, 1e-6);
        Assert.Equal(0.0125, bar.Parts.Single(p => p.Name == "water formed").Mass.Grams / 18.015, 1e-6);
    }

    /// <summary>Source: Vietnamese exercises on lipids, published with solutions: glycerol from a fat of acid value 7, with 92 g/mol for glycerol.</summary>
    [Theory]
    [InlineData(100, 0.32, 9.43, 0.02)]
    [InlineData(1000, 3.572, 105.69, 0.2)]
    public void Glycerol_OfAFatWithFreeAcid(double grams, double moles, double glycerol, double tolerance) =>
        Assert.Equal(glycerol, WithFreeAcid(grams, 7, moles, Alkali.SodiumHydroxide(Ratio.FromPercent(100))).MassOf(PartKind.Glycerol).Grams, tolerance);

    /// <summary>Source: Vietnamese textbook Hoa hoc 12, review drill: 8.58 kg of fat and 1.2 kg of soda give 0.92 kg of glycerol and 8.86 kg of salts.</summary>
    [Fact]
    public void MassIsConserved_InASchoolExercise()
    {
        BarComposition bar = Bar(AlkaliPlan.ForSuperfat(Ratio.Zero, Alkali.SodiumHydroxide(Ratio.FromPercent(100))), Own("fat", FatClass.Triglyceride, 30 * 56.105 / 8.580).Weighing(Mass.FromKilograms(8.58)));
        Assert.Equal(8.86, bar.MassOf(PartKind.Soap).Kilograms, 0.005);
        Assert.Equal(0.92, bar.MassOf(PartKind.Glycerol).Kilograms, 0.005);
    }

    /// <summary>Source: Vietnamese textbook Hoa hoc 12, exercise 5 p. 16: 698.05 kg of tristearin make 720 kg of sodium stearate (890 and 306 g/mol).</summary>
    [Fact]
    public void Stearate_FromTristearin()
    {
        BarComposition bar = Bar(AlkaliPlan.ForSuperfat(Ratio.Zero, Alkali.SodiumHydroxide(Ratio.FromPercent(100))), Simple("C18:0").Weighing(Mass.FromKilograms(698.05)));
        Assert.Equal(720, bar.Parts.Single(p => p.Name == "sodium stearate").Mass.Kilograms, 0.3);
    }

    /// <summary>
    /// Source: Simmons and Appleton 1908, p. 47 with Appendix C: cold process, coconut oil with half its weight of lye of 38 degrees Beaume,
    /// 32.63 % NaOH: 10 to 12 % less than oil of saponification value 255 to 260 takes.
    /// </summary>
    [Theory]
    [InlineData(255, 10.3)]
    [InlineData(260, 12.0)]
    public void ColdProcessCoconutSoapOf1908_LeavesATenthUnreacted(double koh, double percent)
    {
        Fat lot = s_pantry.Fat("coconut-oil").WithLot(new() { Name = "1908", Source = "Simmons and Appleton", Saponification = SaponificationValue.FromMilligramsKohPerGram(koh) });
        BarComposition bar = Bar(AlkaliPlan.Weighed(Alkali.SodiumHydroxideSolution(Ratio.FromPercent(32.63)).Weighing(Mass.FromGrams(50))), lot.Weighing(Mass.FromGrams(100)));
        Assert.Equal(percent, bar.MassOf(PartKind.UnreactedFat).Grams, 0.2);
    }

    /// <summary>Source: Simmons and Appleton 1908, p. 116: tallow yields 9 % of glycerine of 80 %, all fats 5 to 14 % of it; what a works gets is less than what is there.</summary>
    [Fact]
    public void Glycerol_IsMoreThanTheWorksOf1908Got()
    {
        double tallow = Soda(0, ("tallow", 100)).MassOf(PartKind.Glycerol).Grams;
        Assert.InRange(tallow, 9 * 0.8, 9 * 0.8 * 1.6);
        Assert.All((string[])["coconut-oil", "palm-oil", "olive-oil", "palm-kernel-oil", "flaxseed-oil"], f => Assert.InRange(Soda(0, (f, 100)).MassOf(PartKind.Glycerol).Grams, 5 * 0.8, 14.5));
    }

    /// <summary>Source: abstract on palm kernel oil laundry soap: moisture 9.65 +- 0.97 %, total fatty matter 72.5 +- 2.34 %. Superfat not stated: 0 to 8 % taken.</summary>
    [Fact]
    public void FattyMatter_OfAPalmKernelSoap_IsTheMeasuredOne()
    {
        foreach (double superfat in (double[])[0, 8])
        {
            BarComposition bar = Soda(superfat, ("palm-kernel-oil", 100));
            Assert.InRange(bar.AtMoisture(Ratio.FromPercent(9.65)).TotalFattyMatter.Percent, 72.5 - 2.34, 72.5 + 2.34);
        }
    }

    /// <summary>Source: Adeyemi and others 2023, cold process palm oil bar: total fatty matter 77 %, moisture not in the abstract. Dried bars hold 5 to 15 % water (SNI 1994: at most 15 %).</summary>
    [Fact]
    public void FattyMatter_OfAPalmOilBar_IsBracketed()
    {
        BarComposition bar = Soda(5, ("palm-oil", 100));
        Assert.True(bar.AtMoisture(Ratio.FromPercent(15)).TotalFattyMatter.Percent < 77);
        Assert.True(bar.AtMoisture(Ratio.FromPercent(5)).TotalFattyMatter.Percent > 77);
    }

    /// <summary>
    /// Source: survey of ten Nigerian toilet soaps, 2014: moisture 9.63 +- 2.44 %, total fatty matter 75.2 +- 5.25 %. Their fats are not stated; palm
    /// and palm kernel oil taken. Their glycerol, 3.8 +- 2.3 %, is less than a cold-process bar keeps, since factories wash some out.
    /// </summary>
    [Fact]
    public void FattyMatter_OfToiletSoaps_BracketsTheComputedOne()
    {
        BarComposition bar = Soda(3, ("palm-oil", 80), ("palm-kernel-oil", 20));
        Assert.All((double[])[9.63 - 2.44, 9.63, 9.63 + 2.44], m => Assert.InRange(bar.AtMoisture(Ratio.FromPercent(m)).TotalFattyMatter.Percent, 75.2 - 5.25, 75.2 + 5.25));
        Assert.True(bar.AtMoisture(Ratio.FromPercent(9.63)).ShareOf(PartKind.Glycerol).Percent > 3.8 + 2.3);
    }
}
