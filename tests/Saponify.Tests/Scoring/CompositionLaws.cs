using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Scoring;

/// <summary>Laws of the composition of a bar.</summary>
public class CompositionLaws
{
    private static double Grams(BarComposition bar, PartKind kind) => bar.MassOf(kind).Grams;

    [Law]
    public Property Parts_AddUpToTheBatch_ForEveryFormulaThatCanBeWeighed() => Prop.ForAll(Gen.OneOf(Any.Formulas, Any.SoundFormulas).Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        if (plan.Composition() is not { } bar)
            return !plan.Balance.CanBeWeighed;
        return plan.Balance.CanBeWeighed
            && Near.Is(bar.Parts.Sum(p => p.Mass.Grams), plan.BatchMass.Grams) && Near.Is(bar.BarMass.Grams, plan.BatchMass.Grams)
            && Near.Is(bar.Parts.Sum(p => p.Share.DecimalFractions), 1)
            && bar.Parts.All(p => p.Mass.Grams > 0 && double.IsFinite(p.Mass.Grams))
            && bar.TotalFattyMatter.DecimalFractions is >= 0 and <= 1 + 1e-12;
    });

    [Law]
    public Property Parts_AreNamedOnce_InTheOrderOfTheirKinds() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
        formula.Composition() is not { } bar
        || (bar.Parts.Select(p => (p.Kind, p.Name)).Distinct().Count() == bar.Parts.Count && bar.Parts.Select(p => p.Kind).SequenceEqual(bar.Parts.Select(p => p.Kind).Order())));

    [Law]
    public Property Hydroxide_EndsAsSoapSaltOrAlkaliLeft() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        // a wax and a fat without profile have no soap of a named acid
        if (plan.Composition() is not { } bar || formula.Fats.Any(f => f.Fat.Class == FatClass.Wax || f.Fat.Profile is not { IsPartial: false })
            || Containing.All(plan).Any(c => c.Contents.FatFraction > 0 && c.Contents.FatKind?.Profile is not { IsPartial: false }))
            return true;
        double soap = bar.Parts.Where(p => p.Kind == PartKind.Soap).Sum(p => p.Mass.Grams / p.Acid!.SoapMolarMass(p.Cation!.Value).GramsPerMole);
        return Near.Is(soap + plan.Balance.AcidDemand.Moles, plan.Balance.HydroxideSupplied.Moles, 1e-9);
    });

    [Law]
    public Property Cations_AreSharedInTheRatioOfSupply() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0.05, 0.95).Arbitrary(), (formula, potassium) =>
    {
        Formula dual = formula with
        {
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(5), Alkali.PotassiumHydroxide(Ratio.FromPercent(90)).ShareOfHydroxide(Ratio.FromDecimalFractions(potassium)),
                Alkali.SodiumHydroxide(Ratio.FromPercent(99)).ShareOfHydroxide(Ratio.FromDecimalFractions(1 - potassium))),
        };
        return dual.Composition() is not { } bar || bar.Parts.Where(p => p.Kind == PartKind.Soap && p.Acid is not null).GroupBy(p => p.Acid!).All(acid =>
        {
            double Moles(AlkaliKind kind) => acid.Single(p => p.Cation == kind).Mass.Grams / acid.Key.SoapMolarMass(kind).GramsPerMole;
            return Near.Is(Moles(AlkaliKind.PotassiumHydroxide) / (Moles(AlkaliKind.PotassiumHydroxide) + Moles(AlkaliKind.SodiumHydroxide)), potassium, 1e-9);
        });
    });

    [Law]
    public Property Drying_TakesOnlyWaterAndAlcohol() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0, 1).Arbitrary(), (formula, part) =>
    {
        if (formula.Composition() is not { } fresh)
            return true;
        Ratio moisture = Ratio.FromDecimalFractions(fresh.Moisture.DecimalFractions * part);
        BarComposition dry = fresh.AtMoisture(moisture);
        double Fatty(BarComposition bar) => bar.BarMass.Grams * bar.TotalFattyMatter.DecimalFractions;
        return Near.Is(dry.Moisture, moisture, 1e-9)
            && Enum.GetValues<PartKind>().Where(k => k is not (PartKind.Water or PartKind.Alcohol)).All(k => Near.Is(Grams(fresh, k), Grams(dry, k)))
            && Near.Is(Grams(dry, PartKind.Alcohol) * Grams(fresh, PartKind.Water), Grams(fresh, PartKind.Alcohol) * Grams(dry, PartKind.Water))
            && Near.Is(Fatty(fresh), Fatty(dry)) && dry.TotalFattyMatter >= fresh.TotalFattyMatter - Ratio.FromDecimalFractions(1e-12)
            && Near.Is(dry.Parts.Sum(p => p.Mass.Grams), dry.BarMass.Grams);
    });

    [Law]
    public Property DryingInTwoSteps_IsDryingInOne() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        if (formula.Composition() is not { } fresh)
            return true;
        Ratio half = Ratio.FromDecimalFractions(fresh.Moisture.DecimalFractions / 2), fifth = Ratio.FromDecimalFractions(fresh.Moisture.DecimalFractions / 5);
        return Near.Is(fresh.AtMoisture(half).AtMoisture(fifth).BarMass.Grams, fresh.AtMoisture(fifth).BarMass.Grams);
    });

    [Law]
    public Property Scaling_ScalesEveryPart() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), Any.Between(0.01, 100).Arbitrary(), (formula, factor) =>
    {
        if (formula.Composition() is not { } one || formula.ScaledBy(factor).Composition() is not { } many)
            return true;
        double Share(BarComposition bar, string name) => bar.Parts.Where(p => p.Name == name).Sum(p => p.Share.DecimalFractions);
        return one.Parts.Concat(many.Parts).All(p => Near.Is(Share(one, p.Name), Share(many, p.Name), 1e-7, 1e-10));
    });

    [Law]
    public Property UnreactedGlyceride_IsTheSuperfat_SpreadOverAllGlycerides() => Prop.ForAll(AnyBlend.Scored.Arbitrary(), Any.Between(0, 30).Arbitrary(), (blend, superfat) =>
    {
        if (blend.Shares.Any(s => s.Fat.Class != FatClass.Triglyceride || s.Fat.Saponification is null || s.Fat.Profile is not { IsPartial: false }))
            return true;
        Formula At(double percent) => new("Blend")
        {
            Fats = blend.Weighing(Mass.FromGrams(1000)),
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(percent), Alkali.SodiumHydroxide(Ratio.FromPercent(98))),
            Liquids = LiquidPlan.TotalWater(Mass.FromGrams(300)),
        };
        BarComposition none = At(0).Composition()!, some = At(superfat).Composition()!;
        double glyceride = 1000 - Grams(none, PartKind.Unsaponifiable);
        return Near.Is(Grams(some, PartKind.UnreactedFat), glyceride * superfat / 100, 1e-9, 1e-6)
            && Near.Is(Grams(some, PartKind.Glycerol), Grams(none, PartKind.Glycerol) * (1 - (superfat / 100)));
    });
}
