using FsCheck;
using FsCheck.Fluent;

namespace Saponify.Tests.Support;

/// <summary>Generators of materials and formulas. <see cref="Formulas"/> makes anything that can be constructed; <see cref="SoundFormulas"/> what a maker would make.</summary>
public static class Any
{
    private static readonly Fat[] s_fats = [.. Pantry.Reference.Fats];
    private static readonly Fat[] s_usableFats = [.. Pantry.Reference.Fats.Where(f => f.Saponification?.Value.MilligramsKohPerGram > 0)];
    private static readonly Liquid[] s_liquids = [.. Pantry.Reference.Liquids];
    private static readonly Liquid[] s_milks = [.. Pantry.Reference.Liquids.Where(l => l.Contents.Water.Percent > 50)];
    private static readonly Additive[] s_additives = [.. Pantry.Reference.Additives];

    public static Gen<double> Between(double low, double high) => Gen.Choose(0, 1_000_000).Select(i => low + ((high - low) * i / 1_000_000));

    /// <summary>A mass of a kitchen batch in one of the usual units.</summary>
    public static Gen<Mass> KitchenMass { get; } =
        from grams in Between(1, 2000)
        from unit in Gen.Elements("g", "oz", "lb", "kg")
        select unit switch { "g" => Mass.FromGrams(grams), "oz" => Mass.FromOunces(grams / 28), "lb" => Mass.FromPounds(grams / 450), _ => Mass.FromKilograms(grams / 1000) };

    /// <summary>Any mass that can be constructed, zero and the extremes included.</summary>
    public static Gen<Mass> ExtremeMass { get; } = Gen.OneOf(
        KitchenMass, Gen.Constant(Mass.Zero), Gen.Constant(Mass.FromGrams(1e9)), Gen.Constant(Mass.FromGrams(double.Epsilon)),
        Between(-300, 9).Select(e => Mass.FromGrams(Math.Pow(10, e))));

    /// <summary>A volume of a kitchen batch in one of the usual units.</summary>
    public static Gen<Volume> KitchenVolume { get; } =
        from millilitres in Between(1, 2000)
        from unit in Gen.Elements("mL", "L", "fl oz")
        select unit switch { "mL" => Volume.FromMilliliters(millilitres), "L" => Volume.FromLiters(millilitres / 1000), _ => Volume.FromUsOunces(millilitres / 30) };

    public static Gen<Fat> UsableFat { get; } = Gen.Elements(s_usableFats);

    public static Gen<Purity> Purities { get; } =
        from low in Between(80, 99.9)
        from more in Between(0, 0.1)
        from kind in Gen.Choose(0, 2)
        select kind switch
        {
            0 => Purity.Certified(Ratio.FromPercent(low)),
            1 => Purity.Between(Ratio.FromPercent(low), Ratio.FromPercent(low + more)),
            _ => Purity.AtLeast(Ratio.FromPercent(low)),
        };

    public static Gen<Alkali> Alkalis { get; } =
        from purity in Purities
        from strength in Between(20, 55)
        from kind in Gen.Choose(0, 5)
        select kind switch
        {
            0 => Alkali.SodiumHydroxide(purity),
            5 => Alkali.SodiumHydroxide(purity) with { Certificate = "certificate 2231" },
            1 => Alkali.PotassiumHydroxide(purity),
            2 => Alkali.SodiumHydroxideSolution(Ratio.FromPercent(strength)),
            3 => Alkali.PotassiumHydroxideSolution(Ratio.FromPercent(strength)),
            _ => Alkali.PotassiumHydroxide(purity) with { BoundWater = Ratio.FromDecimalFractions((1 - purity.High.DecimalFractions) / 2) },
        };

    public static Gen<AlkaliPlan> AlkaliPlans(Gen<Mass> masses, double leastSuperfat) =>
        from one in Alkalis
        from two in Alkalis
        from superfat in Between(leastSuperfat, 30)
        from share in Between(0, 1)
        from mass in masses
        from kind in Gen.Choose(0, 5)
        select kind switch
        {
            0 or 1 => AlkaliPlan.ForSuperfat(Ratio.FromPercent(superfat), one),
            2 => AlkaliPlan.ForSuperfat(Ratio.FromPercent(superfat), one).OfListedFats(),
            3 => AlkaliPlan.ForSuperfat(Ratio.FromPercent(superfat), one.ShareOfHydroxide(Ratio.FromDecimalFractions(share)), two.ShareOfHydroxide(Ratio.FromDecimalFractions(1 - share))),
            4 => AlkaliPlan.ForSuperfat(Ratio.FromPercent(superfat), one.ShareOfMass(Ratio.FromDecimalFractions(share)), two.ShareOfMass(Ratio.FromDecimalFractions(1 - share))),
            _ => (AlkaliPlan)AlkaliPlan.Weighed(one.Weighing(mass), two.Weighing(mass)),
        };

