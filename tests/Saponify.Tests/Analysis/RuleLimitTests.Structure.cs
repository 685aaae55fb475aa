using System.Reflection;
using System.Text.RegularExpressions;
using Saponify.Analysis;

namespace Saponify.Tests.Analysis;

public partial class RuleLimitTests
{
    /// <summary>Molar masses by the abridged standard atomic weights (ciaaw-2021): Na 22.990, K 39.098, O 15.999, H 1.0080.</summary>
    private const double Soda = 39.997, Potassa = 56.105;

    /// <summary>A fat to reckon with by hand: of 200 mg KOH/g, so that 561.05 g take up 2 mol.</summary>
    private static FatPortion Taking(double moles, double koh = 200) =>
        Saponify.Fat.Own("hand", "Fat by hand", SaponificationValue.FromMilligramsKohPerGram(koh), "certificate").Weighing(Mass.FromGrams(moles * Potassa * 1000 / koh));

    /// <summary>Fats that take up 2 mol, and alkali weighed: so many mol of it by its stated purity.</summary>
    private static Formula TwoMoles(double alkali, double purity = 100, AlkaliKind kind = AlkaliKind.SodiumHydroxide)
    {
        Ratio pure = Ratio.FromPercent(purity);
        bool soda = kind == AlkaliKind.SodiumHydroxide;
        Alkali jar = soda ? Alkali.SodiumHydroxide(pure) : Alkali.PotassiumHydroxide(pure);
        return s_plain with { Fats = [Taking(2)], Alkali = AlkaliPlan.Weighed(jar.Weighing(Mass.FromGrams(alkali * (soda ? Soda : Potassa) / purity * 100))) };
    }

    /// <summary>A new rule without a test at its limit fails here: its id stands in the name of a test, or is the id that a theory is given.</summary>
    [Fact]
    public void EveryRule_HasATestOfItsLimit()
    {
        HashSet<string> tested = [];
        foreach (MethodInfo test in typeof(RuleLimitTests).GetMethods().Where(m => m.GetCustomAttributes<FactAttribute>().Any()))
        {
            tested.UnionWith(Regex.Matches(test.Name, "SFY[0-9]{4}").Select(m => m.Value));
            if (test.GetParameters() is [{ Name: "id" }, ..])
                tested.UnionWith(test.GetCustomAttributes<InlineDataAttribute>().Select(d => d.Data[0]).OfType<string>());
        }
        Assert.Empty(FormulaAnalyzer.BuiltInRules.Select(r => r.Descriptor.Id).Except(tested));
        Assert.Empty(tested.Except(FormulaAnalyzer.BuiltInRules.Select(r => r.Descriptor.Id)));
    }

    /// <summary>The alkali against the fats, 0.7 to 1.5 times their demand once an ounce of 28.349523125 g is put right (16-cfr-500): 0.7/28.35 = 0.02469, 1.5/28.35 = 0.05291, and so on.</summary>
    [Theory]
    [InlineData(0.7 / 28.349523125)]
    [InlineData(0.7 * 28.349523125)]
    [InlineData(0.7 * 453.59237)]
    public void SFY1101_FromSevenTenthsOn(double ofDemand)
    {
        Assert.False(Speaks("SFY1101", TwoMoles(2 * ofDemand * 0.999)));
        Assert.True(Speaks("SFY1101", TwoMoles(2 * ofDemand * 1.001)));
    }

    [Theory]
    [InlineData(1.5 / 28.349523125)]
    [InlineData(1.5 * 28.349523125)]
    [InlineData(1.5 * 1000)]
    public void SFY1101_UpToOneAndAHalf(double ofDemand)
    {
        Assert.True(Speaks("SFY1101", TwoMoles(2 * ofDemand * 0.999)));
        Assert.False(Speaks("SFY1101", TwoMoles(2 * ofDemand * 1.001)));
    }

