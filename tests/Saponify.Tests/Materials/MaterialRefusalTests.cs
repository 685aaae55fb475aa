using Saponify.Tests.Support;

namespace Saponify.Tests.Materials;

/// <summary>What no material can be, and what its author is told instead.</summary>
public class MaterialRefusalTests
{
    private static readonly FattyAcid s_palmitic = FattyAcid.FromShorthand("C16:0"), s_oleic = FattyAcid.FromShorthand("C18:1");
    private static readonly SaponificationValue s_value = SaponificationValue.FromMilligramsKohPerGram(190);
    private static readonly Liquid s_milk = Pantry.Reference.Liquid("milk-goat");
    private static readonly MolarMass s_sixty = MolarMass.FromGramsPerMole(60);

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    [Fact]
    public void WhatNoMaterialCanBe_IsRefusedWithAReason() => new Refusals()
        .Of(() => new Fat(" ", "Oil", FatClass.Triglyceride, new()))
        .Of(() => new Fat("oil", "\n", FatClass.Triglyceride, new()))
        .Of(() => new Fat("oil", "Oil", (FatClass)99, new()))
        .Of(() => new Fat("oil", "Oil", FatClass.Triglyceride, null!))
        .Of(() => new Fat("oil", "Oil", FatClass.Triglyceride, new() { Profile = FattyAcidProfile.Of((s_oleic, Percent(100))) }))
        .Of(() => new Fat("oil", "Oil", FatClass.Triglyceride, new()).WithLot(null!))
        .Of(() => Fat.Own("oil", "Oil", s_value, " "))
        .Of(() => new FatFigures { ProfileEvidence = (Evidence)99 })
        .Of(() => new Figure<SaponificationValue>(s_value, Evidence.Measured, []))
        .Of(() => new Lot { Name = "", Source = "certificate" })
        .Of(() => new Lot { Name = "L-1", Source = "" })
        .Of(() => SaponificationValue.FromMilligramsKohPerGram(-1))
        .Of(() => SaponificationValue.FromGramsNaohPerGram(190))
        .Of(() => IodineValue.FromGramsPer100Grams(501))
        .Of(() => FattyAcid.FromShorthand("C19:7"))
        .Of(() => FattyAcid.FromShorthand(null!))
        .Of(() => s_oleic.SoapMolarMass((AlkaliKind)7))
        .Of(() => FattyAcidProfile.Of())
        .Of(() => FattyAcidProfile.Of(null!))
        .Of(() => FattyAcidProfile.Of((null!, Percent(50))))
        .Of(() => FattyAcidProfile.Of((s_oleic, Percent(101))))
        .Of(() => FattyAcidProfile.Of((s_oleic, Percent(50)), (s_oleic, Percent(50))))
        .Of(() => FattyAcidProfile.FromRanges((s_palmitic, Percent(60), Percent(50))))
        .Of(() => FattyAcidProfile.FromRanges(null!))
        .Of(() => FattyAcidProfile.Of((s_oleic, Percent(100)))[default(FattyAcid)!])
        .Of(() => FattyAcidProfile.Of((s_oleic, Percent(100))).SaponificationAsTriglyceride(Percent(101)))
        .Of(() => Purity.Certified(Ratio.Zero))
        .Of(() => Purity.Certified(Percent(101)))
        .Of(() => Purity.Between(Percent(99), Percent(97)))
        .Of(() => Alkali.SodiumHydroxide(null!))
        .Of(() => Alkali.SodiumHydroxide(Percent(98)) with { Certificate = " " })
        .Of(() => Alkali.PotassiumHydroxide(Percent(90)) with { BoundWater = Percent(11) })
        .Of(() => new Acid(" ", "Acid", s_sixty, 1, 0))
        .Of(() => new Acid("acid", " ", s_sixty, 1, 0))
        .Of(() => new Acid("acid", "Acid", MolarMass.FromGramsPerMole(0), 1, 0))
        .Of(() => new Acid("acid", "Acid", s_sixty, 31, 0))
        .Of(() => new Acid("acid", "Acid", s_sixty, 1, -1))
        .Of(() => new Contents { Water = Percent(101) })
        .Of(() => new Contents { Fat = Percent(101) })
        .Of(() => new Contents { Sugar = Percent(101) })
        .Of(() => new Contents { Protein = Percent(101) })
        .Of(() => new Contents { Acid = Percent(101) })
        .Of(() => new Contents { Alcohol = Percent(101) })
        .Of(() => new Contents { Ash = Percent(101) })
        .Of(() => new Liquid(" ", "Drink", Contents.PureWater))
        .Of(() => new Liquid("drink", " ", Contents.PureWater))
        .Of(() => new Liquid("drink", "Drink", null!))
        .Of(() => new Liquid("drink", "Drink", new() { Water = Percent(90), Fat = Percent(20) }))
        .Of(() => new Liquid("drink", "Drink", new() { Fat = Percent(20), MostFat = Percent(19) }))
        .Of(() => new Liquid("drink", "Drink", new() { Acid = Percent(5), LeastAcid = Percent(6) }))
        .Of(() => s_milk.WithLabel(" ", Contents.PureWater))
        .Of(() => s_milk.WithLabel("carton", null!))
        .Of(() => s_milk.WithLabel("carton", new() { Water = Percent(90), Sugar = Percent(20) }))
        .Of(() => new Additive(" ", "Clay", AdditiveKind.Clay, Stage.Trace, Contents.None))
        .Of(() => new Additive("clay", " ", AdditiveKind.Clay, Stage.Trace, Contents.None))
        .Of(() => new Additive("clay", "Clay", (AdditiveKind)99, Stage.Trace, Contents.None))
        .Of(() => new Additive("clay", "Clay", AdditiveKind.Clay, (Stage)99, Contents.None))
        .Of(() => new Additive("clay", "Clay", AdditiveKind.Clay, Stage.Trace, null!))
        .Of(() => ((IEnumerable<string>)null!).ToValueList())
        .Match("materials");
}
