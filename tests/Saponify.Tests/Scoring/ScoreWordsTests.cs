using Saponify.Tests.Formulas;
using Saponify.Tests.Support;

namespace Saponify.Tests.Scoring;

/// <summary>Scores, compositions and comparisons as their readers see them, with everything in them that can be said; made-up materials, so that no table changes them.</summary>
public class ScoreWordsTests
{
    private static readonly ValueList<string> s_invented = ["made up for this test"];
    private static readonly Alkali s_soda = Alkali.SodiumHydroxide(Percent(96)), s_flakes = Alkali.PotassiumHydroxide(Percent(90));

    private static readonly Fat s_firm = Of("firm", "Firm fat", FatClass.Triglyceride, Profile(("C12:0", 20), ("C16:0", 45), ("C18:0", 35)), Evidence.Measured);
    private static readonly Fat s_old = Of("old", "Fat remembered by a very long name", FatClass.Triglyceride, Profile(("C18:1", 80), ("C18:2", 20)), Evidence.Memory);
    private static readonly Fat s_berry = Of("berry", "Berry oil", FatClass.Triglyceride, Profile(("C18:1-OH", 70), ("C20:1", 20), ("C22:6", 10)), Evidence.Memory);
    private static readonly Fat s_wide = Of("wide", "Wide oil", FatClass.Triglyceride, FattyAcidProfile.FromRanges(Range("C16:0", 10, 80), Range("C18:1", 10, 80), Range("C18:2", 5, 70)), Evidence.Standard);
    private static readonly Fat s_part = Of("part", "Half-known oil", FatClass.Triglyceride, Profile(("C18:1", 60)), Evidence.Standard, 190);
    private static readonly Fat s_acids = Of("acids", "Split acids", FatClass.FreeAcid, Profile(("C16:0", 60), ("C18:1", 40)), Evidence.Standard);
    private static readonly Fat s_wax = Of("wax", "Some wax", FatClass.Wax, null, Evidence.Standard, 95);
    private static readonly Fat s_blank = new("blank", "Blank oil", FatClass.Triglyceride, new());
    private static readonly Fat s_lotOnly = Fat.Own("lot-only", "Oil with a value alone", SaponificationValue.FromMilligramsKohPerGram(195), "made up for this test");

    private static readonly Acid s_sour = new("sour", "Sour acid", MolarMass.FromGramsPerMole(90), 1, 0);
    private static readonly Liquid s_brew = new("brew", "Sour brew", new() { Water = Percent(80), Alcohol = Percent(5), Sugar = Percent(4), Protein = Percent(2), Acid = Percent(1), AcidKind = s_sour, Ash = Percent(1) });
    private static readonly Liquid s_drink = new("drink", "Grain drink", new() { Water = Percent(90), Fat = Percent(3), Acid = Percent(1) });
    private static readonly Additive s_clay = new("clay", "Some clay", AdditiveKind.Other, Stage.Trace, new());
    private static readonly Additive s_syrup = new("syrup", "Some syrup", AdditiveKind.Other, Stage.Trace, new() { Water = Percent(20), Sugar = Percent(80) });

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    private static Mass Grams(double grams) => Mass.FromGrams(grams);

    private static FattyAcidProfile Profile(params (string Acid, double Percent)[] acids) => FattyAcidProfile.Of([.. acids.Select(a => (FattyAcid.FromShorthand(a.Acid), Percent(a.Percent)))]);

    private static (FattyAcid, Ratio, Ratio) Range(string acid, double low, double high) => (FattyAcid.FromShorthand(acid), Percent(low), Percent(high));

    private static Fat Of(string id, string name, FatClass kind, FattyAcidProfile? profile, Evidence evidence, double? value = null) => new(id, name, kind, new()
    {
        Profile = profile,
        ProfileEvidence = evidence,
        ProfileSources = profile is null ? default : s_invented,
        Saponification = value is { } own ? new(SaponificationValue.FromMilligramsKohPerGram(own), Evidence.Measured, s_invented) : null,
    });

    /// <summary>Two alkalis, milk with fat of unknown kind, acids, beer, a wax, free acids, an additive of unknown mass.</summary>
    private static Formula Everything => new("Everything a bar can be made of")
    {
        Fats = [s_firm.Weighing(Grams(500)), s_old.Weighing(Grams(200)), s_berry.Weighing(Grams(200)), s_acids.Weighing(Grams(100)), s_wide.Weighing(Grams(100)).AtTrace(), s_wax.Weighing(Grams(20)), s_lotOnly.Weighing(Grams(10))],
        Alkali = AlkaliPlan.ForSuperfat(Percent(4), s_soda.ShareOfHydroxide(Percent(60)), s_flakes.ShareOfHydroxide(Percent(40))),
        Liquids = LiquidPlan.LyeConcentration(Percent(30)).DissolvingIn(s_brew).HoldingBack(s_drink.Weighing(Grams(100))),
        Additives = [s_clay.Weighing(Grams(10)), s_syrup.Weighing(Grams(20)), s_clay.AmountUnknown() with { Line = "more clay" }],
    };

