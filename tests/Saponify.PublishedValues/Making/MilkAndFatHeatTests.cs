namespace Saponify.PublishedValues.Making;

/// <summary>Heat capacities of milk, cream and fat; lye into cold milk; cooling of a small body; melting.</summary>
public class MilkAndFatHeatTests
{
    private static Liquid Milk(string id) => Pantry.Reference.Liquid(id);

    /// <summary>
    /// Source: Geankoplis, Transport Processes, Appendix A.4-1, means from 0 to 100 degrees Celsius: whole milk 3.85 kJ/(kg K), skim milk 3.98 to 4.02, cream of 57 %
    /// water 3.06. Within 5 %, as formulas by composition are.
    /// </summary>
    [Theory]
    [InlineData("milk-cow-whole", 3.85)]
    [InlineData("milk-cow-skim", 4.00)]
    [InlineData("heavy-cream", 3.06)]
    public void HeatCapacity_OfDairy(string id, double expected) => Given.Near(expected, Milk(id).HeatCapacity().Value.KilojoulesPerKilogramKelvin, 0.05 * expected);

    /// <summary>Source: IASRI, Dairy Engineering, lesson 3: whole milk 3.93 kJ/(kg K), 0.93 kcal. Within 5 %.</summary>
    [Fact]
    public void HeatCapacity_OfWholeMilk_InADairyCourse() => Given.Near(3.93, Milk("milk-cow-whole").HeatCapacity().Value.KilojoulesPerKilogramKelvin, 0.05 * 3.93);

    /// <summary>
    /// Source: Kessler, Food Engineering and Dairy Technology, 1981, formula by composition, for a milk of 87.4 % water, 4.8 carbohydrate, 3.4 protein, 3.6 fat, 0.7 ash:
    /// 4.18 x 0.874 + 1.4 x 0.048 + 1.6 x 0.034 + 1.7 x 0.036 + 0.8 x 0.007 = 3.842. The unnamed 0.1 % counts as carbohydrate.
    /// </summary>
    [Fact]
    public void HeatCapacity_ByComposition()
    {
        Liquid milk = new("milk", "Milk of the formula", new Contents
        {
            Water = Ratio.FromPercent(87.4), Sugar = Ratio.FromPercent(4.8), Protein = Ratio.FromPercent(3.4), Fat = Ratio.FromPercent(3.6), Ash = Ratio.FromPercent(0.7),
        });
        Given.Near(3.842, milk.HeatCapacity().Value.KilojoulesPerKilogramKelvin, 0.002);
    }

    /// <summary>Source: Geankoplis, Appendix A.4-1: olive oil 2.01 kJ/(kg K) at 20 degrees Celsius. 1 kg by 10 degrees: 20.1 kJ, if nothing has to melt.</summary>
    [Fact]
    public void HeatCapacity_OfOil()
    {
        FatHeating heating = new([Pantry.Reference.Fat("olive-oil").Weighing(Mass.FromKilograms(1))]);
        Given.Near(20.1, heating.HeatFor(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(30)).Low!.Value.Kilojoules, 0.01);
    }

    /// <summary>
    /// Source: Kahwaji and White, Appl. Sci. 9 (2019) 1627: coconut oil melts at 24.5 degrees Celsius, within 1.5, and takes 105 J/g, within 11.
    /// </summary>
    [Fact]
    public void CoconutOil_MeltsWithItsHeat()
    {
        FatHeating heating = new([Pantry.Reference.Fat("coconut-oil").Weighing(Mass.FromKilograms(1))]);
        Given.Near(26, heating.ClearFrom!.Value.DegreesCelsius, 0.01);
        Figure<Energy> heat = heating.HeatFor(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(30));
        Given.Near(20.1 + 105, heat.Value.Kilojoules, 0.01);
        Given.Near(20.1 + 105 - 11, heat.Low!.Value.Kilojoules, 0.01);
        Given.Near(20.1 + 105 + 11, heat.High!.Value.Kilojoules, 0.01);
    }

    /// <summary>
    /// Source: J. Dairy Sci., early 1960s, 57 creams at 9.85 degrees Celsius: 1.03123 - 0.000770 x % fat g/mL. The table has a household weight, good to 1.5 %.
    /// </summary>
    [Fact]
    public void DensityOfCream_IsThatOfItsFat()
    {
        Liquid cream = Milk("heavy-cream");
        Given.Near(1.03123 - (0.000770 * cream.Contents.Fat.Percent), cream.Density!.Value.GramsPerMilliliter, 0.015);
    }

    /// <summary>
    /// Source: Cengel, Heat and Mass Transfer, example 4-1: a sphere of 1 mm with 8500 kg/m3, 320 J/(kg K) and 210 W/(m2 K) has 1/(time constant) = 0.463 per second and has
    /// gone 99 % of the way after 10 s. Within 0.5 %.
    /// </summary>
    [Fact]
    public void SmallSphere_CoolsWithItsTimeConstant()
    {
        double radius = 0.5e-3, area = 4 * Math.PI * radius * radius, mass = 8500 * 4 / 3.0 * Math.PI * radius * radius * radius;
        NewtonCooling cooling = NewtonCooling.Of(Temperature.FromDegreesCelsius(0), Entropy.FromJoulesPerKelvin(mass * 320), Area.FromSquareMeters(area), HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(210));
        Given.Near(0.463, 1 / cooling.TimeConstant.Seconds, 0.005 * 0.463);
        Given.Near(10, cooling.TimeTo(Temperature.FromDegreesCelsius(100), Temperature.FromDegreesCelsius(1))!.Value.Seconds, 0.06);
    }

    /// <summary>
    /// Exercise, worked out apart from the library: 200 g NaOH in 260 g of water, 43.5 %, joins 350 g of whole milk of 5 degrees Celsius. From lye of 45 degrees the plain mean
    /// is 26, but the milk's water sets free 60.5 kJ: 47 degrees, warmer than the lye was. From lye of 25 degrees it is 36. Worked out with the published mean of
    /// 3.93 kJ/(kg K) for milk; the formula by composition has 3.87, which makes 0.3 degrees more, so the last one comes to 36.6.
    /// </summary>
    [Fact]
    public void StrongLyeIntoColdMilk_EndsWarmerThanTheLye()
    {
        LyeSolution lye = new LyeJug
        {
            Alkalis = [Given.PureSodiumHydroxide.Weighing(Mass.FromGrams(200))],
            AlkaliTemperature = Temperature.FromDegreesCelsius(20),
            Liquids = [Liquid.Water.Weighing(Mass.FromGrams(260)).At(Temperature.FromDegreesCelsius(20))],
        }.Dissolve();
        Given.Near(43.5, lye.Properties.Strength.Percent, 0.05);
        Mixing warm = new()
        {
            Lye = lye,
            LyeTemperature = Temperature.FromDegreesCelsius(45),
            Liquids = [Milk("milk-cow-whole").Weighing(Mass.FromGrams(350)).At(Temperature.FromDegreesCelsius(5))],
        };
        Given.Near(26, warm.PlainMean!.Value.DegreesCelsius, 0.5);
        Given.Near(60.5, warm.HeatOfDilution!.Value.Kilojoules, 0.5);
        Given.Near(47, warm.MixedTemperature!.Value.DegreesCelsius, 0.5);
        Mixing cool = warm with { LyeTemperature = Temperature.FromDegreesCelsius(25) };
        Given.Near(36, cool.MixedTemperature!.Value.DegreesCelsius, 0.6);
    }
}
