using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Making;

/// <summary>Jugs and what goes with them, for the tests of this folder.</summary>
internal static class Jugs
{
    internal static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    internal static LiquidPortion Water(double grams, double celsius) => Liquid.Water.Weighing(Mass.FromGrams(grams)).At(C(celsius));

    internal static LiquidPortion Ice(double grams, double celsius) => Liquid.Water.Weighing(Mass.FromGrams(grams)).FrozenAt(C(celsius));

    internal static AlkaliPortion Naoh(double grams, double purity = 100) => Alkali.SodiumHydroxide(Ratio.FromPercent(purity)).Weighing(Mass.FromGrams(grams));

    internal static AlkaliPortion Koh(double grams, double purity = 100) => Alkali.PotassiumHydroxide(Ratio.FromPercent(purity)).Weighing(Mass.FromGrams(grams));

    internal static LyeJug Jug(AlkaliPortion alkali, params LiquidPortion[] liquids) => new() { Alkalis = [alkali], AlkaliTemperature = C(20), Liquids = [.. liquids] };

    internal static double Celsius(this Temperature? temperature) => temperature!.Value.DegreesCelsius;

    /// <summary>Jugs as makers fill them: solid alkali of one or both kinds, lye of 15 to 49 %, cold to warm water.</summary>
    internal static Gen<LyeJug> Usual { get; } =
        from strength in Any.Between(15, 49)
        from alkali in Any.Between(5, 500)
        from sodium in Gen.Elements(0.0, 0.3, 0.65, 1, 1, 1)
        from purity in Any.Between(84, 100)
        from start in Any.Between(0, 40)
        from shelf in Any.Between(0, 35)
        let water = alkali * (100 - strength) / strength
        select new LyeJug
        {
            Alkalis = sodium switch { 0 => [Koh(alkali, purity)], 1 => [Naoh(alkali, purity)], _ => [Naoh(alkali * sodium, purity), Koh(alkali * (1 - sodium), purity)] },
            AlkaliTemperature = C(shelf),
            Liquids = [Water(water, start)],
        };
}