    /// <summary>Twice the alkali that the fat takes, weighed in kilograms.</summary>
    private static Formula Heavy => FormulaTests.Plain(s_lotOnly.Weighing(Mass.FromKilograms(1))) with
    {
        Name = "Far too much alkali",
        Alkali = AlkaliPlan.Weighed(s_soda.Weighing(Grams(200)), s_flakes.Weighing(Grams(100)) with { Line = "flakes" }),
    };

    /// <summary>Less alkali than the acid and the free fatty acids take.</summary>
    private static Formula Weak => FormulaTests.Plain(s_acids.Weighing(Grams(200)), s_firm.Weighing(Grams(300))) with
    {
        Name = "Hardly any alkali",
        Alkali = AlkaliPlan.Weighed(s_soda.Weighing(Grams(10))),
        Liquids = LiquidPlan.TotalWater(Grams(200)).DissolvingIn(s_brew),
    };

    private static Formula Unscored => FormulaTests.Plain(s_firm.Weighing(Grams(400)), s_part.Weighing(Grams(300)), s_blank.Weighing(Grams(200)), s_wax.Weighing(Grams(100))) with
    {
        Name = "Too little known",
        Liquids = LiquidPlan.TotalWater(Grams(200)).HoldingBack(s_drink.Weighing(Grams(50))),
    };

    [Fact]
    public void ScoresSay_WhatMakesThemDoubtful()
    {
        Golden.Matches(Everything.Scores().ToString(), "scores", "words", "everything.txt");
        Golden.Matches(Everything.Scores().ToHtml(), "scores", "words", "everything.html");
    }

    [Fact]
    public void WhatCantBeScored_SaysWhy()
    {
        BarScores[] scores = [Unscored.Scores(), FormulaTests.Plain().Scores(), Heavy.Scores()];
        Golden.Matches(string.Join("\n", scores.Select(s => s.ToString() + s.ToHtml())), "scores", "words", "not-scored.txt");
    }

    [Fact]
    public void ALyeHeavyBar_IsScored_AndSaysSo()
    {
        FatBlend blend = FatBlend.Of((s_firm, Percent(100)));
        Assert.Equal(["LYE-HEAVY: more alkali than all fat can take up, and no score counts it. Do not make this."], blend.Scores(Percent(-0.001), Ratio.Zero).Remarks);
        Assert.Empty(blend.Scores(Percent(-1e-10), Ratio.Zero).Remarks);                       // noise of the arithmetic
        Assert.Equal(blend.Scores(Ratio.Zero, Ratio.Zero).Conditioning!.Value, blend.Scores(Percent(-5), Ratio.Zero).Conditioning!.Value);
        Assert.Contains("<li>LYE-HEAVY: ", blend.Scores(Percent(-5), Ratio.Zero).ToHtml(), StringComparison.Ordinal);
    }

    [Fact]
    public void CompositionsSay_WhereEverythingWent() =>
        Golden.Matches(string.Join("\n", new[] { Everything, Heavy, Weak }.SelectMany(f => new[] { f.Composition()!, f.Composition()!.AtMoisture(Percent(12)) })), "scores", "words", "compositions.txt");

    [Fact]
    public void AComparison_ShowsWhatIsMissingInEach() =>
        Golden.Matches(BarComparison.Of(Everything, Unscored, Heavy).ToString(), "scores", "words", "comparison.txt");

    [Fact]
    public void OneBarAlone_IsComparedWithNothing() => Golden.Matches(BarComparison.Of(Weak).ToString(), "scores", "words", "alone.txt");

    /// <summary>What a page of the docs prints by running it is what the library says.</summary>
    [Fact]
    public void EveryDefinition_IsAsInTheDocs()
    {
        string page = File.ReadAllText(Repository.Path("docs", "scores.md")).ReplaceLineEndings("\n");
        Assert.All(ScoreDefinition.All, d => Assert.Contains(FormattableString.Invariant($"""

            {d.Name} (confidence {d.Confidence})
              {d.Formula}
              parts:   {d.Decomposition}
              ground:  {d.Ground}
              blind:   {d.Blind}
              words:   {string.Join("; ", d.Bands.Select(b => FormattableString.Invariant($"from {b.From:F0} {b.Words}")))}
              sources: {string.Join(", ", d.Sources)}

            """).ReplaceLineEndings("\n"), page, StringComparison.Ordinal));
        Assert.Contains("\n" + string.Concat(ScoreDefinition.Limits.Select(l => $"- {l}\n")) + "```", page, StringComparison.Ordinal);
        Assert.Equal(["hardness 0", "hardness 25"], ScoreDefinition.All[0].Bands.Take(2).Select(b => FormattableString.Invariant($"{ScoreDefinition.All[0]} {b.From}")));
    }
}