    public static Gen<LiquidPortion> LiquidPortions(Gen<Mass> masses) =>
        from liquid in WithLabels(Gen.Elements(s_liquids))
        from mass in masses
        from volume in KitchenVolume
        from celsius in Between(-10, 60)
        from form in Gen.Choose(0, 3)
        select form switch
        {
            0 => liquid.Weighing(mass),
            3 => liquid.Density is null ? liquid.Weighing(mass) with { Line = "my own" } : liquid.Pouring(volume),
            1 => liquid.Weighing(mass).At(Temperature.FromDegreesCelsius(celsius)),
            _ => liquid.Weighing(mass).FrozenAt(Temperature.FromDegreesFahrenheit(-20 + celsius / 3)),
        };

    public static Gen<LiquidPlan> LiquidPlans(Gen<Mass> masses) =>
        from rule in Gen.OneOf(
            Between(1, 95).Select(c => LiquidPlan.LyeConcentration(Ratio.FromPercent(c))),
            Between(25, 40).Select(c => LiquidPlan.LyeConcentration(Ratio.FromPercent(c))),
            Between(0.05, 100).Select(p => LiquidPlan.WaterToAlkali(Ratio.FromDecimalFractions(p))),
            Between(0, 1000).Select(s => LiquidPlan.WaterToFats(Ratio.FromPercent(s))),
            masses.Select(LiquidPlan.TotalWater),
            LiquidPortions(masses).Select(LiquidPlan.WeighedLyeLiquid))
        from liquid in WithLabels(Gen.Elements(s_liquids))
        from way in Gen.Choose(0, 3)
        from held in Gen.ListOf(LiquidPortions(masses)).Resize(3)
        select (way switch
        {
            0 => rule.DissolvingIn(liquid),
            1 => rule.DissolvingInFrozen(liquid, Temperature.FromDegreesCelsius(-18)),
            2 => rule.DissolvingIn(liquid, Temperature.FromDegreesCelsius(7)),
            _ => rule,
        }).HoldingBack([.. held]);

    public static Gen<FatPortion> FatPortions(Gen<Fat> fats, Gen<Mass> masses) =>
        from fat in fats
        from mass in masses
        from volume in KitchenVolume
        from kind in Gen.Choose(0, 6)
        select kind switch
        {
            0 => fat.Weighing(mass).AtTrace(),
            1 => fat.Figures.Density is null ? fat.Weighing(mass) with { Line = "my own" } : fat.Pouring(volume),
            _ => fat.Weighing(mass),
        };

    public static Gen<AdditivePortion> AdditivePortions(Gen<Mass> masses) =>
        from additive in Gen.Elements(s_additives)
        from mass in masses
        from share in Between(0, 20)
        from stage in Gen.Elements(Stage.LyeLiquid, Stage.Fats, Stage.Trace, Stage.Top)
        from kind in Gen.Choose(0, 3)
        select (kind switch
        {
            0 => additive.Weighing(mass),
            1 => additive.AmountUnknown(),
            _ => additive.ShareOfFats(Ratio.FromPercent(share)),
        }).At(stage);

    /// <summary>Any formula that can be constructed: zero and extreme masses, fats without a usable value, water rules that can't be met, lye-heavy targets.</summary>
    public static Gen<Formula> Formulas { get; } =
        from fats in Gen.ListOf(FatPortions(WithLots(Gen.Elements(s_fats)), ExtremeMass)).Resize(6)
        from alkali in AlkaliPlans(ExtremeMass, -100)
        from liquids in LiquidPlans(ExtremeMass)
        from additives in Gen.ListOf(AdditivePortions(ExtremeMass)).Resize(4)
        from name in Gen.Elements("Plain", "Ünïcode – 石鹸", "with \"quotes\" and \\", "İstanbul")
        from accepted in Gen.Elements<ValueList<Suppression>>(default, [new("SFY2001", "", "known")], [new("SFY2015", "alkali", "") { Author = "M", Until = new DateOnly(2026, 12, 24) }])
        select new Formula(name) { Fats = [.. fats], Alkali = alkali, Liquids = liquids, Additives = [.. additives], Suppressions = accepted };