    [Fact]
    public void SFY1102_Purity_OfOnePerCentAtMost()
    {
        Formula Of(double purity) => s_plain with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), Alkali.SodiumHydroxide(Ratio.FromPercent(purity))) };
        Assert.Equal(0.98, Assert.Single(Find("SFY1102", Of(0.0098))).Args.Single(a => a.Name == "meant").Number, 9);
        Assert.Equal("the purity of the sodium hydroxide is 0.0098 %: is 0.98 % meant?", Find("SFY1102", Of(0.0098))[0].ToMessage());
        Assert.True(Speaks("SFY1102", Of(1)));
        Assert.False(Speaks("SFY1102", Of(1.01)));
    }

    /// <summary>As the other alkali the same mass is 56.105/39.997 = 1.4027 times as many mol or the inverse. Half a point below 0 is put down to rounding.</summary>
    [Theory]
    [InlineData(AlkaliKind.SodiumHydroxide, Potassa / Soda)]
    [InlineData(AlkaliKind.PotassiumHydroxide, Soda / Potassa)]
    public void SFY1103_TheOtherAlkali_WouldGiveASuperfatThatMakersPlanFor(AlkaliKind given, double molesOfTheOther)
    {
        Formula Meant(double superfat) => TwoMoles(2 * (1 - (superfat / 100)) * molesOfTheOther, 97, given);
        Assert.True(Speaks("SFY1103", Meant(19.9)));
        Assert.False(Speaks("SFY1103", Meant(20.1)));
        Assert.True(Speaks("SFY1103", Meant(-0.4)));
        Assert.False(Speaks("SFY1103", Meant(-0.6)));
        Diagnostic found = Assert.Single(Find("SFY1103", Meant(5)));
        Assert.Equal(5, found.Args.Single(a => a.Name == "meant").Number, 6);
        Assert.Equal(100 * (1 - (0.95 * molesOfTheOther)), found.Args.Single(a => a.Name == "superfat").Number, 6);
        Assert.Empty(found.Fixes);
    }

    [Fact]
    public void SFY1103_OneWeighedAlkaliOnly()
    {
        Formula mixedUp = TwoMoles(1.9 * Potassa / Soda);
        Alkali potash = Alkali.PotassiumHydroxide(Ratio.FromPercent(90));
        Assert.True(Speaks("SFY1103", mixedUp));
        Assert.False(Speaks("SFY1103", mixedUp with { Alkali = AlkaliPlan.Weighed([.. ((WeighedAlkali)mixedUp.Alkali).Alkalis, potash.Weighing(Mass.FromGrams(1))]) }));
        Assert.False(Speaks("SFY1103", mixedUp with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(-33), Alkali.SodiumHydroxide(Ratio.FromPercent(100))) }));
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(0.001, false)]
    public void SFY1104_ALineOfNothing_AndOneOfAlmostNothing(double grams, bool speaks)
    {
        Mass mass = Mass.FromGrams(grams);
        Alkali soda = Alkali.SodiumHydroxide(Ratio.FromPercent(98)), potash = Alkali.PotassiumHydroxide(Ratio.FromPercent(90));
        (string Path, Formula Formula)[] lines =
        [
            ("fats[castor-oil].mass", s_plain with { Fats = [.. s_plain.Fats, s_pantry.Fat("castor-oil").Weighing(mass)] }),
            ("alkali.alkalis[potassium-hydroxide].mass", s_plain with { Alkali = AlkaliPlan.Weighed(soda.Weighing(Mass.FromGrams(100)), potash.Weighing(mass)) }),
            ("alkali.alkalis[potassium-hydroxide]", s_plain with { Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(6), soda.ShareOfHydroxide(Ratio.FromPercent(100 - grams)), potash.ShareOfHydroxide(Ratio.FromPercent(grams))) }),
            ("liquids.heldBack[milk-goat].mass", s_plain with { Liquids = s_plain.Liquids.HoldingBack(s_pantry.Liquid("milk-goat").Weighing(mass)) }),
            ("additives[kaolin]", Adding(s_pantry.Additive("kaolin").Weighing(mass))),
            ("additives[kaolin]", Adding(Dose("kaolin", grams))),
        ];
        // whoever counts by the listed fats goes on doing so
        Formula shares = lines[2].Formula;
        SuperfatTarget Basis(Formula formula) => (SuperfatTarget)(speaks ? Fixed("SFY1104", formula) : formula).Alkali;
        Assert.Equal((SuperfatBasis.AllFat, SuperfatBasis.ListedFats), (Basis(shares).Basis, Basis(shares with { Alkali = ((SuperfatTarget)shares.Alkali).OfListedFats() }).Basis));
        Assert.All(lines, line => Assert.Equal(speaks ? [line.Path] : [], Find("SFY1104", line.Formula).Select(d => d.Path.ToString())));
        if (speaks)
            Assert.All(lines, line => Assert.Equal(line.Formula.Balance().AlkaliAsWeighed.Grams, Fixed("SFY1104", line.Formula).Balance().AlkaliAsWeighed.Grams, 9));
    }

    [Fact]
    public void SFY1104_UnknownIsNotNothing_AndNothingAtAllIsForOtherRules()
    {
        Assert.False(Speaks("SFY1104", Adding(s_pantry.Additive("kaolin").AmountUnknown())));
        Assert.False(Speaks("SFY1104", s_plain with { Fats = [Fat("olive-oil", 0)] }));
        Assert.True(Speaks("SFY2021", s_plain with { Fats = [Fat("olive-oil", 0)] }));
        Assert.False(Speaks("SFY1104", Weighed(0)));
        Assert.True(Speaks("SFY2022", Weighed(0)));
    }

    [Fact]
    public void SFY1105_OneFat_OfOneLot_InOnePot()
    {
        Formula Lines(FatPortion first, FatPortion second) => s_plain with { Fats = [first, Fat("coconut-oil", 200), second] };
        Assert.True(Speaks("SFY1105", Lines(Fat("olive-oil", 300), Fat("olive-oil", 200))));
        Assert.True(Speaks("SFY1105", Lines(Fat("olive-oil", 300).AtTrace(), Fat("olive-oil", 200).AtTrace())));
        Assert.False(Speaks("SFY1105", Lines(Fat("olive-oil", 300), Fat("olive-oil", 200).AtTrace())));
        Assert.True(Speaks("SFY1105", Lines(Lot("olive-oil", 300, 190), Lot("olive-oil", 200, 190))));
        Assert.False(Speaks("SFY1105", Lines(Lot("olive-oil", 300, 190), Lot("olive-oil", 200, 190.1))));
        Assert.False(Speaks("SFY1105", Lines(Lot("olive-oil", 300, 190), Fat("olive-oil", 200))));
        Assert.Equal(2, Find("SFY1105", s_plain with { Fats = [Fat("olive-oil", 300), Fat("olive-oil", 100), Fat("olive-oil", 100)] }).Count);
    }

    [Fact]
    public void SFY1105_Fix_AddsInTheUnitOfTheFirstLine()
    {
        Formula twice = s_plain with { Fats = [s_pantry.Fat("olive-oil").Weighing(Mass.FromOunces(10)), Fat("coconut-oil", 200), Fat("olive-oil", 141.747615625)] };
        Formula once = Fixed("SFY1105", twice);
        // 141.747615625 g are 5 oz of 28.349523125 g
        Assert.Equal(15, once.Fats[0].Mass.Ounces, 9);
        Assert.Equal(UnitsNet.Units.MassUnit.Ounce, once.Fats[0].Mass.Unit);
        Assert.Equal(2, once.Fats.Count);
        Assert.Equal(twice.Balance().AlkaliAsWeighed.Grams, once.Balance().AlkaliAsWeighed.Grams, 9);
    }

    [Fact]
    public void SFY1107_PouredOrWeighed()
    {
        FatPortion poured = s_pantry.Fat("olive-oil").Pouring(Volume.FromMilliliters(550));
        // 0.910 to 0.916 times as heavy as water of 20 degrees (memory), which has 0.9982 g/mL
        Assert.InRange(poured.Mass.Grams, 550 * 0.910 * 0.998, 550 * 0.916);
        Formula formula = s_plain with { Fats = [Fat("coconut-oil", 200), poured] };
        Assert.Equal("fats[olive-oil].volume", Assert.Single(Find("SFY1107", formula)).Path.ToString());
        Assert.False(Speaks("SFY1107", s_plain with { Fats = [Fat("coconut-oil", 200), poured with { Mass = poured.Mass }] }));
        FatPortion weighed = Fixed("SFY1107", formula).Fats[1];
        Assert.Equal((null, poured.Mass.Grams), (weighed.Poured, weighed.Mass.Grams));
        Assert.True(Speaks("SFY1107", s_plain with { Fats = [Fat("coconut-oil", 200), s_pantry.Fat("olive-oil").Pouring(Volume.Zero)] }));
        // a fix is for its own line
        Formula two = s_plain with { Fats = [s_pantry.Fat("coconut-oil").Pouring(Volume.FromMilliliters(200)), poured] };
        Assert.Equal([null, poured.Poured], Find("SFY1107", two)[0].Fixes[0].Apply().Fats.Select(f => f.Poured));
    }
}