    /// <summary>Formulas as makers make them: a kilogram of usable fats, 0 to 20 % superfat, lye of 25 to 40 %, some milk, some additives.</summary>
    public static Gen<Formula> SoundFormulas { get; } =
        from fats in Gen.NonEmptyListOf(FatPortions(UsableFat, Between(50, 600).Select(g => Mass.FromGrams(g)))).Resize(5)
        from more in UsableFat
        from superfat in Between(0, 20)
        from alkali in Alkalis.Where(a => !a.IsSolution)
        from strength in Between(25, 40)
        from milk in Gen.Elements(s_milks)
        from way in Gen.Choose(0, 3)
        from held in Between(0, 0.1)
        from additive in Gen.Elements(s_additives)
        from dose in Between(0, 1)
        let listed = fats.Sum(f => f.Mass.Grams) + 200
        let plan = LiquidPlan.LyeConcentration(Ratio.FromPercent(strength))
        select new Formula("Sound")
        {
            Fats = [.. fats, more.Weighing(Mass.FromGrams(200))],
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(superfat), alkali),
            Liquids = (way == 0 ? plan.DissolvingIn(milk) : plan).HoldingBack(milk.Weighing(Mass.FromGrams(listed * held))),
            Additives = [additive.ShareOfFats(Ratio.FromPercent(dose))],
        };

    /// <summary>Formulas by good practice: common fats whose values were read, 4 to 8 % superfat of the listed fats, certified sodium hydroxide, water to dissolve in, a little held-back milk.</summary>
    public static Gen<Formula> GoodFormulas { get; } =
        from hard in Gen.Elements("coconut-oil", "palm-oil", "cocoa-butter", "kokum-butter")
        from soft in Gen.Elements("olive-oil", "canola-oil", "sunflower-oil-high-oleic", "rice-bran-oil", "soybean-oil")
        from third in Gen.Elements("castor-oil", "sesame-oil", "argan-oil", "cottonseed-oil")
        from hardGrams in Gen.Choose(150, 300)
        from softGrams in Gen.Choose(300, 600)
        from thirdGrams in Gen.Choose(40, 120)
        from superfat in Between(4, 8)
        from strength in Between(27, 33)
        from milk in Gen.Elements(Liquid.Water, Pantry.Reference.Liquid("milk-cow-whole"), Pantry.Reference.Liquid("milk-goat"), Pantry.Reference.Liquid("heavy-cream"))
        from held in Gen.Choose(0, 60)
        from additive in Gen.Elements(("", 0.0), ("sodium-lactate-60", 2), ("kaolin", 1.5), ("mica", 0.5), ("oatmeal-ground", 1), ("essential-oil", 2), ("sodium-chloride", 1), ("sucrose", 1))
        let liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(Math.Round(strength, 1)))
        select new Formula("Good practice")
        {
            Fats = [Pantry.Reference.Fat(soft).Weighing(Mass.FromGrams(softGrams)), Pantry.Reference.Fat(hard).Weighing(Mass.FromGrams(hardGrams)), Pantry.Reference.Fat(third).Weighing(Mass.FromGrams(thirdGrams))],
            Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(Math.Round(superfat, 1)), Alkali.SodiumHydroxide(Ratio.FromPercent(98.5))).OfListedFats(),
            Additives = additive.Item1.Length == 0 ? [] : [Pantry.Reference.Additive(additive.Item1).ShareOfFats(Ratio.FromPercent(additive.Item2))],
            Liquids = held > 5 && milk.Id != "water" ? liquids.HoldingBack(milk.Weighing(Mass.FromGrams(held)).At(Temperature.FromDegreesCelsius(5))) : liquids,
        };

    public static Arbitrary<T> Arbitrary<T>(this Gen<T> gen) => gen.ToArbitrary();

    private static Gen<Liquid> WithLabels(Gen<Liquid> liquids) =>
        from liquid in liquids
        from water in Between(0, 60)
        from fat in Between(0, 40)
        from label in Gen.Choose(0, 3)
        select label == 0 ? liquid.WithLabel("carton", new() { Water = Ratio.FromPercent(water), Fat = Ratio.FromPercent(fat) }) : liquid;

    private static Gen<Fat> WithLots(Gen<Fat> fats) =>
        from fat in fats
        from value in Between(0, 1000)
        from lot in Gen.Choose(0, 3)
        select lot == 0
            ? fat.WithLot(new() { Name = "L-1", Source = "certificate", Saponification = SaponificationValue.FromMilligramsKohPerGram(value), Date = new DateOnly(2026, 3, 1) })
            : fat;
}
